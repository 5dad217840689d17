#pragma once

#include <work/workshop.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class MessageLine;
class ToolsModel;

/// How the shop decides whether a reading is inside its band.
class RuleForm : public QWidget {
    Q_OBJECT

public:
    explicit RuleForm(ToolsModel &tools, QWidget *parent = nullptr);

    [[nodiscard]] ChoiceKeys *rule() const { return m_rule; }
    /// One sentence: what the chosen rule means.
    [[nodiscard]] MessageLine *meaning() const { return m_meaning; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

private:
    void choose(int choice);
    void show();

    ToolsModel &m_tools;
    ChoiceKeys *m_rule;
    MessageLine *m_meaning;
    MessageLine *m_message;
};

} // namespace asleft
