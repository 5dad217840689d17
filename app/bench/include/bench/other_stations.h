#pragma once

#include <shop/state.h>

#include <functional>
#include <optional>
#include <string>

namespace asleft {

/// The act of this place in the journal; nullptr where the job has none.
const Act *actOf(const JobState &state, ActSeq seq);
/// What an act tells of, or what it takes back told of.
const Act &spokenOf(const JobState &state, const Act &act);

/// Listens for what other computers do to what is in hand.
class OtherStations {
public:
    /// What stands in the state already is known.
    OtherStations(const JobState &state, std::string station);

    /// What stands in the state by now is known.
    void hearAll(const JobState &state);
    /// The last act about what is in hand that another computer has logged since the last look; nullptr if none.
    const Act *heardOf(const JobState &state, const std::function<bool(const Act &)> &isAbout);

private:
    std::string m_station; ///< ours
    std::optional<ActSeq> m_heard;
};

/// The act of another computer that this one came on top of, neither knowing of the other; nullptr if none.
const Act *underneath(const JobState &state, const Act &act);

} // namespace asleft
