#include "joint_text.h"

#include <words/joint_names.h>
#include <words/joints.h>

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace asleft {

namespace {

class JointNames {
    Q_DECLARE_TR_FUNCTIONS(JointNames)
};

QString runText(int first, int last)
{
    return first == last ? QString::number(first) : JointNames::tr("%1 to %2", "fastener numbers").arg(first).arg(last);
}

QStringList partsOf(std::vector<int> numbers)
{
    constexpr std::size_t shortestRun = 4; // fewer numbers in a row are said one by one
    std::sort(numbers.begin(), numbers.end());
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end());
    QStringList parts;
    for (std::size_t at = 0; at < numbers.size();) {
        std::size_t end = at + 1;
        while (end < numbers.size() && numbers[end] == numbers[end - 1] + 1)
            ++end;
        if (end - at < shortestRun)
            end = at + 1;
        parts.append(runText(numbers[at], numbers[end - 1]));
        at = end;
    }
    return parts;
}

int howMany(const std::vector<int> &fasteners)
{
    return static_cast<int>(std::set<int>(fasteners.begin(), fasteners.end()).size());
}

QString sizeNumber(StrengthClass strength)
{
    const std::string_view text = name(strength);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

} // namespace

QString strengthName(StrengthClass strength)
{
    switch (strength) {
    case StrengthClass::C4_6:
    case StrengthClass::C4_8:
    case StrengthClass::C5_6:
    case StrengthClass::C5_8:
    case StrengthClass::C6_8:
    case StrengthClass::C8_8:
    case StrengthClass::C9_8:
    case StrengthClass::C10_9:
    case StrengthClass::C12_9: return JointNames::tr("class %1", "of a screw's strength").arg(sizeNumber(strength));
    case StrengthClass::Sae2: return JointNames::tr("grade 2");
    case StrengthClass::Sae5: return JointNames::tr("grade 5");
    case StrengthClass::Sae8: return JointNames::tr("grade 8");
    case StrengthClass::A2_70:
    case StrengthClass::A4_70: return sizeNumber(strength);
    }
    return {};
}

QString threadConditionName(ThreadCondition condition)
{
    switch (condition) {
    case ThreadCondition::Dry: return JointNames::tr("dry");
    case ThreadCondition::Oiled: return JointNames::tr("oiled");
    case ThreadCondition::ThreadLock: return JointNames::tr("with thread-lock");
    case ThreadCondition::Sealant: return JointNames::tr("with sealant");
    case ThreadCondition::AntiSeize: return JointNames::tr("with anti-seize");
    }
    return {};
}

QString finishName(Finish finish)
{
    switch (finish) {
    case Finish::Black: return JointNames::tr("black");
    case Finish::Zinc: return JointNames::tr("zinc-plated");
    case Finish::Cadmium: return JointNames::tr("cadmium-plated");
    }
    return {};
}

QString femaleMaterialName(FemaleMaterial material)
{
    switch (material) {
    case FemaleMaterial::Iron: return JointNames::tr("iron");
    case FemaleMaterial::Steel: return JointNames::tr("steel");
    case FemaleMaterial::Aluminium: return JointNames::tr("aluminium");
    case FemaleMaterial::Insert: return JointNames::tr("thread insert");
    }
    return {};
}

QString driveKindName(DriveKind drive)
{
    switch (drive) {
    case DriveKind::Unsaid: return JointNames::tr("not said", "what takes hold of a fastener");
    case DriveKind::Socket: return JointNames::tr("socket");
    case DriveKind::Spanner: return JointNames::tr("spanner");
    case DriveKind::HexKey: return JointNames::tr("hex key");
    case DriveKind::SixLobe: return JointNames::tr("six-lobe key");
    case DriveKind::Screwdriver: return JointNames::tr("screwdriver");
    }
    return {};
}

QString singleUseName(SingleUse use)
{
    switch (use) {
    case SingleUse::No: return JointNames::tr("may be used again");
    case SingleUse::TorqueToYield: return JointNames::tr("torque-to-yield");
    case SingleUse::CrushWasher: return JointNames::tr("crush washer");
    }
    return {};
}

QString settleGroundName(SettleGround ground)
{
    switch (ground) {
    case SettleGround::No: return JointNames::tr("not to be settled");
    case SettleGround::Limiters: return JointNames::tr("the joint has limiters");
    case SettleGround::ManualSaysSo: return JointNames::tr("the manual says so");
    }
    return {};
}

QString foundHowName(FoundHow how)
{
    switch (how) {
    case FoundHow::NotNoted: return JointNames::tr("loosened, not noted how it was");
    case FoundHow::Measured: return JointNames::tr("loosening torque");
    case FoundHow::LooseByFeel: return JointNames::tr("loose by feel");
    case FoundHow::TightByFeel: return JointNames::tr("tight by feel");
    case FoundHow::Missing: return JointNames::tr("missing");
    case FoundHow::Broken: return JointNames::tr("broken");
    case FoundHow::WrongLength: return JointNames::tr("wrong length");
    }
    return {};
}

QString tickHowName(TickHow how)
{
    switch (how) {
    case TickHow::ByHand: return JointNames::tr("finger-tight");
    case TickHow::SetTool: return JointNames::tr("with a wrench that is set");
    case TickHow::ReadTool: return JointNames::tr("with a wrench that is read");
    case TickHow::ByAngle: return JointNames::tr("turned on by an angle");
    case TickHow::ByFeel: return JointNames::tr("by feel");
    }
    return {};
}

QString fittedName(Fitted fitted)
{
    switch (fitted) {
    case Fitted::New: return JointNames::tr("new");
    case Fitted::Reused: return JointNames::tr("used again");
    }
    return {};
}

QString acceptedWhatName(AcceptedWhat what)
{
    switch (what) {
    case AcceptedWhat::ByFeel: return JointNames::tr("tightened by feel");
    case AcceptedWhat::Torque: return JointNames::tr("torque outside its band, or not proved");
    case AcceptedWhat::Unsettled: return JointNames::tr("some still moved in the last round");
    case AcceptedWhat::Reused: return JointNames::tr("used again");
    }
    return {};
}

QString numbersText(const std::vector<int> &fasteners)
{
    QStringList parts = partsOf(fasteners);
    if (parts.size() < 2)
        return parts.join(QString());
    const QString last = parts.takeLast();
    return JointNames::tr("%1 and %2", "fastener numbers").arg(parts.join(JointNames::tr(", ", "between fastener numbers")), last);
}

QString fastenersName(const std::vector<int> &fasteners)
{
    if (fasteners.empty())
        return JointNames::tr("No fastener");
    return JointNames::tr("Fastener(s) %1", "numbers", howMany(fasteners)).arg(numbersText(fasteners));
}

QString fastenersInText(const std::vector<int> &fasteners)
{
    if (fasteners.empty())
        return JointNames::tr("no fastener");
    return JointNames::tr("fastener(s) %1", "numbers", howMany(fasteners)).arg(numbersText(fasteners));
}

QString jointName(const Joint &joint)
{
    const QString name = QString::fromStdString(joint.text.name).trimmed();
    return name.isEmpty() ? JointNames::tr("a joint without a name") : name;
}

QString driveLine(const Joint &joint)
{
    const QString size = QString::fromStdString(joint.text.driveSize).trimmed();
    if (joint.text.drive == DriveKind::Unsaid)
        return size;
    const QString kind = driveKindName(joint.text.drive);
    return size.isEmpty() ? kind : JointNames::tr("%1 %2", "socket, size").arg(kind, size);
}

} // namespace asleft
