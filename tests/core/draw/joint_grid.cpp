// What lies near a box is found by the grid as it is by looking at everything.
#include "joint_grid.h"

#include <draw/line_part.h>

#include <gtest/gtest.h>

#include <QLineF>

#include <random>
#include <set>
#include <vector>

namespace asleft {
namespace joint_grid_tests {

const QRectF panel(-20, 10, 700, 430);

class Somewhere {
public:
    explicit Somewhere(unsigned seed) : m_random(seed) {}

    /// Now and then outside the panel.
    QPointF place() { return {along(panel.left() - 100, panel.right() + 100), along(panel.top() - 100, panel.bottom() + 100)}; }
    QRectF box() { return QRectF(place(), QSizeF(along(0, 90), along(0, 60))); }

private:
    double along(double from, double to) { return std::uniform_real_distribution<double>(from, to)(m_random); }

    std::mt19937 m_random;
};

/// Everything the grid offers for a box.
std::set<qsizetype> near(const JointGrid &grid, const QRectF &box)
{
    std::set<qsizetype> found;
    (void)grid.any(box, [&](qsizetype thing) {
        found.insert(thing);
        return false;
    });
    return found;
}

bool crosses(const QLineF &line, const QRectF &box)
{
    if (box.contains(line.p1()) || box.contains(line.p2()))
        return true;
    const QLineF sides[] = {{box.topLeft(), box.topRight()},
                            {box.topRight(), box.bottomRight()},
                            {box.bottomRight(), box.bottomLeft()},
                            {box.bottomLeft(), box.topLeft()}};
    return std::ranges::any_of(sides, [&](const QLineF &side) { return side.intersects(line) == QLineF::BoundedIntersection; });
}

TEST(JointGrid, OffersEveryBoxThatIsTouched)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        Somewhere somewhere(seed);
        JointGrid grid(panel, 60);
        std::vector<QRectF> boxes;
        for (qsizetype i = 0; i < 60; ++i) {
            boxes.push_back(somewhere.box());
            grid.add(i, boxes.back());
        }
        for (int look = 0; look < 200; ++look) {
            const QRectF box = somewhere.box();
            const auto offered = near(grid, box);
            for (qsizetype i = 0; i < 60; ++i) {
                if (boxes[static_cast<std::size_t>(i)].intersects(box)) {
                    ASSERT_TRUE(offered.contains(i)) << "seed " << seed << ", box " << i;
                }
            }
        }
    }
}

TEST(JointGrid, OffersEveryPlaceAndLineThatIsTouched)
{
    for (unsigned seed = 1; seed <= 20; ++seed) {
        Somewhere somewhere(100 + seed);
        JointGrid places(panel, 200);
        JointGrid lines(panel, 200);
        std::vector<QLineF> drawn;
        for (qsizetype i = 0; i < 200; ++i) {
            drawn.emplace_back(somewhere.place(), somewhere.place());
            places.add(i, drawn.back().p1());
            lines.add(i, drawn.back().p1(), drawn.back().p2());
        }
        for (int look = 0; look < 100; ++look) {
            const QRectF box = somewhere.box();
            const auto offeredPlaces = near(places, box);
            const auto offeredLines = near(lines, box);
            for (qsizetype i = 0; i < 200; ++i) {
                const QLineF &line = drawn[static_cast<std::size_t>(i)];
                if (box.contains(line.p1())) {
                    ASSERT_TRUE(offeredPlaces.contains(i)) << "seed " << seed << ", place " << i;
                }
                if (crosses(line, box)) {
                    ASSERT_TRUE(offeredLines.contains(i)) << "seed " << seed << ", line " << i;
                }
            }
        }
    }
}

TEST(JointGrid, StopsAtTheFirstThatIsWanted)
{
    JointGrid grid(panel, 10);
    for (qsizetype i = 0; i < 10; ++i)
        grid.add(i, QPointF(100, 100));
    int asked = 0;
    EXPECT_TRUE(grid.any(QRectF(90, 90, 20, 20), [&](qsizetype) { return ++asked == 3; }));
    EXPECT_EQ(asked, 3);
    EXPECT_FALSE(grid.any(QRectF(500, 300, 5, 5), [](qsizetype) { return true; })) << "nothing lies there";
}

TEST(PartWithin, IsWhatOfALineLiesInTheArea)
{
    const QRectF area(0, 0, 10, 10);
    const auto within = [&area](const QLineF &line) {
        const auto part = partWithin(line, area);
        return part ? std::vector<double>{part->from, part->to} : std::vector<double>();
    };
    using Shares = std::vector<double>;
    EXPECT_EQ(within({2, 2, 8, 3}), Shares({0, 1})) << "all of it";
    EXPECT_EQ(within({-10, 5, 30, 5}), Shares({0.25, 0.5})) << "right through";
    EXPECT_EQ(within({5, 5, 5, 25}), Shares({0, 0.25})) << "out of it, straight down";
    EXPECT_EQ(within({15, 5, -5, 5}), Shares({0.25, 0.75})) << "the other way";
    EXPECT_EQ(within({-5, 5, 5, 15}), Shares({0.5, 0.5})) << "touches a corner";
    EXPECT_EQ(within({-5, 6, 4, 15}), Shares()) << "passes a corner by";
    EXPECT_EQ(within({11, 0, 11, 10}), Shares()) << "beside it";
    EXPECT_EQ(within({12, 5, 20, 5}), Shares()) << "ends before it";
    EXPECT_EQ(within({3, 3, 3, 3}), Shares({0, 1})) << "a point in it";
}

} // namespace joint_grid_tests
} // namespace asleft
