#include "pages/table_reader.h"

#include <show/words.h>

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

bool isBlank(const TableLine &line)
{
    const auto blank = [](const std::string &text) { return QString::fromStdString(text).trimmed().isEmpty(); };
    return blank(line.cylinder) && blank(line.points);
}

QString words(const char *text)
{
    return QCoreApplication::translate("TableReader", text);
}

void questionDoubts(const EngineDesign &design, const PlanPosition &position, TableRowReading &row)
{
    for (const PlanPoint &point : position.points) {
        if (!point.doubtful())
            continue;
        const QString lacking = QString::number(std::ceil(-toDegrees(point.margin)));
        QString question = marginText(design, point);
        question.front() = question.front().toUpper();
        row.doubts.append(words("%1 It is %2° short.").arg(question, lacking));
        row.doubted.append(
            words("%1 with %2, by %3°").arg(pointInText(design, point.adjuster), placeInText(design, position.place), lacking));
    }
}

} // namespace

bool TableReading::refused() const
{
    return std::ranges::any_of(rows, [](const TableRowReading &row) { return row.refusal.has_value(); });
}

bool TableReading::blank() const
{
    return std::ranges::all_of(rows, &TableRowReading::empty);
}

QStringList TableReading::doubted() const
{
    QStringList all;
    for (const TableRowReading &row : rows)
        all += row.doubted;
    return all;
}

TableReading readTable(const EngineDesign &design, const std::vector<TableLine> &lines)
{
    TableReading reading;
    // Lines that can be read so far; a slip in one line does not hide what is wrong with the next.
    std::vector<TableLine> good;
    std::vector<AdjusterRef> unreached = design.adjusters();
    for (const TableLine &line : lines) {
        TableRowReading row;
        row.empty = isBlank(line);
        if (!row.empty) {
            good.push_back(line);
            if (const auto plan = planFromTable(design, good, {})) {
                const PlanPosition &position = plan->positions.back();
                row.understood = QString::fromStdString(describePoints(design, position));
                questionDoubts(design, position, row);
                unreached = plan->unreached;
            } else {
                row.refusal = plan.error();
                good.pop_back();
            }
        }
        reading.rows.push_back(std::move(row));
    }
    for (const AdjusterRef valve : unreached)
        reading.unreached.append(pointInText(design, valve));
    return reading;
}

} // namespace asleft
