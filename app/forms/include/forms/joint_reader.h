#pragma once

#include <work/joints.h>

#include <QString>

#include <map>

namespace asleft {

/// The fields of the joint form that can be refused, in the order they stand.
enum class JointField {
    Name,
    Places,
    Thread,
    Strength,
    Engagement,
    OwnThread, ///< of the fastener in hand
    Target,
    OtherTarget,
    Passes,
    Order,
    DriveSize,
    Manual,
    Page,
};

/// What stands in the form, as typed.
struct JointTyped {
    std::map<JointField, QString> texts; ///< but OwnThread, which stands in the pattern
    Pattern pattern;
    int unit = 0; ///< which of torqueChoices bare numbers count in
    SettleGround settle = SettleGround::No;
    std::optional<ThreadCondition> condition;
    Finish finish = Finish::Zinc;
    DriveKind drive = DriveKind::Unsaid;
    std::optional<FemaleMaterial> female;
    bool blindHole = false;
    SingleUse singleUse = SingleUse::No;
    Certainty certainty = Certainty::ReadInManual;
    QString answered;      ///< why a questioned torque is right
    QString answeredAbout; ///< questionedWith() when it was answered: with anything else it is another question

    [[nodiscard]] QString text(JointField field) const;
    [[nodiscard]] std::string plain(JointField field) const { return text(field).trimmed().toStdString(); }
    bool operator==(const JointTyped &) const = default;
};

/// What it means, and what of it cannot be taken, field by field: a slip in one field hides none in another.
struct JointReading {
    JointText text;
    std::map<JointField, Error> refusals;
    std::map<JointField, QString> echoes;
    std::optional<int> ownThreadOf;    ///< the fastener whose own thread is refused
    Joint joint;                       ///< as far as it can be read, for drawing it and for what is told of it
    std::optional<PreloadCheck> check; ///< of the torque, where there is one and a thread

    /// The torque makes no sense, and nobody has said yet why it is right.
    bool asks = false;
};

JointReading readJointForm(const JointTyped &typed, DecimalMark mark);

/// The sentence that refuses a field: what to type where nothing is typed, else what is wrong.
QString refusalSentence(JointField field, const Error &error);
/// Which field a refusal of the garage speaks of, if one.
std::optional<JointField> fieldOf(const Error &error);

/// What the torque is judged by, all in one.
QString questionedWith(const JointTyped &typed);
/// The same digits in the unit in which they would make sense.
JointTyped inUnitMeant(JointTyped typed, const JointReading &reading, DecimalMark mark);

/// The form of a stored revision.
JointTyped typedOf(const Joint &joint);

/// Another pattern for the same joint: what single fasteners had of their own stays with their numbers.
Pattern withOwnOf(Pattern made, const Pattern &before);

} // namespace asleft
