#pragma once

#include <shop/outlook.h>
#include <work/garage.h>

namespace asleft {

/// A reading as it is about to be logged.
struct ReadingEntry {
    PointId point;
    Phase phase = Phase::AsFound;
    ReadingForm form = ReadingForm::Exact;
    std::optional<Typed<Length>> value = {};
    std::optional<Typed<Length>> next = {};
    bool specLeaf = false;
};

/// What is asked once a sitting and then known: a sitting begins when a job is opened in a program that has just started.
struct Sitting {
    std::optional<PersonId> who;
    std::optional<ToolId> tool;
    EngineCondition condition = EngineCondition::Cold;
    bool crankConfirmed = false;
    bool turningCautionsRead = false;
};

/// One job, open: its state, and every act a person can do in it. An act that returns is stored; one that fails has changed nothing,
/// and doing the same again is harmless.
class JobBook : public QObject {
    Q_OBJECT

public:
    static Result<std::unique_ptr<JobBook>> open(Garage &garage, JobId job);

    [[nodiscard]] const JobState &state() const { return m_state; }
    [[nodiscard]] const Sitting &sitting() const { return m_sitting; }
    [[nodiscard]] const Tool *tool() const;

    // What is said once a sitting.
    void setWho(PersonId who);
    void setTool(std::optional<ToolId> set);
    void setCondition(EngineCondition condition);

    // The acts. Each refuses with PersonMissing until setWho(), and with WrongJob for a point or step of another job.
    /// Refuses an exact reading or a bracket without its values (EmptyText) and a bracket that does not rise (BandUpsideDown).
    Result<ActSeq> logReading(const ReadingEntry &entry);
    /// Every point the plan sets at this position whose lash is not settled: left at the spec's leaf, locked, felt again.
    Result<ActSeq> leaveAllHere();
    Result<ActSeq> openNut(PointId point);
    /// Keeps the as-left reading of a point that is outside its band; NothingToKeep where there is none.
    Result<ActSeq> keepAsLeft(PointId point, std::string_view reason);
    Result<ActSeq> sendToCheckAgain(const std::vector<PointId> &points, std::string_view why);
    /// Where mark and stroke say the crank stands; nothing for unknown.
    Result<ActSeq> confirmCrank(std::optional<Angle> crank);
    /// Refuses while a nut is open (NutStillOpen), before the crank is confirmed in this sitting (CrankNotConfirmed), and before the
    /// cautions were read in it (CautionsNotRead).
    Result<ActSeq> turnCrank(Angle to);
    Result<ActSeq> readTurningCautions();
    Result<ActSeq> choosePlan(const CrankPlan &plan);
    Result<ActSeq> markStepDone(StepId step);
    /// Takes back this seat's last act of this job; refuses with RestedOn while another act rests on it.
    Result<ActSeq> undo();
    Result<ActSeq> redo();

    /// The cautions before the crank is turned.
    static std::vector<Caution> turningCautions();
    /// The plan to propose: the manual's table where the engine has one, else the two generated positions.
    [[nodiscard]] CrankPlan proposedPlan() const;

    /// Reads what other seats have added since, and what they changed of the things the job speaks of.
    Done catchUp();

Q_SIGNALS:
    /// The state has changed; it is whole and stored.
    void changed();

private:
    JobBook(Garage &garage, JobState state, std::int64_t version);
    Result<ActSeq> log(Fact fact, std::optional<ActSeq> withdraws = {});
    /// Logs nothing where the same act stands already; gives its seq.
    Result<ActSeq> logOnce(Fact fact, bool standsAlready);
    [[nodiscard]] ReadingFact factFrom(const ReadingEntry &entry) const;
    void sittingFollows(const Fact &fact, bool crankMoved);
    /// Reads what is new in the file; whether there was anything.
    Result<bool> readOn();
    Done reloadFrame();

    Garage &m_garage;
    JobState m_state;
    std::int64_t m_version; ///< of the file when it was last read; other seats' commits change it
    ActSeq m_readUpTo{0};   ///< the last act read from the file
    Sitting m_sitting;
    std::optional<NewAct> m_failed; ///< an act whose commit failed: it may be on disk all the same, so its uid is used again
};

} // namespace asleft
