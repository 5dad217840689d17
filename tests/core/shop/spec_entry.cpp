// A spec as its fields are typed: what of it is read, what is refused where, and what is asked about.
#include <shop/spec_entry.h>

#include <gtest/gtest.h>

namespace asleft {
namespace spec_entry_tests {

using Field = SpecField;
using Refusals = std::map<Field, ErrorKind>;

SpecTyped lash(const char *band, const char *other = "", SpecUnit unit = LengthUnit::Millimetre)
{
    SpecTyped typed;
    typed.texts = {{Field::Band, band}, {Field::OtherBand, other}, {Field::Manual, "Workshop manual"}, {Field::Page, "41"}};
    typed.unit = unit;
    return typed;
}

SpecReading read(const SpecTyped &typed, SpecSubject subject = SpecSubject::IntakeLash)
{
    return readSpec(subject, typed, DecimalMark::Point);
}

Refusals refusedIn(const SpecTyped &typed)
{
    Refusals kinds;
    for (const auto &[field, error] : read(typed).refusals)
        kinds.emplace(field, error.kind);
    return kinds;
}

TEST(SpecEntry, ALashIsReadWhole)
{
    SpecTyped typed = lash("0.30-0.46", ".012-.018 in");
    typed.condition = EngineCondition::Hot;
    typed.certainty = Certainty::FromMemory;
    const SpecReading reading = read(typed);
    EXPECT_EQ(reading.refusals, (std::map<Field, Error>{}));
    EXPECT_EQ(reading.text.band, "0.30-0.46");
    EXPECT_EQ(reading.text.otherBand, ".012-.018 in");
    EXPECT_EQ(reading.text.condition, EngineCondition::Hot);
    EXPECT_EQ(reading.text.source, (SpecSource{"Workshop manual", "41", Certainty::FromMemory}));
    ASSERT_EQ(reading.bands.size(), 2U);
    EXPECT_EQ(std::get<Band<Length>>(reading.bands.at(Field::OtherBand)).unit, LengthUnit::Inch);
    ASSERT_TRUE(reading.lash);
    EXPECT_TRUE(reading.lash->second);
    EXPECT_TRUE(reading.meant.empty());
}

TEST(SpecEntry, ASecondBandThatCountsInAnotherUnitIsStoredWithIt)
{
    EXPECT_EQ(read(lash("0.30-0.46 mm", ".012-.018", LengthUnit::Inch)).text.otherBand, ".012-.018 in");
    EXPECT_EQ(read(lash("20-24 N·m", "15-18", TorqueUnit::PoundFoot), SpecSubject::LockNut).text.otherBand, "15-18 lbf·ft");
}

TEST(SpecEntry, ATorqueIsReadInItsUnit)
{
    const SpecReading reading = read(lash("20-24", "", TorqueUnit::PoundFoot), SpecSubject::LockNut);
    EXPECT_EQ(reading.refusals, (std::map<Field, Error>{}));
    EXPECT_EQ(reading.text.torqueUnit, TorqueUnit::PoundFoot);
    EXPECT_EQ(std::get<Band<Torque>>(reading.bands.at(Field::Band)).unit, TorqueUnit::PoundFoot);
    EXPECT_FALSE(reading.lash);
}

TEST(SpecEntry, TurnsAreStoredWithTheirUnitAndHaveNoSecondBand)
{
    EXPECT_EQ(read(lash("3/4", "left from before", AngleUnit::Turn)).text.band, "3/4 turn");
    EXPECT_EQ(read(lash("3/4", "left from before", AngleUnit::Turn)).text.otherBand, "");
    EXPECT_EQ(read(lash("270°", "", AngleUnit::Turn)).text.band, "270°");
    EXPECT_EQ(refusedIn(lash("far", "", AngleUnit::Turn)), (Refusals{{Field::Band, ErrorKind::NotANumber}}));
    EXPECT_TRUE(mayBeTurns(SpecSubject::BridgeScrew, AdjusterKind::Screw));
    EXPECT_TRUE(mayBeTurns(SpecSubject::IntakeLash, AdjusterKind::Hydraulic));
    EXPECT_FALSE(mayBeTurns(SpecSubject::IntakeLash, AdjusterKind::Screw));
}

TEST(SpecEntry, EachFieldIsRefusedByItself)
{
    const std::string tooLong(longestName + 1, 'x');
    EXPECT_EQ(refusedIn({}), (Refusals{{Field::Band, ErrorKind::EmptyText}}));
    EXPECT_EQ(refusedIn(lash("tight")), (Refusals{{Field::Band, ErrorKind::NotANumber}}));
    EXPECT_EQ(refusedIn(lash("20 N·m")), (Refusals{{Field::Band, ErrorKind::UnknownUnit}}));
    EXPECT_EQ(refusedIn(lash("0.3 mm", "high")), (Refusals{{Field::OtherBand, ErrorKind::NotANumber}}));
    EXPECT_EQ(refusedIn(lash("0.3 mm", "0.4 mm")), (Refusals{{Field::OtherBand, ErrorKind::BandSameSystem}}));
    EXPECT_EQ(refusedIn(lash("0.30-0.32 mm", ".020 in")), (Refusals{{Field::OtherBand, ErrorKind::BandSystemsDiffer}}));
    SpecTyped typed = lash("tight", "high");
    typed.texts[Field::Manual] = typed.texts[Field::Page] = tooLong;
    EXPECT_EQ(refusedIn(typed), (Refusals{{Field::Band, ErrorKind::NotANumber},
                                          {Field::OtherBand, ErrorKind::NotANumber},
                                          {Field::Manual, ErrorKind::TextTooLong},
                                          {Field::Page, ErrorKind::TextTooLong}}));
}

TEST(SpecEntry, OfABadOneTheFirstBandIsDrawn)
{
    const SpecReading reading = read(lash("0.30-0.32 mm", ".020 in"));
    ASSERT_TRUE(reading.lash);
    EXPECT_FALSE(reading.lash->second);
    EXPECT_EQ(reading.bands.size(), 2U);
    EXPECT_FALSE(read(lash("tight", ".020 in")).lash);
}

TEST(SpecEntry, ALashOfAnotherUnitIsAskedAbout)
{
    EXPECT_EQ(read(lash("0.016")).meant, (std::map<Field, LengthUnit>{{Field::Band, LengthUnit::Inch}}));
    EXPECT_TRUE(read(lash("0.016")).refusals.empty()) << "it can be taken all the same";
    EXPECT_TRUE(read(lash("0.016"), SpecSubject::Injector).meant.empty()) << "what is of another size";
    EXPECT_TRUE(readSpec(SpecSubject::IntakeLash, lash("0.016"), DecimalMark::Point, AdjusterKind::Hydraulic).meant.empty());
}

TEST(SpecEntry, AStoredRevisionComesBackAsTyped)
{
    const auto stored = [](auto asked) {
        return Spec{SpecId(1), EngineId(1), SpecSubject::IntakeLash, 1, EngineCondition::Hot, {"Manual", "7", Certainty::Assumed}, asked};
    };
    const auto first = parseBand<Length>(".012-.018", LengthUnit::Inch).value();
    const auto second = parseBand<Length>("0.30-0.46", LengthUnit::Millimetre).value();
    SpecTyped typed = typedOf(stored(SpecBand<Length>{first, second}));
    EXPECT_EQ(typed.text(Field::Band), ".012-.018");
    EXPECT_EQ(typed.text(Field::OtherBand), "0.30-0.46 mm");
    EXPECT_EQ(typed.unit, SpecUnit(LengthUnit::Inch));
    EXPECT_EQ(typed.text(Field::Page), "7");
    EXPECT_EQ(typed.condition, EngineCondition::Hot);
    EXPECT_EQ(typed.certainty, Certainty::Assumed);
    typed = typedOf(stored(SpecBand<Angle>{parseBand<Angle>("270°", AngleUnit::Turn).value(), std::nullopt}));
    EXPECT_EQ(typed.text(Field::Band), "270°");
    EXPECT_EQ(typed.unit, SpecUnit(AngleUnit::Turn));
}

} // namespace spec_entry_tests
} // namespace asleft
