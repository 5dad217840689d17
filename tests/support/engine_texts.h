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

/// Without an order its cylinders fire as they are counted.
inline EngineText engineText(Layout layout, int cylinders, const std::string &order = {}, const std::string &valveOrder = {})
{
    EngineText text;
    text.layout = layout;
    text.cylinders = cylinders;
    text.firingOrder = order.empty() ? plainOrder(cylinders) : order;
    text.valveOrder = valveOrder;
    return text;
}

} // namespace asleft
