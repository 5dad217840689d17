#pragma once

#include <shop/joint.h>

namespace asleft {

/// How a fastener was found when it was loosened.
enum class FoundHow {
    NotNoted,    ///< it came out, and nobody looked
    Measured,    ///< with this loosening torque
    LooseByFeel, ///< hardly tight or not at all
    TightByFeel, ///< as it should be, as far as a hand can tell
    Missing,
    Broken,
    WrongLength,
};

/// Fasteners were loosened, or found not to be there. Tightening them begins anew. What was found first stands once there were ticks, and
/// NotNoted never takes the place of what says more.
struct LoosenedFact {
    JointId joint;
    int revision = 1;
    std::vector<int> fasteners; ///< their numbers; at least one
    FoundHow how = FoundHow::NotNoted;
    std::optional<Typed<Torque>> torque = {}; ///< of Measured; never judged by the tightening band
    std::optional<ToolId> tool = {};
    std::string note = {}; ///< may be empty
    bool operator==(const LoosenedFact &) const = default;
};

/// What a fastener was tightened with.
enum class TickHow {
    ByHand,   ///< finger-tight, as the pass asks
    SetTool,  ///< a wrench that was set, and gave way
    ReadTool, ///< a wrench that showed what was reached
    ByAngle,  ///< turned on: with the gauge of `tool`, or by a mark
    ByFeel,   ///< with nothing that could measure it; `reason` says why
};

/// Fasteners ticked in one pass, at one stroke.
struct TicksFact {
    JointId joint;
    int revision = 1;        ///< of the joint: what it was done by
    std::vector<Tick> ticks; ///< at least one, all of one pass and round
    TickHow how = TickHow::SetTool;
    std::optional<ToolId> tool = {};
    std::optional<Typed<Torque>> setting = {}; ///< of SetTool: on the wrench
    std::optional<Typed<Torque>> reading = {}; ///< of ReadTool: on the wrench
    std::optional<FitUsed> fit = {};           ///< an adapter that changed what the fastener got
    std::optional<Length> lever = {};          ///< of the wrench, where there is a fit
    std::optional<Torque> uncertainty = {};    ///< of a reading: expanded, at the fastener, that it was judged with
    bool outOfRange = false;                   ///< logged although the setting lies outside the wrench's range
    bool calibrationOverdue = false;           ///< of the wrench, that day
    std::string reason = {};                   ///< of ByFeel
    bool operator==(const TicksFact &) const = default;
};

/// Ticks that were wrong: these places are to be done again.
struct UntickedFact {
    JointId joint;
    std::vector<TickSlot> places; ///< at least one
    bool operator==(const UntickedFact &) const = default;
};

/// The joint is tightened from the beginning, by this revision. What was said of new or reused fasteners no longer holds of those that had
/// ticks: they have been under torque since.
struct JointBegunFact {
    JointId joint;
    int revision = 1;
    bool operator==(const JointBegunFact &) const = default;
};

/// Whether what goes in is new: of single-use fasteners, and of those found missing, broken or of the wrong length. Said only after it was
/// tightened, it is said of what was tightened; said to be new after it was said to be used, it is another one than was ticked: its ticks,
/// and what was accepted of it, no longer count.
enum class Fitted { New, Reused };
struct FittedFact {
    JointId joint;
    std::vector<int> fasteners;
    Fitted fitted = Fitted::New;
    bool operator==(const FittedFact &) const = default;
};

/// What of a joint stays as it is.
enum class AcceptedWhat {
    ByFeel,
    Torque,    ///< outside the band, or not proved to be inside
    Unsettled, ///< of the joint; names no fastener
    Reused,
};
/// Accepted with a reason. A new tick, or loosening, voids it.
struct AcceptedFact {
    JointId joint;
    AcceptedWhat what = AcceptedWhat::ByFeel;
    std::vector<int> fasteners;
    std::string reason; ///< never empty
    bool operator==(const AcceptedFact &) const = default;
};

} // namespace asleft
