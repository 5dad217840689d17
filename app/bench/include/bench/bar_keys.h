#pragma once

#include <QList>
#include <QMap>
#include <QObject>
#include <QString>

namespace asleft {

class KeyButton;

/// One key of a bar: its letter presses it too, wherever in the bar the keyboard is.
struct BarKey {
    enum class Place {
        Work,   ///< below, with the keys of the work itself
        Answer, ///< beside what is asked
        Beside, ///< under the words beside the field
        Choice, ///< beside the units
        Seldom, ///< beside what to do now
    };
    int id = 0;      ///< of the pane's own
    QString words;   ///< may be told later
    QString meaning; ///< what it does, in full
    QChar letter = {};
    Place place = Place::Work;
    bool plain = false; ///< wanted seldom: words without an outline
    bool bold = false;  ///< drawn strong also while it is off
};

/// How a key stands now.
enum class KeyShown {
    Hidden,
    Off,
    On,
    Strong, ///< it carries the work on; the first of them has the keyboard where nothing is typed
};
struct KeyNow {
    KeyShown shown = KeyShown::Hidden;
    QString words = {}; ///< where they change; empty leaves them
};

/// The keys of a bar, made as they are described. Letters and arrows work on them as in the bar's field: hands stay in one place.
class BarKeys : public QObject {
    Q_OBJECT

public:
    /// The bar lays the buttons out, whose they are then.
    BarKeys(const QList<BarKey> &keys, QWidget *bar);

    /// A key that is not told of is hidden.
    void present(const QMap<int, KeyNow> &now);
    [[nodiscard]] KeyButton *key(int id) const;
    /// In the order they were described in.
    [[nodiscard]] const QList<KeyButton *> &buttons() const { return m_buttons; }
    [[nodiscard]] const QList<BarKey> &described() const { return m_keys; }
    /// Every letter that presses one.
    [[nodiscard]] QString letters() const;
    /// Presses the key of this letter, or says that it does nothing now.
    void pressLetter(QChar letter);
    /// The key that carries the work on, or answers what is asked; nullptr where none does.
    [[nodiscard]] KeyButton *strong(bool answers) const;
    /// The first that can be pressed at all.
    [[nodiscard]] KeyButton *any() const;
    [[nodiscard]] bool hasAnswer() const;

Q_SIGNALS:
    void pressed(int id);
    void refused(const QString &sentence);
    void arrowPressed(Qt::Key arrow);

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    [[nodiscard]] bool works(const KeyButton *button) const;
    [[nodiscard]] bool takesKey(const QKeyEvent &event);

    QWidget *m_bar;
    QList<BarKey> m_keys;
    QList<KeyButton *> m_buttons;
    QMap<int, KeyNow> m_now;
};

} // namespace asleft
