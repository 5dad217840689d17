#pragma once

#include <draw/head.h>

#include <QFontMetricsF>

#include <map>
#include <optional>

namespace asleft {

/// Finds places for short texts that lie on nothing placed before.
class TextSpots {
public:
    explicit TextSpots(const QRectF &area) : m_area(area) {}

    void take(const QRectF &box) { m_taken.append(box); }
    /// The text with its middle there, if there is room.
    std::optional<PlacedText> place(const QString &text, TextSize size, QPointF middle);
    /// The text above, below or beside a square, wherever there is room first; beside it rather on the side that `outward` points to.
    std::optional<PlacedText> placeBeside(const QString &text, TextSize size, const QRectF &square, QPointF outward);

private:
    [[nodiscard]] bool isFree(const QRectF &box) const;
    /// The ink of a text in its strong form, which it may take where it stands.
    [[nodiscard]] QSizeF inkOf(const QString &text, TextSize size);

    QRectF m_area;
    std::map<TextSize, QFontMetricsF> m_metrics; ///< made once, since many texts are tried at many places
    QList<QRectF> m_taken;
};

} // namespace asleft
