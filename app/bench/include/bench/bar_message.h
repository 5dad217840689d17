#pragma once

#include <QString>

namespace asleft {

class MessageLine;
class ReadingEdit;

/// What a bar under a drawing says of what was typed into its field, or done. Its line keeps its room while it is empty: nothing above it
/// moves when something is said.
class BarMessage {
public:
    explicit BarMessage(ReadingEdit *edit);

    /// To be laid out by the bar, whose it then is.
    [[nodiscard]] MessageLine *line() const { return m_line; }

    /// Asks for the same once more; what was typed stays.
    void ask(const QString &sentence);
    /// Says what came from outside; it stands until something is logged, also while the person types.
    void notice(const QString &sentence);
    /// What is typed next takes the place of what was refused.
    void refuse(const QString &sentence);
    void done(const QString &sentence);
    void quiet();
    /// The person went on typing.
    void typed();

private:
    ReadingEdit *m_edit;
    MessageLine *m_line;
    bool m_noticed = false;
};

} // namespace asleft
