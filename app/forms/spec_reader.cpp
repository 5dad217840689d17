#include <forms/spec_reader.h>

#include <shop/entry.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class SpecReader {
    Q_DECLARE_TR_FUNCTIONS(SpecReader)
};

template <class Units, class U>
int placeOf(const Units &units, U unit)
{
    return int(std::ranges::find(units, unit) - units.begin());
}

/// Small screws are printed in pound-inches: whole pound-feet would say next to nothing of them.
TorqueUnit otherTorque(const Band<Torque> &band)
{
    constexpr Torque smallScrews = Torque::ofSmallest(15'000'000'000);
    if (band.unit != TorqueUnit::NewtonMetre)
        return TorqueUnit::NewtonMetre;
    const auto end = band.high ? band.high : band.low;
    return end && *end < smallScrews ? TorqueUnit::PoundInch : TorqueUnit::PoundFoot;
}

QString otherSystem(const Band<Length> &band)
{
    return bandTextIn(band, otherUnit(band.unit));
}

QString otherSystem(const Band<Torque> &band)
{
    return bandTextIn(band, otherTorque(band));
}

QString withAssumed(const QString &echo, bool assumed)
{
    if (!assumed)
        return echo;
    return SpecReader::tr("%1; no limits given, so ± %2 % is assumed").arg(echo, QString::number(assumedTolerancePercent));
}

template <class Q>
QString echoOf(const Band<Q> &band)
{
    return withAssumed(SpecReader::tr("%1; within it %2").arg(bandText(band), otherSystem(band)), band.toleranceAssumed);
}

QString echoOf(const Band<Angle> &band)
{
    return withAssumed(SpecReader::tr("%1 from zero lash").arg(bandText(band)), band.toleranceAssumed);
}

void keepForDrawing(SpecReading &reading, const SpecBand<Length> &bands)
{
    reading.lash = bands;
}

template <class Q>
void keepForDrawing(SpecReading &, const SpecBand<Q> &)
{
}

/// The text of a band with its unit, where what stands in it would be read in another one once bare numbers count in `countsIn`.
template <class Q>
QString withItsUnit(const Band<Q> &band, Unit<Q> countsIn)
{
    const QString text = QString::fromStdString(band.text);
    const auto read = parseBand<Q>(band.text, countsIn);
    return read && read->unit != band.unit ? text + QLatin1Char(' ') + unitText(band.unit) : text;
}

template <class Q>
void readBands(SpecReading &reading, Unit<Q> unit, DecimalMark mark)
{
    const auto first = parseBand<Q>(reading.text.band, unit, mark);
    if (first)
        reading.echoes[SpecField::Band] = echoOf(*first);
    else
        reading.refusals.emplace(SpecField::Band, first.error());
    if (first)
        keepForDrawing(reading, SpecBand<Q>{*first, std::nullopt});
    if (QString::fromStdString(reading.text.otherBand).trimmed().isEmpty())
        return;
    const auto second = parseBand<Q>(reading.text.otherBand, unit, mark);
    if (!second) {
        reading.refusals.emplace(SpecField::OtherBand, second.error());
        return;
    }
    reading.echoes[SpecField::OtherBand] = echoOf(*second);
    if (!first)
        return;
    // Stored, bare numbers count in the unit of the first band.
    reading.text.otherBand = withItsUnit(*second, first->unit).toStdString();
    if (const auto paired = pairBands<Q>(*first, *second))
        keepForDrawing(reading, *paired);
    else
        reading.refusals.emplace(SpecField::OtherBand, paired.error());
}

/// Turns are stored with their unit: by it alone they are told from a length.
void readTurns(SpecReading &reading, DecimalMark mark)
{
    reading.text.otherBand.clear();
    const auto band = parseBand<Angle>(reading.text.band, AngleUnit::Turn, mark);
    if (!band) {
        reading.refusals.emplace(SpecField::Band, band.error());
        return;
    }
    reading.echoes[SpecField::Band] = echoOf(*band);
    const auto inDegrees = parseBand<Angle>(reading.text.band, AngleUnit::Degree, mark);
    const bool unitTyped = inDegrees && inDegrees->unit == band->unit && inDegrees->low == band->low && inDegrees->high == band->high;
    if (!unitTyped)
        reading.text.band += ' ' + std::string(symbol(AngleUnit::Turn));
}

/// The clearance of a collapsed tappet and the height of an injector are of another size than a lash.
bool isALash(SpecSubject subject, AdjusterKind adjusters)
{
    const bool lash = subject == SpecSubject::IntakeLash || subject == SpecSubject::ExhaustLash || subject == SpecSubject::Decompressor;
    return lash && adjusters == AdjusterKind::Screw;
}

void questionUnits(SpecReading &reading, DecimalMark mark)
{
    const auto question = [&](SpecField field, const std::string &text) {
        const auto band = parseBand<Length>(text, reading.text.lengthUnit, mark);
        if (const auto meant = band ? unitMeant(*band) : std::nullopt)
            reading.questions[field] = wrongUnitQuestion(*band, *meant);
    };
    question(SpecField::Band, reading.text.band);
    question(SpecField::OtherBand, reading.text.otherBand);
}

void readSource(SpecReading &reading, const SpecTyped &typed)
{
    reading.text.source = {typed.text(SpecField::Manual).toStdString(), typed.text(SpecField::Page).toStdString(), typed.certainty};
    for (const SpecField field : {SpecField::Manual, SpecField::Page}) {
        const std::size_t length = typed.text(field).trimmed().toStdString().size();
        if (length > longestName)
            reading.refusals.emplace(field, Error{ErrorKind::TextTooLong, {std::to_string(length), std::to_string(longestName)}});
    }
}

template <class Q>
void putBands(SpecTyped &typed, const SpecBand<Q> &bands)
{
    typed.texts[SpecField::Band] = QString::fromStdString(bands.first.text);
    if (bands.second)
        typed.texts[SpecField::OtherBand] = withItsUnit(*bands.second, bands.first.unit);
}

} // namespace

QString SpecTyped::text(SpecField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? QString() : found->second;
}

QString torqueEcho(const Band<Torque> &band)
{
    return echoOf(band);
}

QStringList torqueUnitTexts()
{
    QStringList texts;
    for (const TorqueUnit unit : torqueChoices)
        texts.append(unitText(unit));
    return texts;
}

QStringList certaintyChoices()
{
    QStringList words;
    for (const Certainty certainty : {Certainty::ReadInManual, Certainty::ToldByPerson, Certainty::FromMemory, Certainty::Assumed})
        words.append(certaintyName(certainty));
    return words;
}

QStringList unitChoices(SpecSubject subject)
{
    QStringList choices = subject == SpecSubject::LockNut ? torqueUnitTexts() : lengthUnitTexts();
    if (turnsChoice(subject))
        choices.append(unitText(AngleUnit::Turn));
    return choices;
}

std::optional<int> turnsChoice(SpecSubject subject)
{
    return subject == SpecSubject::LockNut ? std::nullopt : std::optional(int(lengthUnits.size()));
}

bool mayBeTurns(SpecSubject subject, AdjusterKind adjusters)
{
    const bool tappet = subject == SpecSubject::IntakeLash || subject == SpecSubject::ExhaustLash;
    return subject == SpecSubject::BridgeScrew || (tappet && adjusters == AdjusterKind::Hydraulic);
}

SpecReading readSpec(SpecSubject subject, const SpecTyped &typed, DecimalMark mark, AdjusterKind adjusters)
{
    SpecReading reading;
    reading.text.band = typed.text(SpecField::Band).toStdString();
    reading.text.otherBand = typed.text(SpecField::OtherBand).toStdString();
    reading.text.condition = typed.condition;
    readSource(reading, typed);
    if (subject == SpecSubject::LockNut) {
        reading.text.torqueUnit = torqueChoices.at(std::size_t(typed.unit));
        readBands<Torque>(reading, reading.text.torqueUnit, mark);
    } else if (typed.unit == turnsChoice(subject)) {
        readTurns(reading, mark);
    } else {
        reading.text.lengthUnit = lengthUnits.at(std::size_t(typed.unit));
        readBands<Length>(reading, reading.text.lengthUnit, mark);
        if (isALash(subject, adjusters))
            questionUnits(reading, mark);
    }
    return reading;
}

SpecTyped typedOf(const Spec &spec)
{
    SpecTyped typed;
    typed.condition = spec.condition;
    typed.certainty = spec.source.certainty;
    typed.texts[SpecField::Manual] = QString::fromStdString(spec.source.manual);
    typed.texts[SpecField::Page] = QString::fromStdString(spec.source.page);
    if (const auto *lash = std::get_if<SpecBand<Length>>(&spec.asked)) {
        typed.unit = placeOf(lengthUnits, lash->first.unit);
        putBands(typed, *lash);
    } else if (const auto *torque = std::get_if<SpecBand<Torque>>(&spec.asked)) {
        typed.unit = placeOf(torqueChoices, torque->first.unit);
        putBands(typed, *torque);
    } else if (const auto *turns = std::get_if<SpecBand<Angle>>(&spec.asked)) {
        typed.unit = turnsChoice(spec.subject).value_or(0);
        putBands(typed, *turns);
    }
    return typed;
}

} // namespace asleft
