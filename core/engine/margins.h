#pragma once

#include "cam.h"

namespace asleft {

/// The margins of one engine for many crank angles: what margin() would look up each time is looked up once.
class Margins {
public:
    explicit Margins(const EngineDesign &design);

    /// As margin(). \pre 0 ≤ crank < cycle
    [[nodiscard]] Angle at(Cylinder cylinder, Loader loader, Angle crank) const;
    [[nodiscard]] Angle at(AdjusterRef adjuster, Angle crank) const { return at(adjuster.cylinder, loaderOf(adjuster), crank); }
    [[nodiscard]] Angle fires(Cylinder cylinder) const { return m_fires[static_cast<std::size_t>(cylinder.index)]; }
    [[nodiscard]] const LoadedArcs &arcs(Loader loader) const { return m_arcs[static_cast<std::size_t>(loader)]; }
    [[nodiscard]] Angle cycle() const { return m_cycle; }
    [[nodiscard]] Angle ramp() const { return m_ramp; }

private:
    std::vector<Angle> m_fires; ///< by Cylinder::index
    std::array<LoadedArcs, loaderCount> m_arcs;
    Angle m_cycle;
    Angle m_ramp;
};

} // namespace asleft
