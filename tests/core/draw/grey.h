#pragma once

#include <QColor>
#include <QImage>

#include <algorithm>
#include <cstdlib>

namespace asleft {

constexpr int side = 44; // the smallest a shape is drawn on the bench

inline int greyAt(const QImage &image, int x, int y)
{
    return image.constScanLine(std::clamp(y, 0, side - 1))[std::clamp(x, 0, side - 1)];
}

/// Each pixel the mean of itself and its neighbours, one pixel around.
inline QImage blurred(const QImage &image)
{
    QImage result(image.size(), QImage::Format_Grayscale8);
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            int sum = 0;
            for (int near = 0; near < 9; ++near)
                sum += greyAt(image, x + near % 3 - 1, y + near / 3 - 1);
            result.scanLine(y)[x] = static_cast<uchar>(sum / 9);
        }
    }
    return result;
}

/// How many pixels differ by more than a tenth of the range.
inline int pixelsApart(const QImage &first, const QImage &second)
{
    int count = 0;
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x)
            count += std::abs(greyAt(first, x, y) - greyAt(second, x, y)) > 25 ? 1 : 0;
    }
    return count;
}

/// White wherever a square in the middle third of `image` has not been painted to.
inline bool isWhiteAround(const QImage &image)
{
    const QRect square(side - 1, side - 1, side + 2, side + 2);
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            if (!square.contains(x, y) && image.pixelColor(x, y) != QColor(Qt::white))
                return false;
        }
    }
    return true;
}

} // namespace asleft
