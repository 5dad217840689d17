#include <forms/table_reader.h>

#include <words/crank.h>
#include <words/points.h>

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

class TableReader {
    Q_DECLARE_TR_FUNCTIONS(TableReader)
};

void questionDoubts(const EngineDesign &design, const PlanPosition &position, TableRowReading &row)
{
    for (const PlanPoint &point : position.points) {
        if (!point.doubtful())
            continue;
        const QString lacking = QString::number(std::ceil(-toDegrees(point.margin)));
        QString question = marginText(design, point);
        question.front() = question.front().toUpper();
        row.doubts.append(TableReader::tr("%1 It is %2° short.").arg(question, lacking));
        row.doubted.append(TableReader::tr("%1 with %2, by %3°")
                               .arg(pointInText(design, point.adjuster), crankPositionInText(design, position.place), lacking));
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
