#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

class QVBoxLayout;

namespace asleft {

class CautionWordsView;
class Heading;
class KeyButton;
class MessageLine;
class RuledList;
class RuledRows;

/// Turning the crank: where to and how far, what must be closed, out or over first, and the cautions, once a session, before the key that
/// says it is turned.
class TurnPane : public Pane {
    Q_OBJECT

public:
    TurnPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    /// What cannot be done yet is said where it is mended, at the head.
    [[nodiscard]] std::optional<PaneWanted> asksFirst() override;
    /// Proposes the position that is next.
    void open() override;
    /// Something has changed: the position that was chosen stays chosen.
    void refresh() override;
    void takeFocus() override;
    [[nodiscard]] KeyButton *readKey() const { return m_read; }
    [[nodiscard]] KeyButton *turnedKey() const { return m_turned; }
    [[nodiscard]] RuledList *positions() const { return m_positions; }
    [[nodiscard]] RuledRows *rows() const { return m_rows; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

private:
    void build();
    void buildKeys(QVBoxLayout *column);
    void showPositions();
    [[nodiscard]] std::size_t nextPosition() const;
    void showStep();
    void showWay();
    [[nodiscard]] QString whatIsOpen() const;
    void turn();
    [[nodiscard]] const PlanPosition *target() const;

    AppContext &m_context;
    JobBook &m_book;
    RuledRows *m_rows = nullptr;
    RuledList *m_positions = nullptr;
    Heading *m_travel = nullptr;
    Heading *m_how = nullptr;
    Heading *m_open = nullptr;
    CautionWordsView *m_cautions = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_read = nullptr;
    KeyButton *m_turned = nullptr;
    KeyButton *m_elsewhere = nullptr;
    KeyButton *m_back = nullptr;
    CrankPlan m_plan;               ///< whose positions are the rows
    std::optional<Angle> m_refused; ///< turning to there was refused because tappets bleed down
};

} // namespace asleft
