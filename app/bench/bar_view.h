#pragma once

#include "bench/reading_bar.h"

#include <work/job_book.h>

namespace asleft {

/// The newest lash bands of a point's side; nullptr without a spec.
const SpecBand<Length> *lashBandsOf(const JobBook &book, PointId point);

/// What the reading bar shows of a point in hand. `unit` is what the person chose; else the spec's own.
BarView barViewOf(const JobBook &book, PointId point, Phase phase, std::optional<LengthUnit> unit);

} // namespace asleft
