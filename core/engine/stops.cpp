#include "stops.h"

#include <engine/phase.h>

#include <algorithm>

namespace asleft {

namespace {

constexpr Angle none = Angle::ofSmallest(INT64_MIN);

/// Stops at marks alone: a table of margins.
class MarkedGround : public Ground {
public:
    MarkedGround(const EngineDesign &design, std::vector<Angle> cranks) : m_cranks(std::move(cranks))
    {
        const Margins margins(design);
        const auto things = thingsOf(design);
        for (const Angle crank : m_cranks) {
            auto &row = m_margins.emplace_back();
            row.reserve(things.size());
            for (const Thing thing : things)
                row.push_back(margins.at(thing.cylinder, thing.loader, crank));
        }
    }

    [[nodiscard]] std::vector<Angle> greatest() const override
    {
        std::vector<std::size_t> all(m_cranks.size());
        for (std::size_t mark = 0; mark < all.size(); ++mark)
            all[mark] = mark;
        return greatestAt(all);
    }

    [[nodiscard]] Stops at(Angle least) const override
    {
        Stops stops{m_cranks, std::vector<Reach>(m_cranks.size())};
        for (std::size_t mark = 0; mark < m_margins.size(); ++mark)
            for (std::size_t thing = 0; thing < m_margins[mark].size(); ++thing)
                if (m_margins[mark][thing] >= least)
                    stops.reaches[mark].add(thing);
        return stops;
    }

    [[nodiscard]] Angle marginOf(const Stops &, const std::vector<std::size_t> &chosen) const override
    {
        const auto greatest = greatestAt(chosen);
        return *std::min_element(greatest.begin(), greatest.end());
    }

private:
    [[nodiscard]] std::vector<Angle> greatestAt(const std::vector<std::size_t> &marks) const
    {
        std::vector<Angle> greatest(m_margins.front().size(), none);
        for (const std::size_t mark : marks)
            for (std::size_t thing = 0; thing < greatest.size(); ++thing)
                greatest[thing] = std::max(greatest[thing], m_margins[mark][thing]);
        return greatest;
    }

    std::vector<Angle> m_cranks;
    std::vector<std::vector<Angle>> m_margins; ///< by mark, then thing
};

/// A stretch of the crank in which a thing is free, before margin and ramp are taken off its ends.
struct Stretch {
    std::size_t thing;
    Angle starts; ///< 0 ≤ starts < cycle
    Angle length;
};

struct Gap {
    Angle starts;
    Angle length;
};

/// The stretches of the cycle outside all arcs, counted from the cylinder's own firing.
std::vector<Gap> gapsBetween(const LoadedArcs &loaded, Angle cycle)
{
    const CrankArc &first = loaded.arcs[0];
    const Angle firstEnds = first.ends - first.starts; // from here on counted from the start of the first arc
    if (loaded.count == 1)
        return {{first.ends, cycle - firstEnds}};

    const CrankArc &second = loaded.arcs[1];
    const Angle secondStarts = wrapped(second.starts - first.starts, cycle);
    const Angle secondEnds = secondStarts + (second.ends - second.starts);
    std::vector<Gap> gaps;
    const auto add = [&](Angle from, Angle to) {
        if (from < to)
            gaps.push_back({first.starts + from, to - from});
    };
    if (secondStarts > firstEnds)
        add(std::max(firstEnds, secondEnds - cycle), secondStarts);
    add(std::max(firstEnds, secondEnds), cycle);
    return gaps;
}

/// Stops anywhere. A stop can be moved back to where the last of what it reaches has just become free, or to 0, without losing any of
/// it: only those angles are worth looking at.
class OpenGround : public Ground {
public:
    explicit OpenGround(const EngineDesign &design) : m_cycle(cycleOf(design)), m_ramp(design.cam.rampAllowance)
    {
        const Margins margins(design);
        std::array<std::vector<Gap>, loaderCount> gaps;
        for (const Loader loader : {Loader::Intake, Loader::Exhaust, Loader::Injector})
            gaps[static_cast<std::size_t>(loader)] = gapsBetween(margins.arcs(loader), m_cycle);
        for (const Thing thing : thingsOf(design)) {
            for (const Gap &gap : gaps[static_cast<std::size_t>(thing.loader)])
                m_stretches.push_back({m_things, wrapped(margins.fires(thing.cylinder) + gap.starts, m_cycle), gap.length});
            ++m_things;
        }
    }

    [[nodiscard]] std::vector<Angle> greatest() const override
    {
        std::vector<Angle> greatest(m_things, none);
        for (const Stretch &stretch : m_stretches)
            greatest[stretch.thing] = std::max(greatest[stretch.thing], half(stretch.length) - m_ramp);
        return greatest;
    }

    [[nodiscard]] Stops at(Angle least) const override
    {
        Reach free;
        const std::vector<Edge> edges = edgesAt(least, free);
        Stops stops{{Angle{}}, {free}};
        for (auto edge = edges.begin(); edge != edges.end(); ++edge) {
            if (edge->ends) {
                free.remove(edge->thing);
                continue;
            }
            free.add(edge->thing);
            if (stops.cranks.back() != edge->crank) {
                stops.cranks.push_back(edge->crank);
                stops.reaches.emplace_back();
            }
            stops.reaches.back() = free;
        }
        return stops;
    }

    [[nodiscard]] Angle marginOf(const Stops &stops, const std::vector<std::size_t> &chosen) const override;

private:
    struct Edge {
        Angle crank;
        bool ends; ///< of edges at the same crank, those that begin stand first
        std::size_t thing;
        auto operator<=>(const Edge &) const = default;
    };

    static Angle half(Angle angle) { return Angle::ofSmallest(angle.smallest() / 2); }

    /// Where things become free by `least` and cease to be, from 0 on; `atZero`: what is free at 0.
    [[nodiscard]] std::vector<Edge> edgesAt(Angle least, Reach &atZero) const
    {
        std::vector<Edge> edges;
        edges.reserve(2 * m_stretches.size());
        const Angle kept = m_ramp + least;
        for (const Stretch &stretch : m_stretches) {
            const Angle length = stretch.length - kept * 2;
            if (length < Angle{})
                continue;
            const Angle starts = wrapped(stretch.starts + kept, m_cycle);
            const Angle ends = starts + length;
            const bool over = ends >= m_cycle;
            if (over || starts == Angle{})
                atZero.add(stretch.thing);
            if (starts != Angle{})
                edges.push_back({starts, false, stretch.thing});
            edges.push_back({over ? ends - m_cycle : ends, true, stretch.thing});
        }
        std::sort(edges.begin(), edges.end());
        return edges;
    }

    Angle m_cycle;
    Angle m_ramp;
    std::size_t m_things = 0;
    std::vector<Stretch> m_stretches;
};

/// Gives each thing to the chosen stop where it has most room, then moves each stop to the middle of the room all of its own have.
Angle OpenGround::marginOf(const Stops &stops, const std::vector<std::size_t> &chosen) const
{
    struct Room {
        Angle behind = none;
        Angle ahead = none;
        std::size_t stop = 0;
        [[nodiscard]] Angle least() const { return std::min(behind, ahead); }
    };
    std::vector<Room> ofThing(m_things);
    for (std::size_t i = 0; i < chosen.size(); ++i)
        for (const Stretch &stretch : m_stretches) {
            const Angle behind = wrapped(stops.cranks[chosen[i]] - stretch.starts, m_cycle);
            const Room room{behind, stretch.length - behind, i};
            if (room.least() > ofThing[stretch.thing].least())
                ofThing[stretch.thing] = room;
        }

    std::vector<Room> ofStop(chosen.size(), Room{m_cycle, m_cycle});
    for (const Room &room : ofThing) {
        ofStop[room.stop].behind = std::min(ofStop[room.stop].behind, room.behind);
        ofStop[room.stop].ahead = std::min(ofStop[room.stop].ahead, room.ahead);
    }
    Angle least = m_cycle;
    for (const Room &room : ofStop)
        least = std::min(least, half(room.behind + room.ahead));
    return least - m_ramp;
}

} // namespace

std::vector<Thing> thingsOf(const EngineDesign &design)
{
    std::vector<Thing> things;
    for (int index = 0; index < design.cylinders(); ++index) {
        if (design.train.intakes > 0)
            things.push_back({{index}, Loader::Intake});
        things.push_back({{index}, Loader::Exhaust});
        if (design.train.injectors)
            things.push_back({{index}, Loader::Injector});
    }
    return things;
}

std::unique_ptr<Ground> groundOf(const EngineDesign &design, CrankMarks marks)
{
    if (marks == CrankMarks::AnyAngle)
        return std::make_unique<OpenGround>(design);
    // The piston of a two-stroke is at top dead centre once in its cycle, that of a four-stroke twice.
    std::vector<Angle> cranks;
    for (const Cylinder cylinder : design.firingOrder) {
        cranks.push_back(crankAt(design, {cylinder, CrankEvent::Compression}));
        if (design.cycle == Cycle::FourStroke)
            cranks.push_back(crankAt(design, {cylinder, CrankEvent::Overlap}));
        if (marks == CrankMarks::FirstOnly)
            break;
    }
    std::sort(cranks.begin(), cranks.end());
    cranks.erase(std::unique(cranks.begin(), cranks.end()), cranks.end());
    return std::make_unique<MarkedGround>(design, std::move(cranks));
}

} // namespace asleft
