#include "grey.h"
#include "gui.h"

#include <draw/joint_drawing.h>

#include <QPainter>

namespace asleft {

namespace fasteners_tests {

/// Every state a fastener can be in, each looking like no other.
QList<FastenerLook> allLooks()
{
    using Stage = FastenerStage;
    QList<FastenerLook> looks{{}, {.stage = Stage::Loose}, {.stage = Stage::Loose, .amiss = true}, {.stage = Stage::Partway}};
    for (const Verdict verdict : {Verdict::Inside, Verdict::Low, Verdict::High, Verdict::TooClose, Verdict::ByFeel}) {
        for (const bool accepted : {false, true})
            looks << FastenerLook{.stage = Stage::Tight, .verdict = verdict, .accepted = accepted};
    }
    looks << FastenerLook{.amiss = true};
    return looks;
}

QImage drawn(const FastenerLook &look, Look colours)
{
    QImage image(side, side, QImage::Format_RGB32);
    image.fill(ink(colours).casting);
    QPainter painter(&image);
    paintFastener(painter, image.rect(), look, ink(colours));
    painter.end();
    return image.convertToFormat(QImage::Format_Grayscale8);
}

std::string told(const FastenerLook &look)
{
    return lookWords(look).toStdString() + (look.toTick ? " to tick" : "") + (look.inHand ? " in hand" : "");
}

void expectAllApart(const QList<FastenerLook> &looks, Look colours)
{
    for (qsizetype first = 0; first < looks.size(); ++first) {
        for (qsizetype second = first + 1; second < looks.size(); ++second) {
            const int apart = pixelsApart(blurred(drawn(looks[first], colours)), blurred(drawn(looks[second], colours)));
            EXPECT_GE(apart, 20) << told(looks[first]) << " / " << told(looks[second]);
        }
    }
}

class FastenersInEachLook : public ::testing::TestWithParam<Look> {};

TEST_P(FastenersInEachLook, StatesAreToldApartInBlurredGrey)
{
    expectAllApart(allLooks(), GetParam());
}

TEST_P(FastenersInEachLook, StatesAreToldApartOnTheDiscAndInHand)
{
    QList<FastenerLook> looks = allLooks();
    for (FastenerLook &look : looks)
        look.toTick = look.inHand = true;
    expectAllApart(looks, GetParam());
}

TEST_P(FastenersInEachLook, WhatIsToTickAndInHandIsToldApartWhateverTheState)
{
    for (const FastenerLook &state : allLooks()) {
        QList<FastenerLook> looks(4, state);
        looks[1].toTick = looks[2].inHand = looks[3].toTick = looks[3].inHand = true;
        expectAllApart({looks[0], looks[1], looks[2]}, GetParam());
        expectAllApart({looks[1], looks[3]}, GetParam());
    }
}

TEST_P(FastenersInEachLook, AFastenerIsNeverTakenForASettingPoint)
{
    const auto point = [](const PointLook &look) {
        QImage image(side, side, QImage::Format_RGB32);
        image.fill(ink(GetParam()).casting);
        QPainter painter(&image);
        paintPoint(painter, image.rect(), look, ink(GetParam()));
        painter.end();
        return blurred(image.convertToFormat(QImage::Format_Grayscale8));
    };
    using Stage = FastenerStage;
    const std::pair<FastenerLook, PointLook> alike[] = {
        {{}, {}},
        {{.stage = Stage::Loose}, {PointStage::NutOpen}},
        {{.stage = Stage::Partway}, {PointStage::Found, Verdict::Inside}},
        {{.stage = Stage::Tight, .verdict = Verdict::Low}, {PointStage::Left, Verdict::Low}},
        {{.stage = Stage::Tight, .verdict = Verdict::TooClose}, {PointStage::Left, Verdict::TooClose}},
        {{.stage = Stage::Tight, .verdict = Verdict::ByFeel}, {PointStage::Left, Verdict::ByFeel}},
    };
    for (const auto &[fastener, setting] : alike)
        EXPECT_GE(pixelsApart(blurred(drawn(fastener, GetParam())), point(setting)), 20) << told(fastener);
}

INSTANTIATE_TEST_SUITE_P(Looks, FastenersInEachLook, ::testing::Values(Look::Light, Look::Dark));

TEST(Fasteners, NothingIsPaintedOutsideTheSquare)
{
    for (FastenerLook look : allLooks()) {
        look.toTick = look.inHand = true;
        QImage image(3 * side, 3 * side, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paintFastener(painter, QRectF(side, side, side, side), look, ink(Look::Light));
        painter.end();
        EXPECT_TRUE(isWhiteAround(image)) << told(look);
    }
}

TEST(Fasteners, WhatCannotBeUsedIsFaint)
{
    EXPECT_NE(drawn({.stage = FastenerStage::Partway, .enabled = false}, Look::Light),
              drawn({.stage = FastenerStage::Partway}, Look::Light));
}

TEST(Fasteners, TheLegendNamesEveryStateOnce)
{
    QStringList words;
    for (const FastenerLegendLine &line : fastenerLegend()) {
        EXPECT_FALSE(line.words.isEmpty());
        EXPECT_FALSE(words.contains(line.words)) << line.words.toStdString();
        words.append(line.words);
    }
    for (const FastenerLook &look : allLooks()) {
        const bool plain = look.stage != FastenerStage::Untouched && (look.verdict != Verdict::Inside || !look.accepted);
        EXPECT_TRUE(!plain || words.contains(lookWords(look))) << told(look);
    }
}

TEST(Fasteners, WordsSayTheState)
{
    using Stage = FastenerStage;
    const auto words = [](const FastenerLook &look) { return lookWords(look).toStdString(); };
    EXPECT_EQ(words({}), "untouched");
    EXPECT_EQ(words({.stage = Stage::Loose}), "loose");
    EXPECT_EQ(words({.stage = Stage::Partway, .byFeel = true}), "partway");
    EXPECT_EQ(words({.stage = Stage::Tight}), "tight");
    EXPECT_EQ(words({.stage = Stage::Tight, .verdict = Verdict::Inside}), "tight, inside");
    EXPECT_EQ(words({.stage = Stage::Tight, .byFeel = true, .accepted = true}), "tight by feel, accepted");
    // A torque at the target does not hide that a pass before it was made by feel.
    EXPECT_EQ(words({.stage = Stage::Tight, .verdict = Verdict::Inside, .byFeel = true}), "tight by feel");
    EXPECT_EQ(words({.stage = Stage::Tight, .verdict = Verdict::Low, .byFeel = true}), "tight, below its band");
}

constexpr JointId cover(7);

/// At the target.
TickMade tickOf(int fastener, std::optional<Verdict> verdict, TickHow how = TickHow::SetTool)
{
    const Tick tick{{fastener, 0, 1}, false};
    TicksFact fact{cover, 1, {}, how};
    return {ActSeq(1), Moment{}, PersonId(1), tick, fact, std::nullopt, verdict, Brings::Torque};
}

/// Four in a row in the second of two passes, the first two of it done.
JobState stateOf(const FastenerState &first)
{
    JobState state;
    JointState &joint = state.joints[cover];
    for (const int number : {1, 2, 3, 4})
        joint.fasteners[number] = {};
    joint.fasteners[1] = first;
    joint.progress.next = TickSlot{4, 1, 1};
    joint.progress.pass = 1;
    joint.progress.doneInRound = {2, 1};
    return state;
}

FastenerState tight(std::optional<Verdict> verdict, TickHow how = TickHow::SetTool)
{
    FastenerState fastener;
    fastener.stage = FastenerStage::Tight;
    fastener.ticks = {tickOf(1, verdict, how)};
    return fastener;
}

TEST(Fasteners, WhatHasNoTickInTheRoundInHandIsToTick)
{
    JobState state = stateOf(tight(Verdict::Inside));
    EXPECT_FALSE(lookOf(state, cover, 1, false).toTick);
    EXPECT_FALSE(lookOf(state, cover, 2, false).toTick);
    EXPECT_TRUE(lookOf(state, cover, 3, false).toTick);
    EXPECT_TRUE(lookOf(state, cover, 4, true).toTick);
    EXPECT_TRUE(lookOf(state, cover, 4, true).inHand);
    state.joints.at(cover).progress.next.reset();
    EXPECT_FALSE(lookOf(state, cover, 4, true).toTick);
}

TEST(Fasteners, TheVerdictIsThatOfATightOne)
{
    EXPECT_EQ(lookOf(stateOf(tight(Verdict::TooClose)), cover, 1, false).verdict, Verdict::TooClose);
    FastenerState partway = tight(Verdict::Low);
    partway.stage = FastenerStage::Partway;
    EXPECT_EQ(lookOf(stateOf(partway), cover, 1, false).verdict, std::nullopt);
    EXPECT_TRUE(lookOf(stateOf(tight(Verdict::ByFeel, TickHow::ByFeel)), cover, 1, false).byFeel);
}

TEST(Fasteners, AcceptedIsWhatIsShown)
{
    FastenerState low = tight(Verdict::Low);
    low.feelAccepted = "it was by feel";
    EXPECT_FALSE(lookOf(stateOf(low), cover, 1, false).accepted);
    low.torqueAccepted = "by the maker";
    EXPECT_TRUE(lookOf(stateOf(low), cover, 1, false).accepted);
    FastenerState felt = tight(Verdict::ByFeel, TickHow::ByFeel);
    felt.torqueAccepted = "no wrench";
    EXPECT_FALSE(lookOf(stateOf(felt), cover, 1, false).accepted);
    felt.feelAccepted = "no wrench";
    EXPECT_TRUE(lookOf(stateOf(felt), cover, 1, false).accepted);
}

TEST(Fasteners, WhatWasFoundBadIsSoUntilItIsTicked)
{
    for (const FoundHow how : {FoundHow::NotNoted, FoundHow::Measured, FoundHow::LooseByFeel, FoundHow::TightByFeel, FoundHow::Missing,
                               FoundHow::Broken, FoundHow::WrongLength}) {
        FastenerState fastener;
        fastener.stage = FastenerStage::Loose;
        fastener.found = FastenerFound{ActSeq(1), Moment{}, PersonId(1), how, std::nullopt, ""};
        fastener.amiss = how >= FoundHow::Missing;
        EXPECT_EQ(lookOf(stateOf(fastener), cover, 1, false).amiss, fastener.amiss) << static_cast<int>(how);
        fastener.ticks = {tickOf(1, std::nullopt)};
        EXPECT_FALSE(lookOf(stateOf(fastener), cover, 1, false).amiss);
    }
}

} // namespace fasteners_tests

} // namespace asleft
