// How acts get into the file, and what is in the file into the book.
#include <work/job_book.h>

#include "internals.h"
#include "job_frame.h"

#include <store/journal.h>

#include <QPointer>

#include <algorithm>

namespace asleft {

namespace {

/// The same said again. An act that was on disk all along has been read since: a reading then finds itself there to correct.
bool saysTheSame(const NewAct &before, const NewAct &now, bool arrived)
{
    if (before.withdraws != now.withdraws || before.who != now.who)
        return false;
    const auto *readBefore = std::get_if<ReadingFact>(&before.fact);
    const auto *readNow = std::get_if<ReadingFact>(&now.fact);
    if (!arrived || !readBefore || !readNow)
        return before.fact == now.fact;
    ReadingFact first = *readBefore;
    first.corrects = readNow->corrects;
    return first == *readNow;
}

/// The acts as they are stored.
Result<std::vector<Act>> appendAll(Transaction &transaction, const std::vector<NewAct> &acts)
{
    std::vector<Act> stored;
    for (const NewAct &act : acts) {
        const auto seq = append(transaction, act);
        if (!seq)
            return tl::unexpected(seq.error());
        stored.push_back({*seq, act});
    }
    return stored;
}

} // namespace

Done JobBook::mayAct() const
{
    if (Done may = writable(m_garage); !may)
        return may;
    return m_session.who ? Done{} : Done(fail(ErrorKind::PersonMissing));
}

NewAct JobBook::newAct(Fact fact, std::optional<ActSeq> withdraws) const
{
    return {{}, m_state.frame->job.id, *m_session.who, m_garage.station(), m_garage.now(), withdraws, std::move(fact)};
}

Result<ActSeq> JobBook::log(Fact fact, std::optional<ActSeq> withdraws)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    return store({newAct(std::move(fact), withdraws)}, {});
}

Result<ActSeq> JobBook::logOnce(Fact fact, bool standsAlready)
{
    if (standsAlready) {
        const auto same = [&](const Act &act) { return m_state.inForce(act) && act.what.fact == fact; };
        const auto act = std::find_if(m_state.acts.rbegin(), m_state.acts.rend(), same);
        if (act != m_state.acts.rend())
            return act->seq;
    }
    return log(std::move(fact));
}

bool JobBook::failedBefore(const std::vector<NewAct> &acts) const
{
    return m_failed && m_failed->sheet.lines.empty() && acts.size() == 1 && m_failed->acts.size() == 1 &&
           saysTheSame(m_failed->acts.front(), acts.front(), m_failed->arrived);
}

Result<ActSeq> JobBook::store(std::vector<NewAct> acts, const SheetAsked &sheet)
{
    Q_ASSERT(!acts.empty());
    if (sheet.lines.empty() && failedBefore(acts))
        acts = m_failed->acts;
    for (NewAct &act : acts) {
        if (act.uid.empty())
            act.uid = m_garage.internals().surroundings.uids->next();
    }
    // Nobody else writes while the transaction lasts: what is new in the file is seen once for all.
    bool alone = false;
    const auto stored = inTransaction(m_garage, [&](Transaction &transaction) -> Result<std::vector<Act>> {
        const auto version = transaction.database().dataVersion();
        if (!version)
            return tl::unexpected(version.error());
        alone = *version == m_version && !m_frameStale;
        return appendAll(transaction, acts);
    });
    if (!stored) {
        const bool arrived = m_failed && m_failed->arrived && m_failed->acts == acts;
        m_failed = Failed{std::move(acts), sheet, arrived};
        return tl::unexpected(stored.error());
    }
    m_failed.reset();
    const auto crankBefore = m_state.crank;
    // Where another computer has written since, its acts may stand before ours: then all is read on. If that cannot be read now, ours are
    // stored all the same and are shown.
    if (alone || !readOn())
        takeUp(*stored);
    sessionFollows(acts, !sheet.lines.empty(), m_state.crank != crankBefore);
    Q_EMIT changed();
    const QPointer<JobBook> open(this); // whoever is told may close the job
    m_telling = true;
    Q_EMIT m_garage.changed({.what = Change::What::Acts, .job = m_state.frame->job.id});
    if (open)
        m_telling = false;
    return stored->back().seq;
}

void JobBook::takeUp(const std::vector<Act> &acts)
{
    for (const Act &act : acts) {
        foldOne(m_state, act);
        m_readUpTo = std::max(m_readUpTo, act.seq);
    }
}

void JobBook::sessionFollows(const std::vector<NewAct> &acts, bool ofSheet, bool crankMoved)
{
    for (const NewAct &act : acts) {
        // What was written on paper is not what mark and stroke say now.
        if (const auto *crank = std::get_if<CrankFact>(&act.fact); crank && (ofSheet || crank->how == CrankHow::Confirmed))
            m_session.crankConfirmed = !ofSheet;
        if (std::holds_alternative<CautionsFact>(act.fact))
            m_session.turningCautionsRead = true;
        // Whoever takes back where the crank stands is asked again before it is turned.
        if (std::holds_alternative<WithdrawFact>(act.fact) && crankMoved)
            m_session.crankConfirmed = false;
    }
}

Done JobBook::catchUp()
{
    const auto news = readOn();
    if (!news)
        return tl::unexpected(news.error());
    if (*news)
        Q_EMIT changed();
    return {};
}

bool JobBook::arrivedBefore(const Fact &fact) const
{
    return m_failed && m_failed->arrived && failedBefore({newAct(fact)});
}

Result<std::optional<ActSeq>> JobBook::catchUpToTakeBack(const std::function<bool(const Fact &)> &isThis)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    // A taking back that was on disk is done: doing it again would take one more act back.
    const bool takesBack = m_failed && !m_failed->arrived && isThis(m_failed->acts.front().fact);
    if (const Done fresh = catchUp(); !fresh)
        return tl::unexpected(fresh.error());
    if (!takesBack || !m_failed->arrived)
        return std::optional<ActSeq>{};
    const auto done = std::ranges::find(m_state.acts, m_failed->acts.front().uid, [](const Act &act) { return act.what.uid; });
    m_failed.reset();
    return done == m_state.acts.end() ? std::optional<ActSeq>{} : std::optional(done->seq);
}

Result<bool> JobBook::readOn()
{
    Database &database = *m_garage.internals().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto version = database.dataVersion();
    if (!version)
        return tl::unexpected(version.error());
    const auto acts = actsAfter(database, m_readUpTo, m_state.frame->job.id, m_state.frame->engine.id);
    if (!acts)
        return tl::unexpected(acts.error());
    // What another computer's acts speak of (a new spec, a new person) has to be known before they are folded.
    const bool newFrame = m_frameStale || *version != m_version;
    if (newFrame) {
        auto frame = loadFrame(m_garage, m_state.frame->job.id);
        if (!frame)
            return tl::unexpected(frame.error());
        m_state = fold(std::move(*frame), std::vector<Act>(m_state.acts));
        m_version = *version;
        m_frameStale = false;
    }
    for (const Act &act : *acts)
        foldOne(m_state, act);
    if (!acts->empty())
        m_readUpTo = acts->back().seq;
    noteArrival(*acts);
    return newFrame || !acts->empty();
}

void JobBook::noteArrival(const std::vector<Act> &acts)
{
    if (m_failed && std::ranges::find(acts, m_failed->acts.back().uid, [](const Act &act) { return act.what.uid; }) != acts.end())
        m_failed->arrived = true;
}

Done JobBook::reloadFrame()
{
    auto frame = loadFrame(m_garage, m_state.frame->job.id);
    m_frameStale = !frame;
    if (!frame)
        return tl::unexpected(frame.error());
    m_state = fold(std::move(*frame), std::vector<Act>(m_state.acts));
    Q_EMIT changed();
    return {};
}

} // namespace asleft
