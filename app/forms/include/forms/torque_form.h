#pragma once

#include <work/workshop.h>

#include <QWidget>

#include <vector>

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
    [[nodiscard]] ValueField *name() const { return m_name; }
    [[nodiscard]] ValueField *least() const { return m_least; }
    [[nodiscard]] ValueField *most() const { return m_most; }
    [[nodiscard]] ChoiceKeys *unit() const { return m_unit; }
    [[nodiscard]] ValueField *deviation() const { return m_deviation; }
    [[nodiscard]] ValueField *due() const { return m_due; }
    [[nodiscard]] ValueField *lever() const { return m_lever; }
    [[nodiscard]] ChoiceKeys *leverUnit() const { return m_leverUnit; }
    /// What the wrench is good for, as it is typed.
    [[nodiscard]] MessageLine *worth() const { return m_judgement; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    [[nodiscard]] QList<ValueField *> fields() const { return {m_name, m_least, m_most, m_deviation, m_due, m_lever}; }
    [[nodiscard]] QString textOf(const ValueField *field) const;
    [[nodiscard]] TorqueUnit torqueUnit() const;
    [[nodiscard]] LengthUnit lengthUnit() const;
    [[nodiscard]] TorqueWrenchText typed() const;

    // What stands in a field; nothing where it is empty or cannot be read.
    [[nodiscard]] Result<std::optional<Typed<Torque>>> readTorque(const ValueField *field) const;
    [[nodiscard]] Result<std::optional<Typed<Length>>> readLever() const;
    [[nodiscard]] Result<std::optional<Rational>> readDeviation() const;

    /// Refuses fields that cannot be read where `refuse` says so or they are refused already; gives the wrench as far as it is typed.
    std::optional<TorqueTool> read(bool refuse);
    /// What can be judged of the wrench by itself, each on one that is sound but for it: all that is wrong is then said at once.
    [[nodiscard]] std::vector<TorqueTool> parts() const;
    /// Refuses those among the fields a part fails by.
    void refuseUnsound(const QList<ValueField *> &among);
    [[nodiscard]] ValueField *fieldOf(ErrorKind kind) const;
    void tell();
    void leave(ValueField *field);
    void clear();

    ToolsModel &m_tools;
    DecimalMark m_mark;
    ChoiceKeys *m_how;
    ValueField *m_name;
    ValueField *m_least;
    ValueField *m_most;
    ChoiceKeys *m_unit;
    ValueField *m_deviation;
    ValueField *m_due;
    ValueField *m_lever;
    ChoiceKeys *m_leverUnit;
    MessageLine *m_judgement;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
