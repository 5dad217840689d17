#pragma once

#include <forms/joint_reader.h>

#include <QWidget>

class QGridLayout;
class QVBoxLayout;

namespace asleft {

class ChoiceKeys;
class Heading;
class KeyButton;
class MessageLine;
class Notes;
class PatternEditor;
class SpecsModel;
class ValueField;

/// What is chosen in the joint form rather than typed.
enum class JointChoice { Unit, Settle, Condition, Finish, Drive, Female, BlindHole, SingleUse, Certainty };

/// One joint of the engine, or a new one: where its fasteners sit, what they are, how they are tightened and where that is printed. What is
/// typed and not saved is kept for each joint.
class JointForm : public QWidget {
    Q_OBJECT

public:
    JointForm(SpecsModel &specs, DecimalMark mark, QWidget *parent = nullptr);

    /// Nothing: a new one.
    void showJoint(std::optional<JointId> joint);
    [[nodiscard]] std::optional<JointId> joint() const { return m_joint; }

    [[nodiscard]] JointTyped typed() const;
    void setTyped(const JointTyped &typed);
    [[nodiscard]] ValueField *field(JointField field) const { return m_fields.at(field); }
    [[nodiscard]] ChoiceKeys *choice(JointChoice choice) const { return m_choices.at(choice); }
    [[nodiscard]] PatternEditor *pattern() const { return m_pattern; }
    [[nodiscard]] MessageLine *preload() const { return m_preload; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] KeyButton *saveKey() const { return m_save; }
    // What a doubtful torque is asked with.
    [[nodiscard]] MessageLine *question() const { return m_question; }
    [[nodiscard]] KeyButton *otherUnitKey() const { return m_otherUnit; }
    [[nodiscard]] KeyButton *rightKey() const { return m_right; }
    [[nodiscard]] ValueField *reason() const { return m_reason; }
    void focusFirst();
    void save();

Q_SIGNALS:
    /// A new joint was stored, and is the one shown now.
    void added(JointId joint);

private:
    // joint_fields.cpp
    void addFields();
    void addChoices();
    void buildLayout();
    void buildLayoutFields(QVBoxLayout &column);
    void layTightening(QVBoxLayout &column);
    void laySource(QVBoxLayout &column);
    void layEnd(QVBoxLayout &column);

    void wire();
    void edited();
    void placesTyped();
    void placesLaidOut();
    void leftField(JointField field);
    void refuseField(JointField field, const Error &error, const JointReading &reading);
    void tell(const JointReading &reading);
    void engineChanged();
    void showRevisions();
    void fill();
    void ask(const JointReading &reading);
    void endAsking();
    void takeOtherUnit();
    void itIsRight();
    bool refuseAll(const JointReading &reading);
    void store(const JointReading &reading);
    void refusedByGarage(const Error &error);
    [[nodiscard]] JointTyped blank() const;
    [[nodiscard]] bool yes(JointChoice choice) const;
    [[nodiscard]] JointReading reading() const { return readJointForm(typed(), m_mark); }

    using Draft = std::pair<EngineId, std::optional<JointId>>;

    SpecsModel &m_specs;
    DecimalMark m_mark;
    std::map<JointField, ValueField *> m_fields;
    std::map<JointChoice, ChoiceKeys *> m_choices;
    PatternEditor *m_pattern;
    Heading *m_name;
    Heading *m_now;
    MessageLine *m_preload;
    MessageLine *m_question;
    KeyButton *m_otherUnit;
    KeyButton *m_right;
    ValueField *m_reason;
    KeyButton *m_save;
    MessageLine *m_message;
    Notes *m_earlier;
    std::optional<std::pair<JointField, Error>> m_refused; ///< by the garage, of what stands there still
    std::optional<Pattern> m_typedFrom;                    ///< the places before what is typed of them now
    QString m_answered;
    QString m_answeredAbout;
    bool m_reasonWanted = false; ///< it was asked for once
    std::optional<EngineId> m_engine;
    std::optional<JointId> m_joint;
    std::map<Draft, JointTyped> m_drafts; ///< typed and not saved
};

} // namespace asleft
