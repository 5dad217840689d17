// Joints described and described anew, and the lines of a job that speak of them.
#include "joint_support.h"

namespace asleft {
namespace joints_tests {

class Joints : public BookTest {
protected:
    JointId add(const JointText &text) { return need(addJoint(*garage, tractor.engine, text)); }
    std::vector<Joint> all() { return need(joints(*garage, tractor.engine)); }
    std::vector<Change> told;

    Joints()
    {
        QObject::connect(garage.get(), &Garage::changed, [this](const Change &change) { told.push_back(change); });
    }
};

TEST_F(Joints, AreReadBackAsTyped)
{
    JointText text = coverText();
    text.name = "  Valve cover ";
    const JointId id = add(text);
    add(rowText(2));
    ASSERT_EQ(all().size(), 2U);
    const Joint stored = all().front();
    EXPECT_EQ(stored.id, id);
    EXPECT_EQ(stored.revision, 1);
    EXPECT_EQ(stored.engine, tractor.engine);
    EXPECT_EQ(stored.text, coverText()) << "but for the blanks around its name";
    EXPECT_EQ(stored.passes.size(), 3U);
    ASSERT_EQ(told.size(), 2U);
    EXPECT_EQ(told[0].what, Change::What::Joints);
    EXPECT_EQ(told[0].engine, tractor.engine);
}

TEST_F(Joints, AreRefusedWithWhatTheirTextCannotSay)
{
    add(coverText());
    told.clear();
    const auto refused = [&](auto change) {
        JointText text = rowText(2);
        change(text);
        return refusal(addJoint(*garage, tractor.engine, text));
    };
    EXPECT_EQ(refused([](JointText &text) { text.name = " "; }), ErrorKind::NameMissing);
    EXPECT_EQ(refused([](JointText &text) { text.name = std::string(201, 'x'); }), ErrorKind::TextTooLong);
    for (const auto field : {&JointText::thread, &JointText::strength, &JointText::target, &JointText::driveSize, &JointText::engagement})
        EXPECT_EQ(refused([&](JointText &text) { text.*field = std::string(201, '1'); }), ErrorKind::TextTooLong);
    EXPECT_EQ(refused([](JointText &text) { text.source.manual = std::string(201, 'x'); }), ErrorKind::TextTooLong);
    EXPECT_EQ(refused([](JointText &text) { text.source.page = std::string(201, 'x'); }), ErrorKind::TextTooLong);
    EXPECT_EQ(refused([](JointText &text) { text.answered = std::string(1001, 'x'); }), ErrorKind::TextTooLong);
    EXPECT_EQ(refused([](JointText &text) { text.pattern.places.back().length = std::string(201, 'x'); }), ErrorKind::TextTooLong);
    EXPECT_EQ(refused([](JointText &text) { text.name = "Valve cover"; }), ErrorKind::JointTaken);
    EXPECT_EQ(refused([](JointText &text) { text.thread = "M7.3"; }), ErrorKind::ThreadUnknown);
    EXPECT_EQ(refused([](JointText &text) { text.pattern = {}; }), ErrorKind::PatternCount);
    EXPECT_EQ(refused([](JointText &text) { text.order = "1-1"; }), ErrorKind::OrderTwice);
    EXPECT_EQ(refused([](JointText &text) { text.passes = "120 %"; }), ErrorKind::PassOverTarget);
    EXPECT_EQ(refused([](JointText &text) { text.passes = "target, settle"; }), ErrorKind::SettleNotAllowed);
    EXPECT_EQ(refused([](JointText &text) { text.target = ""; }), ErrorKind::TargetMissing);
    EXPECT_EQ(refusal(addJoint(*garage, EngineId(99), rowText(2))), ErrorKind::NotFound);
    EXPECT_EQ(all().size(), 1U);
    EXPECT_TRUE(told.empty());
}

TEST_F(Joints, MayHaveTextsAsLongAsTheyFit)
{
    JointText text = rowText(2);
    text.name = text.driveSize = text.engagement = text.source.manual = text.source.page = std::string(200, 'x');
    text.pattern.places.back().length = std::string(200, 'x');
    text.answered = std::string(1000, 'x');
    add(text);
    EXPECT_EQ(all().front().text, text);
}

TEST_F(Joints, OfTwoEnginesMayHaveOneName)
{
    add(coverText());
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    need(addJoint(*garage, other.engine, coverText()));
    EXPECT_EQ(need(joints(*garage, other.engine)).size(), 1U);
    EXPECT_EQ(all().size(), 1U);
}

TEST_F(Joints, AreRevisedAndTheSameAgainStoresNothing)
{
    const JointId cover = add(coverText());
    const JointId bracket = add(rowText(2));
    JointText changed = coverText();
    changed.target = "30 ± 3 N·m";
    told.clear();
    need(reviseJoint(*garage, cover, tractor.engine, coverText()));
    EXPECT_TRUE(told.empty());
    need(reviseJoint(*garage, cover, tractor.engine, changed));
    need(reviseJoint(*garage, cover, tractor.engine, changed));
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].what, Change::What::Joints);
    ASSERT_EQ(all().size(), 3U);
    EXPECT_EQ(all().back().id, cover);
    EXPECT_EQ(all().back().revision, 2);
    EXPECT_EQ(all().back().text, changed);
    const auto newest = newestOf(all());
    ASSERT_EQ(newest.size(), 2U);
    EXPECT_EQ(newest[0].id, cover) << "where it was described first";
    EXPECT_EQ(newest[0].revision, 2);
    EXPECT_EQ(newest[1].id, bracket);
}

TEST_F(Joints, ACommaIsTheSameAgainToo)
{
    JointText text = rowText(2);
    text.target = "32,5 ± 4";
    text.passes = "12,5, target";
    const JointId id = need(addJoint(*garage, tractor.engine, text, DecimalMark::Comma));
    need(reviseJoint(*garage, id, tractor.engine, text, DecimalMark::Comma));
    EXPECT_EQ(all().size(), 1U);
}

TEST_F(Joints, RevisedAreRefusedAsNewOnesAre)
{
    const JointId cover = add(coverText());
    add(rowText(2));
    JointText text = coverText();
    text.name = "Thermostat housing";
    EXPECT_EQ(reviseJoint(*garage, cover, tractor.engine, text).error(), (Error{ErrorKind::JointTaken, {"Thermostat housing"}}));
    text = coverText();
    text.order = "3-1";
    EXPECT_EQ(refusal(reviseJoint(*garage, cover, tractor.engine, text)), ErrorKind::OrderMissing);
    EXPECT_EQ(refusal(reviseJoint(*garage, JointId(99), tractor.engine, coverText())), ErrorKind::NotFound);
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(reviseJoint(*garage, cover, other.engine, coverText())), ErrorKind::NotFound) << "of another engine";
    EXPECT_EQ(all().size(), 2U);
}

TEST_F(Joints, AnOldNameIsFreeAgain)
{
    const JointId cover = add(coverText());
    JointText text = coverText();
    text.name = "Rocker cover";
    need(reviseJoint(*garage, cover, tractor.engine, text));
    add(coverText());
    EXPECT_EQ(newestOf(all()).size(), 2U);
}

TEST_F(Joints, WorkedOnKeepTheirNumbersAndNothingElse)
{
    const JointId bracket = add(rowText(2));
    JointText three = rowText(2);
    three.pattern = rowPattern(3).value();
    need(reviseJoint(*garage, bracket, tractor.engine, three));
    need(book->loosen({.joint = bracket, .fasteners = {1}}));
    EXPECT_EQ(reviseJoint(*garage, bracket, tractor.engine, rowText(2)).error(), (Error{ErrorKind::JointInUse, {"Thermostat housing"}}));
    JointText other = three;
    other.pattern.places.back().number = 4;
    EXPECT_EQ(refusal(reviseJoint(*garage, bracket, tractor.engine, other)), ErrorKind::JointInUse);
    JointText allowed = three;
    allowed.target = "20 ± 2 N·m";
    allowed.thread = "M8";
    allowed.order = "3-2-1";
    allowed.pattern.places.back().x += 1;
    need(reviseJoint(*garage, bracket, tractor.engine, allowed));
    EXPECT_EQ(book->state().frame->jointNow(bracket)->order, (TighteningOrder{3, 2, 1}));
}

/// A line by its title, or by what it does to its joint; no words are stored for that.
std::string nameOf(const SheetLine &line, const std::vector<Joint> &joints)
{
    if (!line.title.empty())
        return line.title;
    const auto joint = std::ranges::find(joints, line.joint, [](const Joint &each) { return std::optional(each.id); });
    return (line.kind == StepKind::Loosen ? "loosen " : "tighten ") + joint->text.name;
}

std::vector<std::string> namesOf(const JobSheet &sheet, const std::vector<Joint> &joints)
{
    std::vector<std::string> names;
    for (const SheetLine &line : sheet.lines)
        names.push_back(nameOf(line, joints));
    return names;
}

TEST_F(Joints, TheirLinesStandAroundTheValveSet)
{
    add(coverText());
    add(rowText(2));
    const JobSheet sheet = withJoints(builtInSheets().front(), newestOf(all()));
    std::vector<std::string> around;
    for (const SheetLine &line : sheet.lines) {
        if (line.kind != StepKind::Note)
            around.push_back(line.kind == StepKind::ValveSet ? "valve set" : nameOf(line, all()));
    }
    const std::vector<std::string> expected{"loosen Valve cover", "loosen Thermostat housing", "valve set", "tighten Thermostat housing",
                                            "tighten Valve cover"};
    EXPECT_EQ(around, expected);
    const auto isTighten = [](const SheetLine &line) { return line.kind == StepKind::Tighten; };
    const auto line = std::ranges::find_if(sheet.lines, isTighten);
    EXPECT_EQ(line->before, Gate::FirstStart);
    EXPECT_EQ(line->joint, all().back().id);
    EXPECT_EQ(line->detail, "");
    const auto names = namesOf(sheet, all());
    EXPECT_EQ(*std::prev(std::ranges::find(names, "loosen Valve cover")), "Chocks and neutral");
    EXPECT_EQ(*std::next(std::ranges::find(names, "tighten Valve cover")), "Two full turns by hand");
}

TEST_F(Joints, TheirLinesStandAtTheEndWithoutAValveSet)
{
    add(coverText());
    add(rowText(2));
    const JobSheet sheet =
        withJoints({"Covers", {{.title = "Chocks", .detail = {}, .before = Gate::TurningTheCrank, .cautions = {}}}}, newestOf(all()));
    const std::vector<std::string> expected{"Chocks", "loosen Valve cover", "loosen Thermostat housing", "tighten Thermostat housing",
                                            "tighten Valve cover"};
    EXPECT_EQ(namesOf(sheet, all()), expected);
    EXPECT_TRUE(withJoints({}, {}).lines.empty());
}

TEST_F(Joints, ASheetsLinesBecomeTheJobs)
{
    const JointId cover = add(coverText());
    const JobSheet sheet = withJoints(builtInSheets().front(), newestOf(all()));
    const JobId id = need(openJob(*garage, tractor.vehicle, tractor.engine, sheet, "Cover"));
    const auto opened = need(JobBook::open(*garage, id));
    const auto &steps = opened->state().frame->job.steps;
    ASSERT_EQ(steps.size(), sheet.lines.size());
    for (std::size_t i = 0; i < steps.size(); ++i) {
        EXPECT_EQ(steps[i].kind, sheet.lines[i].kind);
        EXPECT_EQ(steps[i].joint, sheet.lines[i].joint);
    }
    EXPECT_EQ(std::ranges::count(steps, std::optional(cover), &Step::joint), 2);

    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(openJob(*garage, other.vehicle, other.engine, sheet, "Cover")), ErrorKind::NotFound) << "the joint is another's";
}

TEST_F(Joints, PutIntoAnOpenJobTheyAreSeenAtEverySeat)
{
    const JointId cover = add(coverText());
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    const std::size_t before = theirs->state().frame->job.steps.size();
    int heard = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++heard; });
    told.clear();
    need(addJointToJob(*garage, job, all().front()));
    EXPECT_EQ(heard, 1);
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(told[0].what, Change::What::Jobs);
    EXPECT_EQ(told[0].job, job);
    EXPECT_EQ(theirs->state().frame->job.steps.size(), before);
    need(theirs->catchUp());
    for (const JobBook *station : {book.get(), theirs.get()}) {
        const auto &steps = station->state().frame->job.steps;
        ASSERT_EQ(steps.size(), before + 2);
        EXPECT_EQ(steps[before].kind, StepKind::Loosen);
        EXPECT_EQ(steps[before].title, "") << "its kind and joint tell it";
        EXPECT_EQ(steps[before].joint, cover);
        EXPECT_EQ(steps[before + 1].kind, StepKind::Tighten);
        EXPECT_EQ(steps[before + 1].before, Gate::FirstStart);
    }
    need(addJointToJob(*garage, job, all().front()));
    EXPECT_EQ(told.size(), 1U) << "it has them already";
    EXPECT_EQ(book->state().frame->job.steps.size(), before + 2);
}

TEST_F(Joints, OfAnotherEngineAreNotPutIntoAJob)
{
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    need(addJoint(*garage, other.engine, coverText()));
    const Joint theirs = need(joints(*garage, other.engine)).front();
    EXPECT_EQ(refusal(addJointToJob(*garage, job, theirs)), ErrorKind::WrongJob);
    EXPECT_EQ(refusal(addJointToJob(*garage, JobId(99), theirs)), ErrorKind::NotFound);
}

TEST_F(Joints, AreKnownToAnOpenJobAtOnceAndAtAnotherSeatOnCatchingUp)
{
    const auto office = openedBy("office");
    const auto theirs = bookOf(*office);
    const JointId cover = add(coverText());
    EXPECT_TRUE(book->state().frame->jointNow(cover));
    EXPECT_TRUE(book->state().joints.contains(cover));
    EXPECT_FALSE(theirs->state().frame->jointNow(cover));
    need(theirs->catchUp());
    EXPECT_TRUE(theirs->state().frame->jointNow(cover));
}

TEST_F(Joints, OfAnotherEngineDoNotReloadAnOpenJob)
{
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    int heard = 0;
    QObject::connect(book.get(), &JobBook::changed, [&] { ++heard; });
    need(addJoint(*garage, other.engine, coverText()));
    EXPECT_EQ(heard, 0);
}

} // namespace joints_tests
} // namespace asleft
