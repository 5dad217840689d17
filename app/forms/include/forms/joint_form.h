#pragma once

#include <forms/joint_fields.h>

#include <QWidget>

class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class Notes;
class SpecsModel;
class ValueField;

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
    [[nodiscard]] ValueField *field(JointField field) const { return m_fields->field(field); }
    [[nodiscard]] ChoiceKeys *choice(JointChoice choice) const { return m_fields->choice(choice); }
    [[nodiscard]] PatternEditor *pattern() const { return m_fields->pattern(); }
    [[nodiscard]] MessageLine *preload() const { return m_fields->preload(); }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] KeyButton *saveKey() const { return m_save; }
    // What a doubtful torque is asked with.
    [[nodiscard]] MessageLine *question() const { return m_question; }
    [[nodiscard]] KeyButton *otherUnitKey() const { return m_otherUnit; }
    [[nodiscard]] KeyButton *rightKey() const { return m_right; }
    [[nodiscard]] ValueField *reason() const { return m_reason; }
    void focusFirst() { m_fields->focusFirst(); }
    void save();

Q_SIGNALS:
    /// A new joint was stored, and is the one shown now.
    void added(JointId joint);

private:
    void buildLayout();
    void buildEnd(QVBoxLayout &column);
    void wire();
    void edited();
    void engineChanged();
    void showRevisions();
    void fill();
    void ask(const JointReading &reading);
    void endAsking();
    void takeOtherUnit();
    void itIsRight();
    void store(const JointReading &reading);
    void refusedByGarage(const Error &error);
    [[nodiscard]] JointTyped blank() const;
    [[nodiscard]] JointReading reading() const { return readJoint(typed(), m_mark); }

    using Draft = std::pair<EngineId, std::optional<JointId>>;

    SpecsModel &m_specs;
    DecimalMark m_mark;
    JointFields *m_fields;
    Heading *m_name;
    Heading *m_now;
    MessageLine *m_question;
    KeyButton *m_otherUnit;
    KeyButton *m_right;
    ValueField *m_reason;
    KeyButton *m_save;
    MessageLine *m_message;
    Notes *m_earlier;
    std::string m_answered;
    std::string m_answeredAbout;
    bool m_reasonWanted = false; ///< it was asked for once
    std::optional<EngineId> m_engine;
    std::optional<JointId> m_joint;
    std::map<Draft, JointTyped> m_drafts; ///< typed and not saved
};

} // namespace asleft
