#pragma once

#include <shop/state.h>

#include <QString>

namespace asleft {

// The setting points of an engine.

QString sideName(Side side);                                        ///< "intake"
QString pointName(const EngineDesign &design, AdjusterRef valve);   ///< "Intake 2", at the head of a line
QString pointInText(const EngineDesign &design, AdjusterRef valve); ///< "intake 2", within a sentence
QString pointShort(const EngineDesign &design, AdjusterRef valve);  ///< "I2"
QString pointName(const JobFrame &frame, PointId point);
QString pointInText(const JobFrame &frame, PointId point);
QString pointShort(const JobFrame &frame, PointId point);

} // namespace asleft
