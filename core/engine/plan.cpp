#include <engine/plan.h>

#include <algorithm>
#include <tuple>

namespace asleft {

namespace {

std::vector<PlanPosition> choosePositions(const EngineDesign &design, PlanWay way)
{
    const auto positionAt = [&](Angle crank) { return PlanPosition{sayCrank(design, crank).place, crank, {}}; };
    if (way == PlanWay::TwoPositions)
        return {positionAt(degrees(0)), positionAt(degrees(360))};
    std::vector<PlanPosition> positions;
    positions.reserve(design.firingOrder.size());
    for (const Cylinder cylinder : design.firingOrder)
        positions.push_back(positionAt(firingAngle(design, cylinder)));
    return positions;
}

/// The position a valve is set at: of its own cylinder's compression where that is the way, else where its margin is greatest, the
/// earlier on a tie.
PlanPosition &positionFor(const EngineDesign &design, AdjusterRef valve, PlanWay way, std::vector<PlanPosition> &positions)
{
    if (way == PlanWay::EachOnCompression)
        return *std::ranges::find(positions, firingAngle(design, valve.cylinder), &PlanPosition::crank);
    return *std::max_element(positions.begin(), positions.end(), [&](const PlanPosition &a, const PlanPosition &b) {
        return margin(design, valve, a.crank) < margin(design, valve, b.crank);
    });
}

/// Labels in the order a manual counts them: letters first, then the number by size, so that 2 stands before 10.
bool countsBefore(const std::string &a, const std::string &b)
{
    const auto key = [](std::string_view label) {
        const std::size_t digits = std::min(label.find_first_of("0123456789"), label.size());
        return std::tuple(label.substr(0, digits), label.size() - digits, label.substr(digits));
    };
    return key(a) < key(b);
}

std::string describeSide(const EngineDesign &design, const PlanPosition &position, Side side, const std::string &word)
{
    std::vector<std::string> labels;
    for (const PlanPoint &point : position.points)
        if (point.adjuster.side == side)
            labels.push_back(design.label(point.adjuster.cylinder));
    if (labels.empty())
        return {};
    std::sort(labels.begin(), labels.end(), countsBefore);
    std::string text = word;
    for (const std::string &label : labels)
        text += ' ' + label;
    return text;
}

} // namespace

CrankPlan generatePlan(const EngineDesign &design, PlanWay way)
{
    CrankPlan plan;
    plan.generated = true;
    plan.way = way;
    plan.positions = choosePositions(design, way);
    for (const AdjusterRef valve : design.adjusters()) {
        PlanPosition &position = positionFor(design, valve, way, plan.positions);
        if (maySet(design, valve, position.crank))
            position.points.push_back({valve, margin(design, valve, position.crank)});
        else
            plan.unreached.push_back(valve);
    }
    std::erase_if(plan.positions, [](const PlanPosition &position) { return position.points.empty(); });
    return plan;
}

std::string describePoints(const EngineDesign &design, const PlanPosition &position)
{
    const std::string intakes = describeSide(design, position, Side::Intake, "IN");
    const std::string exhausts = describeSide(design, position, Side::Exhaust, "EX");
    return intakes + (intakes.empty() || exhausts.empty() ? "" : " ") + exhausts;
}

} // namespace asleft
