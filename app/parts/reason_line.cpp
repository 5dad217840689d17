#include <parts/reason_line.h>

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/line_edit.h>

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QVBoxLayout>

namespace asleft {

ReasonLine::ReasonLine(QWidget *parent)
    : QWidget(parent), m_asked(Heading::wrapped({}, TextSize::Small, Heading::Tone::Quiet)), m_edit(new LineEdit),
      m_take(new KeyButton({})), m_notNow(new KeyButton(tr("not now")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    column->addWidget(m_asked);
    auto *row = new QHBoxLayout;
    row->setSpacing(8);
    m_take->setStrong(true);
    m_notNow->setPlain(true);
    row->addWidget(m_edit, 1);
    row->addWidget(m_take);
    row->addWidget(m_notNow);
    column->addLayout(row);
    column->addStretch(1);
    connect(m_edit, &LineEdit::entered, this, [this] { Q_EMIT given(m_edit->text().trimmed()); });
    connect(m_take, &KeyButton::clicked, this, [this] { Q_EMIT given(m_edit->text().trimmed()); });
    connect(m_notNow, &KeyButton::clicked, this, &ReasonLine::left);
}

void ReasonLine::begin(const QString &asked, const QString &take)
{
    m_asked->setText(asked);
    m_edit->setAccessibleName(asked);
    m_take->setText(take);
    m_take->updateGeometry();
    m_edit->clear();
    m_edit->setFocus(Qt::OtherFocusReason);
}

void ReasonLine::keyPressEvent(QKeyEvent *event)
{
    if (event->key() == Qt::Key_Escape)
        Q_EMIT left();
    else
        QWidget::keyPressEvent(event);
}

} // namespace asleft
