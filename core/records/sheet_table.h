#pragma once

#include "sheet_pages.h"

#include <optional>

namespace asleft {

/// One line of the table of a position.
struct SheetRow {
    QString point; ///< its short name
    QString name;
    QString asked;  ///< the band
    QString source; ///< cold or hot, and where it comes from
    QString note;   ///< what to question; may be empty
    QString found;  ///< printed small in the box; may be empty
    QString left;   ///< the same
};

/// What a table belongs to.
struct SheetTable {
    QString title;
    QString goesOn;  ///< the title where the table goes on on another page
    QStringList how; ///< how the position is found
    QString tick;    ///< words beside a box to be ticked; empty: no box
    std::vector<SheetRow> rows;
};

/// What is needed for the table to begin: its title, how to find the position, the names of the columns and the first row. \pre it has rows
double openingHeight(const SheetPages &pages, const SheetTable &table);

/// Adds a table: title and how to find the position, then a row of boxes a point. A row is never torn; on a further page the columns are
/// named again.
void addTable(SheetPages &pages, const SheetTable &table);

} // namespace asleft
