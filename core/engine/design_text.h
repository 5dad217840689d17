#pragma once

#include <engine/design.h>

namespace asleft {

// Each reads one text of an engine into the design, which the ones before it have filled: numbering, firing order, gaps, valves of a
// cylinder, valve order, barring gear. The texts stand in one line.

Done readNumbering(const EngineText &text, EngineDesign &design);
Done readFiringOrder(const EngineText &text, EngineDesign &design);
Done readGaps(const EngineText &text, DecimalMark mark, EngineDesign &design);
Done readTrain(const EngineText &text, EngineDesign &design);
Done readValveOrder(const EngineText &text, EngineDesign &design);
Done readBarring(const EngineText &text, EngineDesign &design);

std::string writeNumbering(const EngineDesign &design);
std::string writeFiringOrder(const EngineDesign &design);
std::string writeGaps(const EngineDesign &design);
std::string writeValves(const EngineDesign &design);
std::string writeValveOrder(const EngineDesign &design);
std::string writeBarring(const EngineDesign &design);

} // namespace asleft
