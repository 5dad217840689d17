#pragma once

#include <draw/head.h>

namespace asleft {

/// Paints a text in its place; in the strong form of its size where it is `strong`.
void paintText(QPainter &painter, const PlacedText &text, const QColor &colour, bool strong = false);

} // namespace asleft
