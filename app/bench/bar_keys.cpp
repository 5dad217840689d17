#include <bench/bar_keys.h>

#include <parts/key_button.h>

#include <QKeyEvent>

#include <algorithm>

namespace asleft {

BarKeys::BarKeys(const QList<BarKey> &keys, QWidget *bar) : m_bar(bar), m_keys(keys)
{
    for (const BarKey &said : keys) {
        auto *button = new KeyButton(said.words);
        button->setToolTip(said.letter.isNull() ? said.meaning : tr("%1 (%2)").arg(said.meaning, QString(said.letter.toUpper())));
        button->setAccessibleName(said.meaning);
        button->setStrong(said.bold);
        button->installEventFilter(this);
        connect(button, &KeyButton::clicked, this, [this, id = said.id] { Q_EMIT pressed(id); });
        m_buttons.append(button);
    }
}

KeyButton *BarKeys::key(int id) const
{
    const auto known = std::ranges::find(m_keys, id, &BarKey::id);
    return known == m_keys.end() ? nullptr : m_buttons.at(known - m_keys.begin());
}

QString BarKeys::letters() const
{
    QString letters;
    for (const BarKey &said : m_keys)
        if (!said.letter.isNull())
            letters += said.letter;
    return letters;
}

void BarKeys::present(const QMap<int, KeyNow> &now)
{
    m_now = now;
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        const KeyNow state = now.value(m_keys[i].id);
        if (!state.words.isEmpty())
            m_buttons[i]->setText(state.words);
        m_buttons[i]->setStrong(m_keys[i].bold || state.shown == KeyShown::Strong);
        m_buttons[i]->setEnabled(state.shown == KeyShown::On || state.shown == KeyShown::Strong);
        m_buttons[i]->setVisible(state.shown != KeyShown::Hidden);
    }
}

bool BarKeys::works(const KeyButton *button) const
{
    return button->isVisibleTo(m_bar) && button->isEnabled();
}

KeyButton *BarKeys::strong(bool answers) const
{
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        const bool isStrong = m_now.value(m_keys[i].id).shown == KeyShown::Strong && works(m_buttons[i]);
        if (isStrong && (m_keys[i].place == BarKey::Place::Answer) == answers)
            return m_buttons[i];
    }
    return nullptr;
}

KeyButton *BarKeys::any() const
{
    const auto first = std::ranges::find_if(m_buttons, [this](const KeyButton *button) { return works(button); });
    return first == m_buttons.end() ? nullptr : *first;
}

bool BarKeys::hasAnswer() const
{
    return std::ranges::any_of(m_keys, [this](const BarKey &said) {
        return said.place == BarKey::Place::Answer && m_now.value(said.id).shown != KeyShown::Hidden;
    });
}

void BarKeys::pressLetter(QChar letter)
{
    // The same letter may stand on two keys that are never in sight together.
    KeyButton *found = nullptr;
    for (qsizetype i = 0; i < m_keys.size(); ++i)
        if (m_keys[i].letter == letter && (!found || m_buttons[i]->isVisibleTo(m_bar)))
            found = m_buttons[i];
    if (!found)
        return;
    if (works(found))
        found->click();
    else
        Q_EMIT refused(tr("%1: there is nothing to do that to here. Nothing was logged.").arg(found->accessibleName()));
}

bool BarKeys::takesKey(const QKeyEvent &event)
{
    if ((event.modifiers() & ~(Qt::KeypadModifier | Qt::ShiftModifier)) != Qt::NoModifier)
        return false;
    const auto key = static_cast<Qt::Key>(event.key());
    if (key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT arrowPressed(key);
        return true;
    }
    const QChar letter = event.text().isEmpty() ? QChar() : event.text().front().toLower();
    const bool known = !letter.isNull() && std::ranges::count(m_keys, letter, &BarKey::letter) > 0;
    if (known && !event.isAutoRepeat())
        pressLetter(letter);
    return known;
}

bool BarKeys::eventFilter(QObject *watched, QEvent *event)
{
    if (event->type() == QEvent::KeyPress && takesKey(*static_cast<QKeyEvent *>(event)))
        return true;
    return QObject::eventFilter(watched, event);
}

} // namespace asleft
