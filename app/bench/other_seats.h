#pragma once

#include <shop/state.h>

#include <optional>
#include <string>

namespace asleft {

/// Listens for what other seats do to a point.
class OtherSeats {
public:
    /// What stands in the state already is known.
    OtherSeats(const JobState &state, std::string seat);

    /// The last act about this point, or taking one about it back, that another seat has logged since the last look; nullptr if none.
    const Act *heardOf(const JobState &state, std::optional<PointId> point);

private:
    std::string m_seat; ///< ours
    std::optional<ActSeq> m_heard;
};

/// The act of another seat that this one came on top of, neither knowing of the other; nullptr if none.
const Act *underneath(const JobState &state, const Act &act);

} // namespace asleft
