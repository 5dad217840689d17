#include "fewest.h"

#include "stops.h"

#include <algorithm>

namespace asleft {

namespace {

constexpr Angle hair = Angle::ofSmallest(1);

/// The adjusters whose greatest margin is not enough, by their short names.
std::string outOfReach(const EngineDesign &design, const std::vector<Angle> &greatest, Angle needed)
{
    const auto things = thingsOf(design);
    std::string names;
    for (const AdjusterRef adjuster : design.adjusters())
        for (std::size_t i = 0; i < things.size(); ++i)
            if (things[i].cylinder == adjuster.cylinder && things[i].loader == loaderOf(adjuster) && greatest[i] < needed)
                names += (names.empty() ? "" : ", ") + shortName(design, adjuster);
    return names;
}

Reach everyThing(std::size_t things)
{
    Reach all;
    for (std::size_t thing = 0; thing < things; ++thing)
        all.add(thing);
    return all;
}

/// The greatest least margin `count` stops can have. \pre they can have `low`, and `high` or less
Angle greatestLeastMargin(const Ground &ground, Reach all, std::size_t count, Angle low, Angle high)
{
    // Whether `least` can be had; then `low` is raised to what the stops found for it have, which is mostly more.
    const auto raise = [&](Angle least) {
        const Stops stops = ground.at(least);
        const auto chosen = coverWithin(stops.reaches, all, count);
        if (chosen)
            low = ground.marginOf(stops, *chosen);
        return chosen.has_value();
    };
    // A little more is asked for first: mostly there is none, and that settles it.
    while (low < high && raise(low + hair)) {
        const Angle middle = low + Angle::ofSmallest((high - low).smallest() / 2);
        if (middle > low && !raise(middle))
            high = middle - hair;
    }
    return low;
}

} // namespace

Result<std::vector<Angle>> fewestCranks(const EngineDesign &design, CrankMarks marks, Angle leastMargin)
{
    const Angle needed = std::max(leastMargin, hair); // a margin of nothing sets nothing
    const auto ground = groundOf(design, marks);
    const auto greatest = ground->greatest();
    const Angle high = *std::min_element(greatest.begin(), greatest.end());
    if (high < needed)
        return fail(ErrorKind::PlanNotReached, outOfReach(design, greatest, needed));

    const Reach all = everyThing(greatest.size());
    const Stops enough = ground->at(needed);
    const auto fewest = smallestCover(enough.reaches, all);
    const Angle best = greatestLeastMargin(*ground, all, fewest.size(), ground->marginOf(enough, fewest), high);

    const Stops stops = ground->at(best);
    std::vector<Angle> cranks;
    for (const std::size_t stop : earliestCover(stops.reaches, all, fewest.size()))
        cranks.push_back(stops.cranks[stop]);
    return cranks;
}

} // namespace asleft
