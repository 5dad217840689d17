#include <bench/joint_bar.h>

#include "joint_bar_keys.h"
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/reading_edit.h>
#include <parts/reason_line.h>

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QStackedWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int widthForOneLine = 600;

} // namespace

JointBar::JointBar(const QString &fieldName, const QList<JointBarKey> &keys, QWidget *parent)
    : QWidget(parent), m_said(keys), m_now(Heading::wrapped({}, TextSize::Now)), m_large(new Heading({}, TextSize::Value)),
      m_small(Heading::wrapped({}, TextSize::Small)), m_asked(Heading::wrapped({}, TextSize::SmallStrong)), m_edit(new ReadingEdit),
      m_reason(new ReasonLine), m_message(m_edit)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 6, 0, 0);
    column->setSpacing(5);
    build(column);
    buildKeys(keys);
    m_edit->setAccessibleName(fieldName);
    wire();
}

void JointBar::build(QVBoxLayout *column)
{
    m_nowRow = new QHBoxLayout;
    m_nowRow->setSpacing(4);
    m_nowRow->addWidget(m_now, 1);
    column->addLayout(m_nowRow);
    auto *page = new QWidget;
    auto *values = new QHBoxLayout(page);
    values->setContentsMargins(0, 0, 0, 0);
    values->setSpacing(16);
    values->addWidget(m_edit, 0, Qt::AlignTop);
    auto *words = new QVBoxLayout;
    words->setSpacing(2);
    words->addWidget(m_large);
    words->addWidget(m_small);
    m_beside = new JointKeysLayout;
    words->addLayout(m_beside);
    words->addStretch(1);
    values->addLayout(words, 1);
    m_large->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_values = new QStackedWidget;
    m_values->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    m_values->addWidget(page);
    m_values->addWidget(m_reason);
    column->addWidget(m_values);
    m_askedRow = new QWidget;
    m_askedLine = new QHBoxLayout(m_askedRow);
    m_askedLine->setContentsMargins(0, 0, 0, 0);
    m_askedLine->setSpacing(4);
    m_askedLine->addWidget(m_asked, 1);
    m_answers = new JointKeysLayout;
    m_askedLine->addLayout(m_answers);
    column->addWidget(m_askedRow);
    column->addWidget(m_message.line());
    m_work = new JointKeysLayout;
    column->addLayout(m_work);
}

void JointBar::buildKeys(const QList<JointBarKey> &keys)
{
    QString letters;
    for (const JointBarKey &said : keys) {
        auto *button = new KeyButton(said.words);
        const QString letter = said.letter.isNull() ? QString() : QString(said.letter).toUpper();
        button->setToolTip(letter.isEmpty() ? said.meaning : tr("%1 (%2)").arg(said.meaning, letter));
        button->setAccessibleName(said.meaning);
        button->setPlain(said.place == JointBarKey::Place::Seldom);
        button->installEventFilter(this);
        connect(button, &KeyButton::clicked, this, [this, which = int(m_keys.size())] { Q_EMIT keyed(which); });
        m_keys.append(button);
        letters += said.letter.isNull() ? QString() : QString(said.letter);
        switch (said.place) {
        case JointBarKey::Place::Work: m_work->addWidget(button); break;
        case JointBarKey::Place::Answer: m_answers->addWidget(button); break;
        case JointBarKey::Place::Beside: m_beside->addWidget(button); break;
        case JointBarKey::Place::Seldom: m_nowRow->addWidget(button, 0, Qt::AlignTop); break;
        }
    }
    m_edit->setLetters(letters);
}

void JointBar::wire()
{
    connect(m_edit, &QLineEdit::textChanged, this, &JointBar::showTyped);
    connect(m_edit, &QLineEdit::textEdited, this, [this] {
        m_message.typed();
        Q_EMIT typing();
    });
    connect(m_edit, &LineEdit::entered, this, [this] { Q_EMIT entered(m_edit->text().trimmed()); });
    connect(m_edit, &ReadingEdit::arrowPressed, this, &JointBar::arrowPressed);
    connect(m_edit, &ReadingEdit::letterPressed, this, &JointBar::pressLetter);
    connect(m_reason, &ReasonLine::given, this, &JointBar::reasonGiven);
    connect(m_reason, &ReasonLine::left, this, [this] {
        m_values->setCurrentIndex(0);
        quiet();
        takeFocus();
    });
}

/// Arrows and letters work on the keys as in the field: hands stay in one place.
bool JointBar::takesKey(const QKeyEvent &event)
{
    if ((event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) != Qt::NoModifier)
        return false;
    const auto key = static_cast<Qt::Key>(event.key());
    if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT arrowPressed(key);
        return true;
    }
    const QChar letter = event.text().isEmpty() ? QChar() : event.text().front().toLower();
    const bool known = !letter.isNull() && std::ranges::count(m_said, letter, &JointBarKey::letter) > 0;
    if (known && !event.isAutoRepeat())
        pressLetter(letter);
    return known;
}

bool JointBar::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress && takesKey(*static_cast<QKeyEvent *>(event)))
        return true;
    return QWidget::eventFilter(watched, event);
}

void JointBar::pressLetter(QChar letter)
{
    // The same letter may stand on two keys that are never in sight together.
    KeyButton *found = nullptr;
    for (qsizetype i = 0; i < m_said.size(); ++i)
        if (m_said[i].letter == letter && (!found || m_keys[i]->isVisibleTo(this)))
            found = m_keys[i];
    if (!found)
        return;
    if (found->isVisibleTo(this) && found->isEnabled())
        found->click();
    else
        refuse(tr("%1: there is nothing to do that to here. Nothing was logged.").arg(found->accessibleName()));
}

void JointBar::present(const JointBarView &view)
{
    const QWidget *had = QApplication::focusWidget();
    const bool ours = had && isAncestorOf(had);
    m_view = view;
    m_now->setText(view.now);
    m_large->setText(view.large);
    m_large->setVisible(!view.large.isEmpty());
    m_asked->setText(view.asked);
    m_edit->setVisible(view.types);
    m_edit->setReadOnly(view.readOnly);
    m_edit->setEcho(view.echo);
    showKeys();
    showTyped();
    fitLarge();
    placeAnswers();
    // A key that went away takes the keyboard with it.
    if (ours && QApplication::focusWidget() != had)
        takeFocus();
}

void JointBar::fitLarge()
{
    constexpr int beside = 16;
    const int room = width() - (m_view.types ? m_edit->sizeHint().width() + beside : 0);
    const bool fits = QFontMetrics(textFont(TextSize::Value)).horizontalAdvance(m_view.large) <= room;
    m_large->setFont(textFont(fits ? TextSize::Value : TextSize::Title));
}

void JointBar::placeAnswers()
{
    const bool narrow = width() < widthForOneLine || 2 * m_answers->sizeHint().width() > width();
    m_askedLine->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
}

void JointBar::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    fitLarge();
    placeAnswers();
}

void JointBar::showKeys()
{
    bool answers = !m_view.asked.isEmpty();
    for (qsizetype i = 0; i < m_keys.size(); ++i) {
        const KeyShown shown = m_view.keys.value(i, KeyShown::Hidden);
        if (const QString words = m_view.words.value(i); !words.isEmpty())
            m_keys[i]->setText(words);
        m_keys[i]->setStrong(shown == KeyShown::Strong);
        m_keys[i]->setEnabled(shown == KeyShown::On || shown == KeyShown::Strong);
        m_keys[i]->setVisible(shown != KeyShown::Hidden);
        answers = answers || (m_said[i].place == JointBarKey::Place::Answer && shown != KeyShown::Hidden);
    }
    m_askedRow->setVisible(answers);
}

void JointBar::showTyped()
{
    const QString text = m_edit->text().trimmed();
    const QString worth = text.isEmpty() || !m_view.types || !m_view.worth ? QString() : m_view.worth(text);
    m_small->setText(worth.isEmpty() ? m_view.small : worth);
    m_small->setVisible(!m_small->text().isEmpty());
}

void JointBar::clearValue()
{
    m_edit->clear();
    m_edit->setRefused(false);
    m_values->setCurrentIndex(0);
    quiet();
}

void JointBar::askReason(const QString &asked, const QString &take)
{
    quiet();
    m_values->setCurrentWidget(m_reason);
    m_reason->begin(asked, take);
}

bool JointBar::asksReason() const
{
    return m_values->currentWidget() == m_reason;
}

void JointBar::takeFocus()
{
    if (asksReason()) {
        m_reason->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto works = [this](KeyButton *key) { return key->isVisibleTo(this) && key->isEnabled(); };
    const auto strong = [&](bool answers) -> KeyButton * {
        for (qsizetype i = 0; i < m_keys.size(); ++i)
            if (m_view.keys.value(i) == KeyShown::Strong && works(m_keys[i]) && (m_said[i].place == JointBarKey::Place::Answer) == answers)
                return m_keys[i];
        return nullptr;
    };
    // A question about the joint goes before the work, and a value before its key.
    QWidget *first = strong(true);
    if (!first && m_view.types)
        first = m_edit;
    if (!first)
        first = strong(false);
    if (first) {
        first->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto any = std::ranges::find_if(m_keys, works);
    if (any != m_keys.end())
        (*any)->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
