#include "journal_test.h"

#include <sqlite3.h>

namespace asleft {
namespace journal_tests {

TEST_F(Journal, KeepsEveryKindOfFactAsItWas)
{
    std::vector<Act> written;
    const auto write = [&](const NewAct &act) { written.push_back({stored(act), act}); };
    write(actOf(*sample, "first", readingOf(*sample, 0, 18)));
    const ActSeq first = written.front().seq;
    for (const Fact &fact : everyKindOfFact(*sample, first))
        write(actOf(*sample, "uid " + std::to_string(written.size()), fact));
    NewAct withdrawal = actOf(*sample, "last", WithdrawFact{});
    withdrawal.withdraws = written.back().seq;
    write(withdrawal);

    EXPECT_EQ(acts(), written);
    reopen();
    EXPECT_EQ(acts(), written);
    EXPECT_TRUE(garage->check());
    EXPECT_EQ(countActs(*garage, sample->job).value(), static_cast<std::int64_t>(written.size()));
    EXPECT_EQ(newestSeq(*garage).value(), written.back().seq);
}

TEST_F(Journal, HasNoNewestActWhenEmpty)
{
    EXPECT_EQ(newestSeq(*garage).value(), std::nullopt);
    EXPECT_EQ(seqOf(*garage, "a").value(), std::nullopt);
    EXPECT_EQ(countActs(*garage, sample->job).value(), 0);
}

TEST_F(Journal, StoresAUidOnce)
{
    const NewAct act = actOf(*sample, "once", NutOpenFact{sample->points[0]});
    const ActSeq first = stored(act);
    stored(actOf(*sample, "other", NutOpenFact{sample->points[1]}));
    EXPECT_EQ(stored(act), first);
    EXPECT_EQ(acts().size(), 2U);
    EXPECT_EQ(seqOf(*garage, "once").value(), first);
}

TEST_F(Journal, RefusesAUidThatSaidSomethingElse)
{
    stored(actOf(*sample, "once", NutOpenFact{sample->points[0]}));
    auto transaction = Transaction::begin(*garage);
    const auto again = append(*transaction, actOf(*sample, "once", NutOpenFact{sample->points[1]}));
    ASSERT_FALSE(again);
    EXPECT_EQ(again.error().kind, ErrorKind::Database);
    EXPECT_EQ(transaction->commit().error(), again.error());
}

TEST_F(Journal, KeepsTextsThatDatabasesLikeToChange)
{
    using namespace std::string_literals;
    for (const std::string &reason : {"O'Brien \"said\" 100 %; -- {key}"s, "µ 漢字 🔧"s, "a\0b"s, ""s, " blanks "s, "NULL"s}) {
        const NewAct act = actOf(*sample, "u" + reason, CheckAgainFact{{}, reason});
        stored(act);
        EXPECT_EQ(acts().back().what, act) << reason;
    }
}

TEST_F(Journal, ReadsBackTextsThatAreNoText)
{
    // Neither may be taken for damage later: not UTF-8, and marks that would turn the byte order.
    stored(actOf(*sample, "a", CheckAgainFact{{}, "\xff\xfe x"}));
    stored(actOf(*sample, "b", CheckAgainFact{{}, "\xef\xbb\xbf\xef\xbf\xbe\xef\xbb\xbfx"}));
    const auto read = acts();
    EXPECT_EQ(std::get<CheckAgainFact>(read[0].what.fact).why, "\xef\xbf\xbd\xef\xbf\xbd x");
    EXPECT_EQ(std::get<CheckAgainFact>(read[1].what.fact).why, "x");
}

TEST_F(Journal, GivesOfOtherJobsOnlyWhereTheCrankStands)
{
    const JobId other = committed(*garage, [&](Transaction &transaction) {
        return insertJob(transaction, {sample->vehicle, sample->engine, "Other", Moment{}, {}});
    });
    const EngineId otherEngine = committed(*garage, [&](Transaction &transaction) {
        return insertEngine(transaction, {sample->vehicle, "Spare", inLineFour(), {}, Moment{}});
    });
    const auto elsewhere = [&](const Uid &uid, const Fact &fact) {
        NewAct act = actOf(*sample, uid, fact);
        act.job = other;
        return act;
    };
    const auto withdrawing = [&](const Uid &uid, ActSeq what) {
        NewAct act = elsewhere(uid, WithdrawFact{});
        act.withdraws = what;
        return act;
    };
    const ActSeq reading = stored(elsewhere("reading", readingOf(*sample, 0, 20)));
    const ActSeq crank = stored(elsewhere("crank", CrankFact{sample->engine, degrees(0)}));
    stored(elsewhere("crank of another engine", CrankFact{otherEngine, degrees(0)}));
    const ActSeq own = stored(actOf(*sample, "own", readingOf(*sample, 0, 21)));
    stored(withdrawing("a reading taken back", reading));
    const ActSeq takenBack = stored(withdrawing("crank taken back", crank));

    const auto seqs = [](const std::vector<Act> &acts) {
        std::vector<ActSeq> seqs;
        seqs.reserve(acts.size());
        for (const Act &act : acts)
            seqs.push_back(act.seq);
        return seqs;
    };
    EXPECT_EQ(seqs(acts()), (std::vector{crank, own, takenBack}));
    EXPECT_EQ(seqs(actsAfter(*garage, crank, sample->job, sample->engine).value()), (std::vector{own, takenBack}));
    EXPECT_EQ(seqs(actsAfter(*garage, own, sample->job, sample->engine).value()), (std::vector{takenBack}));
    EXPECT_EQ(seqs(actsAfter(*garage, takenBack, sample->job, sample->engine).value()), std::vector<ActSeq>{});
}

TEST_F(Journal, IsGoneWithoutACommit)
{
    {
        auto transaction = Transaction::begin(*garage);
        ASSERT_TRUE(append(*transaction, actOf(*sample, "lost", NutOpenFact{sample->points[0]})));
        EXPECT_EQ(jobActs(transaction->database(), sample->job, sample->engine).value().size(), 1U);
    }
    EXPECT_TRUE(acts().empty());
}

TEST_F(Journal, CannotBeCommittedAfterAnActFailed)
{
    auto transaction = Transaction::begin(*garage);
    ASSERT_TRUE(append(*transaction, actOf(*sample, "good", NutOpenFact{sample->points[0]})));
    EXPECT_FALSE(append(*transaction, actOf(*sample, "bad", NutOpenFact{PointId(999'999)})) && transaction->commit());
    EXPECT_FALSE(append(*transaction, actOf(*sample, "later", NutOpenFact{sample->points[1]})));
    const Done done = transaction->commit();
    ASSERT_FALSE(done);
    EXPECT_EQ(done.error().kind, ErrorKind::Database);
    EXPECT_TRUE(acts().empty());
    stored(actOf(*sample, "afterwards", NutOpenFact{sample->points[0]}));
    EXPECT_EQ(acts().size(), 1U);
}

TEST_F(Journal, RefusesReadingsThatCannotBe)
{
    ReadingFact noNext = readingOf(*sample, 0, 20);
    noNext.form = ReadingForm::Bracket;
    ReadingFact upsideDown = noNext;
    upsideDown.next = hundredths(20);
    const ReadingFact noValue = unmeasured(*sample, 0, ReadingForm::Exact);
    ReadingFact feltAndMeasured = readingOf(*sample, 0, 20);
    feltAndMeasured.form = ReadingForm::ByFeel;
    ReadingFact correctsNothing = readingOf(*sample, 0, 20);
    correctsNothing.corrects = ActSeq(77);
    const ReadingFact turnedNowhere = unmeasured(*sample, 0, ReadingForm::Turned);
    ReadingFact turnedAndMeasured = readingOf(*sample, 0, 20);
    turnedAndMeasured.form = ReadingForm::Turned;
    turnedAndMeasured.turned = Typed<Angle>{degrees(90), AngleUnit::Degree, "90"};
    ReadingFact turnedByFeel = unmeasured(*sample, 0, ReadingForm::ByFeel);
    turnedByFeel.turned = turnedAndMeasured.turned;
    ReadingFact surerThanSure = readingOf(*sample, 0, 20);
    surerThanSure.uncertainty = nanometres(-1);
    ReadingFact runTomorrow = readingOf(*sample, 0, 20);
    runTomorrow.minutesSinceRun = -1;
    int count = 0;
    for (const ReadingFact &fact : {noNext, upsideDown, noValue, feltAndMeasured, correctsNothing, turnedNowhere, turnedAndMeasured,
                                    turnedByFeel, surerThanSure, runTomorrow}) {
        auto transaction = Transaction::begin(*garage);
        EXPECT_FALSE(append(*transaction, actOf(*sample, "u", fact))) << "reading " << count;
        ++count;
    }
}

TEST_F(Journal, RefusesAFindingAboutNothingThereIs)
{
    for (const Subject &subject :
         std::initializer_list<Subject>{PointId(999), StepId(999), EngineId(999), VehicleId(999), FastenerSubject{JointId(999)}}) {
        auto transaction = Transaction::begin(*garage);
        EXPECT_FALSE(append(*transaction, actOf(*sample, "u", FindingFact{subject, "worn"}))) << subject.index();
    }
}

TEST_F(Journal, RefusesAPlanOfAnAdjusterNoEngineHas)
{
    CrankPlan plan;
    plan.unreached = {{Cylinder{0}, Side::Exhaust, PointKind::Injector, 3}};
    auto transaction = Transaction::begin(*garage);
    EXPECT_FALSE(append(*transaction, actOf(*sample, "u", PlanFact{sample->engine, plan})));
}

TEST_F(TamperedJournal, RefusesToBeChanged)
{
    const std::vector<Act> before = acts();
    for (const char *table :
         {"act", "fact_reading", "fact_nut_open", "fact_crank", "fact_plan", "plan_position", "plan_point", "plan_unreached",
          "fact_step_done", "fact_keep", "fact_caution", "fact_check_again", "check_again_point", "spec", "spec_band", "engine_fit"})
        expectUnchangeable(table);
    EXPECT_EQ(acts(), before);
}

TEST_F(TamperedJournal, NoticesAnyChangedColumn)
{
    for (const char *change : {
             "act SET at_ms = at_ms + 1 WHERE uid = 'u3'",
             "act SET seat = 'Seat' WHERE uid = 'u3'",
             "act SET checksum = checksum + 1 WHERE uid = 'u3'",
             "act SET uid = 'u333' WHERE uid = 'u3'",
             "act SET kind = 'all_left' WHERE uid = 'u3'",
             "fact_reading SET value_nm = value_nm + 1 WHERE act = 2",
             "fact_reading SET value_text = '0.42' WHERE act = 2",
             "fact_reading SET next_unit = 'in' WHERE act = 2",
             "fact_reading SET judged_by = NULL WHERE act = 2",
             "fact_reading SET tool = NULL WHERE act = 2",
             "fact_reading SET corrects = NULL WHERE act = 2",
             "fact_reading SET spec_leaf = 0 WHERE act = 2",
             "fact_reading SET out_of_place = 0 WHERE act = 3",
             "fact_reading SET phase = 'as_found' WHERE act = 2",
             "fact_reading SET condition = 'cold' WHERE act = 2",
             "fact_nut_open SET point = 1",
             "fact_crank SET crank = crank + 1",
             "fact_crank SET crank = 0 WHERE crank IS NULL",
             "fact_crank SET how = 'confirmed'",
             "fact_plan SET source = 'M p. 8'",
             "fact_plan SET generated = 1",
             "plan_position SET stroke = 'overlap'",
             "plan_point SET margin = 0",
             "plan_point SET adjuster = 'exhaust_2' WHERE adjuster = 'exhaust'",
             "plan_point SET adjuster = 'injector' WHERE adjuster = 'decompressor'",
             "plan_unreached SET adjuster = 'intake'",
             "fact_plan SET way = 'fewest' WHERE way = 'rule_of_nine'",
             "fact_reading SET turned = turned + 1",
             "fact_reading SET turned_unit = 'deg' WHERE turned_unit = 'turn'",
             "fact_reading SET turned_text = '1/4'  WHERE turned_text = '3/4'",
             "fact_reading SET uncertainty_nm = uncertainty_nm + 1",
             "fact_reading SET uncertainty_nm = NULL WHERE uncertainty_nm = 0",
             "fact_reading SET uncertainty_nm = 0 WHERE act = 2",
             "fact_reading SET temperature = temperature + 1",
             "fact_reading SET temperature_unit = 'C' WHERE temperature_unit = 'F'",
             "fact_reading SET temperature_text = '32' WHERE temperature_text = '23'",
             "fact_reading SET temperature = NULL, temperature_unit = NULL, temperature_text = NULL WHERE temperature IS NOT NULL",
             "fact_reading SET minutes_since_run = NULL WHERE minutes_since_run = 0",
             "fact_reading SET minutes_since_run = 0 WHERE act = 2",
             // What one field says may not be taken for what another says.
             "fact_reading SET minutes_since_run = uncertainty_nm, uncertainty_nm = NULL WHERE uncertainty_nm > 0",
             // Words nobody knows.
             "fact_reading SET form = 'x' WHERE act = 2",
             "fact_reading SET turned_unit = 'mm' WHERE turned IS NOT NULL",
             "fact_reading SET temperature_unit = 'K' WHERE temperature IS NOT NULL",
             "fact_plan SET way = 'x'",
             "plan_position SET stroke = 'x'",
             "plan_point SET adjuster = 'x'",
             "plan_unreached SET adjuster = 'x'",
             "fact_check_again SET cause = 'x'",
             "fact_check_again SET cause = 'other' WHERE cause = 'bridge_set'",
             "fact_check_again SET cause = 'bridge_set' WHERE cause = 'other'",
             "fact_keep SET reason = ''",
             "fact_caution SET caution = 'neutral' WHERE place = 1",
             "fact_check_again SET why = ''",
             "check_again_point SET point = 2 WHERE place = 1",
             "fact_finding SET text = 'torn' WHERE joint IS NULL",
             "fact_finding SET point = 1 WHERE point IS NOT NULL",
             "fact_finding SET point = NULL WHERE point IS NOT NULL",
             "fact_finding SET joint = 1 WHERE point IS NOT NULL",
             "fact_finding SET step = point, point = NULL WHERE point IS NOT NULL",
             "fact_finding SET vehicle = engine, engine = NULL WHERE engine IS NOT NULL",
             "finding_fastener SET act = (SELECT act FROM fact_finding WHERE point IS NOT NULL)",
         })
        expectDamagedBy(change);
}

TEST_F(TamperedJournal, NoticesOneFlippedBit)
{
    garage.reset();
    std::string bytes = bytesOf(path);
    const std::size_t reason = bytes.find("no more thread");
    ASSERT_NE(reason, bytes.npos);
    bytes[reason] = static_cast<char>(bytes[reason] ^ 1);
    writeBytes(path, bytes);
    reopen();
    EXPECT_TRUE(garage->check()) << "the pages themselves look sound";
    const auto read = jobActs(*garage, sample->job, sample->engine);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, ErrorKind::Damaged);
}

} // namespace journal_tests
} // namespace asleft
