#pragma once

#include "pages/jobs_model.h"

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;

/// One job before it is on the Bench: where it was left, and its lines with their shapes.
class JobSheetView : public QWidget {
    Q_OBJECT

public:
    explicit JobSheetView(QWidget *parent = nullptr);

    void show(const JobLine &job, const Result<JobGlance> &glance, Moment now);
    [[nodiscard]] KeyButton *benchKey() const { return m_bench; }

private:
    void lay();

    Heading *m_title;
    Heading *m_dates;
    Notes *m_resume;
    MessageLine *m_message;
    KeyButton *m_bench;
    RuledRows m_rows;
    RuledList *m_lines;
    QHash<qint64, StepLook> m_looks;
};

} // namespace asleft
