#pragma once

#include <work/workshop.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class KeyButton;
class MessageLine;
class ToolsModel;
class ValueField;

/// A new dial gauge or micrometer: what its card says it may be off by, what it is read to, and how good that makes its readings.
class GaugeForm : public QWidget {
    Q_OBJECT

public:
    GaugeForm(ToolsModel &tools, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] ChoiceKeys *kind() const { return m_kind; }
    [[nodiscard]] ValueField *name() const { return m_name; }
    [[nodiscard]] ValueField *permissibleError() const { return m_error; }
    [[nodiscard]] ValueField *resolution() const { return m_resolution; }
    /// How good its readings are, as it is typed.
    [[nodiscard]] MessageLine *worth() const { return m_judgement; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    void edited(ValueField *field);
    /// Reads a field that may be empty; refuses it where it cannot be read and `refuse` says so, or where it is refused already.
    std::optional<Typed<Length>> read(ValueField *field, bool refuse);
    void tellAccuracy();
    void clear();
    [[nodiscard]] LengthUnit unit() const;
    [[nodiscard]] ToolKind toolKind() const;

    ToolsModel &m_tools;
    DecimalMark m_mark;
    ChoiceKeys *m_kind;
    ValueField *m_name;
    ValueField *m_error;
    ValueField *m_resolution;
    ChoiceKeys *m_unit;
    MessageLine *m_judgement;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
