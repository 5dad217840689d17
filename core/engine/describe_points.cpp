#include <engine/plan.h>

#include "point_words.h"

#include <algorithm>
#include <array>
#include <tuple>

namespace asleft {

namespace {

/// Labels in the order a manual counts them: letters first, then the number by size, so that 2 stands before 10.
bool countsBefore(const std::string &a, const std::string &b)
{
    const auto key = [](std::string_view label) {
        const std::size_t digits = std::min(label.find_first_of("0123456789"), label.size());
        return std::tuple(label.substr(0, digits), label.size() - digits, label.substr(digits));
    };
    return key(a) < key(b);
}

using Points = std::vector<AdjusterRef>;

/// Takes out of `points` what the group has at the cylinder, if all of it is there.
bool takeWhole(const EngineDesign &design, PointGroup group, Cylinder cylinder, Points &points)
{
    const Points whole = pointsOf(design, group, cylinder);
    const auto isThere = [&](AdjusterRef point) { return std::ranges::find(points, point) != points.end(); };
    if (whole.empty() || !std::ranges::all_of(whole, isThere))
        return false;
    std::erase_if(points, [&](AdjusterRef point) { return std::ranges::find(whole, point) != whole.end(); });
    return true;
}

/// " IN 1 2 4": the cylinders of which the position has all of the group, which are taken out of `points`.
std::string takeGroup(const EngineDesign &design, PointGroup group, const std::string &word, Points &points)
{
    std::vector<std::string> labels;
    for (const auto &bank : design.banks)
        for (const Cylinder cylinder : bank)
            if (takeWhole(design, group, cylinder, points))
                labels.push_back(design.label(cylinder));
    std::ranges::sort(labels, countsBefore);
    std::string text = labels.empty() ? "" : ' ' + word;
    for (const std::string &label : labels)
        text += ' ' + label;
    return text;
}

} // namespace

std::string describePoints(const EngineDesign &design, const PlanPosition &position)
{
    Points points;
    for (const PlanPoint &point : position.points)
        points.push_back(point.adjuster);
    std::string groups = takeGroup(design, {PointKind::Lash, Side::Intake}, "IN", points);
    groups += takeGroup(design, {PointKind::Lash, Side::Exhaust}, "EX", points);
    groups += takeGroup(design, {PointKind::Injector, Side::Intake}, "INJ", points);
    groups += takeGroup(design, {PointKind::Decompressor, Side::Exhaust}, "DEC", points);

    // Single ones go first: behind a group their names might be cylinders' labels.
    std::string text;
    for (const AdjusterRef point : points)
        text += ' ' + shortName(design, point);
    text += groups;
    return text.empty() ? text : text.substr(1);
}

} // namespace asleft
