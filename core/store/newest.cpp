#include "newest.h"

#include <limits>

namespace asleft::store {
namespace {

using Seqs = std::set<std::int64_t>;

/// One act of a subject, or one that withdraws another.
struct Step {
    std::int64_t seq;
    std::int64_t other; ///< of an act: whether it says how the subject was left; of a withdrawal: what it withdraws
};

Step stepOf(Row &row)
{
    const std::int64_t seq = row.number();
    return {seq, row.number()};
}

/// Adds what withdraws an act, what withdraws that, and so on; says whether the act is in force.
Result<bool> addWithdrawals(Connection &connection, std::int64_t act, Seqs &seqs)
{
    // Few acts were ever withdrawn, and a recursion makes a table for itself each time.
    const auto any =
        oneRow(connection, "SELECT seq FROM act WHERE withdraws = ? LIMIT 1", values(act), [](Row &row) { return row.number(); });
    if (!any)
        return tl::unexpected(any.error());
    if (!*any)
        return true;
    const auto chain = allRows(connection,
                               "WITH RECURSIVE chain (seq, withdraws) AS (SELECT seq, withdraws FROM act WHERE withdraws = ? "
                               "UNION SELECT act.seq, act.withdraws FROM act JOIN chain ON act.withdraws = chain.seq) "
                               "SELECT seq, withdraws FROM chain ORDER BY seq DESC",
                               values(act), stepOf);
    if (!chain)
        return tl::unexpected(chain.error());
    // Newest first: a withdrawal that was itself withdrawn takes nothing back.
    Seqs withdrawn;
    for (const Step &withdrawal : *chain) {
        seqs.insert(withdrawal.seq);
        if (!withdrawn.contains(withdrawal.seq))
            withdrawn.insert(withdrawal.other);
    }
    return !withdrawn.contains(act);
}

/// Follows a subject back. `select` gives its acts before a seq, newest first; `valuesBefore` its values for that seq.
template <class ValuesBefore>
Done followBack(Connection &connection, std::string_view select, ValuesBefore valuesBefore, Seqs &seqs)
{
    std::int64_t before = std::numeric_limits<std::int64_t>::max();
    for (;;) {
        const auto steps = allRows(connection, select, valuesBefore(before), stepOf);
        if (!steps)
            return tl::unexpected(steps.error());
        if (steps->empty())
            return {};
        for (const Step &step : *steps) {
            seqs.insert(step.seq);
            const auto inForce = addWithdrawals(connection, step.seq, seqs);
            if (!inForce)
                return tl::unexpected(inForce.error());
            if (*inForce && step.other != 0)
                return {};
            before = step.seq;
        }
    }
}

} // namespace

Result<Seqs> newestCrank(Connection &connection, EngineId engine, JobId except)
{
    Seqs seqs;
    return followBack(
               connection,
               "SELECT act.seq, 1 FROM fact_crank JOIN act ON act.seq = fact_crank.act "
               "WHERE fact_crank.engine = ? AND act.job <> ? AND fact_crank.act < ? ORDER BY fact_crank.act DESC LIMIT 4",
               [&](std::int64_t before) { return values(engine, except, before); }, seqs)
        .map([&] { return std::move(seqs); });
}

Result<Seqs> crankSince(Connection &connection, EngineId engine, JobId except, ActSeq last)
{
    const auto number = [](Row &row) { return row.number(); };
    const auto found = allRows(connection,
                               "WITH RECURSIVE target (seq, act) AS (SELECT seq, seq FROM act WHERE seq > ? AND job <> ? "
                               "UNION SELECT target.seq, act.withdraws FROM target JOIN act ON act.seq = target.act "
                               "WHERE act.withdraws IS NOT NULL) "
                               "SELECT target.seq FROM target JOIN fact_crank ON fact_crank.act = target.act WHERE fact_crank.engine = ?",
                               values(last, except, engine), number);
    return found.map([](const std::vector<std::int64_t> &acts) { return Seqs(acts.begin(), acts.end()); });
}

Result<Seqs> newestOfPoints(Connection &connection, const std::vector<PointId> &points, JobId except)
{
    // One after the other: together they would be sorted, which reads all there ever was. A correction mends what was written of a reading,
    // and leaves the nut as it is.
    constexpr std::string_view readings =
        "SELECT act.seq, fact_reading.phase = 'as_left' AND fact_reading.corrects IS NULL FROM fact_reading "
        "JOIN act ON act.seq = fact_reading.act WHERE fact_reading.point = ? AND act.job <> ? AND fact_reading.act < ? "
        "ORDER BY fact_reading.act DESC LIMIT 4";
    constexpr std::string_view nuts = "SELECT act.seq, 1 FROM fact_nut_open JOIN act ON act.seq = fact_nut_open.act "
                                      "WHERE fact_nut_open.point = ? AND act.job <> ? AND fact_nut_open.act < ? "
                                      "ORDER BY fact_nut_open.act DESC LIMIT 4";
    Seqs seqs;
    for (const PointId point : points)
        for (const std::string_view select : {readings, nuts}) {
            const auto before = [&](std::int64_t seq) { return values(point, except, seq); };
            if (const Done followed = followBack(connection, select, before, seqs); !followed)
                return tl::unexpected(followed.error());
        }
    return seqs;
}

} // namespace asleft::store
