#pragma once

#include <shop/tool_entry.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class ToolsModel;
class ValueField;

/// A new angle gauge, adapter or socket: its name, what it fits, and of an adapter how far it reaches.
class FittingForm : public QWidget {
    Q_OBJECT

public:
    /// \pre `kind` is AngleGauge, Adapter or Socket
    FittingForm(ToolKind kind, ToolsModel &tools, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] ValueField *name() const { return m_fields.at(FittingField::Name); }
    /// Not asked of an angle gauge.
    [[nodiscard]] ValueField *size() const { return m_fields.at(FittingField::Size); }
    /// Asked of an adapter only.
    [[nodiscard]] ValueField *length() const { return m_fields.at(FittingField::Length); }
    [[nodiscard]] ChoiceKeys *unit() const { return m_unit; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    [[nodiscard]] QList<ValueField *> asked() const;
    [[nodiscard]] FittingText typed() const;
    [[nodiscard]] FittingReading reading() const { return readFitting(typed(), m_mark); }
    /// A refusal that stands goes or follows what is typed.
    void mend();
    void leave(FittingField field);

    ToolKind m_kind;
    ToolsModel &m_tools;
    DecimalMark m_mark;
    std::map<FittingField, ValueField *> m_fields;
    ChoiceKeys *m_unit;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
