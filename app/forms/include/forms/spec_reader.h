#pragma once

#include <shop/spec_entry.h>

#include <QStringList>

#include <array>
#include <vector>

namespace asleft {

/// The units of torque in the order they are offered.
inline constexpr std::array torqueChoices{TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch,
                                          TorqueUnit::KilogramForceMetre, TorqueUnit::KilogramForceCentimetre};

QStringList torqueUnitTexts();

/// What was understood of a band of torque, in both systems, and whether its limits are assumed.
QString torqueEcho(const Band<Torque> &band);

/// The units a subject's bare numbers can count in, in the order of their keys. Of a point the last is turns from zero lash.
std::vector<SpecUnit> unitsOf(SpecSubject subject);
QStringList unitChoices(SpecSubject subject);
/// Which of the choices is this one. \pre the subject has it
int choiceOf(SpecSubject subject, const SpecUnit &unit);

/// How sure a source can be, in the order of Certainty.
QStringList certaintyChoices();

/// Which of the choices is turns, where the subject has them.
std::optional<int> turnsChoice(SpecSubject subject);

/// What was understood of each band in both systems, and whether its limits are assumed.
std::map<SpecField, QString> echoesOf(const SpecReading &reading);
/// Asks about a band that makes sense in another unit only; empty where there is nothing to ask.
QString questionOf(const SpecReading &reading, SpecField field);

} // namespace asleft
