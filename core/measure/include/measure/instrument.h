#pragma once

#include <measure/quantity.h>
#include <measure/rational.h>

namespace asleft {

// How far a reading may be off: expanded uncertainties U = 2u, rounded up to the smallest unit.

/// Of a feeler leaf that fits with a drag: it is worth one leaf step, the gap lying anywhere within half a step of the leaf with equal
/// chance; u = (step/2)/√3 (JCGM 100:2008, 4.3.7). \pre step ≥ 0
Length feelerUncertainty(Length step);

/// Of a dial gauge or a micrometer with a largest permissible error, read to `resolution`: both rectangular,
/// u² = (error² + (resolution/2)²)/3 (JCGM 100:2008, 4.3.7 and F.2.2.1). \pre neither is negative
Length gaugeUncertainty(Length permissibleError, Length resolution);

/// Of a torque tool whose permissible deviation is ±`percent` of the reading: a bound, not an uncertainty; u = a/√3 (JCGM 100:2008,
/// 4.3.7). The deviation is rounded up before U is. \pre neither is negative; `percent` is at most 1000
Torque torqueToolUncertainty(Torque reading, const Rational &percent);

/// The permissible deviation of an adjustable click wrench in percent of its reading: 6 up to a largest torque of 10 N·m, 4 above
/// (ISO 6789). It goes by the tool's largest torque, not by the reading.
Rational clickWrenchDeviation(Torque largest);

} // namespace asleft
