#pragma once

#include <work/workshop.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class LeafFan;
class MessageLine;
class ToolsModel;
class ValueField;

/// A new feeler set: its name and its leaves as they are stamped, drawn as they are read.
class FeelerForm : public QWidget {
    Q_OBJECT

public:
    FeelerForm(ToolsModel &tools, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] ValueField *name() const { return m_name; }
    [[nodiscard]] ValueField *leaves() const { return m_leaves; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();
    /// A set there is already, for looking at its leaves.
    void look(const Tool &set);

private:
    void tell(bool refuse);
    [[nodiscard]] LengthUnit unit() const;
    [[nodiscard]] Result<std::vector<Typed<Length>>> read() const;

    ToolsModel &m_tools;
    DecimalMark m_mark;
    ValueField *m_name;
    ValueField *m_leaves;
    ChoiceKeys *m_unit;
    LeafFan *m_fan;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
