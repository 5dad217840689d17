#pragma once

#include <shop/spec_entry.h>
#include <work/garage.h>

#include <vector>

namespace asleft {

/// Stores a new revision of what the manual asks for; the same text again stores nothing and gives the present revision.
Result<SpecId> reviseSpec(Garage &garage, EngineId engine, SpecSubject subject, const SpecText &text,
                          DecimalMark mark = DecimalMark::Point);
/// Every revision, oldest first.
Result<std::vector<Spec>> specs(Garage &garage, EngineId engine);

/// Stores a new revision of the manual's own table of positions. Doubtful entries are stored as typed: the caller has asked.
Done reviseTable(Garage &garage, EngineId engine, const std::vector<TableLine> &lines, const SpecSource &source);
Result<std::optional<TurningTable>> turningTable(Garage &garage, EngineId engine);

} // namespace asleft
