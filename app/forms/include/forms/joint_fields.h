#pragma once

#include <forms/joint_reader.h>

#include <QWidget>

class QVBoxLayout;

namespace asleft {

class ChoiceKeys;
class MessageLine;
class PatternEditor;
class ValueField;

/// What is chosen of a joint rather than typed.
enum class JointChoice { Unit, Settle, Condition, Finish, Drive, Female, BlindHole, SingleUse, Certainty };

/// The fields of one joint, what is chosen, and its places as they are laid out; under each what was understood of it.
class JointFields : public QWidget {
    Q_OBJECT

public:
    explicit JointFields(QWidget *parent = nullptr);

    /// Without what was answered.
    [[nodiscard]] JointTyped typed() const;
    /// Fields that have not been looked at yet refuse nothing.
    void setTyped(const JointTyped &typed);
    [[nodiscard]] ValueField *field(JointField field) const { return m_fields.at(field); }
    [[nodiscard]] ChoiceKeys *choice(JointChoice choice) const { return m_choices.at(choice); }
    [[nodiscard]] PatternEditor *pattern() const { return m_pattern; }
    [[nodiscard]] MessageLine *preload() const { return m_preload; }
    void focusFirst();

    /// Tells what was understood; a refusal that stands goes or follows what is typed.
    void tell(const JointReading &reading);
    /// The same once a field was left: what is wrong with it is said too, unless it was passed by without typing.
    void tellLeft(JointField which, const JointReading &reading);
    /// Refuses everything that is wrong and gives the keyboard to the first of it. False where nothing is.
    bool refuse(const JointReading &reading);
    /// A refusal from elsewhere, until something is edited.
    void refuse(JointField which, const Error &error);

Q_SIGNALS:
    void edited();
    void left(JointField field);
    /// Enter on the last of them.
    void finished();

private:
    void addFields();
    void addChoices();
    void buildLayout();
    void buildFastener(QVBoxLayout &column);
    void buildTightening(QVBoxLayout &column);
    void buildSource(QVBoxLayout &column);
    void wire();
    void changedHere();
    void leftField(JointField which);
    void placesTyped();
    void placesLaidOut();
    [[nodiscard]] bool yes(JointChoice choice) const;

    std::map<JointField, ValueField *> m_fields;
    std::map<JointChoice, ChoiceKeys *> m_choices;
    PatternEditor *m_pattern;
    MessageLine *m_preload;
    std::optional<std::pair<JointField, Error>> m_refused; ///< from elsewhere, of what stands there still
    std::optional<Pattern> m_typedFrom;                    ///< the places before what is typed of them now
};

} // namespace asleft
