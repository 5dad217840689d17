#include <parts/message_line.h>

#include <parts/ink_of.h>

#include <QAccessibleWidget>
#include <QPainter>
#include <QPainterPath>

namespace asleft {

namespace {

constexpr int markWidth = 16;
constexpr int longestWord = 24;

/// A message is an alert to a screen reader, and its name is what it says.
QAccessibleInterface *messageInterface(const QString &className, QObject *object)
{
    auto *line = className == QLatin1String(MessageLine::staticMetaObject.className()) ? qobject_cast<MessageLine *>(object) : nullptr;
    return line ? new QAccessibleWidget(line, QAccessible::AlertMessage, line->sentence()) : nullptr;
}

/// What was typed may be one endless word: it gets places to break at, or it would push the sheet apart.
QString breakable(const QString &sentence)
{
    QString broken;
    int run = 0;
    for (const QChar letter : sentence) {
        run = letter.isSpace() ? 0 : run + 1;
        broken += letter;
        if (run > 0 && run % longestWord == 0 && !letter.isHighSurrogate())
            broken += QChar(0x200B);
    }
    return broken;
}

QPainterPath refusalMark(const QRectF &box)
{
    QPainterPath wedge(box.topLeft());
    wedge.lineTo(box.right(), box.center().y());
    wedge.lineTo(box.bottomLeft());
    wedge.closeSubpath();
    return wedge;
}

QPainterPath doneMark(const QRectF &box)
{
    QPainterPath stroke(QPointF(box.left(), box.center().y()));
    stroke.lineTo(box.left() + box.width() * 0.4, box.bottom());
    stroke.lineTo(box.topRight());
    return stroke;
}

} // namespace

MessageLine::MessageLine(QWidget *parent) : QLabel(parent)
{
    [[maybe_unused]] static const bool installed = (QAccessible::installFactory(messageInterface), true);
    setTextFormat(Qt::PlainText);
    setWordWrap(true);
    setFont(textFont(TextSize::Small));
    QSizePolicy policy(QSizePolicy::Ignored, QSizePolicy::Minimum);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAlignment(Qt::AlignLeft | Qt::AlignTop);
    clear();
}

void MessageLine::say(Role role, const QString &sentence)
{
    const bool same = m_role == role && m_sentence == sentence;
    if (same)
        return;
    m_role = role;
    m_sentence = sentence;
    setText(breakable(sentence));
    setAccessibleName(sentence);
    setForegroundRole(role == Role::Refusal ? QPalette::BrightText : role == Role::Done ? QPalette::WindowText : QPalette::PlaceholderText);
    setContentsMargins(role == Role::Quiet ? 0 : markWidth, 0, 0, 0);
    setVisible(!sentence.isEmpty());
    if (role == Role::Quiet || sentence.isEmpty())
        return;
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageLine::clear()
{
    m_role = Role::Quiet;
    m_sentence.clear();
    QLabel::clear();
    setAccessibleName({});
    setVisible(false);
}

void MessageLine::paintEvent(QPaintEvent *event)
{
    QLabel::paintEvent(event);
    if (m_role == Role::Quiet)
        return;
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const qreal middle = QFontMetricsF(font()).height() / 2;
    const QRectF box(1, middle - 4.5, 8, 9);
    if (m_role == Role::Refusal)
        painter.fillPath(refusalMark(box), ink.wedge);
    else
        painter.strokePath(doneMark(box.adjusted(0, 0, 2, -1)), QPen(ink.accent, 2.5));
}

} // namespace asleft
