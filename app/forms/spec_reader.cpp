// What is told of the fields of a spec, and of torque as it is typed.
#include <forms/spec_reader.h>

#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class SpecReader {
    Q_DECLARE_TR_FUNCTIONS(SpecReader)
};

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

} // namespace

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

std::vector<SpecUnit> unitsOf(SpecSubject subject)
{
    if (subject == SpecSubject::LockNut)
        return {torqueChoices.begin(), torqueChoices.end()};
    std::vector<SpecUnit> units(lengthUnits.begin(), lengthUnits.end());
    units.emplace_back(AngleUnit::Turn);
    return units;
}

QStringList unitChoices(SpecSubject subject)
{
    QStringList choices;
    for (const SpecUnit &unit : unitsOf(subject))
        choices.append(std::visit([](auto each) { return unitText(each); }, unit));
    return choices;
}

int choiceOf(SpecSubject subject, const SpecUnit &unit)
{
    const std::vector<SpecUnit> units = unitsOf(subject);
    return int(std::ranges::find(units, unit) - units.begin());
}

std::optional<int> turnsChoice(SpecSubject subject)
{
    return subject == SpecSubject::LockNut ? std::nullopt : std::optional(choiceOf(subject, AngleUnit::Turn));
}

std::map<SpecField, QString> echoesOf(const SpecReading &reading)
{
    std::map<SpecField, QString> echoes;
    for (const auto &[field, band] : reading.bands)
        echoes[field] = std::visit([](const auto &read) { return echoOf(read); }, band);
    return echoes;
}

QString questionOf(const SpecReading &reading, SpecField field)
{
    const auto meant = reading.meant.find(field);
    return meant == reading.meant.end() ? QString() : wrongUnitQuestion(std::get<Band<Length>>(reading.bands.at(field)), meant->second);
}

} // namespace asleft
