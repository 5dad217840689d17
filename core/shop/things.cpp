#include <shop/things.h>

#include <measure/instrument.h>

#include <algorithm>

namespace asleft {

namespace {

Length distance(Length a, Length b)
{
    return a < b ? b - a : a - b;
}

/// How far the leaf at `place` is from its neighbours, the larger of both.
Length stepAt(const std::vector<Typed<Length>> &leaves, std::size_t place)
{
    Length step;
    if (place > 0)
        step = leaves[place].value - leaves[place - 1].value;
    if (place + 1 < leaves.size())
        step = std::max(step, leaves[place + 1].value - leaves[place].value);
    return step;
}

/// The step of the leaf nearest to `value`, of two as near the larger; nothing where none lies within its step.
std::optional<Length> stepNear(const std::vector<Typed<Length>> &leaves, Length value)
{
    std::optional<Length> nearest;
    Length step;
    for (std::size_t i = 0; i < leaves.size(); ++i) {
        const Length away = distance(leaves[i].value, value);
        if (nearest && away > *nearest)
            continue;
        step = nearest == away ? std::max(step, stepAt(leaves, i)) : stepAt(leaves, i);
        nearest = away;
    }
    if (!nearest || step == Length() || *nearest > step)
        return std::nullopt;
    return step;
}

} // namespace

std::optional<Length> uncertaintyOf(const Tool &tool, Length value)
{
    switch (tool.kind) {
    case ToolKind::FeelerSet:
        if (const auto step = stepNear(tool.leaves, value))
            return feelerUncertainty(*step);
        return std::nullopt;
    case ToolKind::DialGauge:
    case ToolKind::Micrometer: break;
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead:
    case ToolKind::AngleGauge:
    case ToolKind::Adapter:
    case ToolKind::Socket: return std::nullopt; // no length is measured with them
    }
    if (!tool.permissibleError || !tool.resolution)
        return std::nullopt;
    return gaugeUncertainty(tool.permissibleError->value, tool.resolution->value);
}

std::optional<std::int64_t> meterTotal(const std::vector<MeterReading> &readings)
{
    if (readings.empty())
        return std::nullopt;
    std::int64_t total = 0;
    std::int64_t shown = 0; // by the meter that counts, the last time it was read
    for (const MeterReading &reading : readings) {
        if (reading.unit != readings.back().unit)
            continue;
        if (!reading.replaced)
            total += reading.thousandths - shown;
        shown = reading.thousandths;
    }
    return total;
}

SpecSubject subjectOf(AdjusterRef adjuster)
{
    switch (adjuster.kind) {
    case PointKind::Lash: break;
    case PointKind::BridgeScrew: return SpecSubject::BridgeScrew;
    case PointKind::Decompressor: return SpecSubject::Decompressor;
    case PointKind::Injector: return SpecSubject::Injector;
    }
    return adjuster.side == Side::Intake ? SpecSubject::IntakeLash : SpecSubject::ExhaustLash;
}

} // namespace asleft
