#include "udunits.h"

#include <measure/format.h>

#include <gtest/gtest.h>

namespace asleft {
namespace units_tests {

constexpr TorqueUnit torqueUnits[] = {TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch, TorqueUnit::KilogramForceMetre,
                                      TorqueUnit::KilogramForceCentimetre};
constexpr AngleUnit angleUnits[] = {AngleUnit::Degree, AngleUnit::Turn};

TEST(Units, FactorsAreExact)
{
    // NIST SP 811 (2008) App. B.6 and its footnotes: 1 in = 25.4 mm, 1 lbf = 4.448 221 615 260 5 N, 1 kgf = 9.806 65 N, all exact.
    const Rational poundForce(44'482'216'152'605, 10'000);
    EXPECT_EQ(factor(LengthUnit::Millimetre), Rational(1'000'000));
    EXPECT_EQ(factor(LengthUnit::Inch), Rational(25'400'000));
    EXPECT_EQ(factor(LengthUnit::Thou), Rational(25'400));
    EXPECT_EQ(factor(TorqueUnit::NewtonMetre), Rational(1'000'000'000));
    EXPECT_EQ(factor(TorqueUnit::PoundFoot), poundForce.times(Rational(3'048, 10'000)));
    EXPECT_EQ(factor(TorqueUnit::PoundInch), poundForce.times(Rational(254, 10'000)));
    EXPECT_EQ(factor(TorqueUnit::PoundInch).times(Rational(12)), factor(TorqueUnit::PoundFoot));
    EXPECT_EQ(factor(TorqueUnit::KilogramForceMetre), Rational(9'806'650'000));
    EXPECT_EQ(factor(TorqueUnit::KilogramForceCentimetre), Rational(98'066'500));
    EXPECT_EQ(factor(AngleUnit::Degree), Rational(anglePerDegree));
    EXPECT_EQ(factor(AngleUnit::Turn), factor(AngleUnit::Degree).times(Rational(360)));
}

TEST(Units, ConvertAsPrintedInTables)
{
    // NIST SP 811 App. B.8 prints 1.355 818 and 0.112 984 8; the long forms are those of GNU units 2.22.
    EXPECT_EQ(formatNumber(parse<Torque>("1 ft-lb", TorqueUnit::NewtonMetre)->value, TorqueUnit::NewtonMetre, 6), "1.355818");
    EXPECT_EQ(formatNumber(parse<Torque>("1 in-lb", TorqueUnit::NewtonMetre)->value, TorqueUnit::NewtonMetre, 7), "0.1129848");
    EXPECT_DOUBLE_EQ(factor(TorqueUnit::PoundFoot).toDouble(), 1.3558179483314004e9);
    EXPECT_DOUBLE_EQ(factor(TorqueUnit::PoundInch).toDouble(), 0.1129848290276167e9);
    // The same table: exact conversions.
    EXPECT_EQ(formatExact(parse<Torque>("1 kgf·m", TorqueUnit::NewtonMetre)->value, TorqueUnit::NewtonMetre), "9.80665 N·m");
    EXPECT_EQ(formatExact(parse<Torque>("1 kgf·cm", TorqueUnit::NewtonMetre)->value, TorqueUnit::NewtonMetre), "0.0980665 N·m");
    EXPECT_EQ(formatExact(parse<Length>("1 thou", LengthUnit::Inch)->value, LengthUnit::Millimetre), "0.0254 mm");
    EXPECT_EQ(formatExact(parse<Length>("1 in", LengthUnit::Inch)->value, LengthUnit::Millimetre), "25.40 mm");
}

const char *udunitsName(LengthUnit unit)
{
    switch (unit) {
    case LengthUnit::Millimetre: return "mm";
    case LengthUnit::Inch: return "international_inch";
    case LengthUnit::Thou: return "0.001 international_inch";
    }
    return "";
}

const char *udunitsName(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::NewtonMetre: return "N m";
    case TorqueUnit::PoundFoot: return "force_pound international_foot";
    case TorqueUnit::PoundInch: return "force_pound international_inch";
    case TorqueUnit::KilogramForceMetre: return "kilogram_force m";
    case TorqueUnit::KilogramForceCentimetre: return "kilogram_force cm";
    }
    return "";
}

const char *udunitsName(AngleUnit unit)
{
    return unit == AngleUnit::Turn ? "turn" : "arc_degree";
}

template <class Units>
void expectSameFactors(const Udunits &theirUnits, const Units &units)
{
    for (const auto from : units) {
        for (const auto to : units) {
            const double ours = factor(from).toDouble() / factor(to).toDouble();
            const double theirs = theirUnits.convert(1.0, udunitsName(from), udunitsName(to));
            EXPECT_NEAR(ours / theirs, 1.0, 1e-14) << udunitsName(from) << " to " << udunitsName(to);
        }
    }
}

TEST(Units, AgreeWithUdunits)
{
    const Udunits theirUnits;
    ASSERT_TRUE(theirUnits.isThere()) << "the unit database of libudunits2 is missing";
    expectSameFactors(theirUnits, lengthUnits);
    expectSameFactors(theirUnits, torqueUnits);
    expectSameFactors(theirUnits, angleUnits);
}

TEST(Units, BelongToTheSystemManualsPrintThemIn)
{
    EXPECT_EQ(systemOf(LengthUnit::Millimetre), UnitSystem::Metric);
    EXPECT_EQ(systemOf(LengthUnit::Inch), UnitSystem::Inch);
    EXPECT_EQ(systemOf(LengthUnit::Thou), UnitSystem::Inch);
    EXPECT_EQ(systemOf(TorqueUnit::NewtonMetre), UnitSystem::Metric);
    EXPECT_EQ(systemOf(TorqueUnit::PoundFoot), UnitSystem::Inch);
    EXPECT_EQ(systemOf(TorqueUnit::PoundInch), UnitSystem::Inch);
    EXPECT_EQ(systemOf(TorqueUnit::KilogramForceMetre), UnitSystem::Metric);
    EXPECT_EQ(systemOf(TorqueUnit::KilogramForceCentimetre), UnitSystem::Metric);
    EXPECT_EQ(systemOf(AngleUnit::Turn), systemOf(AngleUnit::Degree)); // an angle is printed once
}

TEST(Units, KeepTheirStoredNames)
{
    // Written in garage files: these may never change.
    const std::pair<LengthUnit, const char *> lengths[] = {
        {LengthUnit::Millimetre, "mm"}, {LengthUnit::Inch, "in"}, {LengthUnit::Thou, "thou"}};
    const std::pair<TorqueUnit, const char *> torques[] = {{TorqueUnit::NewtonMetre, "Nm"},
                                                           {TorqueUnit::PoundFoot, "lbf.ft"},
                                                           {TorqueUnit::PoundInch, "lbf.in"},
                                                           {TorqueUnit::KilogramForceMetre, "kgf.m"},
                                                           {TorqueUnit::KilogramForceCentimetre, "kgf.cm"}};
    for (const auto &[unit, name] : lengths) {
        EXPECT_EQ(storedName(unit), name);
        EXPECT_EQ(lengthUnitStored(name), unit);
    }
    for (const auto &[unit, name] : torques) {
        EXPECT_EQ(storedName(unit), name);
        EXPECT_EQ(torqueUnitStored(name), unit);
    }
    const std::pair<AngleUnit, const char *> angles[] = {{AngleUnit::Degree, "deg"}, {AngleUnit::Turn, "turn"}};
    for (const auto &[unit, name] : angles) {
        EXPECT_EQ(storedName(unit), name);
        EXPECT_EQ(angleUnitStored(name), unit);
    }
    EXPECT_EQ(angleUnitStored("°"), std::nullopt);
    EXPECT_EQ(angleUnitStored("turns"), std::nullopt);
    EXPECT_EQ(lengthUnitStored("MM"), std::nullopt);
    EXPECT_EQ(lengthUnitStored(""), std::nullopt);
    EXPECT_EQ(lengthUnitStored("Nm"), std::nullopt);
    EXPECT_EQ(torqueUnitStored("N·m"), std::nullopt);
}

TEST(Units, SymbolsAndStoredNamesAreSpellingsToo)
{
    for (const LengthUnit unit : lengthUnits) {
        EXPECT_EQ(unitSpelled<Length>(symbol(unit)), unit);
        EXPECT_EQ(unitSpelled<Length>(storedName(unit)), unit);
    }
    for (const TorqueUnit unit : torqueUnits) {
        EXPECT_EQ(unitSpelled<Torque>(symbol(unit)), unit);
        EXPECT_EQ(unitSpelled<Torque>(storedName(unit)), unit);
    }
    for (const AngleUnit unit : angleUnits) {
        EXPECT_EQ(unitSpelled<Angle>(symbol(unit)), unit);
        EXPECT_EQ(unitSpelled<Angle>(storedName(unit)), unit);
    }
    EXPECT_EQ(acceptedUnits<Length>(), "mm, in, thou");
    EXPECT_EQ(acceptedUnits<Torque>(), "N·m, lbf·ft, lbf·in, kgf·m, kgf·cm");
    EXPECT_EQ(acceptedUnits<Angle>(), "°, turn");
}

TEST(Units, LengthSpellings)
{
    struct Row {
        const char *spelling;
        std::optional<LengthUnit> unit;
    };
    const Row rows[] = {
        {"mm", LengthUnit::Millimetre},
        {"MM", LengthUnit::Millimetre},
        {"millimetres", LengthUnit::Millimetre},
        {"in", LengthUnit::Inch},
        {"in.", LengthUnit::Inch},
        {"Inch", LengthUnit::Inch},
        {"inches", LengthUnit::Inch},
        {"\"", LengthUnit::Inch},
        {"″", LengthUnit::Inch},
        {"”", LengthUnit::Inch},
        {"thou", LengthUnit::Thou},
        {"mil", std::nullopt},
        {"m", std::nullopt},
        {"cm", std::nullopt},
        {"nm", std::nullopt},
        {"m m", std::nullopt},
        {"i-n", std::nullopt},
        {"in-", std::nullopt},
        {"in..", std::nullopt},
        {"'", std::nullopt},
        {"''", std::nullopt},
        {"inn", std::nullopt},
        {"mmm", std::nullopt},
        {"in-lb", std::nullopt},
        {"", std::nullopt},
    };
    for (const Row &row : rows)
        EXPECT_EQ(unitSpelled<Length>(row.spelling), row.unit) << row.spelling;
}

TEST(Units, TorqueSpellings)
{
    struct Row {
        const char *spelling;
        std::optional<TorqueUnit> unit;
    };
    const Row rows[] = {
        {"N·m", TorqueUnit::NewtonMetre},
        {"N⋅m", TorqueUnit::NewtonMetre},
        {"N•m", TorqueUnit::NewtonMetre},
        {"N.m", TorqueUnit::NewtonMetre},
        {"N-m", TorqueUnit::NewtonMetre},
        {"N m", TorqueUnit::NewtonMetre},
        {"N\u00A0m", TorqueUnit::NewtonMetre},
        {"Nm", TorqueUnit::NewtonMetre},
        {"NM", TorqueUnit::NewtonMetre},
        {"nm", TorqueUnit::NewtonMetre},
        {"ft-lb", TorqueUnit::PoundFoot},
        {"ft‑lb", TorqueUnit::PoundFoot},
        {"ft·lb", TorqueUnit::PoundFoot},
        {"ft lb", TorqueUnit::PoundFoot},
        {"ft lbs", TorqueUnit::PoundFoot},
        {"FT-LBS", TorqueUnit::PoundFoot},
        {"ft.-lb.", TorqueUnit::PoundFoot},
        {"ft. lb.", TorqueUnit::PoundFoot},
        {"ftlb", TorqueUnit::PoundFoot},
        {"lb-ft", TorqueUnit::PoundFoot},
        {"lbs-ft", TorqueUnit::PoundFoot},
        {"lbf·ft", TorqueUnit::PoundFoot},
        {"lbf ft", TorqueUnit::PoundFoot},
        {"ft·lbf", TorqueUnit::PoundFoot},
        {"foot-pounds", TorqueUnit::PoundFoot},
        {"pound-feet", TorqueUnit::PoundFoot},
        {"in-lb", TorqueUnit::PoundInch},
        {"in-lbs", TorqueUnit::PoundInch},
        {"in. lb.", TorqueUnit::PoundInch},
        {"lbf·in", TorqueUnit::PoundInch},
        {"lb in", TorqueUnit::PoundInch},
        {"inch-pounds", TorqueUnit::PoundInch},
        {"kgf·m", TorqueUnit::KilogramForceMetre},
        {"kgfm", TorqueUnit::KilogramForceMetre},
        {"kg·m", TorqueUnit::KilogramForceMetre},
        {"kgm", TorqueUnit::KilogramForceMetre},
        {"m·kg", TorqueUnit::KilogramForceMetre},
        {"mkg", TorqueUnit::KilogramForceMetre},
        {"mkp", TorqueUnit::KilogramForceMetre},
        {"kgf·cm", TorqueUnit::KilogramForceCentimetre},
        {"kgf cm", TorqueUnit::KilogramForceCentimetre},
        {"kg-cm", TorqueUnit::KilogramForceCentimetre},
        {"cm·kg", TorqueUnit::KilogramForceCentimetre},
        {"ft/lb", std::nullopt},
        {"ft--lb", std::nullopt},
        {"ft-lb-", std::nullopt},
        {"-ft-lb", std::nullopt},
        {"ft", std::nullopt},
        {"lb", std::nullopt},
        {"N", std::nullopt},
        {"mN·m", std::nullopt},
        {"kN·m", std::nullopt},
        {"daN·m", std::nullopt},
        {"oz-in", std::nullopt},
        {"kg", std::nullopt},
        {"in", std::nullopt},
        {"N·m²", std::nullopt},
        {"N·m\xFF", std::nullopt},
        {"", std::nullopt},
    };
    for (const Row &row : rows)
        EXPECT_EQ(unitSpelled<Torque>(row.spelling), row.unit) << row.spelling;
}

TEST(Units, AngleSpellings)
{
    for (const char *spelling : {"°", "º", "deg", "deg.", "Degree", "degrees"})
        EXPECT_EQ(unitSpelled<Angle>(spelling), AngleUnit::Degree) << spelling;
    for (const char *spelling : {"turn", "turns", "Turns", "TURN", "tr", "tr.", "rev", "rev.", "revs"})
        EXPECT_EQ(unitSpelled<Angle>(spelling), AngleUnit::Turn) << spelling;
    for (const char *spelling : {"", "rad", "d", "'", "°C", "mm", "t", "turn turn", "trs", "rpm", "re"})
        EXPECT_EQ(unitSpelled<Angle>(spelling), std::nullopt) << spelling;
}

} // namespace units_tests
} // namespace asleft
