// Specs and turning tables: revised, never edited.
#include "support.h"

#include <algorithm>

namespace asleft {
namespace specs_tests {

class Specs : public WorkTest {
protected:
    NewVehicle tractor = need(addVehicle(*garage, tractorText()));
    Result<SpecId> revise(const SpecText &text, SpecSubject subject = SpecSubject::IntakeLash)
    {
        return reviseSpec(*garage, tractor.engine, subject, text);
    }
    std::vector<Spec> all() { return need(specs(*garage, tractor.engine)); }
};

TEST_F(Specs, AreRevised)
{
    const SpecId first = need(revise(lashText("0.30 ± 0.05 mm")));
    const SpecId second = need(revise(lashText("0.28 ± 0.05 mm")));
    const SpecId exhaust = need(revise(lashText("0.40 mm", EngineCondition::Hot), SpecSubject::ExhaustLash));
    const auto known = all();
    ASSERT_EQ(known.size(), 3U);
    EXPECT_EQ(known[0].id, first);
    EXPECT_EQ(known[0].revision, 1);
    EXPECT_EQ(known[1].id, second);
    EXPECT_EQ(known[1].revision, 2);
    EXPECT_EQ(known[2].id, exhaust);
    EXPECT_EQ(known[2].revision, 1);
    EXPECT_EQ(known[2].condition, EngineCondition::Hot);
    EXPECT_EQ(known[0].source, (SpecSource{"Hollin workshop manual", "41"}));
    EXPECT_EQ(std::get<SpecBand<Length>>(known[0].asked).first.text, "0.30 ± 0.05 mm");
}

TEST_F(Specs, TheSameAgainStoresNothing)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&] { ++told; });
    const SpecId first = need(revise(lashText("0.30 ± 0.05 mm")));
    SpecText blanks = lashText("0.30 ± 0.05 mm");
    blanks.source.manual = " Hollin workshop manual ";
    EXPECT_EQ(need(revise(blanks)), first);
    EXPECT_EQ(all().size(), 1U);
    EXPECT_EQ(told, 1);

    SpecText hot = lashText("0.30 ± 0.05 mm", EngineCondition::Hot);
    EXPECT_NE(need(revise(hot)), first);
    SpecText unsure = hot;
    unsure.source.certainty = Certainty::FromMemory;
    need(revise(unsure));
    EXPECT_EQ(all().size(), 3U);
}

TEST_F(Specs, BackToWhatItWasIsARevisionToo)
{
    const SpecId first = need(revise(lashText("0.30 ± 0.05 mm")));
    need(revise(lashText("0.28 ± 0.05 mm")));
    EXPECT_NE(need(revise(lashText("0.30 ± 0.05 mm"))), first);
    EXPECT_EQ(all().size(), 3U);
}

TEST_F(Specs, OfBothSystemsAndOfTorques)
{
    SpecText both = lashText("0.30 ± 0.05 mm");
    both.otherBand = ".012 ± .002 in";
    need(revise(both));
    SpecText torque = lashText("16 ± 2");
    torque.torqueUnit = TorqueUnit::PoundFoot;
    need(revise(torque, SpecSubject::LockNut));
    const auto known = all();
    const auto &lash = std::get<SpecBand<Length>>(known[0].asked);
    ASSERT_TRUE(lash.second);
    EXPECT_EQ(lash.second->nominal, thou(12));
    EXPECT_EQ(std::get<SpecBand<Torque>>(known[1].asked).first.unit, TorqueUnit::PoundFoot);
}

struct BandText {
    const char *text;
    LengthUnit unit;
    bool isTurns;
};

class BandTexts : public WorkTest, public testing::WithParamInterface<BandText> {};

TEST_P(BandTexts, AreTurnsWhereTheyNameThem)
{
    const NewVehicle tractor = need(addVehicle(*garage, tractorText()));
    SpecText text = lashText(GetParam().text);
    text.lengthUnit = GetParam().unit;
    need(reviseSpec(*garage, tractor.engine, SpecSubject::BridgeScrew, text));
    EXPECT_EQ(std::holds_alternative<SpecBand<Angle>>(need(specs(*garage, tractor.engine)).at(0).asked), GetParam().isTurns);
}

INSTANTIATE_TEST_SUITE_P(All, BandTexts,
                         testing::Values(BandText{"3/4 turn", LengthUnit::Millimetre, true},
                                         BandText{"1 ± 1/4 turn", LengthUnit::Millimetre, true},
                                         BandText{"270°", LengthUnit::Millimetre, true}, BandText{"45° ± 15°", LengthUnit::Inch, true},
                                         BandText{"1/2 to 1 turn", LengthUnit::Thou, true}, BandText{"0.75", LengthUnit::Millimetre, false},
                                         BandText{"3/4", LengthUnit::Inch, false}, BandText{"1 ± 0.25", LengthUnit::Millimetre, false},
                                         BandText{"0.40 mm", LengthUnit::Thou, false},
                                         BandText{"12 ± 2 thou", LengthUnit::Millimetre, false}));

TEST_F(Specs, OfEverySubject)
{
    const std::initializer_list<SpecSubject> subjects = {SpecSubject::IntakeLash,  SpecSubject::ExhaustLash,  SpecSubject::LockNut,
                                                         SpecSubject::BridgeScrew, SpecSubject::Decompressor, SpecSubject::Injector};
    for (const SpecSubject subject : subjects)
        need(revise(lashText(subject == SpecSubject::LockNut ? "22 N·m" : "0.5 mm"), subject));
    const auto known = all();
    ASSERT_EQ(known.size(), 6U);
    EXPECT_TRUE(std::ranges::equal(known, subjects, {}, &Spec::subject));
}

TEST_F(Specs, InTurnsAreKeptAsTyped)
{
    const SpecId first = need(revise(lashText("1 ± 1/4 turn")));
    EXPECT_EQ(need(revise(lashText("1 ± 1/4 turn"))), first) << "the same again stores nothing";
    const Spec stored = all().at(0);
    const auto &asked = std::get<SpecBand<Angle>>(stored.asked);
    EXPECT_EQ(asked.first.text, "1 ± 1/4 turn");
    EXPECT_EQ(asked.first.unit, AngleUnit::Turn);
    EXPECT_EQ(asked.first.low, degrees(270));
    EXPECT_EQ(asked.first.nominal, degrees(360));
    EXPECT_EQ(asked.first.high, degrees(450));
    EXPECT_NE(need(revise(lashText("0.30 mm"))), first) << "from turns to a collapsed clearance";
    EXPECT_EQ(all().at(1).revision, 2);
}

TEST_F(Specs, AreNotTurnsOfALockNutNorWhenTheyCannotBeRead)
{
    EXPECT_EQ(refusal(revise(lashText("3/4 turn"), SpecSubject::LockNut)), ErrorKind::UnknownUnit);
    EXPECT_EQ(refusal(revise(lashText("3/4 lap"))), ErrorKind::UnknownUnit);
    EXPECT_EQ(refusal(revise(lashText("1,250"))), ErrorKind::AmbiguousNumber);
    EXPECT_EQ(refusal(revise(lashText("999999999"))), ErrorKind::ValueTooLarge) << "not that many turns";
    EXPECT_TRUE(all().empty());
}

TEST_F(Specs, WhatIsRefusedStoresNothing)
{
    EXPECT_EQ(refusal(revise(lashText(""))), ErrorKind::EmptyText);
    EXPECT_EQ(refusal(revise(lashText("0.4-0.3 mm"))), ErrorKind::BandUpsideDown);
    SpecText apart = lashText("0.30 ± 0.05 mm");
    apart.otherBand = ".120 ± .002 in";
    EXPECT_EQ(refusal(revise(apart)), ErrorKind::BandSystemsDiffer);
    SpecText sameSystem = lashText("0.30 ± 0.05 mm");
    sameSystem.otherBand = "0.3 mm";
    EXPECT_EQ(refusal(revise(sameSystem)), ErrorKind::BandSameSystem);
    EXPECT_FALSE(revise(lashText("22 N·m")).has_value());
    EXPECT_FALSE(reviseSpec(*garage, EngineId(99), SpecSubject::IntakeLash, lashText("0.3 mm")).has_value());
    EXPECT_TRUE(all().empty());
}

TEST_F(Specs, ATableIsStoredAsTypedOrNotAtAll)
{
    EXPECT_FALSE(need(turningTable(*garage, tractor.engine)));
    const std::vector<TableLine> doubtful{{"1", CrankEvent::Compression, "IN 4"}, {"4", CrankEvent::Compression, "IN 3"}};
    need(reviseTable(*garage, tractor.engine, doubtful, {" Manual ", "6-60"}));
    const auto stored = need(turningTable(*garage, tractor.engine));
    ASSERT_TRUE(stored);
    EXPECT_EQ(stored->revision, 1);
    EXPECT_EQ(stored->source, (SpecSource{"Manual", "6-60"}));
    ASSERT_EQ(stored->lines.size(), 2U);
    EXPECT_EQ(stored->lines[1].points, "IN 3");

    EXPECT_EQ(refusal(reviseTable(*garage, tractor.engine, {}, {})), ErrorKind::TableEmpty);
    EXPECT_EQ(refusal(reviseTable(*garage, tractor.engine, {{"9", CrankEvent::Compression, "IN 1"}}, {})), ErrorKind::TableCylinder);
    EXPECT_EQ(refusal(reviseTable(*garage, EngineId(99), doubtful, {})), ErrorKind::NotFound);
    EXPECT_EQ(need(turningTable(*garage, tractor.engine))->revision, 1);
    need(reviseTable(*garage, tractor.engine, {{"1", CrankEvent::Compression, "IN 1"}}, {}));
    EXPECT_EQ(need(turningTable(*garage, tractor.engine))->revision, 2);
}

} // namespace specs_tests
} // namespace asleft
