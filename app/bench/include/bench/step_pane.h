#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

namespace asleft {

class CautionWordsView;
class Heading;
class KeyButton;
class MessageLine;

/// One plain line of the job: what to do, its cautions before it is done, and the key that says it is.
class StepPane : public Pane {
    Q_OBJECT

public:
    StepPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    void showStep(StepId step) override;
    void refresh() override;
    void takeFocus() override;
    [[nodiscard]] KeyButton *doneKey() const { return m_done; }

private:
    void markDone();
    [[nodiscard]] QString doneWords(StepId step) const;
    [[nodiscard]] QStringList stillOpenBefore(const Step &step) const;

    AppContext &m_context;
    JobBook &m_book;
    std::optional<StepId> m_step;
    QStringList m_askedAbout; ///< what was open when Done was asked about
    Heading *m_title = nullptr;
    Heading *m_detail = nullptr;
    Heading *m_when = nullptr;
    CautionWordsView *m_cautions = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_done = nullptr;
};

} // namespace asleft
