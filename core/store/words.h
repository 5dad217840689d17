#pragma once

#include "joint_words.h"
#include "shop_words.h"

#include <optional>

namespace asleft::store {

/// The word of a value. \pre the value is one of the enum's
template <class Enum>
constexpr std::string_view wordOf(Enum value)
{
    for (const auto &entry : Words<Enum>::list)
        if (entry.value == value)
            return entry.word;
    return {};
}

template <class Enum>
constexpr std::optional<Enum> valueOf(std::string_view word)
{
    for (const auto &entry : Words<Enum>::list)
        if (entry.word == word)
            return entry.value;
    return std::nullopt;
}

/// The word an adjuster is kept as beside its cylinder: `intake` and `exhaust` for the first lash of a side, `intake_2`,
/// `exhaust_bridge`, `decompressor`, `injector`; empty for one no engine has. The first two are older than the others.
std::string_view wordOf(AdjusterRef adjuster);
/// The adjuster of a cylinder that has this word.
std::optional<AdjusterRef> adjusterOf(Cylinder cylinder, std::string_view word);

} // namespace asleft::store
