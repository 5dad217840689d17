#pragma once

#include <QWidget>

namespace asleft {

class KeyButton;
class MessageLine;
class ToolsModel;
class ValueField;

/// A person who works here: the initials that stand beside what they did.
class PersonForm : public QWidget {
    Q_OBJECT

public:
    explicit PersonForm(ToolsModel &tools, QWidget *parent = nullptr);

    [[nodiscard]] ValueField *initials() const { return m_initials; }
    [[nodiscard]] ValueField *name() const { return m_name; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    ToolsModel &m_tools;
    ValueField *m_initials;
    ValueField *m_name;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
