#pragma once

#include <shop/entry.h>
#include <shop/things.h>

#include <map>

namespace asleft {

/// A spec as a person types it.
struct SpecText {
    std::string band;                                ///< as parseBand() reads it; of a point in turns or degrees, turns from zero lash
    std::string otherBand;                           ///< the same as printed in the other unit system; may be empty
    LengthUnit lengthUnit = LengthUnit::Millimetre;  ///< what bare numbers of a lash count in
    TorqueUnit torqueUnit = TorqueUnit::NewtonMetre; ///< what bare numbers of a torque count in
    EngineCondition condition = EngineCondition::Cold;
    SpecSource source;
};

/// The fields of a spec that can be refused, in the order they are filled in.
enum class SpecField { Band, OtherBand, Manual, Page };

/// What bare numbers count in; with turns, what is asked for is turns from zero lash.
using SpecUnit = std::variant<LengthUnit, TorqueUnit, AngleUnit>;

/// A spec as the fields stand.
struct SpecTyped {
    std::map<SpecField, std::string> texts;
    SpecUnit unit = LengthUnit::Millimetre; ///< a torque's for a lock nut, else one of the others
    EngineCondition condition = EngineCondition::Cold;
    Certainty certainty = Certainty::ReadInManual;

    [[nodiscard]] std::string text(SpecField field) const;
    bool operator==(const SpecTyped &) const = default;
};

using BandRead = std::variant<Band<Length>, Band<Torque>, Band<Angle>>;

/// What it means, and what of it cannot be taken, field by field: a slip in one field hides none in another.
struct SpecReading {
    SpecText text;
    std::map<SpecField, Error> refusals;
    std::map<SpecField, BandRead> bands;   ///< of each that can be read
    std::map<SpecField, LengthUnit> meant; ///< of a lash that makes sense in another unit only: unitMeant(); it can be taken all the same
    std::optional<SpecBand<Length>> lash;  ///< for drawing it
};

SpecReading readSpec(SpecSubject subject, const SpecTyped &typed, DecimalMark mark, AdjusterKind adjusters = AdjusterKind::Screw);

/// Whether a subject of an engine with these adjusters can be asked for in turns from zero lash: hydraulic tappets and bridge screws are
/// set so.
bool mayBeTurns(SpecSubject subject, AdjusterKind adjusters);

/// The fields of a stored revision.
SpecTyped typedOf(const Spec &spec);

} // namespace asleft
