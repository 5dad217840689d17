#pragma once

#include <shop/state.h>
#include <shop/subject.h>

namespace asleft {

// What can be open: a struct for each kind, by what it is about.
namespace open {

struct OfPoint {
    PointId point;
    bool operator==(const OfPoint &) const = default;
};
struct OfPoints {
    std::vector<PointId> points; ///< along the engine, at least one
    [[nodiscard]] int count() const { return static_cast<int>(points.size()); }
    bool operator==(const OfPoints &) const = default;
};
struct OfSpec {
    SpecId spec;
    bool operator==(const OfSpec &) const = default;
};
struct OfJoint {
    JointId joint;
    bool operator==(const OfJoint &) const = default;
};
struct OfFastener : OfJoint {
    int fastener;
    bool operator==(const OfFastener &) const = default;
};
struct OfFasteners : OfJoint {
    int count;
    bool operator==(const OfFasteners &) const = default;
};

struct NutOpen : OfPoint {
    Moment since;
    bool operator==(const NutOpen &) const = default;
};
/// Low or high as left.
struct OutOfBand : OfPoint {
    Verdict verdict;
    std::optional<std::string> kept; ///< the reason, where it was kept
    bool operator==(const OutOfBand &) const = default;
};
struct TooClose : OfPoint {
    std::optional<std::string> kept;
    bool operator==(const TooClose &) const = default;
};
struct SetByTwo : OfPoint {};         ///< left by two computers, each not knowing of the other
struct LashBeforeBridge : OfPoint {}; ///< its lash is left, its bridge screw is not

struct PointsNotLeft : OfPoints {}; ///< of the valve set: untouched, felt, nut open, or to check again
struct SpecRevised : OfPoints {};   ///< last read (as left, else as found) by an older revision than the newest
struct NoSpecYet : OfPoints {};     ///< left with nothing to judge them by
struct NotComparable : OfPoints {}; ///< left hot against a cold spec, or cold against a hot one
struct ByFeel : OfPoints {};        ///< left by feel
struct OutOfPosition : OfPoints {}; ///< set where the crank did not allow it

struct SpecUnsure : OfSpec {};       ///< from memory, assumed or told
struct ToleranceAssumed : OfSpec {}; ///< a nominal without limits of its own

struct StepUndone {
    StepId step;
    bool operator==(const StepUndone &) const = default;
};
/// Hydraulic tappets just set; not to be turned before.
struct BleedingDown {
    Moment until;
    bool operator==(const BleedingDown &) const = default;
};

struct FastenersLoose : OfFasteners {}; ///< not tightened to the end
struct FittedUnsaid : OfFasteners {};   ///< for single use, and nobody said them to be new
struct Reused : OfFasteners {};         ///< for single use, fitted again, and not accepted
struct FastenerFound : OfFastener {};   ///< found missing, broken or of the wrong length, and not said what went in instead
struct FastenerByFeel : OfFastener {};  ///< tightened by feel, and not accepted
struct TorqueOutside : OfFastener {};   ///< low or high at the target, and not accepted
struct TorqueUnproved : OfFastener {};  ///< the tool was out of its range, or what it showed is too close to call; not accepted
struct Unsettled : OfJoint {};          ///< some still moved in the last round there may be; not accepted
struct JointRevised : OfJoint {};       ///< worked by an older revision than the newest
struct JointUnsure : OfJoint {};        ///< its values are from memory, assumed or told
struct JointAssumed : OfJoint {};       ///< its target stands without limits of its own
/// Tightened with a tool whose calibration was overdue.
struct CalibrationOverdue : OfJoint {
    std::optional<ToolId> tool;
    bool operator==(const CalibrationOverdue &) const = default;
};

} // namespace open

/// One thing still open; words/ says it.
using OpenItem = std::variant<open::NutOpen, open::OutOfBand, open::TooClose, open::SetByTwo, open::LashBeforeBridge, open::PointsNotLeft,
                              open::SpecRevised, open::NoSpecYet, open::NotComparable, open::ByFeel, open::OutOfPosition, open::SpecUnsure,
                              open::ToleranceAssumed, open::StepUndone, open::BleedingDown, open::FastenersLoose, open::FittedUnsaid,
                              open::Reused, open::FastenerFound, open::FastenerByFeel, open::TorqueOutside, open::TorqueUnproved,
                              open::Unsettled, open::JointRevised, open::JointUnsure, open::JointAssumed, open::CalibrationOverdue>;

/// Where an item leads: to what it is about, of several points to the first. A spec, or a wait, leads nowhere on the bench.
std::optional<Subject> subjectOf(const OpenItem &item);

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

// What to do now: a struct for each kind.
namespace next {

struct OfPoint {
    PointId point;
    bool operator==(const OfPoint &) const = default;
};
struct OfJoint {
    StepId step;
    JointId joint;
    bool operator==(const OfJoint &) const = default;
};

struct NothingOpen {
    bool operator==(const NothingOpen &) const = default;
};
/// Nobody said where the crank stands.
struct ConfirmCrank {
    bool operator==(const ConfirmCrank &) const = default;
};
struct LockNut : OfPoint {};   ///< its nut is open
struct FeelPoint : OfPoint {}; ///< untouched
struct SetPoint : OfPoint {};  ///< felt, not left yet, or to check again
struct SetOrKeep : OfPoint {}; ///< left outside its band, or by two, and not kept
struct TurnCrank {
    std::size_t position; ///< an index into the plan
    bool operator==(const TurnCrank &) const = default;
};
struct DoStep {
    StepId step;
    bool operator==(const DoStep &) const = default;
};
struct LoosenJoint : OfJoint {};
struct TightenNext : OfJoint {
    TickSlot tick; ///< this fastener in this pass
    bool operator==(const TightenNext &) const = default;
};
struct SettleJoint : OfJoint {}; ///< ticked to the end, but something of it wants a word first (see jointWants())

} // namespace next

using NextAct = std::variant<next::NothingOpen, next::ConfirmCrank, next::LockNut, next::FeelPoint, next::SetPoint, next::SetOrKeep,
                             next::TurnCrank, next::DoStep, next::LoosenJoint, next::TightenNext, next::SettleJoint>;

/// The point it is done at, where it is done at one.
std::optional<PointId> pointOf(const NextAct &act);

/// What one point wants next, wherever the crank stands: LockNut, FeelPoint, SetPoint, SetOrKeep, or NothingOpen where it is settled.
NextAct pointAct(const JobState &state, PointId point);

/// Whether a point is one of those set at this position and not settled, with a spec whose leaf or turns could be used. A lash can be once
/// the bridge screw of its pair is settled or can be left here with it.
bool canBeLeftHere(const JobState &state, const SettingPoint &point);

/// An open nut, which comes before every line; else what the first undone line of the job wants, within the valve set the next act there.
NextAct nextAct(const JobState &state);

/// The first line of the job that is not done; nullptr when all are.
const Step *firstUndone(const JobState &state);

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
