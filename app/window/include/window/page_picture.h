#pragma once

#include <draw/palette.h>

#include <QSize>
#include <QString>
#include <QStringList>

#include <functional>

class QWidget;

namespace asleft {

/// The pages that can be drawn as they stand, by name: "vehicles", "bench" and so on.
QStringList pageNames();

/// Draws one page of a garage into a PNG file; one sentence where that cannot be done. It is drawn from a copy: looking changes nothing.
/// \pre `page` is one of pageNames()
QString drawPage(const QString &garage, Look look, const QString &page, QSize size, const QString &out);

/// Shows `window` in a size, lets `prepare` bring it to where it is to be seen, and draws it into a PNG file.
QString drawWindow(QWidget &window, QSize size, const std::function<void()> &prepare, const QString &out);

} // namespace asleft
