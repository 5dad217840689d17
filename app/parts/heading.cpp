#include <parts/heading.h>

namespace asleft {

Heading::Heading(const QString &text, TextSize size, Tone tone, QWidget *parent) : QLabel(text, parent)
{
    setTextFormat(Qt::PlainText);
    setFont(textFont(size));
    // A palette role, not a colour: it then follows the look by itself.
    setForegroundRole(tone == Tone::Quiet ? QPalette::PlaceholderText : QPalette::WindowText);
}

Heading *Heading::wrapped(const QString &text, TextSize size, Tone tone)
{
    auto *heading = new Heading(text, size, tone);
    heading->setWordWrap(true);
    return heading;
}

} // namespace asleft
