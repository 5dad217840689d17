#pragma once

#include <work/workshop.h>

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

    [[nodiscard]] ValueField *name() const { return m_name; }
    /// Not asked of an angle gauge.
    [[nodiscard]] ValueField *size() const { return m_size; }
    /// Asked of an adapter only.
    [[nodiscard]] ValueField *length() const { return m_length; }
    [[nodiscard]] ChoiceKeys *unit() const { return m_unit; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    [[nodiscard]] QList<ValueField *> fields() const;
    [[nodiscard]] LengthUnit lengthUnit() const;
    /// Refuses a length that cannot be read where `refuse` says so, or where it is refused already.
    void readLength(bool refuse);
    void refuse(const Error &error);

    ToolKind m_kind;
    ToolsModel &m_tools;
    DecimalMark m_mark;
    ValueField *m_name;
    ValueField *m_size;
    ValueField *m_length;
    ChoiceKeys *m_unit;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
