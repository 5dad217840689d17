#pragma once

#include <shop/state.h>

#include <optional>
#include <string>

namespace asleft {

/// Listens for what other computers do to a point.
class OtherStations {
public:
    /// What stands in the state already is known.
    OtherStations(const JobState &state, std::string station);

    /// The last act about this point, or taking one about it back, that another computer has logged since the last look; nullptr if none.
    const Act *heardOf(const JobState &state, std::optional<PointId> point);

private:
    std::string m_station; ///< ours
    std::optional<ActSeq> m_heard;
};

/// The act of another computer that this one came on top of, neither knowing of the other; nullptr if none.
const Act *underneath(const JobState &state, const Act &act);

} // namespace asleft
