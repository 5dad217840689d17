#pragma once

#include <shop/outlook.h>

#include <vector>

namespace asleft {

// Which kinds of a variant there are.

template <class Kind, class... Kinds>
bool is(const std::variant<Kinds...> &held)
{
    return std::holds_alternative<Kind>(held);
}

/// The items of one kind.
template <class Kind>
std::vector<Kind> ofKind(const std::vector<OpenItem> &items)
{
    std::vector<Kind> found;
    for (const OpenItem &item : items)
        if (const auto *held = std::get_if<Kind>(&item))
            found.push_back(*held);
    return found;
}

/// Whether the items are of these kinds, in this order.
template <class... Kinds>
bool areOf(const std::vector<OpenItem> &items)
{
    std::size_t at = 0;
    return items.size() == sizeof...(Kinds) && (is<Kinds>(items[at++]) && ...);
}

} // namespace asleft
