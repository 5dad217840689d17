#pragma once

#include "thing_rows.h"

namespace asleft::store {

/// Reads the bands of a spec or a joint's revision, as printed first.
template <class Q>
Result<std::vector<Band<Q>>> readBandsOf(Connection &connection, const std::string &table, const std::string &key, std::int64_t owner)
{
    return allRows(connection, "SELECT " + namesOf<Band<Q>>() + " FROM " + table + " WHERE " + key + " = ? ORDER BY place", values(owner),
                   taken<Band<Q>>);
}

/// As stored: the band printed first, and that of the other unit system where there is one; nothing of none.
template <class Q>
std::optional<SpecBand<Q>> pairOf(std::vector<Band<Q>> bands)
{
    if (bands.empty())
        return std::nullopt;
    SpecBand<Q> paired{std::move(bands.front()), std::nullopt};
    if (bands.size() > 1)
        paired.second = std::move(bands.back());
    return paired;
}

} // namespace asleft::store
