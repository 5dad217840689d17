#include "gui.h"
#include "samples.h"

#include <draw/band_scale.h>
#include <draw/engine_drawing.h>

#include <QImage>
#include <QPainter>

namespace asleft {

namespace drawings_tests {

constexpr Layout allLayouts[] = {Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single, Layout::W, Layout::Radial, Layout::Opposed};

template <class Draw>
QImage drawn(QSize size, Draw draw)
{
    QImage image(size, QImage::Format_RGB32);
    image.fill(ink(Look::Light).paper);
    QPainter painter(&image);
    draw(painter);
    return image;
}

QImage scaleOf(const SpecBand<Length> *spec, const std::optional<ScaleValue> &value, int width = 400)
{
    return drawn({width, static_cast<int>(bandScaleHeight)}, [&](QPainter &painter) {
        paintBandScale(painter, QRectF(0, 0, width, bandScaleHeight), spec, LengthUnit::Millimetre, value, ink(Look::Light));
    });
}

QImage engineOfText(const EngineText &text)
{
    return drawn({400, 190}, [&](QPainter &painter) { paintEngine(painter, QRectF(0, 0, 400, 190), sketchOf(text), ink(Look::Light)); });
}

TEST(EngineDrawing, AnUnfinishedOrderIsStillDrawn)
{
    EngineText text = engineText(Layout::InLine, 6, "1-5-9-5-3");
    const EngineSketch sketch = sketchOf(text);
    EXPECT_FALSE(sketch.complete);
    EXPECT_EQ(sketch.firingOrder, (QList<QString>{QStringLiteral("1"), QStringLiteral("5"), QStringLiteral("3")}));
    EXPECT_EQ(sketch.banks.front().size(), 6);
    const QImage begun = engineOfText(text);
    text.firingOrder.clear();
    EXPECT_NE(begun, engineOfText(text));
}

TEST(EngineDrawing, AFinishedOrderIsTheDesignsOwn)
{
    const EngineSketch sketch = sketchOf(engineText(Layout::Vee, 8, "1-8-4-3-6-5-7-2"));
    EXPECT_TRUE(sketch.complete);
    EXPECT_EQ(sketch.firingOrder.size(), 8);
    EXPECT_EQ(sketch.banks.size(), 2);
}

TEST(EngineDrawing, AnythingTypedCanBeDrawn)
{
    for (const char *order : {"", "-", "1--2", "A1", "1-1-1-1", "999999999999999999999"}) {
        for (const char *numbering : {"", "/", "1 1 / 1", "A1 A2 / B1", "/ / /"}) {
            for (const Layout layout : allLayouts) {
                for (const int cylinders : {-1, 0, 1, 5, 200}) {
                    EngineText text = engineText(layout, cylinders, order);
                    text.numbering = numbering;
                    EXPECT_FALSE(engineOfText(text).isNull());
                }
            }
        }
    }
}

/// White around the middle part of an image, where nothing may have been painted.
bool isWhiteAround(const QImage &image, const QRect &middle)
{
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!middle.contains(x, y) && image.pixelColor(x, y) != QColor(Qt::white))
                return false;
        }
    }
    return true;
}

TEST(EngineDrawing, NothingIsPaintedOutsideItsArea)
{
    const QRect area(60, 60, 400, 190);
    for (const Layout layout : allLayouts) {
        const CylinderRange range = cylinderRange(layout);
        for (int cylinders = range.fewest; cylinders <= range.most; ++cylinders) {
            const auto design = designEngine(engineText(layout, cylinders));
            if (!design)
                continue;
            QImage image(520, 310, QImage::Format_RGB32);
            image.fill(Qt::white);
            QPainter painter(&image);
            paintEngine(painter, area, sketchOf(*design), ink(Look::Light));
            painter.end();
            EXPECT_TRUE(isWhiteAround(image, area.adjusted(-1, -1, 1, 1))) << static_cast<int>(layout) << "/" << cylinders;
        }
    }
}

TEST(EngineDrawing, ARadialOneTurnsTheOtherWayRound)
{
    EngineText text = engineText(Layout::Radial, 5, "1-3-5-2-4");
    const QImage clockwise = engineOfText(text);
    text.rotation = Rotation::Anticlockwise;
    EXPECT_NE(clockwise, engineOfText(text));
}

TEST(BandScale, EachVerdictLooksDifferent)
{
    const SpecBand<Length> spec{*parseBand<Length>("0.40 ± 0.05 mm", LengthUnit::Millimetre), std::nullopt};
    const auto value = [&](Interval<Length> interval) { return ScaleValue{interval, LengthUnit::Millimetre, judge(interval, spec.first)}; };
    const QImage images[] = {
        scaleOf(&spec, std::nullopt),
        scaleOf(&spec, value(Interval<Length>::point(micrometres(400)))),
        scaleOf(&spec, value(Interval<Length>::point(micrometres(300)))),
        scaleOf(&spec, value(Interval<Length>::point(micrometres(500)))),
        scaleOf(&spec, value(Interval<Length>::looserThan(micrometres(400)))),
        scaleOf(&spec, value(Interval<Length>::tighterThan(micrometres(400)))),
        scaleOf(&spec, value(Interval<Length>::bracket(micrometres(400), micrometres(500)))),
        scaleOf(&spec, value(Interval<Length>::within(micrometres(400), micrometres(29)))),
        scaleOf(&spec, value(Interval<Length>::within(micrometres(440), micrometres(29)))),
    };
    for (std::size_t first = 0; first < std::size(images); ++first) {
        for (std::size_t second = first + 1; second < std::size(images); ++second)
            EXPECT_NE(images[first], images[second]) << first << " and " << second;
    }
}

TEST(BandScale, AnyBandAndValueCanBeDrawn)
{
    for (const char *text :
         {"0.40 ± 0.05 mm", "0.40 +0 -0 mm", "at least 0.2 mm", "at most 0.3 mm", "at least 0 mm", "0.25 mm", "0.400 to 0.401 mm"}) {
        const auto band = parseBand<Length>(text, LengthUnit::Millimetre);
        if (!band)
            continue;
        const SpecBand<Length> spec{*band, std::nullopt};
        for (const std::int64_t microns : {0LL, 1LL, 400LL, 100'000'000LL}) {
            const Length value = micrometres(microns);
            for (const auto &interval :
                 {Interval<Length>::point(value), Interval<Length>::looserThan(value), Interval<Length>::tighterThan(value)}) {
                for (const int width : {40, 200, 800})
                    EXPECT_FALSE(scaleOf(&spec, ScaleValue{interval, LengthUnit::Thou, judge(interval, *band)}, width).isNull());
            }
        }
    }
    // Half of ± may lie beyond the scale.
    const SpecBand<Length> narrow{*parseBand<Length>("0.400 to 0.401 mm", LengthUnit::Millimetre), std::nullopt};
    EXPECT_FALSE(
        scaleOf(&narrow, ScaleValue{Interval<Length>::within(micrometres(900), micrometres(800)), LengthUnit::Millimetre}).isNull());
    EXPECT_FALSE(scaleOf(nullptr, ScaleValue{Interval<Length>::point(micrometres(300))}).isNull());
    EXPECT_FALSE(scaleOf(nullptr, std::nullopt).isNull());
}

QImage turnsScale(const SpecBand<Angle> *spec, const std::optional<ScaleTurns> &value)
{
    return drawn({400, static_cast<int>(bandScaleHeight)}, [&](QPainter &painter) {
        paintBandScale(painter, QRectF(0, 0, 400, bandScaleHeight), spec, AngleUnit::Turn, value, ink(Look::Light));
    });
}

TEST(BandScale, TurnsAreDrawnToScaleToo)
{
    const SpecBand<Angle> spec{*parseBand<Angle>("3/4 turn", AngleUnit::Turn), std::nullopt};
    const QImage images[] = {
        turnsScale(nullptr, std::nullopt),
        turnsScale(&spec, std::nullopt),
        turnsScale(&spec, ScaleTurns{degrees(270), AngleUnit::Turn, Verdict::Inside}),
        turnsScale(&spec, ScaleTurns{degrees(360), AngleUnit::Turn, Verdict::High}),
        turnsScale(&spec, ScaleTurns{degrees(3600), AngleUnit::Degree, Verdict::High}),
        turnsScale(&spec, ScaleTurns{degrees(0), AngleUnit::Turn, Verdict::Low}),
    };
    for (std::size_t first = 0; first < std::size(images); ++first) {
        for (std::size_t second = first + 1; second < std::size(images); ++second)
            EXPECT_NE(images[first], images[second]) << first << " and " << second;
    }
}

} // namespace drawings_tests

} // namespace asleft
