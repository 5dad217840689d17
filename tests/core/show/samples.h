#pragma once

#include <show/point_shape.h>

#include <engine/design.h>

#include <QList>
#include <QString>

namespace asleft {

inline EngineDesign engineOf(Layout layout, int cylinders, const std::string &order, const std::string &valveOrder = {})
{
    EngineText text;
    text.layout = layout;
    text.cylinders = cylinders;
    text.firingOrder = order;
    text.valveOrder = valveOrder;
    return *designEngine(text);
}

/// 1-2-3-…: enough to draw any engine.
inline std::string plainOrder(int cylinders)
{
    std::string order = "1";
    for (int cylinder = 2; cylinder <= cylinders; ++cylinder)
        order += "-" + std::to_string(cylinder);
    return order;
}

inline std::string valvesInOneLine(int cylindersInBank)
{
    std::string letters;
    for (int cylinder = 0; cylinder < cylindersInBank; ++cylinder)
        letters += cylinder % 2 == 0 ? "E I " : "I E ";
    return letters;
}

constexpr Verdict allVerdicts[] = {Verdict::Inside, Verdict::Low,           Verdict::High,  Verdict::TooClose,
                                   Verdict::ByFeel, Verdict::NotComparable, Verdict::NoSpec};

/// Every state a point can be in, each looking like no other.
inline QList<PointLook> allStates()
{
    QList<PointLook> looks{{},
                           {PointStage::NutOpen},
                           {PointStage::NutOpen, Verdict::Inside},
                           {PointStage::NutOpen, Verdict::ByFeel},
                           {PointStage::CheckAgain, Verdict::Inside}};
    for (const Verdict verdict : allVerdicts)
        looks << PointLook{PointStage::Found, verdict} << PointLook{PointStage::Left, verdict};
    for (const Verdict verdict : {Verdict::Low, Verdict::High, Verdict::TooClose})
        looks << PointLook{PointStage::Left, verdict, true};
    return looks;
}

} // namespace asleft
