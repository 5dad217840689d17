#pragma once

#include <shop/state.h>

namespace asleft {

/// One thing still open; words/ says it in words.
struct OpenItem {
    enum class Kind {
        NutOpen,          ///< point, since
        PointsNotLeft,    ///< count: points of the valve set not yet left (untouched, felt, nut open, or to check again)
        OutOfBand,        ///< point, kept or not: low or high as left
        TooClose,         ///< point, kept or not
        StepUndone,       ///< step
        SpecRevised,      ///< count: points whose last reading (as left, else as found) was judged by an older revision than the newest
        SpecUnsure,       ///< spec: from memory, assumed or told
        ToleranceAssumed, ///< spec: a nominal without limits of its own
        NoSpecYet,        ///< count: points left with nothing to judge them by
        NotComparable,    ///< count: points left hot against a cold spec, or cold against a hot one
        ByFeel,           ///< count: points left by feel
        OutOfPosition,    ///< count: points set where the crank did not allow it
        BleedingDown,     ///< until: hydraulic tappets just set; not to be turned before
        SetByTwo,         ///< point: left by two computers, each not knowing of the other
        LashBeforeBridge, ///< point: its lash is left, its bridge screw is not
        // of joints
        FastenersLoose,     ///< joint, count: fasteners not tightened to the end
        FastenerFound,      ///< joint, fastener: found missing, broken or of the wrong length, and not said what went in instead
        FastenerByFeel,     ///< joint, fastener: tightened by feel, and not accepted
        TorqueOutside,      ///< joint, fastener: low or high at the target, and not accepted
        TorqueUnproved,     ///< joint, fastener: the tool was out of its range, or what it showed is too close to call; not accepted
        Unsettled,          ///< joint: some still moved in the last round there may be; not accepted
        FittedUnsaid,       ///< joint, count: single-use fasteners nobody said to be new
        Reused,             ///< joint, count: single-use fasteners fitted again, and not accepted
        JointRevised,       ///< joint: worked by an older revision than the newest
        JointUnsure,        ///< joint: its values are from memory, assumed or told
        JointAssumed,       ///< joint: its target stands without limits of its own
        CalibrationOverdue, ///< joint, tool: tightened with a tool whose calibration was overdue
    };
    Kind kind;
    std::optional<PointId> point = {};
    std::optional<StepId> step = {};
    std::optional<SpecId> spec = {};
    int count = 1;
    std::optional<Moment> since = {};
    std::optional<Moment> until = {};
    bool kept = false;
    std::optional<JointId> joint = {};
    std::optional<int> fastener = {};
    std::optional<ToolId> tool = {};
    bool operator==(const OpenItem &) const = default;
};

/// Everything between now and turning the crank, first start, and hand-over.
struct StillOpen {
    std::vector<OpenItem> turning;
    std::vector<OpenItem> firstStart;
    std::vector<OpenItem> handOver;
    bool operator==(const StillOpen &) const = default;
};
/// `now` tells which waits are over.
StillOpen stillOpen(const JobState &state, Moment now);

/// Until when the crank has to stand because hydraulic tappets are bleeding down, if anything was set that asks for it: the engine's wait
/// after the last of its lashes, or of points turned on from zero lash, was left. A correction does not begin it anew.
std::optional<Moment> bleedDownUntil(const JobState &state);

/// The bridge screw whose pair this lash is of, if it has one.
const SettingPoint *bridgeOf(const JobFrame &frame, const SettingPoint &lash);

/// The position of the plan the crank stands at, as an index; nothing if it is unknown or between positions.
std::optional<std::size_t> planPositionHere(const JobState &state);

/// How a point stands to the place of the crank.
enum class Here {
    InPlan,   ///< the plan sets it at this position; between positions: its margin is above zero
    Possible, ///< the plan sets it elsewhere, but its margin is above zero here
    NotHere,  ///< the valve may be off its seat
    Unknown,  ///< nobody knows where the crank stands
};
Here here(const JobState &state, PointId point);

/// What to do now.
struct NextAct {
    enum class Kind {
        ConfirmCrank, ///< nobody said where the crank stands
        LockNut,      ///< point: its nut is open
        FeelPoint,    ///< point: untouched
        SetPoint,     ///< point: felt, not left yet, or to check again
        SetOrKeep,    ///< point: left outside its band, or by two, and not kept
        TurnCrank,    ///< position: an index into the plan
        DoStep,       ///< step
        LoosenJoint,  ///< step, joint
        TightenNext,  ///< step, joint, tick: this fastener in this pass
        SettleJoint,  ///< step, joint: ticked to the end, but something of it wants a word first (see jointWants())
        NothingOpen,
    };
    Kind kind = Kind::NothingOpen;
    std::optional<PointId> point = {};
    std::optional<std::size_t> position = {};
    std::optional<StepId> step = {};
    std::optional<JointId> joint = {};
    std::optional<TickSlot> tick = {};
    bool operator==(const NextAct &) const = default;
};

/// What one point wants next, wherever the crank stands: LockNut, FeelPoint, SetPoint, SetOrKeep, or NothingOpen where it is settled.
NextAct pointAct(const JobState &state, PointId point);

/// Whether a point is one of those set at this position and not settled, with a spec whose leaf or turns could be used. A lash can be once
/// the bridge screw of its pair is settled or can be left here with it.
bool canBeLeftHere(const JobState &state, const SettingPoint &point);

/// The first undone line of the job, and within the valve set the next act there.
NextAct nextAct(const JobState &state);

/// The next act within the valve set: open nuts first, then the points of this position (all felt before the first is set; one left
/// outside its band, or by two, at once), then a turn of the crank to the position that is nearest ahead and has work, last a point that no
/// position of the plan sets. Wherever a lash would be set, the bridge screw of its pair goes before it until that is settled.
/// NothingOpen when every point is settled.
NextAct nextValveAct(const JobState &state);

/// A line is done by its act; the valve set is done when every point is settled, a tightening when its joint is (JointState::settled()), a
/// loosening by its act, or when every fastener was found one way or another.
bool stepDone(const JobState &state, const Step &step);

/// The phase a new reading of this point belongs to, unless the person says otherwise: as found until it was felt, then as left.
Phase phaseNow(const PointState &point);

/// The leaf the spec asks for: its nominal, else the leaf of `set` in the band nearest its middle, else the middle in whole steps of its
/// unit; for a one-sided band its limit.
std::optional<Typed<Length>> specLeaf(const Band<Length> &band, const Tool *set);
/// The same of the band printed in the system of the set's leaves, of a gauge in that of its resolution, else of the first.
std::optional<Typed<Length>> specLeaf(const SpecBand<Length> &bands, const Tool *set);

/// The turns from zero lash the spec asks for: its nominal, else the middle, for a one-sided band its limit; in degrees where turns have no
/// end in decimals. Nothing of a band that names nothing.
std::optional<Typed<Angle>> specTurns(const SpecBand<Angle> &bands);

/// Points whose lock nut is open.
std::vector<PointId> openNuts(const JobState &state);

/// The last act in force of this computer in this job that a person can take back; nothing if there is none.
std::optional<ActSeq> undoable(const JobState &state, std::string_view station);

/// The withdrawal this computer can take back again, if that was the last thing it did in this job.
std::optional<ActSeq> redoable(const JobState &state, std::string_view station);

/// The in-force act that rests on `earlier`, if any: restsOn(), and a lash left over the bridge screw `earlier` left. The plan a job began
/// with rests on nothing.
const Act *restingOn(const JobState &state, ActSeq earlier);

/// The last act in force, not counting withdrawals, cautions and other jobs' crank moves.
const Act *lastAct(const JobState &state);

} // namespace asleft
