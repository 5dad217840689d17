#pragma once

#include <base/uid.h>
#include <base/variants.h>
#include <measure/judge.h>
#include <shop/joint_facts.h>
#include <shop/subject.h>
#include <shop/things.h>

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace asleft {

enum class Phase { AsFound, AsLeft };

/// How a reading was taken.
enum class ReadingForm {
    Exact,   ///< this value, or the leaf that fits with a drag
    Bracket, ///< `value` goes, `next` does not
    Loose,   ///< more than the leaf `value`
    Tight,   ///< less than the leaf `value`
    ByFeel,  ///< no tool that could measure it
    Turned,  ///< turned on from zero lash by `turned`
};

/// One reading of one setting point. Never changed: a correction supersedes it.
struct ReadingFact {
    PointId point;
    Phase phase = Phase::AsFound;
    ReadingForm form = ReadingForm::Exact;
    std::optional<Typed<Length>> value; ///< empty by feel, and for loose or tight where there is no spec whose leaf was tried
    std::optional<Typed<Length>> next;  ///< of a bracket
    std::optional<SpecId> judgedBy;     ///< the revision in force when it was taken
    std::optional<ToolId> tool;
    EngineCondition condition = EngineCondition::Cold;
    bool specLeaf = false;          ///< set with the spec's leaf, locked, felt again
    bool outOfPosition = false;     ///< logged although the crank stood where it may not be set, or at no known place
    std::optional<ActSeq> corrects; ///< the reading this one supersedes as a correction
    // Never said before the second schema step: empty in older acts.
    std::optional<Typed<Angle>> turned = {};          ///< of Turned
    std::optional<Length> uncertainty = {};           ///< expanded, that it was judged with; empty: simple acceptance
    std::optional<TypedTemperature> temperature = {}; ///< of the engine
    std::optional<std::int64_t> minutesSinceRun = {}; ///< since the engine last ran
    bool operator==(const ReadingFact &) const = default;
};

/// Several points left at one stroke: every one of a position set with the spec's leaf, locked, felt again. One act, so that one
/// undo takes it back whole.
struct AllLeftFact {
    std::vector<ReadingFact> readings; ///< at least one, each of another point, all as left
    bool operator==(const AllLeftFact &) const = default;
};

/// The lock nut of a point was opened.
struct NutOpenFact {
    PointId point;
    bool operator==(const NutOpenFact &) const = default;
};

enum class CrankHow {
    Confirmed, ///< looked at mark and stroke: it stands there
    Turned,    ///< turned to there in the normal direction
};

/// Where the crank of an engine stands.
struct CrankFact {
    EngineId engine;
    std::optional<Angle> crank; ///< empty: unknown
    CrankHow how = CrankHow::Confirmed;
    bool operator==(const CrankFact &) const = default;
};

/// The plan this job is worked by from now on, whole, so that a newer program cannot reshuffle half a job.
struct PlanFact {
    EngineId engine;
    CrankPlan plan;
    bool operator==(const PlanFact &) const = default;
};

struct StepDoneFact {
    StepId step;
    bool operator==(const StepDoneFact &) const = default;
};

/// An as-left reading outside its band is kept as it is.
struct KeepFact {
    ActSeq reading;
    PointId point;
    std::string reason; ///< may be empty
    bool operator==(const KeepFact &) const = default;
};

/// The cautions before turning the crank, or before a step, were shown and read.
struct CautionsFact {
    std::vector<Caution> cautions;
    bool operator==(const CautionsFact &) const = default;
};

/// What may have moved a point that was set.
enum class Disturbance {
    Other,
    HeadTightened,    ///< the head tightened again
    RockersTightened, ///< a rocker stand or shaft tightened again
    TimingMoved,      ///< the cam drive was off
    ValveOrSeatCut,   ///< a valve or its seat was cut or changed
    BridgeSet,        ///< its bridge screw was set after it
};

/// Work done later may have moved what was set at these points.
struct CheckAgainFact {
    std::vector<PointId> points;
    std::string why; ///< in a person's words; may be empty
    Disturbance cause = Disturbance::Other;
    bool operator==(const CheckAgainFact &) const = default;
};

/// Something worth knowing later that was found.
struct FindingFact {
    Subject subject;
    std::string text; ///< never empty
    bool operator==(const FindingFact &) const = default;
};

/// Takes Act::withdraws back.
struct WithdrawFact {
    bool operator==(const WithdrawFact &) const = default;
};

using Fact = std::variant<ReadingFact, AllLeftFact, NutOpenFact, CrankFact, PlanFact, StepDoneFact, KeepFact, CautionsFact, CheckAgainFact,
                          WithdrawFact, LoosenedFact, TicksFact, UntickedFact, JointBegunFact, FittedFact, AcceptedFact, FindingFact>;

// Where a visitor treats many kinds alike it says so by these, each of which names its own: a new kind is in none of them.

template <class F>
concept PointFact = OneOf<F, ReadingFact, AllLeftFact, NutOpenFact, KeepFact, CheckAgainFact>;
/// Work on a joint.
template <class F>
concept JointFact = OneOf<F, LoosenedFact, TicksFact, UntickedFact, JointBegunFact, FittedFact, AcceptedFact>;
/// Work neither on a point nor on a joint.
template <class F>
concept OtherFact = OneOf<F, CrankFact, PlanFact, StepDoneFact, CautionsFact, WithdrawFact, FindingFact>;

/// One line of the journal, not yet stored.
struct NewAct {
    Uid uid;
    JobId job;
    PersonId who;
    std::string station; ///< which installation did it: undo takes back only its own
    Moment at;
    std::optional<ActSeq> withdraws; ///< set exactly where `fact` is a WithdrawFact
    Fact fact;
    bool operator==(const NewAct &) const = default;
};

/// One stored line of the journal; order is by seq, never by the clock.
struct Act {
    ActSeq seq;
    NewAct what;
    bool operator==(const Act &) const = default;
};

/// The points an act speaks of.
std::vector<PointId> pointsOf(const Fact &fact);

/// The joint an act speaks of; of a finding nothing, since nothing rests on it.
std::optional<JointId> jointOf(const Fact &fact);
/// The fasteners of that joint it speaks of; of a JointBegunFact none, since it is about all of them.
std::vector<int> fastenersOf(const Fact &fact);

/// Whether `later` would lose its ground if `earlier` were withdrawn: it speaks of the same point, corrects or keeps it, moves the
/// crank on from it, works on the same fastener of a joint or begins that joint anew, is a generated plan listed from it, or was done at
/// the place it tells of.
bool restsOn(const Act &later, const Act &earlier);

/// What a reading taught about the clearance, with the uncertainty it was judged with where it is exact; nothing for a reading by feel, a
/// turned one, or against a leaf nobody named.
std::optional<Interval<Length>> intervalOf(const ReadingFact &reading);

/// Judges a reading by one revision of its spec: by feel, no spec yet, not comparable (hot against cold, turns against a length), else
/// judge().
Verdict verdictOf(const ReadingFact &reading, const Spec *spec);

} // namespace asleft
