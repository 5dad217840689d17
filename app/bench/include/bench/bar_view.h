#pragma once

#include <bench/entry_bar.h>
#include <bench/typed_reading.h>

#include <work/job_book.h>

namespace asleft {

/// What is said of a point without a number.
enum class ValveKey { SpecLeaf, Loose, Tight, NutOpen, ByFeel, Keep, CheckAgain, OtherPhase };
QList<BarKey> valveKeys();

/// What a person chose for what is typed of a point.
struct BarChoice {
    Phase phase = Phase::AsFound;
    std::optional<LengthUnit> unit = {}; ///< nothing: the spec's own
    DecimalMark mark = DecimalMark::Point;
};

/// What the bar shows of a point in hand.
EntryView barViewOf(const JobBook &book, PointId point, const BarChoice &choice);
/// What it shows while none is in hand.
EntryView barViewOfNone(const JobBook &book, const QString &now, const BarChoice &choice);

/// What is typed at a point is read so.
TypedAs typedAs(const JobBook &book, PointId point, const BarChoice &choice);

/// The newest band of what a point is set to where it is turns from zero lash; nullptr without.
const SpecBand<Angle> *turnsOf(const JobFrame &frame, PointId point);

/// What digits alone count in at a point with these tools, unless the person chose: the system of the leaves in hand where the manual
/// prints it, else the manual's first.
LengthUnit usualUnit(const JobBook &book, PointId point);

} // namespace asleft
