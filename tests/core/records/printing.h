#pragma once

#include "recorder.h"

#include <records/bench_sheet.h>

namespace asleft {

constexpr Moment printed{1'700'000'000'000};
constexpr double millimetre = 72 / 25.4;

/// ISO 216 A4 and the American Letter, in whole points.
inline QSize sizeOf(SheetPaper paper)
{
    return paper == SheetPaper::A4 ? QSize(595, 842) : QSize(612, 792);
}

inline QList<RecordedPage> recorded(const JobState &state, const CrankPlan &plan, SheetPaper paper)
{
    RecordingPaper sheet(sizeOf(paper));
    QPainter painter(&sheet);
    paintBenchSheet(painter, state, plan, paper, printed, [&sheet] { sheet.nextPage(); });
    painter.end();
    return sheet.pages();
}

} // namespace asleft
