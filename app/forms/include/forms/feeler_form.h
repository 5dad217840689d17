#pragma once

#include <shop/tool_entry.h>

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

    [[nodiscard]] ValueField *name() const { return m_fields.at(FeelerField::Name); }
    [[nodiscard]] ValueField *leaves() const { return m_fields.at(FeelerField::Leaves); }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();
    /// A set there is already, for looking at its leaves.
    void look(const Tool &set);

private:
    [[nodiscard]] FeelerText typed() const;
    [[nodiscard]] FeelerReading reading() const { return readFeelerSet(typed(), m_mark); }
    void tell();
    void leave(FeelerField field);

    ToolsModel &m_tools;
    DecimalMark m_mark;
    std::map<FeelerField, ValueField *> m_fields;
    ChoiceKeys *m_unit;
    LeafFan *m_fan;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
