#include "radial_seats.h"

#include "head_grid.h"

#include <array>
#include <utility>

namespace asleft {

namespace {

using PointSides = std::array<std::vector<PointGroup>, 2>; ///< outward, inward

PointSides sidesOf(const EngineDesign &design, Cylinder cylinder)
{
    PointSides sides{groupsOf(design, cylinder, Side::Exhaust), {}};
    if (design.train.injectors)
        sides[1].push_back({{cylinder, Side::Intake, PointKind::Injector}});
    for (PointGroup &group : groupsOf(design, cylinder, Side::Intake))
        sides[1].push_back(std::move(group));
    return sides;
}

std::vector<std::vector<AdjusterRef>> ringsOf(const EngineDesign &design, Cylinder cylinder, std::size_t columns)
{
    std::vector<std::vector<AdjusterRef>> rings;
    std::vector<AdjusterRef> all;
    for (const auto &side : sidesOf(design, cylinder)) {
        bool fresh = true;
        for (const PointGroup &group : side) {
            for (const AdjusterRef point : group) {
                if (rings.empty() || fresh || rings.back().size() >= columns)
                    rings.emplace_back();
                rings.back().push_back(point);
                all.push_back(point);
                fresh = false;
            }
        }
    }
    if (all.size() <= columns)
        rings.assign(1, all);
    return rings;
}

} // namespace

std::vector<Seat> seatsOf(const EngineDesign &design, Cylinder cylinder, int columns)
{
    const auto rings = ringsOf(design, cylinder, static_cast<std::size_t>(columns));
    std::vector<Seat> seats;
    for (std::size_t ring = 0; ring < rings.size(); ++ring) {
        const double middle = (static_cast<double>(rings[ring].size()) - 1) / 2;
        for (std::size_t at = 0; at < rings[ring].size(); ++at)
            seats.push_back({rings[ring][at], static_cast<int>(ring), static_cast<double>(at) - middle});
    }
    return seats;
}

} // namespace asleft
