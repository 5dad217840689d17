#pragma once

#include <parts/jobs_model.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class Heading;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;
enum class SheetPaper;

/// One job before it is on the Bench: where it was left, its lines with their shapes, and a sheet of it for the pencil.
class JobView : public QWidget {
    Q_OBJECT

public:
    explicit JobView(QWidget *parent = nullptr);

    void show(const JobLine &job, const Result<JobGlance> &glance, Moment now);
    [[nodiscard]] KeyButton *benchKey() const { return m_bench; }
    [[nodiscard]] KeyButton *paperKey() const { return m_paperSheet; }
    [[nodiscard]] ChoiceKeys *paperKeys() const { return m_paper; }
    [[nodiscard]] SheetPaper paper() const;
    /// What came of the bench sheet.
    [[nodiscard]] MessageLine *paperMessage() const { return m_paperMessage; }

private:
    void buildLayout();

    Heading *m_title;
    Heading *m_dates;
    Notes *m_resume;
    MessageLine *m_message;
    KeyButton *m_bench;
    ChoiceKeys *m_paper;
    KeyButton *m_paperSheet;
    MessageLine *m_paperMessage;
    RuledRows m_rows;
    RuledList *m_lines;
    QHash<qint64, StepLook> m_looks;
};

} // namespace asleft
