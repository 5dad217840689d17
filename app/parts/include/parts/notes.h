#pragma once

#include <QWidget>

class QVBoxLayout;

namespace asleft {

/// A column of short paragraphs, each with an optional bold head; they wrap, and the whole can be read by the keyboard's screen reader.
class Notes : public QWidget {
    Q_OBJECT

public:
    struct Note {
        QString head; ///< may be empty
        QString words;
        bool quiet = false;
        bool operator==(const Note &) const = default;
    };

    explicit Notes(const QString &name, QWidget *parent = nullptr);

    void setNotes(const QList<Note> &notes);
    [[nodiscard]] const QList<Note> &notes() const { return m_notes; }

private:
    QVBoxLayout *m_column;
    QList<Note> m_notes;
};

} // namespace asleft
