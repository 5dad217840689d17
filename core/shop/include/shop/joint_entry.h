#pragma once

#include <shop/entry.h>
#include <shop/joint.h>

#include <map>

namespace asleft {

/// The fields of a joint that can be refused, in the order they are filled in.
enum class JointField {
    Name,
    Places,
    Thread,
    Strength,
    Engagement,
    OwnThread, ///< of one fastener
    Target,
    OtherTarget,
    Passes,
    Order,
    DriveSize,
    Manual,
    Page,
};

/// A joint as the fields stand.
struct JointTyped {
    std::map<JointField, std::string> texts; ///< but OwnThread, which stands in the pattern
    Pattern pattern;
    TorqueUnit unit = TorqueUnit::NewtonMetre; ///< what bare numbers count in
    SettleGround settle = SettleGround::No;
    std::optional<ThreadCondition> condition = {};
    Finish finish = Finish::Zinc;
    DriveKind drive = DriveKind::Unsaid;
    std::optional<FemaleMaterial> female = {};
    bool blindHole = false;
    SingleUse singleUse = SingleUse::No;
    Certainty certainty = Certainty::ReadInManual;
    std::string answered;      ///< why a questioned torque is right
    std::string answeredAbout; ///< questionedWith() when it was answered: with anything else it is another question

    [[nodiscard]] std::string text(JointField field) const;
    bool operator==(const JointTyped &) const = default;
};

/// What it means, and what of it cannot be taken, field by field: a slip in one field hides none in another.
struct JointReading {
    JointText text; ///< all of it, as it is kept
    std::map<JointField, Error> refusals;
    std::map<JointField, Band<Torque>> bands; ///< of either target, where it can be read
    std::optional<int> ownThreadOf;           ///< the fastener whose own thread is refused
    /// As far as it can be read, for drawing it and for what is told of it: a single fastener stands where the places are refused, and
    /// there are no passes where they or what they need are.
    Joint joint;
    std::optional<PreloadCheck> check; ///< of the torque, where there is one and a thread

    /// The torque makes no sense, and nobody has said yet why it is right.
    bool asks = false;
};

JointReading readJoint(const JointTyped &typed, DecimalMark mark);

/// What the torque is judged by, all in one.
std::string questionedWith(const JointTyped &typed);
/// The same digits in the unit in which they would make sense.
JointTyped inUnitMeant(JointTyped typed, const JointReading &reading, DecimalMark mark);

/// The fields of a stored revision.
JointTyped typedOf(const Joint &joint);

/// Another pattern for the same joint: what single fasteners had of their own stays with their numbers.
Pattern withOwnOf(Pattern made, const Pattern &before);

} // namespace asleft
