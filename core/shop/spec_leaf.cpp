#include <shop/outlook.h>

#include <measure/format.h>

namespace asleft {

namespace {

/// Of a band with one limit, that.
template <class Q>
Q middleOf(const Band<Q> &band)
{
    if (!band.low || !band.high)
        return band.low ? *band.low : *band.high;
    return Q::ofSmallest((band.low->smallest() + band.high->smallest()) / 2);
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

/// As parse() reads it back: a third of a turn has no end in decimals, and is 120°.
Typed<Angle> typedAngle(Angle angle, AngleUnit unit)
{
    const std::string text = formatExact(angle, unit);
    const auto back = parse<Angle>(text, unit);
    if (back && back->value == angle)
        return {angle, unit, text};
    return {angle, AngleUnit::Degree, formatExact(angle, AngleUnit::Degree)};
}

std::optional<LengthUnit> unitReadIn(const Tool &tool)
{
    if (!tool.leaves.empty())
        return tool.leaves.front().unit;
    return tool.resolution ? std::optional(tool.resolution->unit) : std::nullopt;
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
    const auto unit = set ? unitReadIn(*set) : std::nullopt;
    return specLeaf(unit ? bands.printedFor(*unit) : bands.first, set);
}

std::optional<Typed<Angle>> specTurns(const SpecBand<Angle> &bands)
{
    const Band<Angle> &band = bands.first;
    if (!band.nominal && !band.low && !band.high)
        return std::nullopt;
    if (band.nominal && band.form == BandForm::NominalOnly)
        return Typed<Angle>{*band.nominal, band.unit, band.text};
    return typedAngle(band.nominal ? *band.nominal : middleOf(band), band.unit);
}

} // namespace asleft
