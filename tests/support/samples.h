#pragma once

#include "engine_texts.h"

#include <draw/point_shape.h>

#include <QList>
#include <QString>

namespace asleft {

inline EngineDesign engineOf(Layout layout, int cylinders, const std::string &order, const std::string &valveOrder = {})
{
    EngineText text = engineText(layout, cylinders, order);
    text.valveOrder = valveOrder;
    return *designEngine(text);
}

/// What is set at each cylinder, besides or instead of one intake and one exhaust.
struct Train {
    const char *name;
    const char *valves;
    bool bridged = false;
    bool bridgeScrews = false;
    bool injectors = false;
    bool decompressors = false;
    Cycle cycle = Cycle::FourStroke;
};

constexpr Train allTrains[] = {
    {"1+1", "1+1"},
    {"2+2", "2+2"},
    {"3+2", "3+2"},
    {"1+4", "1+4"},
    {"3+2 with injector and decompressor", "3+2", false, false, true, true},
    {"2+2 bridged", "2+2", true},
    {"2+2 bridged with screws", "2+2", true, true},
    {"2+2 bridged with screws and injector", "2+2", true, true, true},
    {"1+4 bridged, everything", "1+4", true, true, true, true},
    {"1+1 with injector", "1+1", false, false, true},
    {"1+1 with decompressor", "1+1", false, false, false, true},
    {"two-stroke 0+1", "0+1", false, false, false, false, Cycle::TwoStroke},
    {"two-stroke 0+4 bridged with injector", "0+4", true, false, true, false, Cycle::TwoStroke},
};

inline EngineText withTrain(EngineText text, const Train &train)
{
    text.valves = train.valves;
    text.bridged = train.bridged;
    text.bridgeScrews = train.bridgeScrews;
    text.injectors = train.injectors;
    text.decompressors = train.decompressors;
    text.cycle = train.cycle;
    if (train.cycle == Cycle::TwoStroke)
        text.cam = twoStrokeCam();
    return text;
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
