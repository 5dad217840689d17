#pragma once

#include <bench/reading_bar.h>

#include <work/job_book.h>

namespace asleft {

/// What the reading bar shows of a point in hand. `unit` is what the person chose; else the spec's own.
BarView barViewOf(const JobBook &book, PointId point, Phase phase, std::optional<LengthUnit> unit);

/// The newest band of what a point is set to where it is turns from zero lash; nullptr without.
const SpecBand<Angle> *turnsOf(const JobFrame &frame, PointId point);

/// What digits alone count in at a point with these tools, unless the person chose: the system of the leaves in hand where the manual
/// prints it, else the manual's first.
LengthUnit usualUnit(const JobBook &book, PointId point);

} // namespace asleft
