#include <shop/joint.h>

#include <measure/format.h>

#include <algorithm>

namespace asleft {

namespace {

/// Decimals of what can be set on an ordinary wrench.
int settableDecimals(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::NewtonMetre:
    case TorqueUnit::PoundFoot: return 1;
    case TorqueUnit::KilogramForceMetre: return 2;
    case TorqueUnit::PoundInch:
    case TorqueUnit::KilogramForceCentimetre: return 0;
    }
    return 0;
}

constexpr int mostSettableDecimals = 9;
constexpr int leastSteps = 100; // in a setting: then one is at most a percent

/// As many decimals as can be set, and more where the setting is so small that these would be coarse.
int decimalsFor(Torque setting, TorqueUnit unit)
{
    int decimals = settableDecimals(unit);
    const Rational one = factor(unit);
    auto count = Rational(setting.smallest()).times(Rational(one.denominator(), one.numerator()));
    for (int i = 0; count && i < decimals; ++i)
        count = count->times(Rational(10));
    while (setting > Torque() && count && count->numerator() < leastSteps * count->denominator() && decimals < mostSettableDecimals) {
        count = count->times(Rational(10));
        ++decimals;
    }
    return decimals;
}

bool isWrench(const Tool &tool)
{
    return (tool.kind == ToolKind::TorqueSet || tool.kind == ToolKind::TorqueRead) && tool.torque;
}

Result<Torque> exactSetting(const Tool &tool, Torque wanted, const std::optional<AdapterFit> &fit)
{
    if (!fit || changesNothing(*fit))
        return wanted;
    if (!tool.torque->lever)
        return fail(ErrorKind::LeverMissing, tool.name);
    return wrenchSetting(wanted, *tool.torque->lever, *fit);
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

Result<Typed<Torque>> settingOn(const Tool &tool, Torque wanted, const std::optional<AdapterFit> &fit)
{
    if (!isWrench(tool))
        return fail(ErrorKind::ToolNotForTorque, tool.name);
    const TorqueUnit unit = tool.torque->most.unit;
    return exactSetting(tool, wanted, fit).and_then([unit](Torque setting) {
        // Read back, so that the value is that of the figures on the wrench.
        return parse<Torque>(formatNumber(setting, unit, decimalsFor(setting, unit)), unit);
    });
}

std::vector<ToolWanted> toolsWanted(const Joint &joint, const Rack &rack, std::chrono::sys_days today)
{
    const auto typed = targetOf(joint);
    const auto target = typed ? std::optional(typed->value) : std::nullopt;
    std::vector<ToolWanted> wanted;
    for (const Pass &pass : joint.passes) {
        const auto torque = torqueOfPass(pass, target);
        if (!torque || std::ranges::find(wanted, *torque, &ToolWanted::torque) != wanted.end())
            continue;
        wanted.push_back({joint.id, *torque, chooseTool(*torque, rack.torqueTools, rack.adapterLengths, today), torque == target});
    }
    return wanted;
}

} // namespace asleft
