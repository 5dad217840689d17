#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

namespace asleft {

class CautionWordsView;
class Heading;
class KeyButton;
class MessageLine;
class RuledList;
class RuledRows;

/// Asks, once a session, where the crank stands: mark and stroke. Unknown is an answer.
class CrankPane : public Pane {
    Q_OBJECT

public:
    CrankPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    void refresh() override;
    void takeFocus() override;
    [[nodiscard]] KeyButton *standsKey() const { return m_stands; }
    [[nodiscard]] KeyButton *unknownKey() const { return m_unknown; }
    [[nodiscard]] RuledList *places() const { return m_places; }

private:
    void showCheck();
    void answer(std::optional<Angle> crank);

    AppContext &m_context;
    JobBook &m_book;
    Heading *m_left = nullptr;
    Heading *m_check = nullptr;
    CautionWordsView *m_cautions = nullptr;
    RuledRows *m_rows = nullptr;
    RuledList *m_places = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_stands = nullptr;
    KeyButton *m_unknown = nullptr;
};

} // namespace asleft
