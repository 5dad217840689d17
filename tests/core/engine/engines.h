#pragma once

#include "engine_texts.h"

#include <gtest/gtest.h>

namespace asleft {

/// Events somebody gave.
inline CamEvents events(Angle intakeOpens, Angle intakeCloses, Angle exhaustOpens, Angle exhaustCloses, Angle ramp)
{
    CamEvents cam;
    cam.intakeOpensBeforeTdc = intakeOpens;
    cam.intakeClosesAfterBdc = intakeCloses;
    cam.exhaustOpensBeforeBdc = exhaustOpens;
    cam.exhaustClosesAfterTdc = exhaustCloses;
    cam.rampAllowance = ramp;
    cam.assumed = false;
    return cam;
}
inline CamEvents wholeDegrees(int intakeOpens, int intakeCloses, int exhaustOpens, int exhaustCloses, int ramp)
{
    return events(degrees(intakeOpens), degrees(intakeCloses), degrees(exhaustOpens), degrees(exhaustCloses), degrees(ramp));
}

/// The engine, which must be one.
inline EngineDesign made(const EngineText &text)
{
    const auto design = designEngine(text);
    EXPECT_TRUE(design.has_value()) << text.firingOrder << " refused, kind " << static_cast<int>(design.error().kind);
    return design.value();
}

inline EngineDesign inLine3()
{
    return made(engineText(Layout::InLine, 3, "1-2-3"));
}
inline EngineDesign inLine4()
{
    return made(fourText());
}
inline EngineDesign inLine6()
{
    return made(engineText(Layout::InLine, 6, "1-5-3-6-2-4"));
}
inline EngineDesign vee8()
{
    return made(engineText(Layout::Vee, 8, "1-8-4-3-6-5-7-2"));
}

/// A two-stroke in line with two exhausts a cylinder, and the usual events of one.
inline EngineDesign twoStroke(int cylinders, const std::string &firingOrder)
{
    EngineText text = engineText(Layout::InLine, cylinders, firingOrder);
    text.cycle = Cycle::TwoStroke;
    return made(text);
}

inline Error refusalOf(const EngineText &text, DecimalMark mark = DecimalMark::Point)
{
    const auto design = designEngine(text, mark);
    EXPECT_FALSE(design.has_value());
    return design ? Error{ErrorKind::Database, {"was not refused"}} : design.error();
}

inline Cylinder cylinder(const EngineDesign &design, std::string_view label)
{
    return design.named(label).value();
}
inline AdjusterRef intake(const EngineDesign &design, std::string_view label)
{
    return {cylinder(design, label), Side::Intake};
}
inline AdjusterRef exhaust(const EngineDesign &design, std::string_view label)
{
    return {cylinder(design, label), Side::Exhaust};
}
inline AdjusterRef injector(const EngineDesign &design, std::string_view label)
{
    return {cylinder(design, label), Side::Intake, PointKind::Injector};
}
inline AdjusterRef decompressor(const EngineDesign &design, std::string_view label)
{
    return {cylinder(design, label), Side::Exhaust, PointKind::Decompressor};
}
inline AdjusterRef bridgeScrew(const EngineDesign &design, std::string_view label, Side side, int number = 0)
{
    return {cylinder(design, label), side, PointKind::BridgeScrew, number};
}

/// The short names of some adjusters, with a blank between.
inline std::string namesOf(const EngineDesign &design, const std::vector<AdjusterRef> &adjusters)
{
    std::string names;
    for (const AdjusterRef adjuster : adjusters)
        names += (names.empty() ? "" : " ") + shortName(design, adjuster);
    return names;
}

} // namespace asleft
