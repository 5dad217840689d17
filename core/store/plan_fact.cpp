#include "plan_fact.h"

#include "facts.h"

namespace asleft::store {
namespace {

Done writePosition(Connection &connection, ActSeq act, std::size_t place, const PlanPosition &position)
{
    auto done = connection.run("INSERT INTO plan_position (act, place, cylinder, stroke, crank) VALUES (?, ?, ?, ?, ?)",
                               values(act, place, position.place.cylinder.index, position.place.event, position.crank));
    for (std::size_t point = 0; done && point < position.points.size(); ++point) {
        const PlanPoint &set = position.points[point];
        done = connection.run("INSERT INTO plan_point (act, position, place, cylinder, adjuster, margin) VALUES (?, ?, ?, ?, ?, ?)",
                              values(act, place, point, set.adjuster.cylinder.index, wordOf(set.adjuster), set.margin));
    }
    return done;
}

struct PointAt {
    std::size_t position;
    PlanPoint point;
};

Result<std::vector<PlanPosition>> readPositions(Connection &connection, ActSeq act)
{
    auto positions =
        allRows(connection, "SELECT cylinder, stroke, crank FROM plan_position WHERE act = ? ORDER BY place", values(act), [](Row &row) {
            const Cylinder cylinder{row.small()};
            const auto stroke = row.word<CrankEvent>();
            return PlanPosition{{cylinder, stroke}, row.quantity<Angle>(), {}};
        });
    if (!positions)
        return positions;
    const auto points =
        allRows(connection, "SELECT position, cylinder, adjuster, margin FROM plan_point WHERE act = ? ORDER BY position, place",
                values(act), [](Row &row) {
                    const auto position = static_cast<std::size_t>(row.number());
                    const AdjusterRef adjuster = row.adjuster();
                    return PointAt{position, {adjuster, row.quantity<Angle>()}};
                });
    if (!points)
        return tl::unexpected(points.error());
    for (const PointAt &at : *points) {
        if (at.position >= positions->size())
            return tl::unexpected(damagedAct(connection, act));
        (*positions)[at.position].points.push_back(at.point);
    }
    return positions;
}

} // namespace

Done writePlan(Connection &connection, ActSeq act, const PlanFact &fact)
{
    const CrankPlan &plan = fact.plan;
    auto done = connection.run("INSERT INTO fact_plan (act, engine, generated, way, source) VALUES (?, ?, ?, ?, ?)",
                               values(act, fact.engine, plan.generated, plan.way, plan.source));
    for (std::size_t place = 0; done && place < plan.positions.size(); ++place)
        done = writePosition(connection, act, place, plan.positions[place]);
    for (std::size_t place = 0; done && place < plan.unreached.size(); ++place)
        done = connection.run("INSERT INTO plan_unreached (act, place, cylinder, adjuster) VALUES (?, ?, ?, ?)",
                              values(act, place, plan.unreached[place].cylinder.index, wordOf(plan.unreached[place])));
    return done;
}

Result<Fact> readPlan(Connection &connection, ActSeq act)
{
    auto head = oneRow(connection, "SELECT engine, generated, way, source FROM fact_plan WHERE act = ?", values(act), [](Row &row) {
        const auto engine = row.id<EngineId>();
        const bool generated = row.flag();
        const auto way = row.word<PlanWay>();
        return PlanFact{engine, {generated, way, row.text(), {}, {}}};
    });
    if (!head)
        return tl::unexpected(head.error());
    if (!*head)
        return tl::unexpected(damagedAct(connection, act));
    auto positions = readPositions(connection, act);
    if (!positions)
        return tl::unexpected(positions.error());
    auto unreached = allRows(connection, "SELECT cylinder, adjuster FROM plan_unreached WHERE act = ? ORDER BY place", values(act),
                             [](Row &row) { return row.adjuster(); });
    if (!unreached)
        return tl::unexpected(unreached.error());
    PlanFact fact = **std::move(head);
    fact.plan.positions = *std::move(positions);
    fact.plan.unreached = *std::move(unreached);
    return Fact(std::move(fact));
}

} // namespace asleft::store
