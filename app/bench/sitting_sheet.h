#pragma once

#include "desk.h"

#include <work/job_book.h>

#include <QWidget>

class QVBoxLayout;

namespace asleft {

class ChoiceKeys;
class KeyButton;
class ValueField;

/// Opens a sitting: says where the job was left, and asks who is at the bench, which feeler set, cold or hot. Asked once.
class SittingSheet : public QWidget {
    Q_OBJECT

public:
    SittingSheet(Desk &desk, JobBook &book, QWidget *parent = nullptr);

    void takeFocus();
    [[nodiscard]] ValueField *initials() const { return m_initials; }
    [[nodiscard]] ChoiceKeys *who() const { return m_who; }
    [[nodiscard]] KeyButton *beginKey() const { return m_begin; }

Q_SIGNALS:
    void begun();

private:
    void sayWhereItWasLeft(QVBoxLayout *column);
    void askWho(QVBoxLayout *column);
    void askTools(QVBoxLayout *column);
    void begin();

    Desk &m_desk;
    JobBook &m_book;
    ChoiceKeys *m_who = nullptr; ///< nullptr while nobody is known
    ValueField *m_initials = nullptr;
    ChoiceKeys *m_leaves = nullptr; ///< nullptr while there is no feeler set
    ChoiceKeys *m_condition = nullptr;
    KeyButton *m_begin = nullptr;
};

} // namespace asleft
