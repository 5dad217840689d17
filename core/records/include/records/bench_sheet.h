#pragma once

#include <base/result.h>
#include <shop/state.h>

#include <functional>
#include <string>

class QPainter;

namespace asleft {

enum class SheetPaper { A4, Letter };

/// Writes the valve set of a job as an empty sheet to be filled in with a pencil, as PDF: the head drawn with its points, the positions of
/// the plan with how to find each, and for every point its band, its page of the manual, and boxes for as found, as left, locked and felt
/// again; the cautions before turning, and who, when and the engine's condition. A long engine takes more pages, each with its number and
/// what it belongs to. Nothing that was read already is printed. Refuses with DiskFault where the file cannot be written; a file that was
/// there is then as it was. The same job printed at the same moment gives the same file, but for the time the PDF says it was made.
Done writeBenchSheet(const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed, const std::string &path);

/// Paints the same sheet page by page, `nextPage` being called between two of them. The painter's unit is a point, 1/72 in, and 0,0 the
/// upper left corner of the paper.
void paintBenchSheet(QPainter &painter, const JobState &state, const CrankPlan &plan, SheetPaper paper, Moment printed,
                     const std::function<void()> &nextPage);

/// Margins on all sides, in points: 12 mm.
constexpr double paperMargin = 12 * 72 / 25.4;

} // namespace asleft
