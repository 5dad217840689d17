#pragma once

#include <work/specs.h>

#include <QString>
#include <QStringList>

#include <optional>

namespace asleft {

/// One line of the manual's table, read by itself and together with those above it.
struct TableRowReading {
    bool empty = true;
    std::optional<Error> refusal;
    QString understood;  ///< the points as a manual prints them
    QStringList doubts;  ///< each doubtful point of it, questioned in words with its margin
    QStringList doubted; ///< the same in short, with its place: "exhaust 3 with no. 1 on compression, by 14°"
};

/// The manual's table as far as it is typed.
struct TableReading {
    std::vector<TableRowReading> rows; ///< one a line
    QStringList unreached;             ///< valves no position sets, in words

    [[nodiscard]] bool refused() const;
    [[nodiscard]] bool blank() const;
    [[nodiscard]] QStringList doubted() const;
};

TableReading readTable(const EngineDesign &design, const std::vector<TableLine> &lines);

} // namespace asleft
