#include <shop/outlook.h>

#include <measure/format.h>

namespace asleft {

namespace {

Length middleOf(const Band<Length> &band)
{
    if (!band.low || !band.high)
        return band.low ? *band.low : *band.high;
    return Length::ofSmallest((band.low->smallest() + band.high->smallest()) / 2);
}

bool holds(const Band<Length> &band, Length value)
{
    return (!band.low || *band.low <= value) && (!band.high || value <= *band.high);
}

std::optional<Length> nearestLeaf(const Band<Length> &band, const Tool &set)
{
    const auto middle = middleOf(band).smallest();
    std::optional<Length> nearest;
    const auto distance = [&](Length leaf) { return std::abs(leaf.smallest() - middle); };
    for (const auto &leaf : set.leaves) {
        if (holds(band, leaf.value) && (!nearest || distance(leaf.value) < distance(*nearest)))
            nearest = leaf.value;
    }
    return nearest;
}

/// To whole steps of the band's unit, as long as that stays in the band.
Length steppedMiddle(const Band<Length> &band)
{
    const auto step = stepOf(band.unit).smallest();
    const auto middle = middleOf(band).smallest();
    const Length stepped = Length::ofSmallest((middle + step / 2) / step * step);
    return holds(band, stepped) ? stepped : middleOf(band);
}

} // namespace

std::optional<Typed<Length>> specLeaf(const Band<Length> &band, const Tool *set)
{
    if (!band.nominal && !band.low && !band.high)
        return std::nullopt;
    std::optional<Length> leaf = band.nominal;
    if (!leaf && (!band.low || !band.high))
        leaf = middleOf(band);
    if (!leaf && set)
        leaf = nearestLeaf(band, *set);
    if (!leaf)
        leaf = steppedMiddle(band);
    return Typed<Length>{*leaf, band.unit, formatExact(*leaf, band.unit)};
}

std::optional<Typed<Length>> specLeaf(const SpecBand<Length> &bands, const Tool *set)
{
    const bool haveLeaves = set && !set->leaves.empty();
    return specLeaf(haveLeaves ? bands.printedFor(set->leaves.front().unit) : bands.first, set);
}

} // namespace asleft
