// What is said before something is logged is what is logged; and whoever is told may close the job.
#include "joint_support.h"

namespace asleft {
namespace would_log_tests {

class WouldLog : public JointTest {
protected:
    WouldLog() { need(setDecisionRule(*garage, DecisionRule::WithUncertainty)); }

    /// The verdict before and after logging.
    void expectAsSaid(const ReadingEntry &entry)
    {
        const ReadingAsLogged said = need(book->wouldLog(entry));
        need(book->logReading(entry));
        const PointState &now = book->state().point(entry.point);
        const Judged &logged = (entry.phase == Phase::AsFound ? now.found : now.left).value();
        EXPECT_EQ(said.fact, logged.reading);
        EXPECT_EQ(said.verdict, logged.verdict);
    }
};

TEST_F(WouldLog, AReadWrenchNearALimitIsTooCloseToCallBeforeAndAfter)
{
    for (const char *shown : {"28.1", "32", "45"}) {
        const TickEntry entry = read(bracket, {next(bracket)}, dial, shown);
        const std::size_t acts = book->state().acts.size();
        const TicksAsLogged said = need(book->wouldLog(entry));
        EXPECT_EQ(book->state().acts.size(), acts) << "nothing is logged";
        need(book->tick(entry));
        const TickMade &logged = fastener(bracket, entry.places.front().fastener).ticks.back();
        ASSERT_EQ(said.made.size(), 1U);
        EXPECT_EQ(said.fact, lastTicks()) << shown;
        EXPECT_EQ(said.made.front().verdict, logged.verdict) << shown;
        EXPECT_EQ(said.made.front().torque, logged.torque) << shown;
        // Of what is wanted, 28.1 lies inside by less than the wrench can tell.
        const bool close = shown == std::string_view("28.1");
        EXPECT_EQ(logged.verdict == Verdict::TooClose, close) << shown;
        need(book->untick(bracket, entry.places.front().fastener));
    }
}

TEST_F(WouldLog, AWrenchOutOfItsRangeIsSaidBefore)
{
    const ToolId low = [&] {
        TorqueWrenchText text = dialText();
        text.name = "Low dial";
        text.most = "31";
        return need(addTorqueWrench(*garage, text));
    }();
    const TicksAsLogged said = need(book->wouldLog(read(bracket, {next(bracket)}, low, "32")));
    EXPECT_TRUE(said.fact.outOfRange);
    EXPECT_EQ(said.made.front().verdict, Verdict::TooClose);
}

TEST_F(WouldLog, RefusesWhatTheLogWouldRefuse)
{
    EXPECT_EQ(refusal(book->wouldLog(read(JointId(99), {{1, 0, 1}}, dial, "32"))), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(book->wouldLog(with(bracket, {}, large))), ErrorKind::NothingToLog);
    TickEntry other = read(bracket, {next(bracket)}, dial, "32");
    other.revision = 2;
    EXPECT_EQ(refusal(book->wouldLog(other)), ErrorKind::JointChanged);
    EXPECT_EQ(refusal(book->wouldLog(ReadingEntry{.point = PointId(999)})), ErrorKind::WrongJob);
}

TEST_F(WouldLog, EveryFormOfAReadingIsJudgedOnce)
{
    ReadingEntry loose{.point = at("I1"), .form = ReadingForm::Loose};
    ReadingEntry leaf{.point = at("I1"), .phase = Phase::AsLeft, .specLeaf = true};
    ReadingEntry feel{.point = at("E2"), .phase = Phase::AsLeft, .form = ReadingForm::ByFeel};
    for (const ReadingEntry &entry : {loose, leaf, feel, reading("E1", Phase::AsFound, "0.45 mm"), reading("E1", Phase::AsLeft, "0.2 mm")})
        expectAsSaid(entry);
    EXPECT_EQ(need(book->wouldLog(leaf, EngineCondition::Hot)).verdict, Verdict::NotComparable);
    EXPECT_EQ(need(book->wouldLog(leaf)).verdict, Verdict::Inside) << "asking changes nothing";
}

TEST_F(WouldLog, WhoeverIsToldMayCloseTheJob)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed,
                     [&](const Change &change) { told += change.what == Change::What::Acts && change.job == job ? 1 : 0; });
    QObject::connect(book.get(), &JobBook::changed, [this] { book.reset(); });
    need(book->logReading(reading("I1", Phase::AsFound, "0.30 mm")));
    EXPECT_FALSE(book);
    EXPECT_EQ(told, 1) << "the others hear of it all the same";
}

TEST_F(WouldLog, AnActThatReadsOnTellsOnceAndLast)
{
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    theirs->setWho(tom);
    int told = 0;
    const auto counting = QObject::connect(book.get(), &JobBook::changed, [&] { ++told; });
    need(theirs->logReading(reading("I1", Phase::AsFound, "0.20 mm")));
    need(book->tick(with(bracket, {next(bracket)}, large)));
    EXPECT_EQ(told, 1) << "their act and ours";
    QObject::disconnect(counting);

    need(theirs->openNut(at("I2")));
    QObject::connect(book.get(), &JobBook::changed, [this] { book.reset(); });
    EXPECT_EQ(refusal(book->turnCrank(degrees(360))), ErrorKind::NutStillOpen);
    EXPECT_FALSE(book) << "what was read is told, though nothing was logged";
}

} // namespace would_log_tests
} // namespace asleft
