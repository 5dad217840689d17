#include "text_spots.h"

#include <algorithm>

namespace asleft {

namespace {

constexpr double around = 1.5; // between a text and anything else

/// The strong form is wider, and a name may become strong where it stands.
TextSize strongOf(TextSize size)
{
    switch (size) {
    case TextSize::Small: return TextSize::SmallStrong;
    case TextSize::Fine: return TextSize::FineStrong;
    case TextSize::Title:
    case TextSize::Now:
    case TextSize::Body:
    case TextSize::BodyStrong:
    case TextSize::SmallStrong:
    case TextSize::FineStrong:
    case TextSize::Number:
    case TextSize::Value: break;
    }
    return size;
}

} // namespace

bool TextSpots::isFree(const QRectF &box) const
{
    return m_area.contains(box) &&
           std::none_of(m_taken.begin(), m_taken.end(), [&box](const QRectF &taken) { return taken.intersects(box); });
}

QSizeF TextSpots::inkOf(const QString &text, TextSize size)
{
    const QFontMetricsF &metrics = m_metrics.try_emplace(size, textFont(strongOf(size))).first->second;
    return {metrics.horizontalAdvance(text), metrics.capHeight()};
}

std::optional<PlacedText> TextSpots::place(const QString &text, TextSize size, QPointF middle)
{
    const QSizeF ink = inkOf(text, size);
    const double width = ink.width() + 2 * around;
    const double height = ink.height() + 2 * around;
    const QRectF box(middle.x() - width / 2, middle.y() - height / 2, width, height);
    if (!isFree(box))
        return std::nullopt;
    take(box);
    return PlacedText{text, box, size, Qt::AlignCenter};
}

std::optional<PlacedText> TextSpots::placeBeside(const QString &text, TextSize size, const QRectF &square, QPointF outward)
{
    const QPointF middle = square.center();
    const double side = square.width();
    const QSizeF ink = inkOf(text, size);
    const double across = (outward.x() < 0 ? -1 : 1) * (side / 2 + ink.width() / 2 + around + 0.5);
    const double down = side / 2 + ink.height() / 2 + around + 0.5;
    const double corner = side / 2 - ink.width() / 2;
    for (const QPointF aside : {QPointF(0, -down), QPointF(0, down), QPointF(across, 0), QPointF(-across, 0), QPointF(-corner, -down),
                                QPointF(corner, -down), QPointF(-corner, down), QPointF(corner, down), QPointF(across, -side / 3),
                                QPointF(across, side / 3), QPointF(-across, -side / 3), QPointF(-across, side / 3)}) {
        if (const auto placed = place(text, size, middle + aside))
            return placed;
    }
    return std::nullopt;
}

} // namespace asleft
