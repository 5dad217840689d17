// A joint as its fields are typed: what of it is read, and what is refused where.
#include <shop/joint_entry.h>

#include <gtest/gtest.h>

namespace asleft {
namespace joint_entry_tests {

using Field = JointField;

JointTyped cover()
{
    JointTyped typed;
    typed.texts = {
        {Field::Name, "Cover"},    {Field::Places, "12 around a cover"}, {Field::Thread, "M8"}, {Field::Strength, "8.8"},
        {Field::Target, "24 ± 2"},
    };
    typed.pattern = coverPattern(12).value();
    return typed;
}

JointTyped with(Field field, const std::string &text)
{
    JointTyped typed = cover();
    typed.texts[field] = text;
    return typed;
}

JointReading read(const JointTyped &typed)
{
    return readJoint(typed, DecimalMark::Point);
}

std::map<Field, ErrorKind> refusedIn(const JointTyped &typed)
{
    std::map<Field, ErrorKind> kinds;
    for (const auto &[field, error] : read(typed).refusals)
        kinds.emplace(field, error.kind);
    return kinds;
}

using Refusals = std::map<Field, ErrorKind>;

TEST(JointEntry, IsReadAsItsTextIs)
{
    JointTyped typed = cover();
    typed.texts[Field::Passes] = " 50 %;  target ";
    typed.texts[Field::Manual] = "Workshop manual";
    const JointReading reading = read(typed);
    EXPECT_EQ(reading.refusals, (std::map<Field, Error>{}));
    EXPECT_EQ(reading.text.passes, "50 %; target");
    EXPECT_EQ(reading.text.source.manual, "Workshop manual");
    EXPECT_EQ(reading.text.pattern, cover().pattern);
    ASSERT_EQ(reading.bands.size(), 1U);
    EXPECT_EQ(reading.bands.at(Field::Target).text, "24 ± 2");
    const auto joint = readJoint(reading.text);
    ASSERT_TRUE(joint);
    EXPECT_EQ(joint->text, reading.joint.text);
    EXPECT_EQ(joint->order, reading.joint.order);
    EXPECT_EQ(joint->passes, reading.joint.passes);
    EXPECT_EQ(joint->target, reading.joint.target);
    EXPECT_FALSE(reading.asks);
}

TEST(JointEntry, NoFieldsAtAllAreRefusedWhereSomethingIsWanted)
{
    EXPECT_EQ(refusedIn({}), (Refusals{{Field::Name, ErrorKind::NameMissing},
                                       {Field::Places, ErrorKind::EmptyText},
                                       {Field::Target, ErrorKind::TargetMissing}}));
}

struct Slip {
    Field field;
    std::string text;
    ErrorKind kind;
};
void PrintTo(const Slip &slip, std::ostream *out)
{
    *out << slip.text.substr(0, 40);
}

class SlipInAJoint : public testing::TestWithParam<Slip> {};

TEST_P(SlipInAJoint, IsRefusedAtItsOwnFieldAndKept)
{
    const JointTyped typed = with(GetParam().field, GetParam().text);
    EXPECT_EQ(refusedIn(typed), (Refusals{{GetParam().field, GetParam().kind}}));
    EXPECT_EQ(typed.text(GetParam().field), GetParam().text);
}

TEST_P(SlipInAJoint, HidesNoOther)
{
    const Slip slip = GetParam();
    const Field other = slip.field == Field::Engagement ? Field::DriveSize : Field::Engagement;
    JointTyped typed = with(slip.field, slip.text);
    typed.texts[other] = std::string(201, 'x');
    EXPECT_EQ(refusedIn(typed), (Refusals{{slip.field, slip.kind}, {other, ErrorKind::TextTooLong}}));
}

INSTANTIATE_TEST_SUITE_P(
    All, SlipInAJoint,
    testing::Values(
        Slip{Field::Name, " \t", ErrorKind::NameMissing}, Slip{Field::Name, std::string(201, 'x'), ErrorKind::TextTooLong},
        Slip{Field::Places, "0 around a circle", ErrorKind::PatternCount}, Slip{Field::Places, "", ErrorKind::EmptyText},
        Slip{Field::Places, "here and there", ErrorKind::PatternUnread}, Slip{Field::Thread, "M7x3", ErrorKind::ThreadUnknown},
        Slip{Field::Thread, "thick", ErrorKind::ThreadUnread}, Slip{Field::Strength, "strong", ErrorKind::ClassUnknown},
        Slip{Field::Engagement, std::string(201, 'x'), ErrorKind::TextTooLong}, Slip{Field::Target, "tight", ErrorKind::NotANumber},
        Slip{Field::Target, "3 mm", ErrorKind::UnknownUnit}, Slip{Field::Target, "", ErrorKind::TargetMissing},
        Slip{Field::OtherTarget, "high", ErrorKind::NotANumber}, Slip{Field::OtherTarget, "25 N·m", ErrorKind::BandSameSystem},
        Slip{Field::OtherTarget, "60-70 lbf·ft", ErrorKind::BandSystemsDiffer}, Slip{Field::Passes, "hard", ErrorKind::PassUnread},
        Slip{Field::Passes, "50 %, 120 %", ErrorKind::PassOverTarget}, Slip{Field::Passes, "50 %, 80 %", ErrorKind::PassesStopShort},
        Slip{Field::Passes, "finger, +90°", ErrorKind::AngleWithoutSnug}, Slip{Field::Passes, "finger", ErrorKind::PassesStopShort},
        Slip{Field::Places, "10000 around a circle", ErrorKind::PatternCount},
        Slip{Field::Passes, "target, settle 3", ErrorKind::SettleNotAllowed},
        Slip{Field::Order, "7-3-1-5-7-2-4-6-8-9-10-11-12", ErrorKind::OrderTwice},
        Slip{Field::Order, "1-2-3-4-5-6-7-8-9-10-11", ErrorKind::OrderMissing},
        Slip{Field::DriveSize, std::string(201, 'x'), ErrorKind::TextTooLong},
        Slip{Field::Manual, std::string(201, 'x'), ErrorKind::TextTooLong},
        Slip{Field::Page, std::string(201, 'x'), ErrorKind::TextTooLong}));

TEST(JointEntry, AThreadOfOneFastenerIsRefusedWithItsNumber)
{
    JointTyped typed = cover();
    typed.pattern.places[4].thread = "five";
    typed.pattern.places[6].thread = "seven";
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::OwnThread, ErrorKind::ThreadUnread}}));
    EXPECT_EQ(read(typed).ownThreadOf, 5);
    typed.texts[Field::Places] = "nowhere";
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::Places, ErrorKind::PatternUnread}, {Field::OwnThread, ErrorKind::ThreadUnread}}));
}

TEST(JointEntry, PlacesLaidOutByHandNeedNoWords)
{
    JointTyped typed = cover();
    typed.pattern = rowPattern(4).value();
    typed.pattern.kind = PatternKind::Free;
    typed.texts[Field::Places] = writePattern(typed.pattern);
    EXPECT_EQ(refusedIn(typed), Refusals{});
    typed.pattern.places[1].number = 1;
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::Places, ErrorKind::PatternNumber}}));
}

TEST(JointEntry, PassesAreNotBlamedForATargetThatCannotBeRead)
{
    JointTyped typed = with(Field::Passes, "50 %, target");
    typed.texts[Field::Target] = "tight";
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::Target, ErrorKind::NotANumber}}));
    EXPECT_TRUE(read(typed).joint.passes.empty());
    typed.texts[Field::Passes] = "finger, +90°";
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::Target, ErrorKind::NotANumber}, {Field::Passes, ErrorKind::AngleWithoutSnug}}));
}

TEST(JointEntry, OfABadFormTheRestIsReadForDrawing)
{
    JointTyped typed = with(Field::Passes, "50 %");
    typed.texts[Field::Strength] = "strong";
    const JointReading reading = read(typed);
    EXPECT_EQ(reading.refusals.size(), 2U);
    EXPECT_EQ(reading.joint.order, generateOrder(cover().pattern));
    EXPECT_EQ(reading.joint.thread, parseThread("M8").value());
    EXPECT_TRUE(reading.check) << "the torque is judged all the same";
    EXPECT_EQ(reading.text.strength, "strong");

    const JointReading nowhere = read(with(Field::Places, "nowhere"));
    EXPECT_EQ(nowhere.joint.order, TighteningOrder{1});
    EXPECT_TRUE(nowhere.check);
    EXPECT_EQ(nowhere.text.pattern, cover().pattern) << "what was laid out is not lost";
}

TEST(JointEntry, ASecondTargetThatDoesNotFitLeavesTheFirst)
{
    const JointReading reading = read(with(Field::OtherTarget, "60-70 lbf·ft"));
    ASSERT_TRUE(reading.joint.target);
    EXPECT_EQ(reading.joint.target->first.text, "24 ± 2");
    EXPECT_FALSE(reading.joint.target->second);
    EXPECT_EQ(reading.bands.size(), 2U);
}

/// Far too much for an M5.
JointTyped doubted(const std::string &target)
{
    JointTyped typed = with(Field::Target, target);
    typed.texts[Field::Thread] = "M5";
    return typed;
}

TEST(JointEntry, AQuestionedTorqueAsksUntilItIsAnswered)
{
    JointTyped typed = doubted("60 lbf·ft");
    EXPECT_TRUE(read(typed).asks);
    typed.answered = " a special  bolt ";
    EXPECT_TRUE(read(typed).asks) << "it was answered about something else";
    typed.answeredAbout = questionedWith(typed);
    EXPECT_FALSE(read(typed).asks);
    EXPECT_EQ(read(typed).text.answered, "a special bolt");
    typed.texts[Field::Name] = "Flange";
    EXPECT_FALSE(read(typed).asks) << "its name has nothing to do with it";
    for (const auto &change : std::vector<void (*)(JointTyped &)>{
             [](JointTyped &joint) { joint.texts[Field::Target] = "65 lbf·ft"; },
             [](JointTyped &joint) { joint.texts[Field::Strength] = "10.9"; },
             [](JointTyped &joint) { joint.pattern.places[4].thread = "M4"; },
             [](JointTyped &joint) { joint.unit = TorqueUnit::PoundInch; },
             [](JointTyped &joint) { joint.condition = ThreadCondition::Oiled; },
             [](JointTyped &joint) { joint.finish = Finish::Cadmium; },
         }) {
        JointTyped other = typed;
        change(other);
        EXPECT_TRUE(read(other).asks) << "another torque is another question";
    }
}

TEST(JointEntry, AnAnswerToNoQuestionIsNotKept)
{
    JointTyped typed = cover();
    typed.answered = "a special bolt";
    typed.answeredAbout = questionedWith(typed);
    EXPECT_EQ(read(typed).text.answered, "");
}

struct Meant {
    const char *typed;
    const char *taken;
};
void PrintTo(const Meant &meant, std::ostream *out)
{
    *out << meant.typed;
}

class TorqueUnitMeant : public testing::TestWithParam<Meant> {};

TEST_P(TorqueUnitMeant, HasTheSameDigits)
{
    const JointTyped typed = doubted(GetParam().typed);
    const JointTyped taken = inUnitMeant(typed, read(typed), DecimalMark::Point);
    EXPECT_EQ(taken.text(Field::Target), GetParam().taken);
    EXPECT_EQ(taken.unit, TorqueUnit::NewtonMetre);
    EXPECT_EQ(refusedIn(taken), Refusals{});
    EXPECT_FALSE(read(taken).asks);
}

INSTANTIATE_TEST_SUITE_P(All, TorqueUnitMeant,
                         testing::Values(Meant{"60 lbf·ft", "60 lbf·in"}, Meant{"60lbf.ft", "60 lbf·in"}, Meant{"60 ft-lb", "60 lbf·in"},
                                         Meant{"60 ± 5 ft lb", "60 ± 5 lbf·in"}, Meant{"55 to 65 lbf·ft", "55 to 65 lbf·in"},
                                         Meant{"55 lbf·ft to 65 lbf·ft", "55 to 65 lbf·in"}, Meant{"55-65 lbf·ft", "55-65 lbf·in"},
                                         Meant{"at least 60 lbf·ft", "at least 60 lbf·in"},
                                         Meant{"At least 60 lbf·ft", "At least 60 lbf·in"}, Meant{"max 60 lbf·ft", "max 60 lbf·in"}));

TEST(JointEntry, BareNumbersInTheUnitMeantCountByItsKey)
{
    JointTyped typed = doubted("60 ± 5");
    typed.unit = TorqueUnit::PoundFoot;
    JointTyped taken = inUnitMeant(typed, read(typed), DecimalMark::Point);
    EXPECT_EQ(taken.unit, TorqueUnit::PoundInch);
    EXPECT_EQ(taken.text(Field::Target), "60 ± 5");
    typed.texts[Field::Target] = "";
    typed.texts[Field::Passes] = "60";
    taken = inUnitMeant(typed, read(typed), DecimalMark::Point);
    EXPECT_EQ(taken.unit, TorqueUnit::PoundInch);
    EXPECT_EQ(inUnitMeant(cover(), read(cover()), DecimalMark::Point), cover()) << "where nothing is doubted";
}

TEST(JointEntry, AStoredRevisionComesBackAsTyped)
{
    JointTyped typed = doubted("60 lbf·ft");
    typed.texts[Field::OtherTarget] = "80 N·m";
    typed.texts[Field::Passes] = "50 %, target";
    typed.texts[Field::Order] = "12 11 10 9 8 7 6 5 4 3 2 1";
    typed.texts[Field::Engagement] = "20 mm";
    typed.texts[Field::DriveSize] = "8 mm";
    typed.texts[Field::Manual] = "Workshop manual";
    typed.texts[Field::Page] = "41";
    typed.unit = TorqueUnit::PoundFoot;
    typed.settle = SettleGround::Limiters;
    typed.condition = ThreadCondition::Oiled;
    typed.finish = Finish::Black;
    typed.drive = DriveKind::HexKey;
    typed.female = FemaleMaterial::Insert;
    typed.blindHole = true;
    typed.singleUse = SingleUse::CrushWasher;
    typed.certainty = Certainty::FromMemory;
    typed.answered = "a special bolt";
    typed.answeredAbout = questionedWith(typed);
    const JointReading reading = read(typed);
    EXPECT_EQ(reading.refusals, (std::map<Field, Error>{}));
    EXPECT_EQ(typedOf(readJoint(reading.text).value()), typed);
}

TEST(JointEntry, AnotherPatternKeepsWhatSingleFastenersHave)
{
    Pattern before = rowPattern(4).value();
    before.places[1].thread = "M6";
    before.places[3].length = "40 mm";
    const Pattern made = withOwnOf(circlePattern(3).value(), before);
    EXPECT_EQ(made.kind, PatternKind::Circle);
    EXPECT_EQ(made.places[1].thread, "M6");
    EXPECT_EQ(made.places[2].length, "");
}

} // namespace joint_entry_tests
} // namespace asleft
