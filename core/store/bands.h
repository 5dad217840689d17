#pragma once

#include "connection.h"

#include <measure/band.h>
#include <shop/things.h>

namespace asleft::store {

/// The columns manual, page and certainty.
inline SpecSource sourceOf(Row &row)
{
    return {row.text(), row.text(), row.word<Certainty>()};
}

/// The columns of a band, in the order bandOf() and bandValues() take them.
inline const std::string bandColumns = "form, low, high, nominal, unit, text, tolerance_assumed";

template <class Q>
QVariantList bandValues(const Band<Q> &band)
{
    return values(band.form, band.low, band.high, band.nominal, band.unit, band.text, band.toleranceAssumed);
}

template <class Q>
Band<Q> bandOf(Row &row)
{
    return {row.word<BandForm>(),
            row.quantityIfAny<Q>(),
            row.quantityIfAny<Q>(),
            row.quantityIfAny<Q>(),
            row.word<Unit<Q>>(),
            row.text(),
            row.flag()};
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
