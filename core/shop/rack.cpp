#include <shop/joint.h>

#include <algorithm>

namespace asleft {

namespace {

bool isWrench(const Tool &tool)
{
    return (tool.kind == ToolKind::TorqueSet || tool.kind == ToolKind::TorqueRead) && tool.torque;
}

/// Why settingFor() says nothing of this wrench; nothing where it does.
Done checkFit(const Tool &tool, Torque wanted, const std::optional<AdapterFit> &fit)
{
    if (!fit || changesNothing(*fit))
        return {};
    if (!tool.torque->lever)
        return fail(ErrorKind::LeverMissing, tool.name);
    return wrenchSetting(wanted, *tool.torque->lever, *fit).map([](Torque) {});
}

std::vector<ToolAsk> asksOf(const Joint &joint, std::size_t pass, Torque wanted, const Rack &rack)
{
    std::vector<ToolAsk> asks;
    for (const TorqueTool &tool : rack.torqueTools) {
        const TorqueUnit unit = tool.most.unit;
        asks.push_back({wantedInPass(joint, pass, unit).value_or(wanted), bandOfPass(joint, pass, unit)});
    }
    return asks;
}

} // namespace

Rack rackOf(const std::vector<Tool> &tools)
{
    Rack rack;
    for (const Tool &tool : tools) {
        if (isWrench(tool)) {
            rack.wrenches.push_back(&tool);
            rack.torqueTools.push_back(*tool.torque);
        } else if (tool.kind == ToolKind::Adapter && tool.length) {
            rack.adapters.push_back(&tool);
            rack.adapterLengths.push_back(tool.length->value);
        }
    }
    return rack;
}

Result<Typed<Torque>> settingOn(const Tool &tool, Torque wanted, const std::optional<AdapterFit> &fit, const Band<Torque> *band)
{
    if (!isWrench(tool))
        return fail(ErrorKind::ToolNotForTorque, tool.name);
    return checkFit(tool, wanted, fit).map([&] { return settingFor(*tool.torque, wanted, fit, band).value(); });
}

std::optional<ToolAdvice> adviceFor(const Joint &joint, std::size_t pass, const Rack &rack, std::chrono::sys_days today,
                                    const std::optional<AdapterFit> &fit)
{
    const auto wanted = wantedInPass(joint, pass);
    if (!wanted)
        return std::nullopt;
    return chooseTool(*wanted, rack.torqueTools, rack.adapterLengths, today, fit, asksOf(joint, pass, *wanted, rack));
}

std::vector<ToolWanted> toolsWanted(const Joint &joint, const Rack &rack, std::chrono::sys_days today)
{
    const auto target = targetOf(joint);
    std::vector<ToolWanted> wanted;
    for (std::size_t pass = 0; pass < joint.passes.size(); ++pass) {
        const auto torque = wantedInPass(joint, pass);
        if (!torque || std::ranges::find(wanted, *torque, &ToolWanted::torque) != wanted.end())
            continue;
        wanted.push_back({joint.id, *torque, adviceFor(joint, pass, rack, today).value(), target && *torque == target->value});
    }
    return wanted;
}

} // namespace asleft
