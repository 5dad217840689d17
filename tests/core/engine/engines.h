#pragma once

#include <engine/design.h>

#include <gtest/gtest.h>

namespace asleft {

/// An engine as typed with only what the tests vary; the rest is usual.
inline EngineText typed(Layout layout, int cylinders, std::string firingOrder, std::string gaps = {})
{
    EngineText text;
    text.layout = layout;
    text.cylinders = cylinders;
    text.firingOrder = std::move(firingOrder);
    text.gaps = std::move(gaps);
    return text;
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
    return made(typed(Layout::InLine, 3, "1-2-3"));
}
inline EngineDesign inLine4()
{
    return made(typed(Layout::InLine, 4, "1-3-4-2"));
}
inline EngineDesign inLine6()
{
    return made(typed(Layout::InLine, 6, "1-5-3-6-2-4"));
}
inline EngineDesign vee8()
{
    return made(typed(Layout::Vee, 8, "1-8-4-3-6-5-7-2"));
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

} // namespace asleft
