#pragma once

#include <QLineF>
#include <QRectF>

#include <algorithm>
#include <optional>

namespace asleft {

/// A stretch of a line, as shares of its length.
struct LinePart {
    double from = 0;
    double to = 1;
};

/// The part of a line that lies in an area, its rim included; nothing where the line does not come there. Inline: a drawing of two hundred
/// fasteners asks for it many thousand times.
inline std::optional<LinePart> partWithin(const QLineF &line, const QRectF &area)
{
    LinePart part;
    const auto narrow = [&part](double start, double step, double low, double high) {
        if (step == 0)
            return start >= low && start <= high;
        const double one = (low - start) / step;
        const double other = (high - start) / step;
        part.from = std::max(part.from, std::min(one, other));
        part.to = std::min(part.to, std::max(one, other));
        return part.from <= part.to;
    };
    if (!narrow(line.x1(), line.dx(), area.left(), area.right()) || !narrow(line.y1(), line.dy(), area.top(), area.bottom()))
        return std::nullopt;
    return part;
}

} // namespace asleft
