#include <joints/choice.h>

#include <measure/format.h>
#include <measure/instrument.h>

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace asleft {

namespace {

constexpr int largestDeviationPercent = 50;
// ISO 6789 tests a tool at 20, 60 and 100 % of its largest torque: below a fifth nothing is known of it.
constexpr int testedFromAFifth = 5;

bool less(const Rational &a, const Rational &b)
{
    const auto difference = a.minus(b);
    return difference ? difference->isNegative() : a.toDouble() < b.toDouble();
}

std::string shortest(const Rational &number)
{
    std::array<char, 32> text{};
    const auto [end, error] = std::to_chars(text.begin(), text.end(), number.toDouble());
    assert(error == std::errc());
    return {text.begin(), end};
}

bool isRange(Torque least, Torque most)
{
    return least >= Torque() && most > Torque() && least <= most;
}

ToolReach reachOf(std::size_t index, const TorqueTool &tool, Torque setting, std::chrono::sys_days today)
{
    const Torque most = tool.most.value;
    ToolReach reach;
    reach.tool = index;
    reach.setting = setting;
    reach.reaches = setting >= tool.least.value && setting <= most;
    reach.wellInside = reach.reaches && Int128{setting.smallest()} * testedFromAFifth >= most.smallest();
    reach.shareOfRange = toNewtonMetres(setting) / toNewtonMetres(most);
    reach.deviation = deviationOf(tool);
    reach.calibrationOverdue = isOverdue(tool, today);
    reach.calibrationUnknown = !tool.calibrationDue;
    return reach;
}

std::optional<Torque> settingOf(const TorqueTool &tool, const ToolAsk &ask, const std::optional<AdapterFit> &fit)
{
    const auto setting = settingFor(tool, ask.wanted, fit, ask.band);
    return setting ? std::optional(setting->value) : std::nullopt;
}

/// What is asked of each tool.
class Asks {
public:
    Asks(Torque wanted, std::span<const ToolAsk> asks) : m_all{wanted}, m_each(asks) {}
    [[nodiscard]] const ToolAsk &of(std::size_t tool) const { return m_each.empty() ? m_all : m_each[tool]; }

private:
    ToolAsk m_all;
    std::span<const ToolAsk> m_each;
};

/// The better tool: in calibration before overdue, well inside its range, the least deviation, the smallest.
class Better {
public:
    explicit Better(std::span<const TorqueTool> tools) : m_tools(tools) {}

    bool operator()(const ToolReach &a, const ToolReach &b) const
    {
        if (a.calibrationOverdue != b.calibrationOverdue)
            return b.calibrationOverdue;
        if (a.wellInside != b.wellInside)
            return a.wellInside;
        if (a.deviation != b.deviation)
            return less(a.deviation, b.deviation);
        const Torque mostOfA = m_tools[a.tool].most.value;
        const Torque mostOfB = m_tools[b.tool].most.value;
        return mostOfA != mostOfB ? mostOfA < mostOfB : a.tool < b.tool;
    }

private:
    std::span<const TorqueTool> m_tools;
};

/// The best of every tool with every adapter, straight out (which lowers the setting) or back along the handle (which raises it). With
/// equal tools the shorter adapter: a hand beside the grip mark spoils less.
class AdapterSearch {
public:
    AdapterSearch(const Asks &asks, std::span<const TorqueTool> tools, std::span<const Length> adapters, std::chrono::sys_days today)
        : m_asks(asks), m_tools(tools), m_adapters(adapters), m_today(today)
    {
    }

    std::optional<WayOut> best()
    {
        for (std::size_t tool = 0; tool < m_tools.size(); ++tool)
            for (std::size_t adapter = 0; adapter < m_adapters.size(); ++adapter)
                for (const Angle angle : {degrees(0), degrees(180)})
                    consider(tool, adapter, angle);
        return m_best;
    }

private:
    void consider(std::size_t tool, std::size_t adapter, Angle angle)
    {
        const AdapterFit fit{m_adapters[adapter], angle};
        const auto setting = settingOf(m_tools[tool], m_asks.of(tool), fit);
        if (!setting || changesNothing(fit))
            return;
        ToolReach reach = reachOf(tool, m_tools[tool], *setting, m_today);
        reach.adapter = adapter;
        if (reach.reaches && (!m_best || isBetter(reach, *m_best->reach)))
            m_best = WayOut{.kind = WayOut::Kind::WithAdapter, .reach = reach, .angle = angle};
    }

    bool isBetter(const ToolReach &a, const ToolReach &b) const
    {
        const Better better(m_tools);
        if (better(a, b) || better(b, a))
            return better(a, b);
        return m_adapters[*a.adapter] < m_adapters[*b.adapter];
    }

    const Asks &m_asks;
    std::span<const TorqueTool> m_tools;
    std::span<const Length> m_adapters;
    std::chrono::sys_days m_today;
    std::optional<WayOut> m_best;
};

} // namespace

bool isOverdue(const TorqueTool &tool, std::chrono::sys_days today)
{
    return tool.calibrationDue && *tool.calibrationDue < today;
}

Done checkTorqueRange(const Typed<Torque> &least, const Typed<Torque> &most)
{
    return isRange(least.value, most.value) ? Done() : fail(ErrorKind::TorqueRange, formatTyped(least), formatTyped(most));
}

Done checkDeviation(const Rational &percent)
{
    const bool sound = less(Rational(), percent) && !less(Rational(largestDeviationPercent), percent);
    return sound ? Done() : fail(ErrorKind::DeviationOutOfRange, shortest(percent));
}

Done checkLever(Length lever)
{
    return lever > Length() && lever <= longestLever ? Done() : fail(ErrorKind::LeverOutOfRange);
}

Done checkTorqueTool(const TorqueTool &tool)
{
    return checkTorqueRange(tool.least, tool.most)
        .and_then([&] { return tool.deviationPercent ? checkDeviation(*tool.deviationPercent) : Done(); })
        .and_then([&] { return tool.lever ? checkLever(*tool.lever) : Done(); });
}

Rational deviationOf(const TorqueTool &tool)
{
    return tool.deviationPercent.value_or(clickWrenchDeviation(tool.most.value));
}

ToolAdvice chooseTool(Torque wanted, std::span<const TorqueTool> tools, std::span<const Length> adapters, std::chrono::sys_days today,
                      const std::optional<AdapterFit> &fit, std::span<const ToolAsk> asks)
{
    assert(asks.empty() || asks.size() == tools.size());
    const Asks each(wanted, asks);
    ToolAdvice advice;
    for (std::size_t index = 0; index < tools.size(); ++index) {
        const auto setting = settingOf(tools[index], each.of(index), fit);
        ToolReach reach = reachOf(index, tools[index], setting.value_or(each.of(index).wanted), today);
        if (!setting)
            reach.reaches = reach.wellInside = false;
        (reach.reaches ? advice.reaching : advice.misses).push_back(reach);
    }
    std::sort(advice.reaching.begin(), advice.reaching.end(), Better(tools));
    if (!advice.reaching.empty())
        return advice;
    if (const auto adapted = AdapterSearch(each, tools, adapters, today).best())
        advice.waysOut.push_back(*adapted);
    advice.waysOut.push_back({.kind = WayOut::Kind::Borrow, .most = wanted * testedFromAFifth});
    advice.waysOut.push_back({.kind = WayOut::Kind::ByFeel});
    return advice;
}

Torque deviationAt(const TorqueTool &tool, Torque value)
{
    // The lowest whole number at or above is what is left of the highest at or below the opposite.
    const auto opposite = Rational(-Int128{value.smallest()}, 100).times(deviationOf(tool));
    const auto whole = opposite ? opposite->floored() : std::nullopt;
    assert(whole);
    return Torque::ofSmallest(-*whole);
}

} // namespace asleft
