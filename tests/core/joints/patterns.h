#pragma once

#include <joints/pattern.h>

#include <random>

namespace asleft {

/// Places strewn at random, on different lines and columns of a grid so that none are too close.
inline Pattern strewnPattern(int count, unsigned seed)
{
    std::mt19937 random(seed);
    Pattern pattern{PatternKind::Free, {}};
    for (int i = 0; i < count; ++i)
        pattern.places.push_back({i + 1, i + 0.25 * static_cast<double>(random() % 4), static_cast<double>(random() % 50)});
    return pattern;
}

/// Every pattern that can be made of so many fasteners, and one strewn at random.
inline std::vector<Pattern> everyPattern(int count)
{
    std::vector<Pattern> patterns{rowPattern(count).value(), strewnPattern(count, static_cast<unsigned>(count))};
    for (int rows = 2; rows <= 10; ++rows)
        if (count % rows == 0)
            patterns.push_back(rowsPattern(rows, count / rows).value());
    if (count >= 2)
        patterns.push_back(circlePattern(count).value());
    if (count % 2 == 0)
        for (int across = 2; 2 * across <= count; ++across)
            patterns.push_back(rectanglePattern(across, (count + 4) / 2 - across).value());
    if (count >= 3)
        patterns.push_back(coverPattern(count).value());
    return patterns;
}

} // namespace asleft
