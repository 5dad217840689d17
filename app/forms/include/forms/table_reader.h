#pragma once

#include <work/specs.h>

#include <QString>
#include <QStringList>

#include <optional>

namespace asleft {

/// What is told of one line of the manual's table.
struct TableRowTold {
    bool empty = true;
    std::optional<TableRefusal> refusal;
    QString understood;  ///< the points as a manual prints them
    QStringList doubts;  ///< each doubtful point of it, questioned in words with its margin
    QStringList doubted; ///< the same in short, with its place: "exhaust 3 with no. 1 on compression, by 14°"
};

/// The manual's table as far as it is typed.
struct TableTold {
    std::vector<TableRowTold> rows; ///< one a line
    QStringList unreached;          ///< valves no position sets, in words

    [[nodiscard]] bool refused() const;
    [[nodiscard]] bool blank() const;
    [[nodiscard]] QStringList doubted() const;
};

TableTold tellTable(const EngineDesign &design, const std::vector<TableLine> &lines);

} // namespace asleft
