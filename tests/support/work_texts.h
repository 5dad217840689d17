#pragma once

#include <work/specs.h>
#include <work/workshop.h>

namespace asleft {

// What a person fills in.

inline SpecText lashText(std::string band, EngineCondition condition = EngineCondition::Cold)
{
    return {.band = std::move(band), .otherBand = {}, .condition = condition, .source = {"Hollin workshop manual", "41"}};
}

inline TorqueWrenchText wrenchText(std::string name, std::string least, std::string most)
{
    TorqueWrenchText text;
    text.name = std::move(name);
    text.least = std::move(least);
    text.most = std::move(most);
    return text;
}

} // namespace asleft
