#include "margins.h"

#include <engine/phase.h>

namespace asleft {

Margins::Margins(const EngineDesign &design)
    : m_fires(design.labels.size()), m_arcs{loadedArcs(design, Loader::Intake), loadedArcs(design, Loader::Exhaust),
                                            loadedArcs(design, Loader::Injector)},
      m_cycle(cycleOf(design)), m_ramp(design.cam.rampAllowance)
{
    Angle fires;
    for (std::size_t i = 0; i < design.firingOrder.size(); fires += design.gaps[i++])
        m_fires[static_cast<std::size_t>(design.firingOrder[i].index)] = fires;
}

Angle Margins::at(Cylinder cylinder, Loader loader, Angle crank) const
{
    const Angle since = crank - fires(cylinder);
    const Angle phase = since < Angle{} ? since + m_cycle : since;
    return clearOf(arcs(loader), phase, m_cycle) - m_ramp;
}

} // namespace asleft
