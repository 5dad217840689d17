#pragma once

#include "sheet_pages.h"

#include <records/bench_sheet.h>

namespace asleft {

/// The whole sheet, laid out.
SheetPages layOutSheet(const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed);

/// Width and height of a paper, in points.
QSizeF sheetSize(SheetPaper paper);

/// "Hollin 40 tractor · LK 4021 · Valve set": what the sheet belongs to.
QString sheetTitle(const JobFrame &frame);

} // namespace asleft
