#pragma once

#include <shop/things.h>
#include <work/garage.h>

#include <vector>

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

/// Stores a new revision of what the manual asks for; the same text again stores nothing and gives the present revision.
Result<SpecId> reviseSpec(Garage &garage, EngineId engine, SpecSubject subject, const SpecText &text,
                          DecimalMark mark = DecimalMark::Point);
/// Every revision, oldest first.
Result<std::vector<Spec>> specs(Garage &garage, EngineId engine);

/// Stores a new revision of the manual's own table of positions. Doubtful entries are stored as typed: the caller has asked.
Done reviseTable(Garage &garage, EngineId engine, const std::vector<TableLine> &lines, const SpecSource &source);
Result<std::optional<TurningTable>> turningTable(Garage &garage, EngineId engine);

} // namespace asleft
