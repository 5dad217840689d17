#pragma once

#include <shop/outlook.h>
#include <work/entries.h>
#include <work/garage.h>

#include <functional>

namespace asleft {

class JobJournal;
struct FilledSheet;

/// One job, open: its state, and every act a person can do in it. An act that returns is stored; one that fails has changed nothing,
/// and doing the same again is harmless.
class JobBook : public QObject {
    Q_OBJECT

public:
    static Result<std::unique_ptr<JobBook>> open(Garage &garage, JobId job);
    ~JobBook() override;

    [[nodiscard]] const JobState &state() const;
    [[nodiscard]] const Session &session() const { return m_session; }
    [[nodiscard]] const Tool *tool() const;

    // What is said once a session.
    void setWho(PersonId who);
    void setTool(std::optional<ToolId> set);
    void setCondition(EngineCondition condition, std::optional<TypedTemperature> temperature = {},
                      std::optional<std::int64_t> minutesSinceRun = {});

    /// What logReading() would log; changes nothing. With a condition, as if that was the engine's: a bench sheet has one of its own.
    [[nodiscard]] Result<ReadingAsLogged> wouldLog(const ReadingEntry &entry, std::optional<EngineCondition> condition = {}) const;
    /// The same of tick(), which also asks whether it is the places' turn.
    [[nodiscard]] Result<TicksAsLogged> wouldLog(const TickEntry &entry) const;

    // The acts. Each refuses with GarageReadOnly in a garage that may only be read, with PersonMissing until setWho(), and with WrongJob
    // for a point or step of another job.
    /// Refuses an exact reading or a bracket without its values (EmptyText), a bracket that does not rise (BandUpsideDown), and turns
    /// without an angle (EmptyText). The shop's rule decides whether the tool's uncertainty is kept with it and judged with.
    Result<ActSeq> logReading(const ReadingEntry &entry);
    /// Every point the plan sets at this position whose lash is not settled: left at the spec's leaf, locked, felt again.
    Result<ActSeq> leaveAllHere();
    Result<ActSeq> openNut(PointId point);
    /// Keeps the as-left reading of a point that is outside its band, or that two computers have set; NothingToKeep where there is none.
    Result<ActSeq> keepAsLeft(PointId point, std::string_view reason);
    /// Of these points, those that are left fall back to be checked again; NotFound where none is.
    Result<ActSeq> sendToCheckAgain(const std::vector<PointId> &points, Disturbance cause, std::string_view why);
    /// A filled-in bench sheet, all of it or nothing: for each position of the plan that has a filled-in point the crank is said to have
    /// been turned there, then what was found and left at its points is logged, in the plan's order; last the points no position sets. `at`
    /// is when the work was done, if that is known. Gives the last act; NothingToLog for an empty sheet. The crank counts as confirmed
    /// where the sheet's last position is, and needs confirming in this session all the same. A job without a plan takes the proposed one
    /// first. Refuses what logReading() refuses, and a point in two lines (TablePointTwice).
    Result<ActSeq> logSheet(const std::vector<SheetEntry> &lines, std::optional<Moment> at = {});
    /// Where mark and stroke say the crank stands; nothing for unknown.
    Result<ActSeq> confirmCrank(std::optional<Angle> crank);
    /// Refuses while a nut is open (NutStillOpen; of one open in another job of this engine, that job's title is a second argument), before
    /// the crank is confirmed in this session (CrankNotConfirmed), and before the cautions were read in it (CautionsNotRead); and while
    /// tappets bleed down (StillBleedingDown), unless `despiteBleedDown`.
    Result<ActSeq> turnCrank(Angle to, bool despiteBleedDown = false);
    Result<ActSeq> readTurningCautions();
    Result<ActSeq> choosePlan(const CrankPlan &plan);
    /// Refuses a line that is done by its fasteners (StepByFasteners).
    Result<ActSeq> markStepDone(StepId step);

    // Joints. Each refuses a joint that is not of this engine (WrongJob) and a fastener it does not have (FastenerUnknown).
    /// Every one reads on first: two may work on one joint. None but beginJoint() and acceptJoint() of what is unsettled
    /// goes without a fastener (NothingToLog).
    /// Notes how fasteners were found; Measured needs its torque (EmptyText), and takes no tool but a torque wrench (ToolNotThat). Those
    /// that were tightened are loose again.
    Result<ActSeq> loosen(const LoosenEntry &entry);
    /// Ticks fasteners in the pass in hand. Refuses no places (NothingToLog), a place that is not of that pass and round or is ticked
    /// already (TickOutOfTurn), a way of doing it that is not of that pass (TickOutOfTurn: by hand is finger-tight, by angle an angle,
    /// with a wrench a torque, by feel any), no wrench (NotFound) or one that measures no torque (ToolNotForTorque), an adapter on a
    /// wrench whose lever is unknown (LeverMissing) or that cannot sit so (as wrenchSetting() says), a gauge that is no angle gauge, an
    /// adapter that is none or of another length (ToolNotThat), by feel without a reason (ReasonMissing) or with a long one (TextTooLong)
    /// and a read wrench without its reading (EmptyText). The setting, the lever, whether it lies out of range and whether
    /// calibration is overdue are filled in here.
    Result<ActSeq> tick(const TickEntry &entry);
    /// Takes the last tick of a fastener back, whoever made it; NotTicked where it has none.
    Result<ActSeq> untick(JointId joint, int fastener);
    /// Takes the tick that decides back, and all that came on top of it, so that it can be tightened again from there; NotTicked.
    Result<ActSeq> untickTarget(JointId joint, int fastener);
    /// Single-use fasteners that go in are new, or are not.
    Result<ActSeq> sayFitted(JointId joint, const std::vector<int> &fasteners, Fitted fitted);
    /// Leaves something as it is, with a reason (ReasonMissing), at those of the fasteners that have it; NothingToAccept where none has.
    Result<ActSeq> acceptJoint(JointId joint, AcceptedWhat what, const std::vector<int> &fasteners, std::string_view reason);
    /// Tightens from the beginning, by the newest revision. Said twice in a row it is logged once.
    Result<ActSeq> beginJoint(JointId joint);

    /// Something worth knowing later, of anything this job is about; refuses what it is not about (WrongJob), fasteners the joint does not
    /// have (FastenerUnknown), an empty text (EmptyText) and a long one (TextTooLong).
    Result<ActSeq> noteFinding(const Subject &subject, std::string_view text);

    /// Takes back this computer's last act of this job; refuses with RestedOn while another act rests on it: its points, those of the place
    /// it moves the crank to, or the source of its plan.
    Result<ActSeq> undo();
    /// Takes the last undo back. Of a turn of the crank it refuses as turnCrank() does for nuts and tappets; of what was done to a
    /// joint with RestedOn where that was worked on since, and of ticks where it is worked by another revision now.
    Result<ActSeq> redo();

    /// The cautions before the crank is turned.
    static std::vector<Caution> turningCautions();
    /// The plan to propose: the manual's table where the engine has one, else two positions from where the crank stands, or each cylinder
    /// on compression where that reaches more.
    [[nodiscard]] CrankPlan proposedPlan() const;

    /// Reads what other computers have added since, and what they changed of the things the job speaks of.
    Done catchUp();

Q_SIGNALS:
    /// The state has changed; it is whole and stored.
    void changed();

private:
    class Telling;

    JobBook(Garage &garage, std::unique_ptr<JobJournal> journal);
    void heed(const Change &change);

    /// The garage may be written, and it is known who is at the bench.
    [[nodiscard]] Done mayAct() const;
    /// mayAct(), and reads on.
    Done mayActNow();
    /// The same before something is taken back; gives the taking back, one that `isThis` knows, that failed before, if it was on disk.
    Result<std::optional<ActSeq>> mayTakeBackNow(const std::function<bool(const Fact &)> &isThis);
    /// The revision of a joint in hand; refuses with WrongJob.
    [[nodiscard]] Result<const Joint *> jointOf(JointId joint) const;
    /// mayActNow() on a joint: another computer may work on the same.
    Result<const Joint *> jointToWork(JointId joint);

    Result<ActSeq> store(std::vector<NewAct> acts, const FilledSheet *sheet = nullptr);
    /// mayAct(), and stores the fact, if there is one.
    Result<ActSeq> log(Result<Fact> fact, std::optional<ActSeq> withdraws = {});
    /// Logs nothing where the same act stands already; gives its seq.
    Result<ActSeq> logOnce(Result<Fact> fact, bool standsAlready);
    Result<ActSeq> withdraw(Result<ActSeq> (*which)(const JobState &, Garage &));
    /// Takes the tick of a fastener that `first` finds back, and all that came on top of it; NotTicked where it finds none.
    Result<ActSeq> untickFrom(JointId joint, int fastener, const TickMade *(*first)(const FastenerState &));

    Garage &m_garage;
    std::unique_ptr<JobJournal> m_journal;
    Session m_session;
    bool m_logged = false; ///< acts were stored that the garage has not told of
};

} // namespace asleft
