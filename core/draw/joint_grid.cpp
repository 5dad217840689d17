#include "joint_grid.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace asleft {

namespace {

constexpr double mostCells = 256; // along one side
constexpr double sure = 1e-6;     // so that a line along a cell's edge is in both

int cells(double extent, double side)
{
    return static_cast<int>(std::clamp(std::ceil(extent / side), 1.0, mostCells));
}

} // namespace

JointGrid::JointGrid(const QRectF &area, qsizetype things)
    : m_area(area), m_side(std::max({1.0, std::sqrt(area.width() * area.height() / static_cast<double>(std::max<qsizetype>(1, things))),
                                     std::max(area.width(), area.height()) / mostCells})),
      m_columns(cells(area.width(), m_side)), m_rows(cells(area.height(), m_side)),
      m_first(static_cast<std::size_t>(m_columns * m_rows), -1)
{
    m_entries.reserve(static_cast<std::size_t>(things));
}

void JointGrid::addTo(int row, int firstColumn, int lastColumn, qsizetype thing)
{
    for (int column = firstColumn; column <= lastColumn; ++column)
        m_entries.push_back({thing, std::exchange(m_first[cell(row, column)], static_cast<int>(m_entries.size()))});
}

void JointGrid::add(qsizetype thing, const QRectF &box)
{
    for (int row = rowOf(box.top()); row <= rowOf(box.bottom()); ++row)
        addTo(row, columnOf(box.left()), columnOf(box.right()), thing);
}

void JointGrid::add(qsizetype thing, QPointF place)
{
    addTo(rowOf(place.y()), columnOf(place.x()), columnOf(place.x()), thing);
}

void JointGrid::add(qsizetype thing, QPointF from, QPointF to)
{
    constexpr double endless = std::numeric_limits<double>::infinity();
    const QPointF along = to - from;
    const auto shareAt = [&](double y) { return std::clamp((y - from.y()) / along.y(), 0.0, 1.0); };
    const int last = rowOf(std::max(from.y(), to.y()) + sure);
    for (int row = rowOf(std::min(from.y(), to.y()) - sure); row <= last; ++row) {
        // Only the part of the line in this row; the outermost rows go on for ever.
        const double top = row == 0 ? -endless : m_area.top() + row * m_side - sure;
        const double bottom = row == m_rows - 1 ? endless : m_area.top() + (row + 1) * m_side + sure;
        const bool level = std::abs(along.y()) < sure;
        const double one = from.x() + along.x() * (level ? 0 : shareAt(top));
        const double other = from.x() + along.x() * (level ? 1 : shareAt(bottom));
        addTo(row, columnOf(std::min(one, other) - sure), columnOf(std::max(one, other) + sure), thing);
    }
}

} // namespace asleft
