#pragma once

#include <QImage>

namespace asleft {

/// A picture no larger than it is looked at, the right way up; a null image where the file is none that can be read.
QImage readPhoto(const QString &path);

} // namespace asleft
