#pragma once

#include <shop/tool_entry.h>

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
    [[nodiscard]] ValueField *name() const { return m_fields.at(GaugeField::Name); }
    [[nodiscard]] ValueField *permissibleError() const { return m_fields.at(GaugeField::PermissibleError); }
    [[nodiscard]] ValueField *resolution() const { return m_fields.at(GaugeField::Resolution); }
    /// How good its readings are, as it is typed.
    [[nodiscard]] MessageLine *judgement() const { return m_judgement; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    void save();

private:
    void buildLayout();
    void wire();
    [[nodiscard]] GaugeText typed() const;
    [[nodiscard]] GaugeReading reading() const { return readGauge(typed(), m_mark); }
    void tell();
    void leave(GaugeField field);
    void clear();

    ToolsModel &m_tools;
    DecimalMark m_mark;
    ChoiceKeys *m_kind;
    std::map<GaugeField, ValueField *> m_fields;
    ChoiceKeys *m_unit;
    MessageLine *m_judgement;
    KeyButton *m_save;
    MessageLine *m_message;
};

} // namespace asleft
