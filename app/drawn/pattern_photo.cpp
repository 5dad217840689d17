#include <drawn/pattern_photo.h>

#include <QImageReader>

namespace asleft {

namespace {

constexpr int longestSide = 1600;

} // namespace

QImage readPhoto(const QString &path)
{
    QImageReader reader(path);
    reader.setAutoTransform(true);
    reader.setDecideFormatFromContent(true);
    // Before it is read: a photo of a large camera is more than the reader takes whole.
    const QSize size = reader.size();
    if (size.isValid() && std::max(size.width(), size.height()) > longestSide)
        reader.setScaledSize(size.scaled(longestSide, longestSide, Qt::KeepAspectRatio).expandedTo({1, 1}));
    return reader.read();
}

} // namespace asleft
