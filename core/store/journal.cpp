#include <store/journal.h>

#include "checksum.h"
#include "connection.h"
#include "dialect.h"
#include "facts.h"
#include "newest.h"

#include <algorithm>
#include <cassert>
#include <iterator>
#include <map>
#include <set>

namespace asleft {
namespace {

using namespace store;

/// An act's own row, without what it says: that is large, and is put beside it once it was read.
struct ActHead {
    ActSeq seq;
    Uid uid;
    JobId job;
    PersonId who;
    std::string station;
    Moment at;
    std::optional<ActSeq> withdraws;
    std::string kind;
    std::int64_t checksum;
};

ActHead actHeadOf(Row &row)
{
    const auto seq = row.id<ActSeq>();
    auto uid = row.text();
    const auto job = row.id<JobId>();
    const auto who = row.id<PersonId>();
    auto station = row.text();
    const auto at = row.moment();
    const auto withdraws = row.idIfAny<ActSeq>();
    auto kind = row.text();
    return {seq, std::move(uid), job, who, std::move(station), at, withdraws, std::move(kind), row.number()};
}

/// What acts of one kind say, taken one after the other.
struct Said {
    std::vector<ActSeq> acts;
    std::vector<Fact> facts;
    std::size_t taken = 0;
};

/// The acts with what they say, each as it was stored.
Result<std::vector<Act>> wholeActs(Connection &connection, std::vector<ActHead> heads)
{
    std::map<std::string_view, Said> kinds;
    for (const ActHead &head : heads)
        kinds[head.kind].acts.push_back(head.seq);
    for (auto &[kind, said] : kinds) {
        auto facts = readFacts(connection, kind, said.acts);
        if (!facts)
            return tl::unexpected(facts.error());
        said.facts = *std::move(facts);
    }
    std::vector<Act> acts;
    acts.reserve(heads.size());
    for (ActHead &head : heads) {
        Said &said = kinds[head.kind];
        acts.push_back({head.seq,
                        {std::move(head.uid), head.job, head.who, std::move(head.station), head.at, head.withdraws,
                         std::move(said.facts[said.taken++])}});
        if (checksumOf(acts.back().what) != head.checksum)
            return tl::unexpected(damagedAct(connection, head.seq));
    }
    return acts;
}

/// What actHeadOf() takes.
const std::string headColumns =
    "SELECT act.seq, act.uid, act.job, act.who, act.seat, act.at_ms, act.withdraws, act.kind, act.checksum FROM ";

Result<std::vector<ActHead>> headsOfJob(Connection &connection, JobId job, std::int64_t last)
{
    static const std::string select = headColumns + "act WHERE job = ? AND seq > ? ORDER BY seq";
    return allRows(connection, select, values(job, last), actHeadOf);
}

Result<std::vector<ActHead>> headsListed(Connection &connection, const std::set<std::int64_t> &seqs)
{
    if (seqs.empty())
        return std::vector<ActHead>{};
    static const std::string select = headColumns + rowsOfListed("act", "seq") + " ORDER BY act.seq";
    return allRows(connection, select, {listed({seqs.begin(), seqs.end()})}, actHeadOf);
}

/// The job's own acts after `last`, and some of other jobs.
Result<std::vector<Act>> actsOf(Connection &connection, JobId job, std::int64_t last, const Result<std::set<std::int64_t>> &ofOthers)
{
    if (!ofOthers)
        return tl::unexpected(ofOthers.error());
    auto own = headsOfJob(connection, job, last);
    if (!own)
        return tl::unexpected(own.error());
    auto others = headsListed(connection, *ofOthers);
    if (!others)
        return tl::unexpected(others.error());
    const auto middle = static_cast<std::ptrdiff_t>(own->size());
    own->insert(own->end(), std::move_iterator(others->begin()), std::move_iterator(others->end()));
    std::ranges::inplace_merge(own->begin(), own->begin() + middle, own->end(), {}, &ActHead::seq);
    return wholeActs(connection, *std::move(own));
}

/// The act that has this uid already, if it says the same.
Result<ActSeq> storedBefore(Connection &connection, const NewAct &act, std::int64_t checksum)
{
    struct Stored {
        ActSeq seq;
        std::int64_t checksum;
    };
    const auto stored = oneRow(connection, "SELECT seq, checksum FROM act WHERE uid = ?", values(act.uid), [](Row &row) {
        const auto seq = row.id<ActSeq>();
        return Stored{seq, row.number()};
    });
    if (!stored)
        return tl::unexpected(stored.error());
    if (!*stored || (*stored)->checksum != checksum)
        return connection.refuse({ErrorKind::Database, {"uid " + act.uid}});
    return (*stored)->seq;
}

} // namespace

Result<ActSeq> append(Transaction &transaction, const NewAct &act)
{
    assert(act.withdraws.has_value() == std::holds_alternative<WithdrawFact>(act.fact));
    Connection &connection = Internals::of(transaction);
    const std::int64_t checksum = checksumOf(act);
    const auto inserted =
        connection.add("INSERT INTO act (uid, job, who, seat, at_ms, kind, withdraws, checksum) VALUES (?, ?, ?, ?, ?, ?, ?, ?) "
                       "ON CONFLICT (uid) DO NOTHING",
                       values(act.uid, act.job, act.who, act.station, act.at, std::string(kindOf(act.fact)), act.withdraws, checksum));
    if (!inserted)
        return tl::unexpected(inserted.error());
    if (!*inserted)
        return storedBefore(connection, act, checksum);
    const ActSeq seq(**inserted);
    return writeFact(connection, seq, act.fact)
        .and_then([&] { return connection.run("UPDATE job_worked SET seq = ? WHERE job = ?", values(seq, act.job)); })
        .map([seq] { return seq; });
}

Result<std::vector<Act>> jobActs(Database &database, JobId job, EngineId engine)
{
    Connection &connection = Internals::of(database);
    return actsOf(connection, job, 0, newestCrank(connection, engine, job));
}

Result<std::vector<Act>> actsAfter(Database &database, ActSeq last, JobId job, EngineId engine)
{
    Connection &connection = Internals::of(database);
    return actsOf(connection, job, last.key(), crankSince(connection, engine, job, last));
}

Result<std::vector<Act>> newestAtPoints(Database &database, const std::vector<PointId> &points, JobId except)
{
    Connection &connection = Internals::of(database);
    const auto seqs = newestOfPoints(connection, points, except);
    if (!seqs)
        return tl::unexpected(seqs.error());
    auto heads = headsListed(connection, *seqs);
    if (!heads)
        return tl::unexpected(heads.error());
    return wholeActs(connection, *std::move(heads));
}

Result<std::optional<ActSeq>> seqOf(Database &database, const Uid &uid)
{
    return oneRow(Internals::of(database), "SELECT seq FROM act WHERE uid = ?", values(uid), [](Row &row) { return row.id<ActSeq>(); });
}

Result<std::optional<ActSeq>> newestSeq(Database &database)
{
    return oneRow(Internals::of(database), "SELECT seq FROM act ORDER BY seq DESC LIMIT 1", {}, [](Row &row) { return row.id<ActSeq>(); });
}

Result<std::int64_t> countActs(Database &database, JobId job)
{
    return oneRow(Internals::of(database), "SELECT count(*) FROM act WHERE job = ?", values(job), [](Row &row) { return row.number(); })
        .map([](std::optional<std::int64_t> count) { return count.value_or(0); });
}

} // namespace asleft
