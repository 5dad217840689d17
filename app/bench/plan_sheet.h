#pragma once

#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

class QVBoxLayout;

namespace asleft {

class KeyButton;
class MessageLine;

/// The plans this engine can be worked by: the manual's own table first, then the generated ones, marked so.
class PlanSheet : public QWidget {
    Q_OBJECT

public:
    PlanSheet(Desk &desk, JobBook &book, QWidget *parent = nullptr);

    void refresh();
    void takeFocus();
    [[nodiscard]] QList<KeyButton *> workKeys() const { return m_work; }

Q_SIGNALS:
    void left();

private:
    void addPlan(QVBoxLayout *column, const CrankPlan &plan);

    Desk &m_desk;
    JobBook &m_book;
    QWidget *m_plans = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_back = nullptr;
    QList<KeyButton *> m_work;
};

} // namespace asleft
