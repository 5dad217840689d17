#pragma once

#include <work/job_book.h>

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;

/// The head of the valve sheet: where the crank stands, what is set there, what comes after it and until when it has to stand, with the
/// keys for what is done to a whole position.
class CrankLine : public QWidget {
    Q_OBJECT

public:
    enum class Key { Undo, Plan, Sheet, AllHere, Turn };

    explicit CrankLine(QWidget *parent = nullptr);

    /// `computer` is whose acts can be taken back.
    void present(const JobBook &book, Moment now, std::string_view station);
    [[nodiscard]] KeyButton *key(Key key) const { return m_keys.at(qsizetype(key)); }

Q_SIGNALS:
    void keyed(asleft::CrankLine::Key key);

private:
    KeyButton *addKey(const QString &words, const QString &meaning);
    void showPlace(const JobState &state);
    void showUndo(const JobState &state, std::string_view station);
    void showPlan(const JobBook &book, Moment now);

    Heading *m_place;
    Heading *m_sets;
    Heading *m_wait;
    Heading *m_then;
    Heading *m_known;
    QList<KeyButton *> m_keys;
};

} // namespace asleft
