#include <joints/preload.h>

#include <gtest/gtest.h>

namespace asleft {
namespace preload_tests {

constexpr double newtonsPerPound = 4.448'221'615'260'5;

Thread thread(const char *text)
{
    const auto read = parseThread(text);
    EXPECT_TRUE(read) << text;
    return read.value_or(Thread{});
}

Typed<Torque> torque(const char *text, TorqueUnit field = TorqueUnit::NewtonMetre, DecimalMark mark = DecimalMark::Point)
{
    const auto read = parse<Torque>(text, field, mark);
    EXPECT_TRUE(read) << text;
    return read.value_or(Typed<Torque>{});
}

constexpr double zincDry = 0.20;

TEST(Preload, NutFactors)
{
    // Shigley, Table 8-15
    EXPECT_EQ(nutFactor(ThreadCondition::Dry, Finish::Black), 0.30);
    EXPECT_EQ(nutFactor(ThreadCondition::Dry, Finish::Zinc), 0.20);
    EXPECT_EQ(nutFactor(ThreadCondition::Dry, Finish::Cadmium), 0.16);
    EXPECT_EQ(nutFactor(ThreadCondition::Dry), 0.20);
    for (const Finish finish : {Finish::Black, Finish::Zinc, Finish::Cadmium}) {
        const double oiled = finish == Finish::Cadmium ? 0.16 : 0.18; // oil makes no thread rougher
        EXPECT_EQ(nutFactor(ThreadCondition::Oiled, finish), oiled);
        EXPECT_EQ(nutFactor(ThreadCondition::AntiSeize, finish), 0.12);
        // common practice, no source
        EXPECT_EQ(nutFactor(ThreadCondition::ThreadLock, finish), oiled);
        EXPECT_EQ(nutFactor(ThreadCondition::Sealant, finish), oiled);
    }
}

TEST(Preload, TorqueIsKTimesDiameterTimesForce)
{
    // 3/4 in, 25 000 lbf, K 0.2: 3750 lbf·in (from memory, recomputed)
    const Length diameter = thread("3/4-10").diameter;
    const Torque wanted = torque("3750 lbf·in").value;
    EXPECT_NEAR(static_cast<double>(torqueForPreload(25'000 * newtonsPerPound, 0.2, diameter).smallest()),
                static_cast<double>(wanted.smallest()), 1);
    EXPECT_NEAR(preloadNewtons(wanted, 0.2, diameter), 25'000 * newtonsPerPound, 1e-5);
    // 10 N·m on M10 at K 0.2: 10/(0.2·0.010) = 5000 N
    EXPECT_DOUBLE_EQ(preloadNewtons(torque("10 N·m").value, 0.2, thread("M10").diameter), 5000);
    EXPECT_EQ(torqueForPreload(5000, 0.2, thread("M10").diameter), torque("10 N·m").value);
    EXPECT_EQ(torqueForPreload(0, 0.2, thread("M10").diameter), Torque{});
}

TEST(Preload, ForceAndTorqueAreEachOthersInverse)
{
    for (const Thread &known : knownThreads()) {
        for (const double k : {0.12, 0.2, 0.3}) {
            const Torque there = torqueForPreload(12'345.678, k, known.diameter);
            EXPECT_NEAR(preloadNewtons(there, k, known.diameter), 12'345.678, 1e-2) << known.name;
        }
    }
}

TEST(Preload, DryTorquesOfThePrintedTable)
{
    // TM 10-6640-238-13, Table G-1: grade 5, dry, 75 % of proof load, K 0.2; printed in whole ft·lbf, so the small one is coarser.
    struct Row {
        const char *thread;
        double poundFeet;
        double tolerance;
    };
    const Row rows[] = {
        {"1/4-20", 8, 0.06}, {"5/16-18", 17, 0.025}, {"3/8-16", 31, 0.025}, {"1/2-13", 75, 0.025}, {"5/8-11", 150, 0.025},
    };
    const double newtonMetresPerPoundFoot = toNewtonMetres(torque("1 lbf·ft").value);
    for (const Row &row : rows) {
        const Thread sized = thread(row.thread);
        const auto load = proofLoadNewtons(StrengthClass::Sae5, sized);
        ASSERT_TRUE(load) << row.thread;
        const double computed = toNewtonMetres(torqueForPreload(0.75 * *load, zincDry, sized.diameter)) / newtonMetresPerPoundFoot;
        EXPECT_NEAR(computed, row.poundFeet, row.poundFeet * row.tolerance) << row.thread;
    }
}

TEST(Preload, ShareOfProofLoad)
{
    // M8 8.8, proof load 21 200 N (ISO 898-1): at K 0.2 all of it is 0.2·0.008·21 200 = 33.9 N·m.
    const Thread m8 = thread("M8");
    EXPECT_NEAR(shareOfProof(torque("33.92 N·m").value, m8, StrengthClass::C8_8, 0.2).value_or(0), 1, 0.005);
    EXPECT_NEAR(shareOfProof(torque("25.44 N·m").value, m8, StrengthClass::C8_8, 0.2).value_or(0), 0.75, 0.004);
    EXPECT_EQ(shareOfProof(Torque{}, m8, StrengthClass::C8_8, 0.2), 0.0);
    EXPECT_FALSE(shareOfProof(torque("24 N·m").value, m8, StrengthClass::Sae5, 0.2));
    EXPECT_FALSE(shareOfProof(torque("24 N·m").value, thread("M64"), StrengthClass::C8_8, 0.2));
}

TEST(Question, ASlipOfTheUnit)
{
    // 60 lbf·ft is 13 times what an M5 takes; 60 lbf·in is what was meant.
    const auto doubt = questionTorque(torque("60 lbf·ft"), thread("M5"), StrengthClass::C8_8, zincDry);
    ASSERT_TRUE(doubt);
    EXPECT_NEAR(doubt->times, 13, 0.5);
    EXPECT_EQ(doubt->meant, TorqueUnit::PoundInch);
    EXPECT_EQ(doubt->meantValue, torque("60 lbf·in").value);
}

TEST(Question, EveryUnitOfASlip)
{
    struct Row {
        const char *torque;
        const char *thread;
        StrengthClass strength;
        const char *meant; ///< empty: questioned, but no other unit makes sense
    };
    const Row rows[] = {
        {"9 lbf·ft", "#10-32", StrengthClass::Sae5, nullptr}, // no grade for this size: nothing is known, nothing is asked
        {"80 lbf·ft", "1/4-20", StrengthClass::Sae5, "80 lbf·in"},
        {"250 kgf·m", "M8", StrengthClass::C8_8, "250 lbf·in"},
        {"600 N·m", "M12", StrengthClass::C8_8, "600 lbf·in"},
        {"6 lbf·in", "M10", StrengthClass::C8_8, "6 N·m"},
        {"2.5 N·m", "M16", StrengthClass::C8_8, "2.5 kgf·m"},
        {"2,5 N·m", "M16", StrengthClass::C8_8, "2.5 kgf·m"},
        {"5/8 lbf·in", "M4", StrengthClass::C8_8, "5/8 N·m"},
        {"9000 N·m", "M5", StrengthClass::C8_8, ""},
        {"0 N·m", "M8", StrengthClass::C8_8, ""},
    };
    for (const Row &row : rows) {
        const auto doubt = questionTorque(torque(row.torque), thread(row.thread), row.strength, zincDry);
        ASSERT_EQ(doubt.has_value(), row.meant != nullptr) << row.torque << " " << row.thread;
        if (!doubt)
            continue;
        EXPECT_TRUE(doubt->times > 1.5 || doubt->times < 0.05) << row.torque;
        ASSERT_EQ(doubt->meant.has_value(), *row.meant != '\0') << row.torque << " " << row.thread;
        ASSERT_EQ(doubt->meantValue.has_value(), doubt->meant.has_value());
        if (!doubt->meant)
            continue;
        EXPECT_EQ(*doubt->meant, torque(row.meant).unit) << row.torque;
        EXPECT_EQ(*doubt->meantValue, torque(row.meant).value) << row.torque;
        // What is offered is not questioned in its turn.
        EXPECT_FALSE(questionTorque(torque(row.meant), thread(row.thread), row.strength, zincDry)) << row.meant;
    }
}

TEST(Question, DigitsAloneAndTextsThatSayNothing)
{
    const Thread m5 = thread("M5");
    const auto bare = questionTorque(torque("60", TorqueUnit::PoundFoot), m5, StrengthClass::C8_8, zincDry);
    ASSERT_TRUE(bare);
    EXPECT_EQ(bare->meantValue, torque("60 lbf·in").value);
    // A field of a comma country hands on commas; the digits are the same ones.
    const auto comma = torque("60,5 lbf·ft", TorqueUnit::NewtonMetre, DecimalMark::Comma);
    const auto asked = questionTorque(comma, m5, StrengthClass::C8_8, zincDry);
    ASSERT_TRUE(asked);
    EXPECT_EQ(asked->meantValue, torque("60.5 lbf·in").value);
    // A value without its text is scaled; it may be a few of the smallest unit off.
    Typed<Torque> computed = torque("60 lbf·ft");
    computed.text = "from the table";
    const auto doubt = questionTorque(computed, m5, StrengthClass::C8_8, zincDry);
    ASSERT_TRUE(doubt && doubt->meantValue);
    EXPECT_EQ(doubt->meant, TorqueUnit::PoundInch);
    EXPECT_NEAR(static_cast<double>(doubt->meantValue->smallest()), static_cast<double>(torque("60 lbf·in").value.smallest()), 1);
    // A text that reads as another value is not believed.
    computed.text = "7 lbf·ft";
    EXPECT_EQ(questionTorque(computed, m5, StrengthClass::C8_8, zincDry), doubt);
}

TEST(Question, WhatMakesSenseIsNotQuestioned)
{
    const std::tuple<const char *, const char *, StrengthClass> rows[] = {
        // M8 8.8 takes 25.5 N·m at 75 % of proof load: questioned above 38.2 and below 1.27.
        {"24 N·m", "M8", StrengthClass::C8_8},         {"38 N·m", "M8", StrengthClass::C8_8},  {"1.28 N·m", "M8", StrengthClass::C8_8},
        {"20 lbf·ft", "5/16-18", StrengthClass::Sae5}, {"32 N·m", "M8", StrengthClass::C10_9}, {"9 N·m", "M6x0.75", StrengthClass::C8_8},
        {"9000 N·m", "M8", StrengthClass::Sae5}, // nothing is known of a grade on this thread
    };
    for (const auto &[text, sized, strength] : rows)
        EXPECT_FALSE(questionTorque(torque(text), thread(sized), strength, zincDry)) << text << " " << sized;
    const Thread m8 = thread("M8");
    EXPECT_TRUE(questionTorque(torque("38.5 N·m"), m8, StrengthClass::C8_8, zincDry));
    EXPECT_TRUE(questionTorque(torque("1.26 N·m"), m8, StrengthClass::C8_8, zincDry));
    // Drier threads take more torque for the same force.
    EXPECT_FALSE(questionTorque(torque("38.5 N·m"), m8, StrengthClass::C8_8, 0.30));
}

TEST(Question, ASnugTorqueIsNeverTooLittle)
{
    const Thread m12 = thread("M12");
    const auto snug = torque("2 N·m");
    EXPECT_TRUE(questionTorque(snug, m12, StrengthClass::C10_9, zincDry, true));
    EXPECT_FALSE(questionTorque(snug, m12, StrengthClass::C10_9, zincDry, false));
    EXPECT_FALSE(questionTorque(torque("0 N·m"), m12, StrengthClass::C10_9, zincDry, false));
    // Too much is too much all the same.
    const auto doubt = questionTorque(torque("60 lbf·ft"), thread("M5"), StrengthClass::C8_8, zincDry, false);
    ASSERT_TRUE(doubt);
    EXPECT_EQ(doubt->meant, TorqueUnit::PoundInch);
}

TEST(Allowance, TheLargestThatApplies)
{
    // TM 9-2320-362-14&P App. F
    struct Row {
        bool oiled;
        bool plated;
        FemaleMaterial material;
        int percent;
    };
    const Row rows[] = {
        {false, false, FemaleMaterial::Iron, 0},       {false, false, FemaleMaterial::Steel, 0},
        {false, false, FemaleMaterial::Insert, 0},     {true, false, FemaleMaterial::Iron, 10},
        {false, true, FemaleMaterial::Steel, 20},      {true, true, FemaleMaterial::Iron, 20},
        {false, false, FemaleMaterial::Aluminium, 30}, {true, true, FemaleMaterial::Aluminium, 30},
    };
    for (const Row &row : rows)
        EXPECT_EQ(generalAllowancePercent(row.oiled, row.plated, row.material), row.percent);
}

} // namespace preload_tests
} // namespace asleft
