// The fewest positions, proved against an integer solver: GLPK counts a set cover of its own from walked margins.
#include "random_engine.h"

#include <engine/plan.h>

#include <glpk.h>

#include <cstdlib>
#include <memory>

namespace asleft {
namespace fewest_tests {

/// What the positions at half degrees reach: margins in half degrees, by position, then by thing that is pressed on its own.
using Table = std::vector<std::vector<int>>;

/// The least number of rows that together have `least` in every column; nothing if no number does.
std::optional<int> fewestBySolver(const Table &table, int least)
{
    std::set<std::vector<bool>> rows; // those that reach the same are one, for the solver's sake
    for (const auto &margins : table) {
        std::vector<bool> reached;
        for (const int margin : margins)
            reached.push_back(margin >= least);
        rows.insert(reached);
    }
    std::erase_if(rows, [&](const std::vector<bool> &row) { // nor does it need those that reach a part of what another one does
        return std::any_of(rows.begin(), rows.end(), [&](const std::vector<bool> &other) {
            return other != row && std::equal(row.begin(), row.end(), other.begin(), std::less_equal());
        });
    });

    glp_term_out(GLP_OFF);
    const std::unique_ptr<glp_prob, decltype(&glp_delete_prob)> problem(glp_create_prob(), glp_delete_prob);
    const auto things = static_cast<int>(table.front().size());
    glp_set_obj_dir(problem.get(), GLP_MIN);
    glp_add_rows(problem.get(), things);
    for (int thing = 1; thing <= things; ++thing)
        glp_set_row_bnds(problem.get(), thing, GLP_LO, 1, 0);
    for (const auto &reached : rows) {
        const int column = glp_add_cols(problem.get(), 1);
        glp_set_col_kind(problem.get(), column, GLP_BV);
        glp_set_obj_coef(problem.get(), column, 1);
        std::vector<int> indices{0};
        std::vector<double> ones{0};
        for (int thing = 1; thing <= things; ++thing)
            if (reached[static_cast<std::size_t>(thing - 1)]) {
                indices.push_back(thing);
                ones.push_back(1);
            }
        glp_set_mat_col(problem.get(), column, static_cast<int>(indices.size()) - 1, indices.data(), ones.data());
    }
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    const int failed = glp_intopt(problem.get(), &how);
    if (failed != 0 || glp_mip_status(problem.get()) != GLP_OPT)
        return std::nullopt;
    return static_cast<int>(glp_mip_obj_val(problem.get()) + 0.5);
}

/// One adjuster for each cylinder and side, and each injector: the others go with these.
std::vector<AdjusterRef> pressedAlone(const EngineDesign &design)
{
    std::vector<AdjusterRef> alone;
    for (const AdjusterRef adjuster : design.adjusters())
        if (adjuster.number == 0 && (adjuster.kind == PointKind::Lash || adjuster.kind == PointKind::Injector))
            alone.push_back(adjuster);
    return alone;
}

/// Margins at every half degree. Between two whole degrees a margin changes evenly, so that the half lies between its neighbours; only
/// in the middle of a stretch of odd length it is half a degree more than both.
Table halfDegrees(const WholeDegreeEngine &engine)
{
    Table table(static_cast<std::size_t>(2 * engine.cycle));
    for (const AdjusterRef adjuster : pressedAlone(engine.design)) {
        const auto whole = walkedMargins(engine, adjuster);
        for (int crank = 0; crank < engine.cycle; ++crank) {
            const int here = whole[static_cast<std::size_t>(crank)];
            const int next = whole[static_cast<std::size_t>((crank + 1) % engine.cycle)];
            table[static_cast<std::size_t>(2 * crank)].push_back(2 * here);
            table[static_cast<std::size_t>(2 * crank + 1)].push_back(here == next ? 2 * here + 1 : here + next);
        }
    }
    return table;
}

/// The rows of the marks an engine has.
Table marked(const Table &all, const WholeDegreeEngine &engine, CrankMarks marks)
{
    if (marks == CrankMarks::AnyAngle)
        return all;
    std::set<int> cranks;
    for (const int fires : engine.fires) {
        cranks.insert(fires);
        if (engine.cycle == 720)
            cranks.insert((fires + 360) % 720);
        if (marks == CrankMarks::FirstOnly)
            break;
    }
    Table table;
    for (const int crank : cranks)
        table.push_back(all[static_cast<std::size_t>(2 * crank)]);
    return table;
}

Angle leastMarginOf(const CrankPlan &plan)
{
    Angle least = degrees(720);
    for (const PlanPosition &position : plan.positions)
        for (const PlanPoint &point : position.points)
            least = std::min(least, point.margin);
    return least;
}

void expectSound(const EngineDesign &design, const CrankPlan &plan, Angle leastMargin)
{
    EXPECT_TRUE(plan.generated);
    EXPECT_EQ(plan.way, PlanWay::Fewest);
    EXPECT_TRUE(plan.unreached.empty());
    std::size_t points = 0;
    for (std::size_t i = 0; i < plan.positions.size(); ++i) {
        const PlanPosition &position = plan.positions[i];
        points += position.points.size();
        EXPECT_FALSE(position.points.empty());
        EXPECT_EQ(position.place, readCrank(design, position.crank).place);
        if (i > 0) {
            EXPECT_LT(plan.positions[i - 1].crank, position.crank);
        }
        for (const PlanPoint &point : position.points) {
            EXPECT_EQ(point.margin, margin(design, point.adjuster, position.crank));
            EXPECT_GE(point.margin, leastMargin);
            for (const PlanPosition &other : plan.positions)
                EXPECT_LE(margin(design, point.adjuster, other.crank), point.margin);
        }
    }
    EXPECT_EQ(points, design.adjusters().size());
}

/// Whether the long sweeps are asked for.
bool isLong()
{
    return std::getenv("ASLEFT_LONG") != nullptr;
}

struct Seen {
    int planned = 0, refused = 0, several = 0;
};

/// No plan from these marks has fewer positions, and none of as many has a greater least margin.
void compareWithSolver(const WholeDegreeEngine &engine, const Table &all, CrankMarks marks, int need, Seen &seen)
{
    const Table table = marked(all, engine, marks);
    const auto expected = fewestBySolver(table, 2 * need);
    const auto plan = planFor(engine.design, {.way = PlanWay::Fewest, .marks = marks, .leastMargin = degrees(need)});
    ASSERT_EQ(plan.has_value(), expected.has_value());
    if (!plan) {
        EXPECT_EQ(plan.error().kind, ErrorKind::PlanNotReached);
        ++seen.refused;
        return;
    }
    ++seen.planned;
    seen.several += *expected > 2;
    EXPECT_EQ(static_cast<int>(plan->positions.size()), *expected);
    expectSound(engine.design, *plan, degrees(need));

    const Angle least = leastMarginOf(*plan);
    const auto halves = static_cast<int>(least.smallest() / (anglePerDegree / 2));
    EXPECT_EQ(Angle::ofSmallest(anglePerDegree / 2) * halves, least);
    const auto withMore = fewestBySolver(table, halves + 1);
    EXPECT_TRUE(!withMore || *withMore > *expected);
}

void compareRandomEngines(unsigned seed, CrankMarks marks, int rounds, EngineDraw::Limits limits, Seen &seen)
{
    EngineDraw draw(seed, std::move(limits));
    for (int round = 0; round < rounds; ++round) {
        const WholeDegreeEngine engine = draw.next();
        const Table all = halfDegrees(engine);
        for (const int need : {1, 10, draw.draw(11, 100)}) {
            SCOPED_TRACE("round " + std::to_string(round) + ", at least " + std::to_string(need));
            ASSERT_NO_FATAL_FAILURE(compareWithSolver(engine, all, marks, need, seen));
        }
    }
}

TEST(Fewest, FromEveryTdcAsFewAsTheSolver)
{
    Seen seen;
    compareRandomEngines(31, CrankMarks::EveryTdc, isLong() ? 1500 : 200, {}, seen);
    EXPECT_GT(seen.planned, 80);
    EXPECT_GT(seen.refused, 20);
    EXPECT_GT(seen.several, 30);
}

TEST(Fewest, FromAnyAngleAsFewAsTheSolver)
{
    Seen seen;
    compareRandomEngines(32, CrankMarks::AnyAngle, isLong() ? 800 : 100, {}, seen);
    EXPECT_GT(seen.planned, 80);
    EXPECT_GT(seen.several, 30);
}

TEST(Fewest, FromTheFirstsMarkAloneAsFewAsTheSolver)
{
    Seen seen;
    compareRandomEngines(33, CrankMarks::FirstOnly, 60, {.mostCylinders = 6, .longestEvent = 60}, seen);
    EXPECT_GT(seen.planned, 20);
    EXPECT_GT(seen.refused, 20);
}

} // namespace fewest_tests
} // namespace asleft
