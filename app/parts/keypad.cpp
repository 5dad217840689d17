#include <parts/keypad.h>

#include <parts/key_button.h>

#include <QCoreApplication>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLineEdit>
#include <QLocale>

namespace asleft {

namespace {

/// 20 mm on a screen that tells its size truly; not less than the keys elsewhere.
constexpr double keyMillimetres = 20;

struct PadKey {
    QString text;
    int key;
    QString name;
};

QList<PadKey> padKeys()
{
    QList<PadKey> keys;
    for (const int digit : {7, 8, 9, 4, 5, 6, 1, 2, 3, 0})
        keys.append({QString::number(digit), Qt::Key_0 + digit, QString::number(digit)});
    const QString mark = QLocale().decimalPoint();
    keys.append({mark, Qt::Key_Period, Keypad::tr("Decimal mark")});
    keys.append({QString(QChar(0x2190)), Qt::Key_Backspace, Keypad::tr("Take back a digit")});
    keys.append({QStringLiteral("-"), Qt::Key_Minus, Keypad::tr("Between the leaf that goes and the one that does not")});
    keys.append({QStringLiteral("/"), Qt::Key_Slash, Keypad::tr("Fraction")});
    keys.append({QString(QChar(0x2423)), Qt::Key_Space, Keypad::tr("Between a whole and its fraction")});
    return keys;
}

} // namespace

Keypad::Keypad(QWidget *parent) : QWidget(parent)
{
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(6);
    const int side = qBound(64, int(keyMillimetres / 25.4 * physicalDpiY()), 80);
    const auto add = [&](const PadKey &pad, int row, int column, int columns) {
        auto *key = new KeyButton(pad.text);
        key->setAccessibleName(pad.name);
        key->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
        key->setMaximumHeight(side);
        key->setStrong(true);
        // The value keeps the keyboard: a touch types into it.
        key->setFocusPolicy(Qt::NoFocus);
        const bool prints = pad.key != Qt::Key_Backspace && pad.key != Qt::Key_Return;
        const QString typed = pad.key == Qt::Key_Space ? QStringLiteral(" ") : pad.text;
        connect(key, &KeyButton::clicked, this, [this, pad, typed, prints] { press(pad.key, prints ? typed : QString()); });
        grid->addWidget(key, row, column, 1, columns);
    };
    const QList<PadKey> keys = padKeys();
    for (int i = 0; i < keys.size(); ++i)
        add(keys[i], i / 3, i % 3, 1);
    add({tr("log"), Qt::Key_Return, tr("Log it and go on")}, 5, 0, 3);
    // In a low window the keys give way, down to what a finger needs.
    for (int row = 0; row < 6; ++row)
        grid->setRowStretch(row, side);
    grid->setRowStretch(6, 1);
}

void Keypad::press(int key, const QString &text)
{
    if (!m_target || !m_target->isVisible())
        return;
    m_target->setFocus(Qt::OtherFocusReason);
    QKeyEvent down(QEvent::KeyPress, key, Qt::NoModifier, text);
    QCoreApplication::sendEvent(m_target, &down);
}

} // namespace asleft
