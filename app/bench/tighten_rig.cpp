#include <bench/tighten_rig.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/tools.h>
#include <words/torque_tools.h>

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>

namespace asleft {

namespace {

class TightenRig {
    Q_DECLARE_TR_FUNCTIONS(TightenRig)
};

const Tool *gaugeOf(const JobFrame &frame, const RigChoice &choice)
{
    if (choice.byMark)
        return nullptr;
    const Tool *chosen = choice.gauge ? frame.tool(*choice.gauge) : nullptr;
    if (chosen)
        return chosen;
    const auto first = std::ranges::find(frame.tools, ToolKind::AngleGauge, &Tool::kind);
    return first == frame.tools.end() ? nullptr : &*first;
}

/// How this wrench of the rack stands to what is wanted.
std::optional<ToolReach> reachOf(const ToolAdvice &advice, std::size_t wrench)
{
    for (const auto *some : {&advice.reaching, &advice.misses}) {
        const auto reach = std::ranges::find(*some, wrench, &ToolReach::tool);
        if (reach != some->end())
            return *reach;
    }
    return std::nullopt;
}

/// What the pass asks, as the manual prints it in this unit's system.
void takeWanted(Rig &rig, const Joint &joint, std::size_t pass, std::optional<TorqueUnit> unit)
{
    const auto target = targetOf(joint, unit);
    rig.unit = target ? target->unit : joint.text.unit;
    rig.wanted = wantedInPass(joint, pass, unit);
    rig.band = unit ? bandOfPass(joint, pass, *unit) : nullptr;
}

void takeWrench(Rig &rig, const Joint &joint, std::size_t pass, const RigChoice &choice)
{
    const auto chosen = std::ranges::find(rig.rack.wrenches, choice.wrench, [](const Tool *tool) { return std::optional(tool->id); });
    std::optional<std::size_t> index;
    if (chosen != rig.rack.wrenches.end())
        index = std::size_t(chosen - rig.rack.wrenches.begin());
    else if (!rig.advice.reaching.empty())
        index = rig.advice.reaching.front().tool;
    if (!index) {
        rig.kind = Rig::Kind::NoneReaches;
        return;
    }
    rig.kind = Rig::Kind::Wrench;
    rig.tool = rig.rack.wrenches[*index];
    rig.reach = reachOf(rig.advice, *index);
    takeWanted(rig, joint, pass, rig.tool->torque->most.unit);
    const auto setting = settingOn(*rig.tool, *rig.wanted, rig.fit ? std::optional(rig.fit->fit) : std::nullopt, rig.band);
    if (setting)
        rig.setting = *setting;
    else
        rig.wrong = setting.error();
}

} // namespace

QString toolLabel(const Tool &tool)
{
    return tool.name.empty() ? toolKindName(tool.kind) : QString::fromStdString(tool.name);
}

Rig rigOf(const JobFrame &frame, const Joint &joint, std::size_t pass, const RigChoice &choice, std::chrono::sys_days today)
{
    Rig rig;
    takeWanted(rig, joint, pass, std::nullopt);
    if (std::holds_alternative<AngleOn>(joint.passes.at(pass))) {
        rig.kind = Rig::Kind::Angle;
        rig.tool = gaugeOf(frame, choice);
        return rig;
    }
    rig.rack = rackOf(frame.tools);
    auto advice = adviceFor(joint, pass, rig.rack, today, choice.fit ? std::optional(choice.fit->fit) : std::nullopt);
    if (!advice)
        return rig;
    rig.fit = choice.fit;
    rig.advice = *std::move(advice);
    takeWrench(rig, joint, pass, choice);
    return rig;
}

QString rigLarge(const Rig &rig, const Joint &joint, std::size_t pass)
{
    switch (rig.kind) {
    case Rig::Kind::Hand: return TightenRig::tr("Finger-tight");
    case Rig::Kind::Angle: {
        const auto &angle = std::get<AngleOn>(joint.passes.at(pass)).angle;
        return TightenRig::tr("Turn %1", "by an angle").arg(turnedText(angle.value, angle.unit));
    }
    case Rig::Kind::NoneReaches: return TightenRig::tr("By feel");
    case Rig::Kind::Wrench: return rig.setting ? settingSentence(*rig.tool, *rig.setting) : TightenRig::tr("No setting");
    }
    return {};
}

QString rigSmall(const Rig &rig, const Joint &joint, std::size_t pass)
{
    if (rig.kind == Rig::Kind::NoneReaches)
        return noneReachesSentence(rig.advice, *rig.wanted, rig.unit, rig.rack);
    if (rig.kind == Rig::Kind::Angle) {
        const auto &angle = std::get<AngleOn>(joint.passes.at(pass)).angle;
        const QString with = rig.tool ? TightenRig::tr("with %1", "angle gauge").arg(toolLabel(*rig.tool)) : TightenRig::tr("by a mark");
        return TightenRig::tr("%1 in all, %2", "angle, with what").arg(turnedText(totalAngle(joint.passes, pass), angle.unit), with);
    }
    if (rig.kind == Rig::Kind::Hand)
        return TightenRig::tr("by hand, no tool");
    QStringList parts{trueTorqueSentence(*rig.wanted, rig.unit, rig.fit)};
    if (rig.reach)
        parts.append(TightenRig::tr("%1: %2", "tool, how it stands").arg(toolLabel(*rig.tool), reachSentence(*rig.reach, *rig.tool)));
    if (rig.wrong)
        parts.append(sentence(*rig.wrong));
    parts.removeAll(QString());
    return parts.join(QChar::LineFeed);
}

} // namespace asleft
