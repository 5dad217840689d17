#include <forms/table_reader.h>

#include <words/crank.h>
#include <words/points.h>

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

class TableReader {
    Q_DECLARE_TR_FUNCTIONS(TableReader)
};

void questionDoubts(const EngineDesign &design, const PlanPosition &position, TableRowTold &row)
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

bool TableTold::refused() const
{
    return std::ranges::any_of(rows, [](const TableRowTold &row) { return row.refusal.has_value(); });
}

bool TableTold::blank() const
{
    return std::ranges::all_of(rows, &TableRowTold::empty);
}

QStringList TableTold::doubted() const
{
    QStringList all;
    for (const TableRowTold &row : rows)
        all += row.doubted;
    return all;
}

TableTold tellTable(const EngineDesign &design, const std::vector<TableLine> &lines)
{
    const TableReading reading = readTable(design, lines);
    TableTold told;
    for (const ReadTableLine &line : reading.lines) {
        TableRowTold &row = told.rows.emplace_back();
        row.empty = line.empty;
        row.refusal = line.refusal;
        if (!line.position)
            continue;
        row.understood = QString::fromStdString(describePoints(design, *line.position));
        questionDoubts(design, *line.position, row);
    }
    for (const AdjusterRef valve : reading.unreached)
        told.unreached.append(pointInText(design, valve));
    return told;
}

} // namespace asleft
