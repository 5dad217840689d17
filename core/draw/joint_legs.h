#pragma once

#include <QList>
#include <QPolygonF>
#include <QRectF>

namespace asleft {

/// A line from the rim of one fastener to the rim of the next one to be tightened, around those between.
using JointLeg = QPolygonF;

struct LegRules {
    double radius;  ///< of a fastener with what surrounds it
    double clear;   ///< between a leg that is bent and a fastener
    QRectF inner;   ///< where a leg is bent first
    QRectF room;    ///< and where it is if it cannot be clear there
    QPointF centre; ///< legs are bent towards it if there is a choice
};

/// With so many fasteners single legs are hardly followed: they are bent coarsely and not kept in lanes.
bool isThicket(qsizetype fasteners);

/// The legs from place to place, in the order of `path`. A leg that would run under another fastener is bent out of its way.
QList<JointLeg> legsOf(const QList<QPointF> &path, const LegRules &rules);

} // namespace asleft
