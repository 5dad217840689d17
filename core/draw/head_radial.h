#pragma once

#include <draw/head.h>

namespace asleft {

/// Plans a radial engine as it is seen from the front: the heads of a row around its crankcase, the rows side by side.
HeadPlan planRound(const EngineDesign &design, QSizeF size);

} // namespace asleft
