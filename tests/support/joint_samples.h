#pragma once

#include <draw/joint_drawing.h>

#include <joints/order.h>

#include <string>
#include <utility>
#include <vector>

namespace asleft {

/// Places clicked on a photo: a round rim, two inside, some longer than the rest.
inline Pattern placedByHand()
{
    Pattern pattern{PatternKind::Free, {}};
    const std::pair<double, double> places[] = {{0, 0},     {1.4, -0.5}, {3, -0.4},  {4.3, 0.3}, {4.6, 1.6},
                                                {3.4, 2.4}, {1.7, 2.2},  {0.2, 1.5}, {1.7, 0.9}, {3.1, 1.1}};
    int number = 1;
    for (const auto &[x, y] : places)
        pattern.places.push_back({number++, x, y});
    pattern.places[4].thread = "M10";
    pattern.places[4].length = "90 mm";
    pattern.places[8].length = "45 mm";
    return pattern;
}

struct JointSample {
    std::string name;
    Pattern pattern;
};

inline std::vector<JointSample> jointSamples()
{
    return {{"row1", *rowPattern(1)},
            {"row2", *rowPattern(2)},
            {"row4", *rowPattern(4)},
            {"row10", *rowPattern(10)},
            {"rows2x5", *rowsPattern(2, 5)},
            {"rows2x7", *rowsPattern(2, 7)},
            {"rows3x4", *rowsPattern(3, 4)},
            {"circle2", *circlePattern(2)},
            {"circle4", *circlePattern(4)},
            {"circle5", *circlePattern(5)},
            {"circle12", *circlePattern(12)},
            {"circle24", *circlePattern(24)},
            {"cover12", *coverPattern(12)},
            {"cover19", *coverPattern(19)},
            {"rectangle4x6", *rectanglePattern(4, 6)},
            {"rectangle6x4", *rectanglePattern(6, 4)},
            {"free", placedByHand()}};
}

/// As many as there may be.
inline std::vector<JointSample> largestJoints()
{
    return {{"row200", *rowPattern(200)},
            {"rows10x20", *rowsPattern(10, 20)},
            {"circle200", *circlePattern(200)},
            {"cover200", *coverPattern(200)},
            {"rectangle51x51", *rectanglePattern(51, 51)}};
}

} // namespace asleft
