#include <parts/choice_keys.h>

#include <parts/heading.h>
#include <parts/ink_of.h>

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>

namespace asleft {

ChoiceKey::ChoiceKey(const QString &text, QWidget *parent) : QRadioButton(text, parent)
{
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
}

QSize ChoiceKey::sizeHint() const
{
    // Room for the bold words from the start, so that nothing moves when another key is chosen.
    return {qMax(touchHeight, QFontMetrics(textFont(TextSize::BodyStrong)).horizontalAdvance(text()) + 24), touchHeight};
}

bool ChoiceKey::hitButton(const QPoint &position) const
{
    return rect().contains(position);
}

void ChoiceKey::paintEvent(QPaintEvent *)
{
    const Ink &ink = inkOf(*this);
    QPainter painter(this);
    painter.fillRect(rect(), isChecked() ? ink.field : ink.key);
    painter.setPen(QPen(ink.edge, 1));
    painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    if (isChecked())
        painter.fillRect(QRect(0, height() - 5, width(), 5), isEnabled() ? ink.strongLine : ink.edge);
    painter.setFont(textFont(isChecked() ? TextSize::BodyStrong : TextSize::Body));
    painter.setPen(isEnabled() ? ink.text : ink.quietText);
    painter.drawText(rect().adjusted(0, 0, 0, -3), Qt::AlignCenter, text());
    if (hasFocus())
        paintFocusRing(painter, rect(), ink);
}

void ChoiceKey::keyPressEvent(QKeyEvent *event)
{
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (!enter)
        QRadioButton::keyPressEvent(event);
    else if (!event->isAutoRepeat())
        Q_EMIT entered();
}

ChoiceKeys::ChoiceKeys(const QString &label, const QStringList &choices, QWidget *parent) : QWidget(parent), m_group(new QButtonGroup(this))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(new Heading(label, TextSize::Small, Heading::Tone::Quiet));
    auto *row = new QHBoxLayout;
    row->setSpacing(0);
    for (const QString &words : choices) {
        auto *key = new ChoiceKey(words);
        key->setAccessibleName(tr("%1: %2").arg(label, words));
        m_group->addButton(key, int(m_group->buttons().size()));
        row->addWidget(key);
        connect(key, &ChoiceKey::entered, this, [this, key] {
            if (m_last)
                Q_EMIT entered();
            else
                key->moveOn();
        });
    }
    row->addStretch(1);
    column->addLayout(row);
    column->addStretch(1);
    setAccessibleName(label);
    if (!choices.isEmpty())
        setChoice(0);
    connect(m_group, &QButtonGroup::idToggled, this, [this](int id, bool checked) {
        if (!checked)
            return;
        stopAtChosen();
        Q_EMIT chosen(id);
    });
}

/// Qt sees to it only once the row has had the keyboard; until then Tab would stop at the first key, whichever is chosen.
void ChoiceKeys::stopAtChosen()
{
    for (QAbstractButton *button : m_group->buttons())
        button->setFocusPolicy(button->isChecked() ? Qt::StrongFocus : Qt::ClickFocus);
}

int ChoiceKeys::choice() const
{
    return m_group->checkedId();
}

void ChoiceKeys::setChoice(int choice)
{
    const QSignalBlocker quiet(m_group);
    key(choice)->setChecked(true);
    stopAtChosen();
}

void ChoiceKeys::takeFocus()
{
    if (ChoiceKey *chosen = key(choice()))
        chosen->setFocus(Qt::TabFocusReason);
}

ChoiceKey *ChoiceKeys::key(int choice) const
{
    return qobject_cast<ChoiceKey *>(m_group->button(choice));
}

} // namespace asleft
