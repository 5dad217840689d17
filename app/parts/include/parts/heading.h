#pragma once

#include <draw/fonts.h>

#include <QLabel>

namespace asleft {

/// Words of the sheet in one of its sizes: bold heads, quiet lines. Follows the look.
class Heading : public QLabel {
    Q_OBJECT

public:
    enum class Tone { Plain, Quiet };

    Heading(const QString &text, TextSize size, Tone tone = Tone::Plain, QWidget *parent = nullptr);
    /// One that takes as many lines as its words want.
    static Heading *wrapped(const QString &text, TextSize size, Tone tone = Tone::Plain);
};

} // namespace asleft
