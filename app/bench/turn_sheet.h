#pragma once

#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

namespace asleft {

class CautionWordsView;
class Heading;
class KeyButton;
class MessageLine;
class RuledList;
class RuledRows;

/// Turning the crank: where to and how far, what must be closed or out first, and the cautions, once a sitting, before the key that
/// says it is turned.
class TurnSheet : public QWidget {
    Q_OBJECT

public:
    TurnSheet(Desk &desk, JobBook &book, QWidget *parent = nullptr);

    /// Proposes the position that is next.
    void refresh();
    void takeFocus();
    [[nodiscard]] KeyButton *readKey() const { return m_read; }
    [[nodiscard]] KeyButton *turnedKey() const { return m_turned; }
    [[nodiscard]] RuledList *positions() const { return m_positions; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

Q_SIGNALS:
    void turned();
    void left();
    /// The crank must be confirmed in this sitting first.
    void crankWanted();

private:
    void build();
    void showPositions();
    void showStep();
    void turn();
    [[nodiscard]] std::optional<Angle> target() const;

    Desk &m_desk;
    JobBook &m_book;
    RuledRows *m_rows = nullptr;
    RuledList *m_positions = nullptr;
    Heading *m_travel = nullptr;
    Heading *m_open = nullptr;
    CautionWordsView *m_cautions = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_read = nullptr;
    KeyButton *m_turned = nullptr;
    KeyButton *m_elsewhere = nullptr;
    KeyButton *m_back = nullptr;
    std::vector<Angle> m_cranks; ///< of the rows
};

} // namespace asleft
