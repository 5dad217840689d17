#pragma once

#include <draw/fonts.h>
#include <draw/palette.h>

class QPainter;
class QRectF;
class QWidget;

namespace asleft {

/// The least height of anything that is touched.
constexpr int touchHeight = 44;
/// The margin of the sheet, left and right.
constexpr int paneMargin = 28;

/// The colours a widget is painted with, told from its palette: parts then follow a change of look without being wired to it.
const Ink &inkOf(const QWidget &widget);

/// The ring around whatever the keyboard speaks to.
void paintFocusRing(QPainter &painter, const QRectF &area, const Ink &ink);

} // namespace asleft
