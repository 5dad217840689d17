#pragma once

#include <draw/engine_drawing.h>

#include <QHash>
#include <QLineF>
#include <QPointF>

namespace asleft {

constexpr double engineEndRoom = 64; // left of the first cylinder, for the front and the way of turning
constexpr double engineStepHeight = 16;

/// Where one cylinder is drawn.
struct EnginePlace {
    QPointF middle;
    QPointF step; ///< middle of its place in the firing order
    QPointF foot; ///< where its barrel meets the crankcase, of flat, opposed and radial engines
};

/// How the path of the firing order runs.
enum class EnginePaths {
    Over,    ///< over the row
    Between, ///< through the room between two banks
    Behind,  ///< straight, behind the cylinders
};

/// Where everything of an engine is drawn.
struct EnginePlaces {
    QHash<QString, EnginePlace> cylinders;
    QList<QLineF> crankLines;
    double crankcase = 0; ///< radius of that of a radial engine, 0 for the others
    QPointF turning;      ///< middle of the sign that tells which way the crank turns
    double diameter = 0;  ///< of a cylinder
    EnginePaths paths = EnginePaths::Between;
    bool barrels = false;
};

EnginePlaces enginePlaces(const EngineSketch &sketch, const QRectF &area);

} // namespace asleft
