#pragma once

#include <shop/tool_entry.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class ToolsModel;
class ValueField;

/// A new torque wrench: how it tells its torque, the range marked on it, how far it may be off, when it is to be calibrated and its lever.
/// Says what it is good for while it is typed.
class TorqueForm : public QWidget {
    Q_OBJECT

public:
    TorqueForm(ToolsModel &tools, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] ChoiceKeys *how() const { return m_how; }
    [[nodiscard]] ValueField *name() const { return m_fields.at(TorqueWrenchField::Name); }
    [[nodiscard]] ValueField *least() const { return m_fields.at(TorqueWrenchField::Least); }
    [[nodiscard]] ValueField *most() const { return m_fields.at(TorqueWrenchField::Most); }
    [[nodiscard]] ChoiceKeys *unit() const { return m_unit; }
    [[nodiscard]] ValueField *deviation() const { return m_fields.at(TorqueWrenchField::Deviation); }
    [[nodiscard]] ValueField *due() const { return m_fields.at(TorqueWrenchField::CalibrationDue); }
    [[nodiscard]] ValueField *lever() const { return m_fields.at(TorqueWrenchField::Lever); }
    [[nodiscard]] ChoiceKeys *leverUnit() const { return m_leverUnit; }
    /// What the wrench is good for, as it is typed.
    [[nodiscard]] MessageLine *judgement() const { return m_judgement; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    [[nodiscard]] TorqueWrenchText typed() const;
    [[nodiscard]] TorqueWrenchReading reading() const { return readTorqueWrench(typed(), m_mark); }
    void tell(const TorqueWrenchReading &reading);
    void leave(TorqueWrenchField field);
    void clear();

    ToolsModel &m_tools;
    DecimalMark m_mark;
    std::map<TorqueWrenchField, ValueField *> m_fields;
    ChoiceKeys *m_how;
    ChoiceKeys *m_unit;
    ChoiceKeys *m_leverUnit;
    MessageLine *m_judgement;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
