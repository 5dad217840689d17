#pragma once

#include <draw/palette.h>

#include <QSize>
#include <QString>

#include <functional>

class QPainter;

namespace asleft {

using DrawSheet = std::function<void(QPainter &, const Ink &)>;
using PaintSheet = std::function<void(const QString &name, QSize size, const DrawSheet &draw)>;

/// Every shape of a fastener, and joints of every pattern in several sizes.
void paintJointSheets(const PaintSheet &paint);

} // namespace asleft
