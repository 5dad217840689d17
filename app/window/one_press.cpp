#include <window/one_press.h>

#include <QApplication>
#include <QLineEdit>
#include <QMouseEvent>
#include <QWindow>

#include <utility>

namespace asleft {

namespace {

/// X11 tells a repeat as a release and a press at one moment, and under load not always that it is one; no finger is as quick.
constexpr quint64 quickestFinger = 25;
constexpr double samePlace = 12;

/// The two keys with that word on them are one.
int keyOf(const QKeyEvent &event)
{
    return event.key() == Qt::Key_Enter ? int(Qt::Key_Return) : event.key();
}

bool movesOrRubsOut(int key)
{
    switch (key) {
    case Qt::Key_Left:
    case Qt::Key_Right:
    case Qt::Key_Up:
    case Qt::Key_Down:
    case Qt::Key_Home:
    case Qt::Key_End:
    case Qt::Key_PageUp:
    case Qt::Key_PageDown:
    case Qt::Key_Tab:
    case Qt::Key_Backtab:
    case Qt::Key_Backspace:
    case Qt::Key_Delete: return true;
    default: return false;
    }
}

bool types(const QKeyEvent &event)
{
    const bool plain = (event.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier)) == Qt::NoModifier;
    return plain && !event.text().isEmpty() && event.text().front().isPrint() && qobject_cast<QLineEdit *>(QApplication::focusWidget());
}

} // namespace

OnePress::OnePress(Garage &garage, QObject *parent) : QObject(parent)
{
    connect(&garage, &Garage::changed, this, &OnePress::heed);
    qApp->installEventFilter(this);
}

bool OnePress::Press::isAgain(const Press &other) const
{
    if (key != other.key || at.has_value() != other.at.has_value())
        return false;
    return !at || (*at - *other.at).manhattanLength() <= samePlace;
}

/// Whatever is written while a press is at work was written by it.
void OnePress::heed(const Change &)
{
    if (!m_pressed)
        return;
    m_wrote = m_pressed;
    m_sinceWritten.start();
    if (!m_wrote->at)
        m_spent.insert(m_wrote->key);
}

bool OnePress::comesTooSoon(const Press &press) const
{
    return m_wrote && m_wrote->isAgain(press) && m_sinceWritten.isValid() && std::chrono::milliseconds(m_sinceWritten.elapsed()) < m_pause;
}

bool OnePress::isRepeat(const QKeyEvent &event) const
{
    if (event.isAutoRepeat())
        return true;
    const auto up = m_released.find(keyOf(event));
    return up != m_released.end() && event.timestamp() != 0 && event.timestamp() - up->second < quickestFinger;
}

bool OnePress::takesKey(QKeyEvent &event)
{
    const int key = keyOf(event);
    if (isRepeat(event))
        return !movesOrRubsOut(key) && (m_spent.contains(key) || !types(event));
    m_spent.erase(key);
    if (comesTooSoon({key})) {
        Q_EMIT swallowed();
        return true;
    }
    m_pressed = Press{key};
    return false;
}

/// Taken as the key it is, it opens no shortcut, and is then swallowed as a key.
bool OnePress::takesShortcut(QKeyEvent &event)
{
    const bool taken = (isRepeat(event) && !movesOrRubsOut(keyOf(event))) || comesTooSoon({keyOf(event)});
    if (taken)
        event.accept();
    else if (!isRepeat(event))
        m_pressed = Press{keyOf(event)};
    return taken;
}

void OnePress::letGo(const QKeyEvent &event)
{
    if (!event.isAutoRepeat())
        m_released[keyOf(event)] = event.timestamp();
}

bool OnePress::takesClick(const QMouseEvent &event)
{
    if (event.type() == QEvent::MouseButtonRelease)
        return std::exchange(m_clickSwallowed, false);
    const Press press{int(event.button()), event.globalPosition()};
    m_clickSwallowed = comesTooSoon(press);
    if (m_clickSwallowed)
        Q_EMIT swallowed();
    else
        m_pressed = press;
    return m_clickSwallowed;
}

bool OnePress::eventFilter(QObject *watched, QEvent *event)
{
    // Every key and click reaches the window once, before the widgets in it.
    if (!watched->isWindowType())
        return QObject::eventFilter(watched, event);
    switch (event->type()) {
    case QEvent::KeyPress: return takesKey(*static_cast<QKeyEvent *>(event));
    case QEvent::ShortcutOverride: return takesShortcut(*static_cast<QKeyEvent *>(event));
    case QEvent::KeyRelease: letGo(*static_cast<QKeyEvent *>(event)); return false;
    case QEvent::MouseButtonPress:
    case QEvent::MouseButtonDblClick:
    case QEvent::MouseButtonRelease: return takesClick(*static_cast<QMouseEvent *>(event));
    default: return QObject::eventFilter(watched, event);
    }
}

} // namespace asleft
