#pragma once

#include <shop/acts.h>
#include <shop/joint_state.h>

#include <map>
#include <memory>
#include <set>
#include <span>

namespace asleft {

/// The things a job's acts speak of. They change by edits, not by acts; a change makes a new frame.
struct JobFrame {
    Job job;
    Vehicle vehicle;
    Engine engine;
    std::optional<MeterReading> meter; ///< the latest
    std::vector<Spec> specs;           ///< every revision of the engine's specs, oldest first
    std::optional<TurningTable> table; ///< the manual's own, latest revision
    std::vector<Person> people;
    std::vector<Tool> tools;
    DecisionRule rule = DecisionRule::Simple; ///< the shop's, for readings to come
    std::vector<Joint> joints = {};           ///< every revision of the engine's joints, oldest first

    [[nodiscard]] const SettingPoint *point(PointId id) const;
    [[nodiscard]] const SettingPoint *pointAt(AdjusterRef valve) const;
    [[nodiscard]] const Step *step(StepId id) const;
    [[nodiscard]] const Person *person(PersonId id) const;
    [[nodiscard]] const Spec *spec(SpecId id) const;
    /// The newest revision of a subject.
    [[nodiscard]] const Spec *specNow(SpecSubject subject) const;
    [[nodiscard]] const Tool *tool(ToolId id) const;
    /// The newest revision of a joint.
    [[nodiscard]] const Joint *jointNow(JointId id) const;
    [[nodiscard]] const Joint *joint(JointId id, int revision) const;
    /// The newest spec of what a point is set to.
    [[nodiscard]] const Spec *specNow(AdjusterRef adjuster) const;
    /// Its bands where it is a length, or nothing.
    [[nodiscard]] const SpecBand<Length> *lashBandsNow(AdjusterRef adjuster) const;
    /// Its band where it is turns from zero lash, or nothing.
    [[nodiscard]] const SpecBand<Angle> *turnsNow(AdjusterRef adjuster) const;
};

enum class PointStage { Untouched, Found, NutOpen, Left, CheckAgain };

/// A reading in force, with what it is worth.
struct Judged {
    ActSeq seq;
    Moment at;
    PersonId who;
    std::string station;
    ReadingFact reading;
    Verdict verdict;
    bool operator==(const Judged &) const = default;
};

struct PointState {
    PointStage stage = PointStage::Untouched;
    std::optional<Judged> found;
    std::optional<Judged> left; ///< gone again once its nut is opened
    std::optional<Moment> nutOpenSince;
    std::optional<std::string> kept; ///< the reason, where an as-left reading outside its band was kept
    std::string checkAgainWhy;
    std::optional<Disturbance> disturbance = {}; ///< of a point to check again
    /// The as-left reading of another computer that the one in force came on top of, the point having been left all the while, without a
    /// nut opened or a check asked for between: two people set the same point, each not knowing of the other. A computer that took or
    /// corrected a reading knows of it. Empty again once the point is kept, opened, sent to check again, set once more at either of the two
    /// computers, or the reading in force is corrected by the computer it came on top of; a correction at its own computer settles nothing.
    std::optional<Judged> leftByTwo = {};
    bool operator==(const PointState &) const = default;

    /// Left, not by two, and either inside its band or with nothing to judge it by (by feel, no spec, not comparable), or kept.
    [[nodiscard]] bool settled() const;
};

/// A finding, as it was noted.
struct Finding {
    ActSeq seq;
    Moment at;
    PersonId who;
    FindingFact what;
    bool operator==(const Finding &) const = default;
};

struct CrankState {
    std::optional<Angle> crank; ///< empty: known to be unknown
    CrankHow how;
    Moment at;
    ActSeq seq;
    bool operator==(const CrankState &) const = default;
};

/// Everything a job's acts amount to: a pure fold, never stored. Every screen, report, open item and resume reads only this.
struct JobState {
    std::shared_ptr<const JobFrame> frame;
    std::vector<Act> acts; ///< all of them, withdrawn ones and the engine's crank moves in other jobs included
    std::set<ActSeq> withdrawn;
    std::map<PointId, PointState> points;
    std::optional<CrankState> crank; ///< empty: never said
    std::optional<CrankPlan> plan;
    std::set<StepId> stepsDone;           ///< by an act; see stepDone() for the valve set
    std::map<JointId, JointState> joints; ///< every joint of the engine
    std::vector<Finding> findings;        ///< oldest first

    [[nodiscard]] const PointState &point(PointId id) const { return points.at(id); }
    [[nodiscard]] bool inForce(const Act &act) const { return !withdrawn.contains(act.seq); }
};

/// Folds a job's acts, in order of seq.
JobState fold(std::shared_ptr<const JobFrame> frame, std::span<const Act> acts);

/// Adds one act to a fold; the same as folding all of them anew. An act already folded changes nothing.
void foldOne(JobState &state, const Act &act);

} // namespace asleft
