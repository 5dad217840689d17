#include "placed_text.h"

#include <QPainter>

namespace asleft {

namespace {

/// The strong form of a size that names of points are set in.
TextSize strongOf(TextSize size)
{
    return size == TextSize::Fine ? TextSize::FineStrong : TextSize::SmallStrong;
}

} // namespace

void paintText(QPainter &painter, const PlacedText &text, const QColor &colour, bool strong)
{
    painter.setFont(textFont(strong ? strongOf(text.size) : text.size));
    painter.setPen(colour);
    painter.drawText(text.box, static_cast<int>(text.alignment) | Qt::TextDontClip | Qt::TextSingleLine, text.text);
}

} // namespace asleft
