#pragma once

#include <base/clock.h>
#include <measure/judge.h>
#include <shop/joint_facts.h>

#include <map>

namespace asleft {

/// As found.
struct FastenerFound {
    ActSeq seq;
    Moment at;
    PersonId who;
    FoundHow how;
    std::optional<Typed<Torque>> torque;
    std::string note;
    bool operator==(const FastenerFound &) const = default;
};

/// What of a tightening a pass brings to its end, so that nothing after it makes up for it.
enum class Brings {
    Nothing, ///< a later torque goes over it
    Torque,  ///< the target, settling at it, or a torque that none follows: the snug one of torque and angle
    Angle,   ///< the angle that stands for the target
};

/// One tick in force, with what it is worth.
struct TickMade {
    ActSeq seq;
    Moment at;
    PersonId who;
    Tick tick;
    TicksFact fact;               ///< without its list of ticks
    std::optional<Torque> torque; ///< at the fastener, by setting or reading
    /// At the target and when settling, and of every tick by feel: ByFeel. Of a last torque that is no target TooClose, where it lay
    /// outside the wrench's range. Nothing for all others.
    std::optional<Verdict> verdict;
    Brings brings = Brings::Torque;
    bool operator==(const TickMade &) const = default;
};

/// How far a fastener has come, for showing it.
enum class FastenerStage {
    Untouched, ///< as it was when the job began
    Loose,     ///< loosened, or to be done from the beginning
    Partway,   ///< some passes of it are done
    Tight,     ///< every pass is
};

struct FastenerState {
    FastenerStage stage = FastenerStage::Untouched;
    std::optional<FastenerFound> found = {};
    bool amiss = false;               ///< found missing, broken or of the wrong length, and nobody has said yet what went in instead
    std::vector<TickMade> ticks = {}; ///< those that count, in the order of passes and rounds
    std::optional<Fitted> fitted = {};
    std::optional<std::string> feelAccepted = {}; ///< the reason
    std::optional<std::string> torqueAccepted = {};
    std::optional<std::string> reuseAccepted = {};
    bool operator==(const FastenerState &) const = default;

    /// The tick that decides: the last one with a verdict that was not made by feel; nullptr where none has.
    [[nodiscard]] const TickMade *deciding() const;
    /// The verdict of the tick that decides; ByFeel where none was measured at the target and one of them was made by feel.
    [[nodiscard]] std::optional<Verdict> verdict() const;
    /// Low, high or not proved at the target.
    [[nodiscard]] bool outside() const;
    /// The last tick at the target, or at the torque that stands for it, was made by feel, or any turn on from there.
    [[nodiscard]] bool byFeel() const;
    /// Fitted again, and not accepted.
    [[nodiscard]] bool reused() const { return fitted == Fitted::Reused && !reuseAccepted; }
};

/// Everything a job's acts amount to for one joint.
struct JointState {
    int revision = 1;   ///< worked by: that of its beginning, else of its first tick, else the newest
    bool begun = false; ///< loosened or ticked in this job
    TighteningProgress progress;
    std::map<int, FastenerState> fasteners; ///< by number, each of the revision's pattern
    std::optional<std::string> unsettledAccepted = {};

    /// Ticked to the end, and nothing of it low, high or unproved, unsettled or reused without being accepted, and, of single-use
    /// fasteners, said whether new. By feel does not hinder.
    [[nodiscard]] bool settled(const Joint &joint) const;
};

/// What a tick is worth by its revision of the joint. \pre `joint` is the revision the fact names
TickMade tickMade(const TicksFact &fact, const Tick &tick, const Joint &joint);

struct JobState;

/// The revision of a joint its work goes by. \pre the joint is of the engine
const Joint &jointInHand(const JobState &state, JointId id);

/// What a joint that is ticked to the end still wants before its line is done.
struct JointWants {
    enum class Kind {
        Nothing,
        SayFitted,     ///< fasteners: single-use, or found amiss, and nobody said whether new
        AcceptReuse,   ///< fasteners
        TorqueOutside, ///< fasteners: low, high or unproved: tighten again, or accept with a reason
        AcceptUnsettled,
    };
    Kind kind = Kind::Nothing;
    std::vector<int> fasteners = {};
    bool operator==(const JointWants &) const = default;
};
/// Asked in this order: SayFitted already before the first tick, the others when ticked to the end.
JointWants jointWants(const Joint &joint, const JointState &state);

/// Fasteners found loose by feel: more than one of them is worth a finding. A loosening torque is never judged.
std::vector<int> foundLoose(const JointState &state);

} // namespace asleft
