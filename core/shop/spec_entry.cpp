#include <shop/spec_entry.h>

#include "taken.h"

#include <measure/text.h>

namespace asleft {

namespace {

/// The clearance of a collapsed tappet and the height of an injector are of another size than a lash.
bool isALash(SpecSubject subject, AdjusterKind adjusters)
{
    const bool lash = subject == SpecSubject::IntakeLash || subject == SpecSubject::ExhaustLash || subject == SpecSubject::Decompressor;
    return lash && adjusters == AdjusterKind::Screw;
}

/// The text of a band with its unit, where what stands in it would be read in another one once bare numbers count in `countsIn`.
template <class Q>
std::string withItsUnit(const Band<Q> &band, Unit<Q> countsIn)
{
    const auto read = parseBand<Q>(band.text, countsIn);
    return read && read->unit != band.unit ? std::string(band.text).append(" ").append(symbol(band.unit)) : band.text;
}

/// Reads a spec by what its bare numbers count in.
class SpecEntryReader {
public:
    SpecEntryReader(const SpecTyped &typed, DecimalMark mark, bool isLash) : m_mark(mark), m_isLash(isLash)
    {
        m_reading.text.band = typed.text(SpecField::Band);
        m_reading.text.otherBand = typed.text(SpecField::OtherBand);
        m_reading.text.condition = typed.condition;
        m_reading.text.source = {typed.text(SpecField::Manual), typed.text(SpecField::Page), typed.certainty};
        taken(m_reading.refusals, SpecField::Manual, checkedLine(m_reading.text.source.manual));
        taken(m_reading.refusals, SpecField::Page, checkedLine(m_reading.text.source.page));
    }

    SpecReading operator()(TorqueUnit unit)
    {
        m_reading.text.torqueUnit = unit;
        readBands<Torque>(unit);
        return std::move(m_reading);
    }

    SpecReading operator()(LengthUnit unit)
    {
        m_reading.text.lengthUnit = unit;
        m_reading.lash = readBands<Length>(unit);
        if (m_isLash)
            questionUnits();
        return std::move(m_reading);
    }

    /// Turns are stored with their unit: by it alone they are told from a length.
    SpecReading operator()(AngleUnit unit)
    {
        SpecText &text = m_reading.text;
        text.otherBand.clear();
        const auto band = readBand<Angle>(SpecField::Band, text.band, unit);
        const auto inDegrees = parseBand<Angle>(text.band, AngleUnit::Degree, m_mark);
        const bool unitTyped =
            band && inDegrees && inDegrees->unit == band->unit && inDegrees->low == band->low && inDegrees->high == band->high;
        if (band && !unitTyped)
            text.band.append(" ").append(symbol(unit));
        return std::move(m_reading);
    }

private:
    template <class Q>
    std::optional<Band<Q>> readBand(SpecField field, const std::string &text, Unit<Q> unit)
    {
        auto band = taken(m_reading.refusals, field, parseBand<Q>(text, unit, m_mark));
        if (band)
            m_reading.bands.emplace(field, *band);
        return band;
    }

    /// Both of them, or the first alone where the second cannot be read or does not fit.
    template <class Q>
    std::optional<SpecBand<Q>> readBands(Unit<Q> unit)
    {
        SpecText &text = m_reading.text;
        const auto first = readBand<Q>(SpecField::Band, text.band, unit);
        const auto second = isBlank(text.otherBand) ? std::nullopt : readBand<Q>(SpecField::OtherBand, text.otherBand, unit);
        if (!first)
            return std::nullopt;
        if (!second)
            return SpecBand<Q>{*first, std::nullopt};
        // Stored, bare numbers count in the unit of the first band.
        text.otherBand = withItsUnit(*second, first->unit);
        return taken(m_reading.refusals, SpecField::OtherBand, pairBands<Q>(*first, second)).value_or(SpecBand<Q>{*first, std::nullopt});
    }

    void questionUnits()
    {
        for (const auto &[field, band] : m_reading.bands) {
            if (const auto meant = unitMeant(std::get<Band<Length>>(band)))
                m_reading.meant.emplace(field, *meant);
        }
    }

    DecimalMark m_mark;
    bool m_isLash;
    SpecReading m_reading;
};

template <class Q>
void putBands(SpecTyped &typed, const SpecBand<Q> &bands)
{
    typed.texts[SpecField::Band] = bands.first.text;
    if (bands.second)
        typed.texts[SpecField::OtherBand] = withItsUnit(*bands.second, bands.first.unit);
    typed.unit = bands.first.unit;
}

} // namespace

std::string SpecTyped::text(SpecField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? std::string() : found->second;
}

SpecReading readSpec(SpecSubject subject, const SpecTyped &typed, DecimalMark mark, AdjusterKind adjusters)
{
    return std::visit(SpecEntryReader(typed, mark, isALash(subject, adjusters)), typed.unit);
}

bool mayBeTurns(SpecSubject subject, AdjusterKind adjusters)
{
    const bool tappet = subject == SpecSubject::IntakeLash || subject == SpecSubject::ExhaustLash;
    return subject == SpecSubject::BridgeScrew || (tappet && adjusters == AdjusterKind::Hydraulic);
}

SpecTyped typedOf(const Spec &spec)
{
    SpecTyped typed;
    typed.condition = spec.condition;
    typed.certainty = spec.source.certainty;
    typed.texts[SpecField::Manual] = spec.source.manual;
    typed.texts[SpecField::Page] = spec.source.page;
    std::visit([&typed](const auto &bands) { putBands(typed, bands); }, spec.asked);
    // What is asked in degrees is typed with its unit, and shown among turns.
    if (std::holds_alternative<AngleUnit>(typed.unit))
        typed.unit = AngleUnit::Turn;
    return typed;
}

} // namespace asleft
