#pragma once

#include <draw/joint_drawing.h>

namespace asleft {

/// As much of a plan as is painted where `exposed` is.
struct PartOfPlan {
    JointPlan plan;
    qsizetype done = 0; ///< of its legs
};
/// Texts and legs elsewhere are left out; of the legs that stay, as many are done as were among the first `done`.
PartOfPlan partOfPlan(const JointPlan &plan, const QRectF &exposed, qsizetype done);

/// From the fastener down to y = `foot`, on the nearest way between those below it; where there is none it runs behind some.
QPainterPath leaderLine(const JointPlan &plan, qsizetype fastener, double foot);

} // namespace asleft
