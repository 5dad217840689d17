#pragma once

#include <engine/design.h>

#include <string>

namespace asleft {

/// 1-2-3-…: enough to draw or print any engine.
inline std::string plainOrder(int cylinders)
{
    std::string order = "1";
    for (int cylinder = 2; cylinder <= cylinders; ++cylinder)
        order += "-" + std::to_string(cylinder);
    return order;
}

/// An engine as typed with only what the tests vary; the rest is usual.
inline EngineText engineText(Layout layout, int cylinders, std::string firingOrder, std::string gaps = {})
{
    EngineText text;
    text.layout = layout;
    text.cylinders = cylinders;
    text.firingOrder = std::move(firingOrder);
    text.gaps = std::move(gaps);
    return text;
}
/// Its cylinders fire as they are counted.
inline EngineText engineText(Layout layout, int cylinders)
{
    return engineText(layout, cylinders, plainOrder(cylinders));
}

/// An even four in line.
inline EngineText fourText()
{
    return engineText(Layout::InLine, 4, "1-3-4-2");
}

} // namespace asleft
