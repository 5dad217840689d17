#pragma once

#include <QPointF>
#include <QRectF>

#include <vector>

namespace asleft {

/// What lies where on a drawing, in square cells: only what is near has to be looked at closely. What lies outside counts as lying in the
/// outermost cells.
class JointGrid {
public:
    /// For about this many things.
    JointGrid(const QRectF &area, qsizetype things);

    void add(qsizetype thing, const QRectF &box);
    void add(qsizetype thing, QPointF place);
    void add(qsizetype thing, QPointF from, QPointF to);

    /// Whether `isWanted` takes one of the things in the cells that this box touches. Others in these cells are asked about as well, and
    /// some more than once.
    template <class IsWanted>
    [[nodiscard]] bool any(const QRectF &box, IsWanted isWanted) const
    {
        const int right = columnOf(box.right());
        const int bottom = rowOf(box.bottom());
        for (int row = rowOf(box.top()); row <= bottom; ++row) {
            for (int column = columnOf(box.left()); column <= right; ++column) {
                for (int entry = m_first[cell(row, column)]; entry >= 0; entry = m_entries[static_cast<std::size_t>(entry)].next) {
                    if (isWanted(m_entries[static_cast<std::size_t>(entry)].thing))
                        return true;
                }
            }
        }
        return false;
    }

private:
    /// Of a list for each cell.
    struct Entry {
        qsizetype thing;
        int next;
    };

    [[nodiscard]] int columnOf(double x) const { return indexOf(x - m_area.left(), m_columns); }
    [[nodiscard]] int rowOf(double y) const { return indexOf(y - m_area.top(), m_rows); }
    [[nodiscard]] int indexOf(double offset, int count) const
    {
        const double index = offset / m_side;
        return index < 1 ? 0 : index >= count ? count - 1 : static_cast<int>(index);
    }
    [[nodiscard]] std::size_t cell(int row, int column) const { return static_cast<std::size_t>(row * m_columns + column); }
    void addTo(int row, int firstColumn, int lastColumn, qsizetype thing);

    QRectF m_area;
    double m_side;
    int m_columns;
    int m_rows;
    std::vector<int> m_first;
    std::vector<Entry> m_entries;
};

} // namespace asleft
