// Positions for the largest engine: there is nothing barer to compare with, so this one is told in microseconds.
#include "bench_timing.h"

#include <engine/plan.h>

#include <cstdio>

namespace asleft::bench {

namespace {

EngineDesign twentyFour()
{
    EngineText text;
    text.layout = Layout::Vee;
    text.cylinders = 24;
    for (int step = 0; step < 24; ++step)
        text.firingOrder += (step == 0 ? "" : "-") + std::to_string(step * 5 % 24 + 1);
    text.cam.assumed = false;
    return need(designEngine(text), "the engine of 24 cylinders was refused").value();
}

} // namespace

void benchPlans(Rounds rounds)
{
    const EngineDesign design = twentyFour();
    const auto time = [&](const char *name, const PlanAsk &ask) {
        std::vector<double> seconds;
        for (int round = 0; round < rounds.of(101); ++round)
            seconds.push_back(secondsOf([&] { need(planFor(design, ask), name); }));
        std::printf("plan for 24 cylinders, %-40s %8.1f us\n", name, median(seconds) * 1e6);
    };
    time("two positions", {.way = PlanWay::TwoPositions});
    time("each on compression", {.way = PlanWay::EachOnCompression});
    time("opening and closing", {.way = PlanWay::OpeningAndClosing});
    time("fewest, every TDC", {.way = PlanWay::Fewest, .marks = CrankMarks::EveryTdc});
    time("fewest, any angle", {.way = PlanWay::Fewest, .marks = CrankMarks::AnyAngle});
}

} // namespace asleft::bench
