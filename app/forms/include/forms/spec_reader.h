#pragma once

#include <work/specs.h>

#include <QString>

#include <array>
#include <map>

namespace asleft {

/// The fields of the spec form that can be refused, in the order they stand.
enum class SpecField { Band, OtherBand, Manual, Page };

/// What stands in the form, as typed.
struct SpecTyped {
    std::map<SpecField, QString> texts;
    int unit = 0; ///< which of the subject's units bare numbers count in
    EngineCondition condition = EngineCondition::Cold;
    Certainty certainty = Certainty::ReadInManual;

    [[nodiscard]] QString text(SpecField field) const;
    bool operator==(const SpecTyped &) const = default;
};

/// What it means: the text core reads, what cannot be taken, and what was understood of each band in both systems.
struct SpecReading {
    SpecText text;
    std::map<SpecField, Error> refusals;
    std::map<SpecField, QString> echoes;
    std::map<SpecField, QString> questions; ///< of a band that makes sense in another unit only; it can be taken all the same
    std::optional<SpecBand<Length>> lash;   ///< for drawing it
};

/// The units of torque in the order they are offered.
inline constexpr std::array torqueChoices{TorqueUnit::NewtonMetre, TorqueUnit::PoundFoot, TorqueUnit::PoundInch,
                                          TorqueUnit::KilogramForceMetre, TorqueUnit::KilogramForceCentimetre};

QStringList torqueUnitTexts();

/// What was understood of a band of torque, in both systems, and whether its limits are assumed.
QString torqueEcho(const Band<Torque> &band);

/// The units a subject's bare numbers can count in, as their keys show them. Of a point the last is turns from zero lash.
QStringList unitChoices(SpecSubject subject);

/// How sure a source can be, in the order of Certainty.
QStringList certaintyChoices();

/// Which of the choices is turns, where the subject has them.
std::optional<int> turnsChoice(SpecSubject subject);

/// Whether a subject of an engine with these adjusters can be asked for in turns from zero lash: hydraulic tappets and bridge screws are
/// set so.
bool mayBeTurns(SpecSubject subject, AdjusterKind adjusters);

SpecReading readSpec(SpecSubject subject, const SpecTyped &typed, DecimalMark mark, AdjusterKind adjusters = AdjusterKind::Screw);

/// The form of a stored revision.
SpecTyped typedOf(const Spec &spec);

} // namespace asleft
