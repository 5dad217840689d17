#pragma once

#include <bench/bar_message.h>

#include <QList>
#include <QWidget>

#include <functional>

class QBoxLayout;
class QHBoxLayout;
class QStackedWidget;
class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class ReadingEdit;
class ReasonLine;

/// One key of a bar: its letter presses it too, wherever in the bar the keyboard is.
struct JointBarKey {
    enum class Place {
        Work,   ///< below, with the keys of the work itself
        Answer, ///< beside what is asked
        Beside, ///< under the words beside the field
        Seldom, ///< plain, beside what to do now
    };
    QString words;
    QString meaning;
    QChar letter = {}; ///< none for a key that is pressed by Enter or a tap only
    Place place = Place::Work;
};

/// How a key stands now.
enum class KeyShown {
    Hidden,
    Off,
    On,
    Strong, ///< it carries the work on; the first of them has the keyboard where nothing is typed
};

/// What the bar shows now.
struct JointBarView {
    QString now;   ///< what to do now
    QString large; ///< what to set the wrench to; may be empty
    QString small; ///< beneath it; may be empty
    QString asked; ///< what is asked of the joint, beside the keys that answer; may be empty
    QList<KeyShown> keys;
    QStringList words = {}; ///< of the keys whose words change; an empty one leaves them
    bool types = false;     ///< a value is typed here
    bool readOnly = false;
    QString echo = {};                                      ///< of the empty field
    std::function<QString(const QString &text)> worth = {}; ///< what the typed text is worth, shown in place of `small`
};

/// Under a drawn joint: what to do now, in large what to set, a field where something is read, and a key for each thing that is said
/// without a number. Knows nothing of joints: it tells what was pressed and typed, and shows what it is given.
class JointBar : public QWidget {
    Q_OBJECT

public:
    JointBar(const QString &fieldName, const QList<JointBarKey> &keys, QWidget *parent = nullptr);

    void present(const JointBarView &view);
    /// Takes what was typed away, with whatever was said about it.
    void clearValue();
    void ask(const QString &sentence) { m_message.ask(sentence); }
    void notice(const QString &sentence) { m_message.notice(sentence); }
    void refuse(const QString &sentence) { m_message.refuse(sentence); }
    void done(const QString &sentence) { m_message.done(sentence); }
    void quiet() { m_message.quiet(); }
    void askReason(const QString &asked, const QString &take);
    [[nodiscard]] bool asksReason() const;
    /// The keyboard goes to the reason asked for, the field, or the strong key.
    void takeFocus();

    [[nodiscard]] ReadingEdit *edit() const { return m_edit; }
    [[nodiscard]] ReasonLine *reason() const { return m_reason; }
    [[nodiscard]] KeyButton *key(int which) const { return m_keys.at(which); }
    [[nodiscard]] const QList<KeyButton *> &keys() const { return m_keys; }
    [[nodiscard]] MessageLine *message() const { return m_message.line(); }
    [[nodiscard]] Heading *now() const { return m_now; }
    [[nodiscard]] Heading *large() const { return m_large; }
    [[nodiscard]] Heading *small() const { return m_small; }
    [[nodiscard]] Heading *asked() const { return m_asked; }

Q_SIGNALS:
    void keyed(int which);
    /// Enter in the field; the text may be empty.
    void entered(const QString &text);
    void reasonGiven(const QString &reason);
    void arrowPressed(Qt::Key arrow);
    /// The person went on typing: a question asked before is void.
    void typing();

protected:
    void resizeEvent(QResizeEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void build(QVBoxLayout *column);
    void buildKeys(const QList<JointBarKey> &keys);
    void wire();
    void showKeys();
    /// As large as there is room for: no figure of it is cut off.
    void fitLarge();
    /// Where there is no room for both on one line the question stands above its answers.
    void placeAnswers();
    void showTyped();
    void pressLetter(QChar letter);
    [[nodiscard]] bool takesKey(const QKeyEvent &event);

    JointBarView m_view;
    QList<JointBarKey> m_said;
    Heading *m_now;
    Heading *m_large;
    Heading *m_small;
    Heading *m_asked;
    ReadingEdit *m_edit;
    ReasonLine *m_reason;
    BarMessage m_message;
    QStackedWidget *m_values = nullptr;
    QWidget *m_askedRow = nullptr;
    QBoxLayout *m_askedLine = nullptr;
    QHBoxLayout *m_nowRow = nullptr;
    QLayout *m_beside = nullptr;
    QLayout *m_answers = nullptr;
    QLayout *m_work = nullptr;
    QList<KeyButton *> m_keys;
};

} // namespace asleft
