#pragma once

#include "engines.h"

#include <engine/phase.h>

#include <algorithm>
#include <array>
#include <random>
#include <set>

namespace asleft {

/// An engine drawn at random, all of it in whole degrees, with its own record of what presses where.
struct WholeDegreeEngine {
    struct Arc {
        int starts; ///< after the cylinder's own firing
        int ends;
    };

    EngineText text;
    EngineDesign design;
    int cycle = 720;
    std::vector<int> fires; ///< by position in the firing order
    std::vector<Arc> intake, exhaust, injector;
    int ramp = 0;

    [[nodiscard]] const std::vector<Arc> &arcsOf(AdjusterRef adjuster) const
    {
        if (adjuster.kind == PointKind::Injector)
            return injector;
        return adjuster.kind != PointKind::Decompressor && adjuster.side == Side::Intake ? intake : exhaust;
    }
    [[nodiscard]] int firesAt(Cylinder cylinder) const
    {
        const auto &order = design.firingOrder;
        return fires.at(static_cast<std::size_t>(std::find(order.begin(), order.end(), cylinder) - order.begin()));
    }
};

class EngineDraw {
public:
    struct Limits {
        std::vector<Layout> layouts{Layout::InLine, Layout::Vee, Layout::Flat, Layout::Single, Layout::W, Layout::Radial, Layout::Opposed};
        int mostCylinders = 24;
        int longestEvent = 120;
    };

    explicit EngineDraw(unsigned seed) : EngineDraw(seed, Limits()) {}
    EngineDraw(unsigned seed, Limits limits) : m_random(seed), m_limits(std::move(limits)) {}

    int draw(int low, int high) { return std::uniform_int_distribution(low, high)(m_random); }
    bool oneIn(int n) { return draw(1, n) == 1; }

    WholeDegreeEngine next()
    {
        WholeDegreeEngine engine;
        drawRows(engine.text);
        engine.text.cycle = oneIn(4) ? Cycle::TwoStroke : Cycle::FourStroke;
        engine.cycle = engine.text.cycle == Cycle::TwoStroke ? 360 : 720;
        drawGaps(engine);
        drawTrain(engine.text);
        drawCam(engine);
        engine.text.rotation = oneIn(2) ? Rotation::Clockwise : Rotation::Anticlockwise;
        if (oneIn(3))
            engine.text.barring = std::to_string(draw(20, 1000)) + '/' + std::to_string(draw(1, 19));
        engine.design = made(engine.text);
        drawValveOrder(engine);
        return engine;
    }

private:
    /// Cylinders, how they stand in rows, what they are called and how they fire.
    void drawRows(EngineText &text)
    {
        text.layout = m_limits.layouts[static_cast<std::size_t>(draw(0, static_cast<int>(m_limits.layouts.size()) - 1))];
        const CylinderRange range = cylinderRange(text.layout);
        const std::vector<int> rowChoices = rowsOf(text.layout);
        int rows = 0;
        do {
            text.cylinders = draw(range.fewest, std::max(range.fewest, std::min(range.most, m_limits.mostCylinders)));
            rows = rowChoices[static_cast<std::size_t>(draw(0, static_cast<int>(rowChoices.size()) - 1))];
        } while (text.cylinders % rows != 0 || (range.evenOnly && text.cylinders % 2 != 0));

        std::vector<std::string> labels;
        const bool lettered = oneIn(3);
        const int inRow = text.cylinders / rows;
        for (int row = 0; row < rows; ++row)
            for (int place = 1; place <= inRow; ++place)
                labels.push_back(lettered ? static_cast<char>('A' + row) + std::to_string(place) : std::to_string(row * inRow + place));
        for (int i = 0; i < text.cylinders; ++i)
            text.numbering += (i > 0 && i % inRow == 0 ? " / " : " ") + labels[static_cast<std::size_t>(i)];
        std::shuffle(labels.begin(), labels.end(), m_random);
        for (const std::string &label : labels)
            text.firingOrder += label + ' ';
    }

    static std::vector<int> rowsOf(Layout layout)
    {
        switch (layout) {
        case Layout::InLine:
        case Layout::Single: return {1};
        case Layout::Vee:
        case Layout::Flat: return {2};
        case Layout::W: return {3, 4};
        case Layout::Radial: return {1, 2, 3, 4};
        case Layout::Opposed: return {2, 4};
        }
        return {};
    }

    void drawGaps(WholeDegreeEngine &engine)
    {
        const int n = engine.text.cylinders;
        std::set<int> fires{0};
        if (engine.cycle % n == 0 && oneIn(2))
            for (int i = 1; i < n; ++i)
                fires.insert(engine.cycle / n * i);
        while (static_cast<int>(fires.size()) < n)
            fires.insert(draw(1, engine.cycle - 1));
        engine.fires.assign(fires.begin(), fires.end());
        for (std::size_t i = 0; i < engine.fires.size(); ++i)
            engine.text.gaps += std::to_string((i + 1 < engine.fires.size() ? engine.fires[i + 1] : engine.cycle) - engine.fires[i]) + ' ';
    }

    void drawTrain(EngineText &text)
    {
        static constexpr std::array four{"", "2", "3", "4", "5", "1+2", "1+4", "3+1"};
        static constexpr std::array two{"", "3", "4", "0+1"};
        const auto pick = [&](const auto &all) { return all[static_cast<std::size_t>(draw(0, static_cast<int>(all.size()) - 1))]; };
        text.valves = text.cycle == Cycle::TwoStroke ? pick(two) : pick(four);
        text.injectors = oneIn(2);
        text.decompressors = oneIn(3);
        text.bridged = oneIn(2);
        text.bridgeScrews = oneIn(2);
        if (!designEngine(text)) // no pair to bridge
            text.bridged = text.bridgeScrews = false;
    }

    void drawCam(WholeDegreeEngine &engine)
    {
        const int longest = m_limits.longestEvent;
        const bool two = engine.text.cycle == Cycle::TwoStroke;
        const int intakeOpens = draw(-60, longest), intakeCloses = draw(-60, longest);
        const int exhaustOpens = two ? draw(5, 110) : draw(-60, longest), exhaustCloses = two ? draw(5, 110) : draw(-60, longest);
        engine.ramp = draw(0, two ? 30 : 60);
        engine.text.cam = wholeDegrees(intakeOpens, intakeCloses, exhaustOpens, exhaustCloses, engine.ramp);
        if (!two)
            engine.intake = {{360 - intakeOpens, 540 + intakeCloses}};
        engine.exhaust = {{180 - exhaustOpens, (two ? 180 : 360) + exhaustCloses}};
        engine.injector = {{-70, 70}};
        if (oneIn(3)) {
            engine.exhaust.push_back(drawArc(engine.cycle));
            engine.text.cam.exhaustAgain = CrankArc{degrees(engine.exhaust[1].starts), degrees(engine.exhaust[1].ends)};
        }
        if (oneIn(2)) {
            engine.injector = {drawArc(engine.cycle)};
            engine.text.cam.injector = CrankArc{degrees(engine.injector[0].starts), degrees(engine.injector[0].ends)};
        }
    }
    WholeDegreeEngine::Arc drawArc(int cycle)
    {
        const int starts = draw(-cycle / 2, cycle / 2);
        return {starts, starts + draw(5, cycle / 4)};
    }

    /// Letters for all banks, each cylinder's own in any order.
    void drawValveOrder(WholeDegreeEngine &engine)
    {
        if (oneIn(2))
            return;
        const ValveTrain &train = engine.design.train;
        for (std::size_t bank = 0; bank < engine.design.banks.size(); ++bank) {
            engine.text.valveOrder += bank == 0 ? "" : "/";
            for (std::size_t i = 0; i < engine.design.banks[bank].size(); ++i) {
                std::string own = std::string(static_cast<std::size_t>(train.lashes(Side::Intake)), 'I') +
                                  std::string(static_cast<std::size_t>(train.lashes(Side::Exhaust)), 'E');
                std::shuffle(own.begin(), own.end(), m_random);
                engine.text.valveOrder += own;
            }
        }
        engine.design = made(engine.text);
    }

    std::mt19937 m_random;
    Limits m_limits;
};

/// How many degrees an adjuster is from being pressed, less the ramp, for every degree of the crank: each arc is drawn as a diagram and
/// walked both ways from each degree until it changes. No formula is shared with the engine room.
inline std::vector<int> walkedMargins(const WholeDegreeEngine &engine, AdjusterRef adjuster)
{
    const int cycle = engine.cycle;
    std::vector<int> least(static_cast<std::size_t>(cycle), cycle);
    for (const WholeDegreeEngine::Arc arc : engine.arcsOf(adjuster)) {
        std::vector<char> pressed(static_cast<std::size_t>(3 * cycle)); // three cycles, so that the walk from the middle one meets no end
        for (int crank = arc.starts; crank <= arc.ends; ++crank)        // both ends included
            for (int turn = 0; turn < 3; ++turn)
                pressed[static_cast<std::size_t>((engine.firesAt(adjuster.cylinder) + crank + 2 * cycle) % cycle + turn * cycle)] = 1;
        const auto at = [&](int crank) { return pressed[static_cast<std::size_t>(cycle + crank)]; };
        for (int crank = 0; crank < cycle; ++crank) {
            const char inside = at(crank);
            int steps = 0;
            while (at(crank - steps) == inside && at(crank + steps) == inside)
                ++steps;
            const int clear = inside ? -(steps - 1) : steps; // the last degree inside is the end itself
            auto &margin = least[static_cast<std::size_t>(crank)];
            margin = std::min(margin, clear - engine.ramp);
        }
    }
    return least;
}

} // namespace asleft
