#pragma once

#include <shop/outlook.h>
#include <shop/state.h>

#include <optional>
#include <vector>

namespace asleft {

/// A joint of a job as it is being tightened, with the fastener in hand. Points into the state.
struct TightenNow {
    const JobState &state;
    JointId id;
    std::optional<int> inHand;

    [[nodiscard]] const Joint &joint() const { return jointInHand(state, id); }
    [[nodiscard]] const JointState &worked() const { return state.joints.at(id); }
    [[nodiscard]] const TighteningProgress &progress() const { return worked().progress; }
    [[nodiscard]] std::size_t pass() const { return std::size_t(progress().pass); }
    /// The pass in hand, or the last of them.
    [[nodiscard]] std::size_t passOrLast() const;
    [[nodiscard]] JointWants wants() const { return jointWants(joint(), worked()); }
    [[nodiscard]] bool settles() const;
    /// Than the one that is worked by; nullptr where there is none.
    [[nodiscard]] const Joint *newerRevision() const;
    /// The fastener that is next; nothing where all are done.
    [[nodiscard]] std::optional<int> next() const;
    [[nodiscard]] std::vector<TickSlot> rest() const;
    /// The fastener in hand in the pass in hand, where it is still to be ticked.
    [[nodiscard]] std::optional<TickSlot> placeInHand() const;
    [[nodiscard]] const FastenerState *fastenerInHand() const;
    /// How many of the order are done one after the other.
    [[nodiscard]] qsizetype legsDone() const;
};

} // namespace asleft
