#pragma once

#include <draw/palette.h>

#include <QSize>
#include <QString>
#include <QStringList>

namespace asleft {

/// The staged screens that can be drawn into a picture.
QStringList pictureScreens();

/// Draws one screen of a garage as the real window shows it, on a copy of the file: nothing in the garage is changed. Gives a sentence
/// where that could not be done, else nothing.
QString drawPicture(const QString &garage, Look look, const QString &screen, QSize size, const QString &out);

/// Draws every screen, light and dark, at 1280×800 and 1920×1080, into a folder.
QString drawPictures(const QString &garage, const QString &folder);

} // namespace asleft
