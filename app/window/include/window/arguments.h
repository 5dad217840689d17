#pragma once

#include <draw/palette.h>

#include <QSize>
#include <QString>

#include <optional>

namespace asleft {

/// What the program was asked to do.
struct Arguments {
    enum class Wish {
        Last, ///< the garage opened last, or the start sheet
        Open,
        New,
        Picture, ///< one page into a file
        Help,
        Version,
        Refused,
    };
    Wish wish = Wish::Last;
    QString garage;
    QString page;
    QString out;
    std::optional<Look> look;
    QSize size{1280, 800};
    QString refusal; ///< one sentence, for Refused
};

Arguments readArguments(const QStringList &arguments);

/// Whether these arguments can be served without a display; asked before there is an application.
bool needsNoDisplay(int count, char **words);

QString helpText();

} // namespace asleft
