#include "facts.h"

#include "joint_facts.h"
#include "plan_fact.h"
#include "reading_fact.h"

#include <array>

namespace asleft::store {
namespace {

class Writing {
public:
    Writing(Connection &connection, ActSeq act) : m_connection(connection), m_act(act) {}

    Done operator()(const ReadingFact &fact) const { return writeReading(m_connection, m_act, 0, fact); }
    Done operator()(const AllLeftFact &fact) const { return writeAllLeft(m_connection, m_act, fact); }
    Done operator()(const NutOpenFact &fact) const;
    Done operator()(const CrankFact &fact) const;
    Done operator()(const PlanFact &fact) const { return writePlan(m_connection, m_act, fact); }
    Done operator()(const StepDoneFact &fact) const;
    Done operator()(const KeepFact &fact) const;
    Done operator()(const CautionsFact &fact) const;
    Done operator()(const CheckAgainFact &fact) const;
    /// Which act is withdrawn stands in the act's own row.
    Done operator()(const WithdrawFact &) const { return {}; }
    Done operator()(const LoosenedFact &fact) const { return writeLoosened(m_connection, m_act, fact); }
    Done operator()(const TicksFact &fact) const { return writeTicks(m_connection, m_act, fact); }
    Done operator()(const UntickedFact &fact) const { return writeUnticked(m_connection, m_act, fact); }
    Done operator()(const JointBegunFact &fact) const { return writeJointBegun(m_connection, m_act, fact); }
    Done operator()(const FittedFact &fact) const { return writeFitted(m_connection, m_act, fact); }
    Done operator()(const AcceptedFact &fact) const { return writeAccepted(m_connection, m_act, fact); }
    Done operator()(const FindingFact &fact) const { return writeFinding(m_connection, m_act, fact); }

private:
    Connection &m_connection;
    ActSeq m_act;
};

Done Writing::operator()(const NutOpenFact &fact) const
{
    return m_connection.run("INSERT INTO fact_nut_open (act, point) VALUES (?, ?)", values(m_act, fact.point));
}

Done Writing::operator()(const CrankFact &fact) const
{
    return m_connection.run("INSERT INTO fact_crank (act, engine, crank, how) VALUES (?, ?, ?, ?)",
                            values(m_act, fact.engine, fact.crank, fact.how));
}

Done Writing::operator()(const StepDoneFact &fact) const
{
    return m_connection.run("INSERT INTO fact_step_done (act, step) VALUES (?, ?)", values(m_act, fact.step));
}

Done Writing::operator()(const KeepFact &fact) const
{
    return m_connection.run("INSERT INTO fact_keep (act, reading, point, reason) VALUES (?, ?, ?, ?)",
                            values(m_act, fact.reading, fact.point, fact.reason));
}

Done Writing::operator()(const CautionsFact &fact) const
{
    for (std::size_t place = 0; place < fact.cautions.size(); ++place)
        if (auto done = m_connection.run("INSERT INTO fact_caution (act, place, caution) VALUES (?, ?, ?)",
                                         values(m_act, place, fact.cautions[place]));
            !done)
            return done;
    return {};
}

Done Writing::operator()(const CheckAgainFact &fact) const
{
    if (auto done =
            m_connection.run("INSERT INTO fact_check_again (act, why, cause) VALUES (?, ?, ?)", values(m_act, fact.why, fact.cause));
        !done)
        return done;
    for (std::size_t place = 0; place < fact.points.size(); ++place)
        if (auto done = m_connection.run("INSERT INTO check_again_point (act, place, point) VALUES (?, ?, ?)",
                                         values(m_act, place, fact.points[place]));
            !done)
            return done;
    return {};
}

Result<Fact> readNutOpen(Connection &connection, ActSeq act)
{
    return onlyRow(connection, act, "SELECT point FROM fact_nut_open WHERE act = ?",
                   [](Row &row) { return NutOpenFact{row.id<PointId>()}; });
}

Result<Fact> readCrank(Connection &connection, ActSeq act)
{
    return onlyRow(connection, act, "SELECT engine, crank, how FROM fact_crank WHERE act = ?", [](Row &row) {
        return CrankFact{row.id<EngineId>(), row.quantityIfAny<Angle>(), row.word<CrankHow>()};
    });
}

Result<Fact> readStepDone(Connection &connection, ActSeq act)
{
    return onlyRow(connection, act, "SELECT step FROM fact_step_done WHERE act = ?",
                   [](Row &row) { return StepDoneFact{row.id<StepId>()}; });
}

Result<Fact> readKeep(Connection &connection, ActSeq act)
{
    return onlyRow(connection, act, "SELECT reading, point, reason FROM fact_keep WHERE act = ?", [](Row &row) {
        return KeepFact{row.id<ActSeq>(), row.id<PointId>(), row.text()};
    });
}

Result<Fact> readCautions(Connection &connection, ActSeq act)
{
    return allRows(connection, "SELECT caution FROM fact_caution WHERE act = ? ORDER BY place", values(act),
                   [](Row &row) { return row.word<Caution>(); })
        .map([](std::vector<Caution> &&cautions) { return Fact(CautionsFact{std::move(cautions)}); });
}

Result<Fact> readCheckAgain(Connection &connection, ActSeq act)
{
    auto points = allRows(connection, "SELECT point FROM check_again_point WHERE act = ? ORDER BY place", values(act),
                          [](Row &row) { return row.id<PointId>(); });
    if (!points)
        return tl::unexpected(points.error());
    return onlyRow(connection, act, "SELECT why, cause FROM fact_check_again WHERE act = ?", [&](Row &row) {
        return CheckAgainFact{*std::move(points), row.text(), row.word<Disturbance>()};
    });
}

struct Reader {
    std::string_view kind;
    Result<Fact> (*read)(Connection &, ActSeq);
};

constexpr auto readers = std::to_array<Reader>({
    {"reading", readReading},
    {"all_left", readAllLeft},
    {"nut_open", readNutOpen},
    {"crank", readCrank},
    {"plan", readPlan},
    {"step_done", readStepDone},
    {"keep", readKeep},
    {"cautions", readCautions},
    {"check_again", readCheckAgain},
    {"withdraw", [](Connection &, ActSeq) -> Result<Fact> { return Fact(WithdrawFact{}); }},
    {"loosened", readLoosened},
    {"ticks", readTicks},
    {"unticked", readUnticked},
    {"joint_begun", readJointBegun},
    {"fitted", readFitted},
    {"accepted", readAccepted},
    {"finding", readFinding},
});
static_assert(readers.size() == std::variant_size_v<Fact>);

} // namespace

Done writeFact(Connection &connection, ActSeq act, const Fact &fact)
{
    return std::visit(Writing(connection, act), fact);
}

Result<Fact> readFact(Connection &connection, ActSeq act, std::string_view kind)
{
    for (const Reader &reader : readers)
        if (reader.kind == kind)
            return reader.read(connection, act);
    return tl::unexpected(damagedAct(connection, act));
}

Error damagedAct(const Connection &connection, ActSeq act)
{
    return {ErrorKind::Damaged, {connection.path(), std::to_string(act.key())}, Noun::Act};
}

} // namespace asleft::store
