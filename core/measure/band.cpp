#include <measure/band.h>

#include "band_reader.h"

#include <measure/format.h>

namespace asleft {

namespace {

using Exact = std::optional<Rational>; ///< empty: did not fit 128 bits

Exact sum(const Exact &a, const Exact &b)
{
    return a && b ? a->plus(*b) : std::nullopt;
}
Exact difference(const Exact &a, const Exact &b)
{
    return a && b ? a->minus(*b) : std::nullopt;
}
Exact percentOf(const Exact &whole, const Rational &percent)
{
    const Exact part = whole ? whole->times(percent) : std::nullopt;
    return part ? part->times(Rational(1, 100)) : std::nullopt;
}

/// A unit counts for the values before it that have none, else for those behind it.
template <class Q>
void lendUnits(std::vector<ReadValue<Q>> &values, Unit<Q> fieldUnit)
{
    std::optional<Unit<Q>> lent;
    const auto lend = [&](ReadValue<Q> &value) {
        if (value.unit)
            lent = value.unit;
        else if (!value.isPercent)
            value.unit = lent;
    };
    for (auto value = values.rbegin(); value != values.rend(); ++value)
        lend(*value);
    if (!lent)
        lent = fieldUnit;
    for (ReadValue<Q> &value : values)
        lend(value);
}

template <class Q>
Exact exactOf(const ReadValue<Q> &value, Unit<Q> unit)
{
    return value.number.times(factor(value.unit.value_or(unit)));
}

template <class Q>
class BandMaker {
public:
    BandMaker(const ReadBand<Q> &read, std::string_view text) : m_read(read), m_unit(*read.values.front().unit), m_text(text)
    {
        m_band = {read.form, {}, {}, {}, m_unit, std::string(text)};
    }

    Result<Band<Q>> make()
    {
        const Done computed = computeLimits();
        if (!computed)
            return tl::unexpected(computed.error());
        if (m_band.low && m_band.high && *m_band.high < *m_band.low)
            return fail(ErrorKind::BandUpsideDown, formatExact(*m_band.low, m_unit), formatExact(*m_band.high, m_unit));
        return m_band;
    }

private:
    Done computeLimits()
    {
        const Exact first = exactOf(m_read.values.front(), m_unit);
        switch (m_read.form) {
        case BandForm::AtLeast: return store(m_band.low, first);
        case BandForm::AtMost: return store(m_band.high, first);
        case BandForm::Range: return storeLimits(first, exactOf(m_read.values.at(1), m_unit));
        case BandForm::PlusMinus: return storeAround(first, tolerance(first, 2), tolerance(first, 1));
        case BandForm::NominalOnly: break;
        }
        m_band.toleranceAssumed = true;
        const Exact assumed = percentOf(first, Rational(assumedTolerancePercent));
        return storeAround(first, assumed, assumed);
    }

    Exact tolerance(const Exact &nominal, std::size_t which) const
    {
        const ReadValue<Q> &value = m_read.values.at(which);
        return value.isPercent ? percentOf(nominal, value.number) : exactOf(value, m_unit);
    }

    Done storeAround(const Exact &nominal, const Exact &below, const Exact &above)
    {
        const Done stored = store(m_band.nominal, nominal);
        return stored ? storeLimits(difference(nominal, below), sum(nominal, above)) : stored;
    }

    Done storeLimits(const Exact &low, const Exact &high)
    {
        const Done stored = store(m_band.low, low);
        return stored ? store(m_band.high, high) : stored;
    }

    Done store(std::optional<Q> &into, const Exact &exact)
    {
        if (exact && exact->isNegative())
            return fail(ErrorKind::NegativeValue, m_text);
        const auto rounded = roundOnce<Q>(exact, m_unit, m_text);
        if (!rounded)
            return tl::unexpected(rounded.error());
        into = *rounded;
        return {};
    }

    const ReadBand<Q> &m_read;
    Unit<Q> m_unit;
    std::string_view m_text;
    Band<Q> m_band;
};

template <class Q>
bool overlap(const Band<Q> &a, const Band<Q> &b)
{
    const bool aBelow = a.high && b.low && *a.high < *b.low;
    const bool bBelow = b.high && a.low && *b.high < *a.low;
    return !aBelow && !bBelow;
}

} // namespace

template <class Q>
Result<Band<Q>> parseBand(std::string_view text, Unit<Q> fieldUnit, DecimalMark mark)
{
    const auto accepted = acceptText(text);
    if (!accepted)
        return tl::unexpected(accepted.error());
    auto read = readBand<Q>(*accepted, mark);
    if (!read)
        return tl::unexpected(read.error());
    lendUnits(read->values, fieldUnit);
    return BandMaker<Q>(*read, *accepted).make();
}

template <class Q>
Result<SpecBand<Q>> pairBands(Band<Q> first, std::optional<Band<Q>> second)
{
    if (second && systemOf(first.unit) == systemOf(second->unit))
        return fail(ErrorKind::BandSameSystem, second->text);
    if (second && !overlap(first, *second))
        return fail(ErrorKind::BandSystemsDiffer, first.text, second->text);
    return SpecBand<Q>{std::move(first), std::move(second)};
}

template Result<Band<Length>> parseBand(std::string_view, LengthUnit, DecimalMark);
template Result<Band<Torque>> parseBand(std::string_view, TorqueUnit, DecimalMark);
template Result<Band<Angle>> parseBand(std::string_view, AngleUnit, DecimalMark);
template Result<SpecBand<Length>> pairBands(Band<Length>, std::optional<Band<Length>>);
template Result<SpecBand<Torque>> pairBands(Band<Torque>, std::optional<Band<Torque>>);
template Result<SpecBand<Angle>> pairBands(Band<Angle>, std::optional<Band<Angle>>);

} // namespace asleft
