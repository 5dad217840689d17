#pragma once

#include <QColor>

#include <array>

namespace asleft {

/// Contrast of two colours by WCAG 2.x: (lighter + 0.05) / (darker + 0.05) of their relative luminances.
double contrast(const QColor &a, const QColor &b);

struct Lab {
    double lightness;
    double a;
    double b;
};
Lab labOf(const QColor &colour);

/// CIEDE2000, after Sharma, Wu and Dalal, Color Research and Application 30 (2005) 21, with all weights 1.
double deltaE2000(const Lab &first, const Lab &second);

enum class Sight { Usual, Protan, Deutan, Tritan };

/// How a colour looks to a dichromat: the matrices of Machado, Oliveira and Fernandes, IEEE TVCG 15 (2009) 1291, for severity 1,
/// applied to linear RGB.
QColor seenBy(Sight sight, const QColor &colour);

} // namespace asleft
