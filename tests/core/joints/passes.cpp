// Reading and writing the passes over a joint, and what is refused of them.
#include <joints/passes.h>

#include <measure/format.h>

#include <gtest/gtest.h>

namespace asleft {
namespace passes_tests {

Torque newtonMetres(std::int64_t whole)
{
    return Torque::ofSmallest(whole * 1'000'000'000);
}

AtTorque torque(std::string text, TorqueUnit unit, Torque value)
{
    return {{value, unit, std::move(text)}};
}

AngleOn angle(std::string text, AngleUnit unit, Angle value)
{
    return {{value, unit, std::move(text)}};
}

std::vector<Pass> passes(std::string_view text)
{
    const auto read = parsePasses(text, TorqueUnit::NewtonMetre);
    EXPECT_TRUE(read) << text;
    return read.value_or(std::vector<Pass>{});
}

struct Form {
    const char *text;
    Pass pass;
    const char *written;
};

const std::vector<Form> &forms()
{
    static const std::vector<Form> all{
        {"finger", FingerTight{}, "finger"},
        {"Finger-tight", FingerTight{}, "finger"},
        {"FINGER TIGHT", FingerTight{}, "finger"},
        {"hand", FingerTight{}, "finger"},
        {"hand-tight", FingerTight{}, "finger"},
        {"finger\u2010tight", FingerTight{}, "finger"},
        {"50 %", PercentOfTarget{50}, "50 %"},
        {"50%", PercentOfTarget{50}, "50 %"},
        {"1 %", PercentOfTarget{1}, "1 %"},
        {"99.0 %", PercentOfTarget{99}, "99 %"},
        {"100 %", AtTarget{}, "target"},
        {"", AtTarget{}, "target"},
        {" \t ", AtTarget{}, "target"},
        {"target", AtTarget{}, "target"},
        {" Target ", AtTarget{}, "target"},
        {"40 N·m", torque("40 N·m", TorqueUnit::NewtonMetre, newtonMetres(40)), "40 N·m"},
        {"40Nm", torque("40Nm", TorqueUnit::NewtonMetre, newtonMetres(40)), "40Nm"},
        {"40", torque("40 N·m", TorqueUnit::NewtonMetre, newtonMetres(40)), "40 N·m"},
        {"12,5", torque("12,5 N·m", TorqueUnit::NewtonMetre, Torque::ofSmallest(12'500'000'000)), "12,5 N·m"},
        {".5", torque(".5 N·m", TorqueUnit::NewtonMetre, Torque::ofSmallest(500'000'000)), ".5 N·m"},
        {"1   5/8", torque("1 5/8 N·m", TorqueUnit::NewtonMetre, Torque::ofSmallest(1'625'000'000)), "1 5/8 N·m"},
        {"20\u00A0ft-lb", torque("20 ft-lb", TorqueUnit::PoundFoot, Torque::ofSmallest(27'116'358'967)), "20 ft-lb"},
        {"+ 90°", angle("90°", AngleUnit::Degree, degrees(90)), "+90°"},
        {"+90 deg", angle("90 deg", AngleUnit::Degree, degrees(90)), "+90 deg"},
        {"+90", angle("90°", AngleUnit::Degree, degrees(90)), "+90°"},
        {"+1/4 turn", angle("1/4 turn", AngleUnit::Turn, degrees(90)), "+1/4 turn"},
        {"+ 22,5°", angle("22,5°", AngleUnit::Degree, millidegrees(22'500)), "+22,5°"},
        {"settle", Settle{3}, "settle 3"},
        {"settle 3", Settle{3}, "settle 3"},
        {"Settle 1", Settle{1}, "settle 1"},
        {"settle  10", Settle{10}, "settle 10"},
    };
    return all;
}

TEST(Passes, EveryFormIsReadAndWritten)
{
    for (const Form &form : forms()) {
        EXPECT_EQ(passes(form.text), std::vector<Pass>{form.pass}) << form.text;
        EXPECT_EQ(writePasses({form.pass}), form.written);
    }
}

TEST(Passes, WhatIsWrittenReadsTheSameInAnyFieldUnit)
{
    for (const Form &form : forms()) {
        for (const TorqueUnit unit : {TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::KilogramForceCentimetre}) {
            for (const DecimalMark mark : {DecimalMark::Point, DecimalMark::Comma}) {
                EXPECT_EQ(parsePasses(form.written, unit, mark), std::vector<Pass>{form.pass}) << form.written;
            }
        }
    }
}

TEST(Passes, BareDigitsCountInTheFieldsOwnUnit)
{
    const auto read = parsePasses("250", TorqueUnit::KilogramForceCentimetre);
    EXPECT_EQ(read, (std::vector<Pass>{torque("250 kgf·cm", TorqueUnit::KilogramForceCentimetre, Torque::ofSmallest(24'516'625'000))}));
}

TEST(Passes, StandInARow)
{
    const std::vector<Pass> four{FingerTight{}, PercentOfTarget{50}, AtTarget{}, Settle{3}};
    for (const char *text : {"finger, 50 %, target, settle 3", "finger,50%,100%,settle", "hand; 50 %; target; settle 3",
                             "  finger ;50 % ,\ttarget\u00A0, settle 3 "})
        EXPECT_EQ(passes(text), four) << text;
    EXPECT_EQ(writePasses(four), "finger, 50 %, target, settle 3");
}

TEST(Passes, ACommaBetweenTwoDigitsIsADecimalMark)
{
    EXPECT_EQ(passes("12,5").size(), 1U);
    EXPECT_EQ(passes("12, 5").size(), 2U);
    EXPECT_EQ(passes("12;5").size(), 2U);
    EXPECT_EQ(passes("12,+5").size(), 2U);
    EXPECT_EQ(passes("12,.5").size(), 2U);
    EXPECT_EQ(passes("12 Nm,5").size(), 2U);
    EXPECT_EQ(writePasses(passes("12, 12,5, +22,5°,+45")), "12 N·m, 12,5 N·m, +22,5°, +45°");
    EXPECT_EQ(passes(writePasses(passes("12, 12,5, +22,5°,+45"))), passes("12, 12,5, +22,5°,+45"));
}

// TM 10-3930-669-20 Table E-1: 40 N·m, then 45° + 45° + 45° + 30°, 165° in all.
TEST(Passes, AnglesAddUpAsInTheManual)
{
    const std::vector<Pass> read = passes("40 N·m, +45°, +45°, +45°, +30°");
    ASSERT_EQ(read.size(), 5U);
    EXPECT_TRUE(checkPasses(read, {}));
    EXPECT_EQ(torqueOfPass(read[0], {}), newtonMetres(40));
    const int totals[] = {0, 45, 90, 135, 165};
    for (std::size_t i = 0; i < read.size(); ++i)
        EXPECT_EQ(totalAngle(read, i), degrees(totals[i])) << i;
    EXPECT_EQ(totalAngle(read, 99), degrees(165));
    EXPECT_EQ(totalAngle({}, 0), Angle());
    EXPECT_EQ(passes(writePasses(read)), read);
}

struct Refused {
    const char *text;
    ErrorKind kind;
    const char *argument;
};

TEST(Passes, WhatIsNoPassIsRefusedWithItsPart)
{
    const Refused all[] = {
        {"tight", ErrorKind::PassUnread, "tight"},
        {"finger, tight, target", ErrorKind::PassUnread, "tight"},
        {"fingers", ErrorKind::PassUnread, "fingers"},
        {"finger target", ErrorKind::PassUnread, "finger target"},
        {"finger,,target", ErrorKind::PassUnread, "finger,,target"},
        {"finger,", ErrorKind::PassUnread, "finger,"},
        {";", ErrorKind::PassUnread, ";"},
        {"0 %", ErrorKind::PassUnread, "0 %"},
        {"33.3 %", ErrorKind::PassUnread, "33.3 %"},
        {"%", ErrorKind::PassUnread, "%"},
        {"half %", ErrorKind::PassUnread, "half %"},
        {"finger, 101 %", ErrorKind::PassOverTarget, "101 %"},
        {"100.5%", ErrorKind::PassOverTarget, "100.5%"},
        {"999999999999 %", ErrorKind::PassOverTarget, "999999999999 %"},
        {"-50 %", ErrorKind::NegativeValue, "-50"},
        {"1,250 %", ErrorKind::AmbiguousNumber, "1,250"},
        {"0 N·m", ErrorKind::PassUnread, "0 N·m"},
        {"-40 N·m", ErrorKind::NegativeValue, "-40 N·m"},
        {"40 mm", ErrorKind::UnknownUnit, "mm"},
        {"40 N·m 50", ErrorKind::TextLeftOver, "50"},
        {"1,250 N·m", ErrorKind::AmbiguousNumber, "1,250 N·m"},
        {"20,40,60 N·m", ErrorKind::NotANumber, "20,40,60"},
        {"1e9", ErrorKind::NotANumber, "1e9"},
        {"999999999 N·m", ErrorKind::ValueTooLarge, "999999999 N·m"},
        {"90°", ErrorKind::PassUnread, "90°"},
        {"1/4 turn", ErrorKind::PassUnread, "1/4 turn"},
        {"+", ErrorKind::PassUnread, "+"},
        {"+0°", ErrorKind::PassUnread, "+0°"},
        {"+a bit", ErrorKind::PassUnread, "+a bit"},
        {"+ -45°", ErrorKind::NegativeValue, "-45°"},
        {"+45 N·m", ErrorKind::UnknownUnit, "N·m"},
        {"++45°", ErrorKind::PassUnread, "++45°"},
        {"settle 0", ErrorKind::PassUnread, "settle 0"},
        {"settle 11", ErrorKind::PassUnread, "settle 11"},
        {"settle 4294967297", ErrorKind::PassUnread, "settle 4294967297"},
        {"settle -1", ErrorKind::PassUnread, "settle -1"},
        {"settle 3,5", ErrorKind::PassUnread, "settle 3,5"},
        {"settle3", ErrorKind::PassUnread, "settle3"},
        {"settled", ErrorKind::PassUnread, "settled"},
    };
    for (const Refused &refused : all) {
        const auto read = parsePasses(refused.text, TorqueUnit::NewtonMetre);
        ASSERT_FALSE(read) << refused.text;
        EXPECT_EQ(read.error().kind, refused.kind) << refused.text;
        ASSERT_FALSE(read.error().arguments.empty()) << refused.text;
        EXPECT_EQ(read.error().arguments.front(), refused.argument);
    }
}

TEST(Passes, APointIsAmbiguousWhereTheMarkIsAComma)
{
    EXPECT_TRUE(parsePasses("1.250 kgf·m", TorqueUnit::NewtonMetre, DecimalMark::Point));
    const auto read = parsePasses("1.250 kgf·m", TorqueUnit::NewtonMetre, DecimalMark::Comma);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error().kind, ErrorKind::AmbiguousNumber);
}

TEST(Passes, TwelveAreTheMost)
{
    std::string text = "1";
    for (int i = 2; i <= mostPasses; ++i)
        text.append(", ").append(std::to_string(i));
    EXPECT_EQ(passes(text).size(), 12U);
    const auto read = parsePasses(text + ", 13", TorqueUnit::NewtonMetre);
    ASSERT_FALSE(read);
    EXPECT_EQ(read.error(), (Error{ErrorKind::PassesTooMany, {"13", "12"}}));
    const auto endless = parsePasses(std::string(5000, ','), TorqueUnit::NewtonMetre);
    ASSERT_FALSE(endless);
    EXPECT_EQ(endless.error().kind, ErrorKind::TextTooLong);
}

PassGround target(std::int64_t newtonMetre, bool settleAllowed = false)
{
    return {newtonMetres(newtonMetre), settleAllowed};
}

TEST(Passes, WhatStandsOnWhatIsBeforeItIsAccepted)
{
    for (const char *text : {"target", "finger, target", "finger, 50 %, target", "30 %, 60 %, target", "10 N·m, 50 %, target",
                             "20 N·m, 32 N·m", "finger, 20 N·m, +90°, +90°", "50 %, +360°, +1 turn", "target, +90°"})
        EXPECT_TRUE(checkPasses(passes(text), target(32))) << text;
    for (const char *text : {"target, settle 3", "50 %, target, settle", "32 N·m, settle 1", "target, settle 2, +45°"})
        EXPECT_TRUE(checkPasses(passes(text), target(32, true))) << text;
    for (const char *text : {"finger", "40 N·m", "finger, 20 N·m, 40 N·m, +90°"})
        EXPECT_TRUE(checkPasses(passes(text), {})) << text;
}

struct RefusedPasses {
    const char *text;
    PassGround ground;
    Error error;
};

TEST(Passes, WhatDoesNotStandOnWhatIsBeforeItIsRefused)
{
    const PassGround none;
    const RefusedPasses all[] = {
        {"target, finger", target(32), {ErrorKind::FingerNotFirst, {}}},
        {"finger, finger", target(32), {ErrorKind::FingerNotFirst, {}}},
        {"60 %, 30 %", target(32), {ErrorKind::PassesFall, {"30 %"}}},
        {"50 %, 50 %", target(32), {ErrorKind::PassesFall, {"50 %"}}},
        {"target, 50 %", target(32), {ErrorKind::PassesFall, {"50 %"}}},
        {"target, target", target(32), {ErrorKind::PassesFall, {"target"}}},
        {"20 N·m, 50 %", target(32), {ErrorKind::PassesFall, {"50 %"}}}, // 16 N·m
        {"50 %, 16 N·m", target(32), {ErrorKind::PassesFall, {"16 N·m"}}},
        {"30 N·m, 20 N·m", none, {ErrorKind::PassesFall, {"20 N·m"}}},
        {"33 N·m", target(32), {ErrorKind::PassOverTarget, {"33 N·m"}}},
        {"24 ft-lb", target(32), {ErrorKind::PassOverTarget, {"24 ft-lb"}}}, // 32.5 N·m
        {"target", none, {ErrorKind::TargetMissing, {"target"}}},
        {"finger, 50 %", none, {ErrorKind::TargetMissing, {"50 %"}}},
        {"40 N·m, settle 2", {{}, true}, {ErrorKind::TargetMissing, {"settle 2"}}},
        {"+90°", target(32), {ErrorKind::AngleWithoutSnug, {"+90°"}}},
        {"finger, +1/4 turn", none, {ErrorKind::AngleWithoutSnug, {"+1/4 turn"}}},
        {"20 N·m, +360°, +1 turn, +1°", target(32), {ErrorKind::AngleTooLarge, {"721"}}},
        {"20 N·m, +720.1°", none, {ErrorKind::AngleTooLarge, {"721"}}},
        {"target, settle 3", target(32), {ErrorKind::SettleNotAllowed, {}}},
        {"20 N·m, +90°, settle 3", target(32, true), {ErrorKind::SettleAfterAngle, {}}},
        {"settle 3", target(32, true), {ErrorKind::SettleMisplaced, {}}},
        {"50 %, settle 3, target", target(32, true), {ErrorKind::SettleMisplaced, {}}},
        {"target, settle 3, settle 2", target(32, true), {ErrorKind::SettleMisplaced, {}}},
        {"target, settle 3, target", target(32, true), {ErrorKind::PassesFall, {"target"}}},
        {"20 N·m, +90°, target", target(32), {ErrorKind::TorqueAfterAngle, {"target"}}},
        {"20 N·m, +90°, 60 N·m", none, {ErrorKind::TorqueAfterAngle, {"60 N·m"}}},
        {"50 %, +90°, 75 %", target(32), {ErrorKind::TorqueAfterAngle, {"75 %"}}},
        {"30 %, 60 %", target(32), {ErrorKind::PassesStopShort, {"60 %"}}},
        {"20 N·m", target(32), {ErrorKind::PassesStopShort, {"20 N·m"}}},
        {"finger, 31.999999999 N·m", target(32), {ErrorKind::PassesStopShort, {"31.999999999 N·m"}}},
        {"finger", target(32), {ErrorKind::PassesStopShort, {"finger"}}},
    };
    for (const RefusedPasses &refused : all) {
        const Done done = checkPasses(passes(refused.text), refused.ground);
        ASSERT_FALSE(done) << refused.text;
        EXPECT_EQ(done.error().kind, refused.error.kind) << refused.text;
        EXPECT_EQ(done.error().arguments, refused.error.arguments) << refused.text;
    }
}

TEST(Passes, NoneAndMoreThanAllAreRefusedHoweverTheyWereMade)
{
    const Done none = checkPasses({}, target(32));
    ASSERT_FALSE(none);
    EXPECT_EQ(none.error(), (Error{ErrorKind::PassesEmpty, {}}));
    const Done over = checkPasses({PercentOfTarget{120}}, target(32));
    ASSERT_FALSE(over);
    EXPECT_EQ(over.error(), (Error{ErrorKind::PassOverTarget, {"120 %"}}));
}

TEST(Passes, RoundsAnglesAndTheLastTorque)
{
    const std::vector<Pass> settling = passes("finger, 50 %, target, settle 4");
    EXPECT_EQ(roundsOf(settling[2]), 1);
    EXPECT_EQ(roundsOf(settling[3]), 4);
    EXPECT_EQ(roundsOf(Settle{99}), mostSettleRounds);
    EXPECT_FALSE(anyAngle(settling));
    const std::vector<Pass> turned = passes("finger, 20 N·m, 40 N·m, +45°, +45°");
    EXPECT_TRUE(anyAngle(turned));
    const auto lastTorques = [](const std::vector<Pass> &all) {
        std::vector<std::size_t> last;
        for (std::size_t pass = 0; pass < all.size(); ++pass) {
            if (isLastTorque(all, pass))
                last.push_back(pass);
        }
        return last;
    };
    EXPECT_EQ(lastTorques(settling), std::vector<std::size_t>{3});
    EXPECT_EQ(lastTorques(turned), std::vector<std::size_t>{2});
    EXPECT_TRUE(lastTorques(passes("finger")).empty());
}

TEST(Passes, EachAsksForItsTorque)
{
    const Torque wanted = newtonMetres(32);
    EXPECT_EQ(torqueOfPass(FingerTight{}, wanted), std::nullopt);
    EXPECT_EQ(torqueOfPass(passes("+90°").front(), wanted), std::nullopt);
    EXPECT_EQ(torqueOfPass(PercentOfTarget{50}, wanted), newtonMetres(16));
    EXPECT_EQ(torqueOfPass(AtTarget{}, wanted), wanted);
    EXPECT_EQ(torqueOfPass(Settle{}, wanted), wanted);
    EXPECT_EQ(torqueOfPass(passes("20 N·m").front(), wanted), newtonMetres(20));
    EXPECT_EQ(torqueOfPass(passes("20 N·m").front(), std::nullopt), newtonMetres(20));
    for (const Pass &pass : std::vector<Pass>{PercentOfTarget{50}, AtTarget{}, Settle{}})
        EXPECT_EQ(torqueOfPass(pass, std::nullopt), std::nullopt);
    EXPECT_EQ(torqueOfPass(PercentOfTarget{50}, Torque::ofSmallest(5)), Torque::ofSmallest(2)); // 2.5, half to even
    EXPECT_EQ(torqueOfPass(PercentOfTarget{99}, Torque::ofSmallest(100'000'000'000'000)), Torque::ofSmallest(99'000'000'000'000));
}

} // namespace passes_tests
} // namespace asleft
