#pragma once

#include <forms/spec_reader.h>

#include <QWidget>

#include <set>

namespace asleft {

class ChoiceKeys;
class Heading;
class KeyButton;
class MessageLine;
class Notes;
class ScaleView;
class SpecsModel;
class ValueField;

/// One value the manual asks for: the revision in force, a new one as it is typed with what was understood of it, and the earlier ones.
class SpecForm : public QWidget {
    Q_OBJECT

public:
    SpecForm(SpecSubject subject, SpecsModel &specs, DecimalMark mark, QWidget *parent = nullptr);

    [[nodiscard]] SpecTyped typed() const;
    void setTyped(const SpecTyped &typed);
    [[nodiscard]] ValueField *field(SpecField field) const { return m_fields.at(field); }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] ChoiceKeys *units() const { return m_units; }
    [[nodiscard]] KeyButton *saveKey() const { return m_save; }
    void focusFirst();
    void save();

private:
    void buildLayout();
    QLayout *bandRow();
    QLayout *sourceRow();
    void wire();
    void edited();
    void leftField(SpecField field);
    void entered(SpecField field);
    void tell(const SpecReading &reading);
    void showUnits();
    /// Whether there is an unanswered question about a field; it is then asked.
    bool asks(SpecField field, const SpecReading &reading);
    [[nodiscard]] QString asTyped(SpecField field) const;
    void engineChanged();
    void showRevisions();
    void fill();
    [[nodiscard]] AdjusterKind adjusters() const;
    [[nodiscard]] SpecReading reading() const { return readSpec(m_subject, typed(), m_mark, adjusters()); }

    SpecSubject m_subject;
    SpecsModel &m_specs;
    DecimalMark m_mark;
    Heading *m_now;
    std::map<SpecField, ValueField *> m_fields;
    ChoiceKeys *m_units;
    ChoiceKeys *m_condition;
    ChoiceKeys *m_certainty;
    ScaleView *m_scale;
    KeyButton *m_save;
    MessageLine *m_message;
    Notes *m_earlier;
    std::set<SpecField> m_left;
    std::set<QString> m_asked; ///< texts with their unit that were asked about: what stands there again is kept as typed
    std::optional<EngineId> m_engine;
    std::map<EngineId, SpecTyped> m_drafts; ///< typed and not saved
};

} // namespace asleft
