#include <parts/key_button.h>

#include <parts/ink_of.h>

#include <QKeyEvent>
#include <QPainter>

namespace asleft {

QString wrappedTip(const QString &sentence)
{
    return QStringLiteral("<p>%1</p>").arg(sentence.toHtmlEscaped());
}

KeyButton::KeyButton(const QString &text, QWidget *parent) : QPushButton(text, parent)
{
    setAutoDefault(false);
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Minimum, QSizePolicy::Fixed);
}

void KeyButton::setStrong(bool strong)
{
    m_strong = strong;
    updateGeometry();
    update();
}

void KeyButton::setPlain(bool plain)
{
    m_plain = plain;
    updateGeometry();
    update();
}

void KeyButton::forbid(const QString &why)
{
    m_forbidden = true;
    setToolTip(wrappedTip(why));
    setAccessibleDescription(why);
    setEnabled(false);
}

void KeyButton::changeEvent(QEvent *event)
{
    QPushButton::changeEvent(event);
    if (event->type() == QEvent::EnabledChange && m_forbidden && isEnabled())
        setEnabled(false);
}

QFont KeyButton::wordsFont() const
{
    return textFont(m_strong ? TextSize::BodyStrong : TextSize::Body);
}

QSize KeyButton::sizeHint() const
{
    const QSize words = QFontMetrics(wordsFont()).size(Qt::TextShowMnemonic, text());
    const int beside = m_plain ? 8 : 18;
    return {qMax(touchHeight, words.width() + 2 * beside), touchHeight};
}

QSize KeyButton::minimumSizeHint() const
{
    return sizeHint();
}

void KeyButton::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal line = m_strong ? 2.5 : 1.5;
    const QRectF outline = QRectF(rect()).adjusted(line / 2, line / 2, -line / 2, -line / 2);
    if (!m_plain) {
        // A key that is off has a thin, broken outline: it is told from one that is on in grey, too.
        QPen pen(isEnabled() ? ink.strongLine : ink.edge, isEnabled() ? line : 1.0, isEnabled() ? Qt::SolidLine : Qt::DashLine);
        painter.setPen(pen);
        painter.setBrush(!isEnabled() ? ink.paper : isDown() ? ink.pad : ink.key);
        painter.drawRoundedRect(outline, 4, 4);
    }
    if (hasFocus())
        paintFocusRing(painter, rect(), ink);
    painter.setFont(wordsFont());
    painter.setPen(!isEnabled() ? ink.quietText : m_plain ? ink.accentText : ink.text);
    painter.drawText(rect(), Qt::AlignCenter | Qt::TextShowMnemonic, text());
}

void KeyButton::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter && !event->isAutoRepeat())
        click();
    if (!enter)
        QPushButton::keyPressEvent(event);
}

} // namespace asleft
