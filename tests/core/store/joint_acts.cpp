#include "journal_test.h"

namespace asleft {
namespace joint_acts_tests {

using JointActs = Journal;

TEST_F(JointActs, SayWhoseTheyAre)
{
    EXPECT_FALSE(jointWorkedOn(*garage, sample->cover.joint).value());
    garage.reset();
    const std::string sound = bytesOf(path);
    int count = 0;
    for (const Fact &fact : everyKindOfJointFact(sample->cover)) {
        garage.reset();
        writeBytes(path, sound);
        reopen();
        const JointId other = committed(*garage, [&](Transaction &transaction) -> Result<SampleJoint> {
                                  return storeSampleJoint(transaction, sample->engine);
                              }).joint;
        stored(actOf(*sample, "one", fact));
        EXPECT_TRUE(jointWorkedOn(*garage, sample->cover.joint).value()) << "fact " << count;
        EXPECT_FALSE(jointWorkedOn(*garage, other).value()) << "fact " << count;
        ++count;
    }
    EXPECT_FALSE(jointWorkedOn(*garage, JointId(999)).value());
}

TEST_F(JointActs, CountWhereTheyWereTakenBackToo)
{
    NewAct withdrawal = actOf(*sample, "two", WithdrawFact{});
    withdrawal.withdraws = stored(actOf(*sample, "one", JointBegunFact{sample->cover.joint, 1}));
    stored(withdrawal);
    EXPECT_TRUE(jointWorkedOn(*garage, sample->cover.joint).value());
}

TEST_F(JointActs, RefuseWhatCannotBe)
{
    const JointId joint = sample->cover.joint;
    const std::vector<Tick> one = {{{1, 0, 1}}};
    TicksFact set{joint, 1, one};
    set.tool = sample->cover.wrench;
    set.setting = newtonMetres(3);
    TicksFact read = set;
    read.how = TickHow::ReadTool;
    std::swap(read.setting, read.reading);
    LoosenedFact measuredByFeel{joint, 1, {1}, FoundHow::LooseByFeel};
    measuredByFeel.torque = newtonMetres(3);
    TicksFact settingByHand{joint, 1, one, TickHow::ByHand};
    settingByHand.setting = newtonMetres(3);
    const auto but = [](TicksFact ticks, auto change) {
        change(ticks);
        return ticks;
    };
    const Fact refused[] = {
        LoosenedFact{joint, 1, {1}, FoundHow::Measured},
        measuredByFeel,
        LoosenedFact{joint, 3, {1}}, // a revision there is not
        LoosenedFact{JointId(999), 1, {1}},
        LoosenedFact{joint, 1, {0}},
        LoosenedFact{joint, 1, {1, 1}},
        settingByHand,
        TicksFact{joint, 1, one, TickHow::ByFeel}, // without a reason
        but(set, [](TicksFact &ticks) { ticks.tool.reset(); }),
        but(set, [](TicksFact &ticks) { ticks.setting.reset(); }),
        but(set, [](TicksFact &ticks) { ticks.reading = newtonMetres(3); }),
        but(set, [](TicksFact &ticks) { ticks.reason = "why"; }),
        but(set, [](TicksFact &ticks) { ticks.lever = micrometres(400'000); }),
        but(set, [](TicksFact &ticks) { ticks.uncertainty = Torque::ofSmallest(1); }),
        but(set, [](TicksFact &ticks) { ticks.tool = ToolId(999); }),
        but(set,
            [](TicksFact &ticks) {
                ticks.fit = FitUsed{ToolId(999), {}};
            }),
        but(set, [](TicksFact &ticks) { ticks.revision = 3; }),
        but(set, [](TicksFact &ticks) { ticks.ticks.push_back(ticks.ticks.front()); }),
        but(set, [](TicksFact &ticks) { ticks.ticks.front().place.pass = -1; }),
        but(set, [](TicksFact &ticks) { ticks.ticks.front().place.round = 0; }),
        but(read, [](TicksFact &ticks) { ticks.tool.reset(); }),
        but(read, [](TicksFact &ticks) { ticks.reading.reset(); }),
        but(read, [](TicksFact &ticks) { ticks.setting = newtonMetres(3); }),
        UntickedFact{JointId(999), {}},
        UntickedFact{joint, {{1, 0, 1}, {1, 0, 1}}},
        JointBegunFact{joint, 3},
        FittedFact{JointId(999), {1}},
        FittedFact{joint, {1, 1}},
        AcceptedFact{JointId(999), AcceptedWhat::ByFeel, {1}, "why"},
        AcceptedFact{joint, AcceptedWhat::ByFeel, {1}, ""},
        FindingFact{FastenerSubject{JointId(999), {}}, "what"},
        FindingFact{FastenerSubject{joint, {}}, ""},
    };
    int count = 0;
    for (const Fact &fact : refused) {
        auto transaction = Transaction::begin(*garage);
        const auto act = append(*transaction, actOf(*sample, "u", fact));
        ASSERT_FALSE(act) << "fact " << count;
        EXPECT_EQ(act.error().kind, ErrorKind::Database) << "fact " << count;
        ++count;
    }
    EXPECT_TRUE(acts().empty());
    stored(actOf(*sample, "set", set));
    stored(actOf(*sample, "read", read));
    EXPECT_EQ(acts().size(), 2U) << "what others above are near to";
}

/// Who reads them asks for the first one.
TEST_F(JointActs, AreDamagedWithoutTheFastenersTheySpeakOf)
{
    const JointId joint = sample->cover.joint;
    const Fact facts[] = {
        LoosenedFact{joint, 1, {}},
        TicksFact{joint, 1, {}, TickHow::ByHand},
        UntickedFact{joint, {}},
        FittedFact{joint, {}},
        AcceptedFact{joint, AcceptedWhat::ByFeel, {}, "why"},
        AcceptedFact{joint, AcceptedWhat::Unsettled, {1}, "why"},
    };
    garage.reset();
    const std::string sound = bytesOf(path);
    int count = 0;
    for (const Fact &fact : facts) {
        reopen();
        stored(actOf(*sample, "u", fact));
        const auto read = jobActs(*garage, sample->job, sample->engine);
        ASSERT_FALSE(read) << "fact " << count;
        EXPECT_EQ(read.error().kind, ErrorKind::Damaged) << "fact " << count;
        EXPECT_EQ(read.error().noun, Noun::Act) << "fact " << count;
        garage.reset();
        writeBytes(path, sound);
        ++count;
    }
}

using TamperedJointActs = TamperedJournal;

TEST_F(TamperedJointActs, RefuseToBeChanged)
{
    const std::vector<Act> before = acts();
    for (const char *table : {"joint", "joint_revision", "joint_band", "joint_place", "fact_loosened", "loosened_fastener", "fact_ticks",
                              "tick", "fact_unticked", "unticked_place", "fact_joint_begun", "fact_fitted", "fitted_fastener",
                              "fact_accepted", "accepted_fastener", "fact_finding", "finding_fastener", "tool_calibration"})
        expectUnchangeable(table);
    EXPECT_EQ(acts(), before);
}

TEST_F(TamperedJointActs, NoticeAnyChangedColumn)
{
    for (const char *change : {
             "fact_loosened SET joint = joint + 1",
             "fact_loosened SET revision = 3 - revision",
             "fact_loosened SET how = 'broken' WHERE how = 'missing'",
             "fact_loosened SET how = 'x' WHERE how = 'missing'",
             "fact_loosened SET torque = torque + 1",
             "fact_loosened SET torque = NULL WHERE torque IS NOT NULL",
             "fact_loosened SET torque_unit = 'kgf.cm' WHERE torque IS NOT NULL",
             "fact_loosened SET torque_unit = 'x' WHERE torque IS NOT NULL",
             "fact_loosened SET torque_text = '2.5' WHERE torque IS NOT NULL",
             "fact_loosened SET tool = NULL WHERE tool IS NOT NULL",
             "fact_loosened SET note = '' WHERE note = 'rusty'",
             "loosened_fastener SET fastener = fastener + 100",
             "loosened_fastener SET place = 10 - place",
             "fact_ticks SET joint = joint + 1",
             "fact_ticks SET revision = 3 - revision",
             "fact_ticks SET how = 'by_hand' WHERE how = 'by_feel'",
             "fact_ticks SET how = 'x' WHERE how = 'by_feel'",
             "fact_ticks SET tool = NULL WHERE tool IS NOT NULL",
             "fact_ticks SET setting = setting + 1",
             "fact_ticks SET setting_unit = 'lbf.ft' WHERE setting IS NOT NULL",
             "fact_ticks SET setting_unit = 'mm' WHERE setting IS NOT NULL",
             "fact_ticks SET setting_text = '30' WHERE setting IS NOT NULL",
             "fact_ticks SET reading = reading + 1",
             "fact_ticks SET reading_unit = 'Nm' WHERE reading IS NOT NULL",
             "fact_ticks SET reading_text = '25' WHERE reading IS NOT NULL",
             "fact_ticks SET adapter = NULL WHERE adapter IS NOT NULL",
             "fact_ticks SET adapter_nm = adapter_nm + 1",
             "fact_ticks SET adapter_nm = NULL WHERE adapter_nm IS NOT NULL",
             "fact_ticks SET adapter_angle = adapter_angle + 1",
             "fact_ticks SET adapter_angle = NULL WHERE adapter_angle IS NOT NULL",
             "fact_ticks SET adapter = 1 WHERE adapter_nm IS NULL",
             "fact_ticks SET lever_nm = NULL WHERE lever_nm IS NOT NULL",
             "fact_ticks SET uncertainty = uncertainty + 1",
             // What one field says may not be taken for what another says.
             "fact_ticks SET uncertainty = lever_nm, lever_nm = NULL WHERE lever_nm IS NOT NULL",
             "fact_ticks SET lever_nm = uncertainty, uncertainty = NULL WHERE uncertainty IS NOT NULL",
             "fact_ticks SET reading = setting, reading_unit = setting_unit, reading_text = setting_text, setting = NULL "
             "WHERE setting IS NOT NULL",
             "fact_ticks SET out_of_range = 0 WHERE out_of_range",
             "fact_ticks SET calibration_overdue = 0 WHERE calibration_overdue",
             "fact_ticks SET out_of_range = calibration_overdue, calibration_overdue = out_of_range WHERE out_of_range",
             "fact_ticks SET reason = '' WHERE reason <> ''",
             "tick SET fastener = fastener + 100",
             "tick SET pass = pass + 1",
             "tick SET round = 2 WHERE round = 3",
             "tick SET moved = 0 WHERE moved",
             "tick SET place = 10 - place",
             "fact_unticked SET joint = joint + 1",
             "unticked_place SET fastener = fastener + 1",
             "unticked_place SET pass = pass + 1",
             "unticked_place SET round = round + 9",
             "fact_joint_begun SET joint = joint + 1",
             "fact_joint_begun SET revision = 1 WHERE revision = 2",
             "fact_fitted SET joint = joint + 1",
             "fact_fitted SET fitted = 'new' WHERE fitted = 'reused'",
             "fact_fitted SET fitted = 'x'",
             "fitted_fastener SET fastener = fastener + 100",
             "fact_accepted SET joint = joint + 1",
             "fact_accepted SET what = 'torque' WHERE what = 'by_feel'",
             "fact_accepted SET what = 'x'",
             "fact_accepted SET reason = 'other'",
             "accepted_fastener SET fastener = fastener + 100",
             "fact_finding SET joint = joint + 1",
             "fact_finding SET text = 'other'",
             "finding_fastener SET fastener = fastener + 100",
             "act SET kind = 'ticks' WHERE kind = 'loosened'",
             "act SET kind = 'fitted' WHERE kind = 'accepted'",
             "act SET kind = 'tightened' WHERE kind = 'ticks'",
         })
        expectDamagedBy(change);
}

TEST_F(TamperedJointActs, MissNoRow)
{
    for (const char *row :
         {"fact_loosened", "loosened_fastener", "fact_ticks", "tick", "fact_unticked", "unticked_place", "fact_joint_begun", "fact_fitted",
          "fitted_fastener", "fact_accepted", "accepted_fastener", "fact_finding", "finding_fastener"}) {
        const std::string table = row;
        garage.reset();
        const std::string sound = bytesOf(path);
        Raw(path).run("PRAGMA foreign_keys = OFF; DROP TRIGGER " + table + "_kept; DELETE FROM " + table +
                      " WHERE act = (SELECT max(act) FROM " + table + ")");
        reopen();
        EXPECT_EQ(jobActs(*garage, sample->job, sample->engine).error().kind, ErrorKind::Damaged) << table;
        garage.reset();
        writeBytes(path, sound);
    }
}

} // namespace joint_acts_tests
} // namespace asleft
