#include <words/job.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class StepWords {
    Q_DECLARE_TR_FUNCTIONS(StepWords)
};

QString titleOf(StepKind kind, const std::string &typed, const Joint *joint)
{
    if (!typed.empty())
        return QString::fromStdString(typed);
    const QString name = joint ? QString::fromStdString(joint->text.name) : StepWords::tr("a joint");
    switch (kind) {
    case StepKind::Loosen: return StepWords::tr("Loosen: %1", "joint").arg(name);
    case StepKind::Tighten: return StepWords::tr("Tighten: %1", "joint").arg(name);
    case StepKind::Note:
    case StepKind::ValveSet: break;
    }
    return {};
}

} // namespace

QString stepTitle(const Step &step, const JobFrame &frame)
{
    return titleOf(step.kind, step.title, step.joint ? frame.jointNow(*step.joint) : nullptr);
}

QString lineTitle(const SheetLine &line, const std::vector<Joint> &joints)
{
    const auto joint = std::ranges::find(joints, line.joint, [](const Joint &each) { return std::optional(each.id); });
    return titleOf(line.kind, line.title, joint == joints.end() ? nullptr : &*joint);
}

} // namespace asleft
