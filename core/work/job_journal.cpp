#include "job_journal.h"

#include "internals.h"
#include "job_frame.h"

#include <store/journal.h>

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

std::vector<Act>::const_iterator actOfUid(const std::vector<Act> &acts, const Uid &uid)
{
    return std::ranges::find(acts, uid, [](const Act &act) { return act.what.uid; });
}

} // namespace

Result<std::unique_ptr<JobJournal>> JobJournal::open(Garage &garage, JobId job)
{
    Database &database = *garage.internals().database;
    const auto moment = Snapshot::begin(database);
    if (!moment)
        return tl::unexpected(moment.error());
    const auto version = database.dataVersion();
    if (!version)
        return tl::unexpected(version.error());
    auto frame = loadFrame(garage, job);
    if (!frame)
        return tl::unexpected(frame.error());
    const auto acts = jobActs(database, job, (*frame)->engine.id);
    if (!acts)
        return tl::unexpected(acts.error());
    return std::unique_ptr<JobJournal>(new JobJournal(garage, fold(std::move(*frame), *acts), *version));
}

JobJournal::JobJournal(Garage &garage, JobState state, std::int64_t version)
    : m_garage(garage), m_state(std::move(state)), m_version(version)
{
    if (!m_state.acts.empty())
        m_readUpTo = m_state.acts.back().seq;
}

NewAct JobJournal::newAct(Fact fact, PersonId who, std::optional<ActSeq> withdraws) const
{
    return {{}, m_state.frame->job.id, who, m_garage.station(), m_garage.now(), withdraws, std::move(fact)};
}

bool JobJournal::failedBefore(const NewAct &act) const
{
    return m_failed && !m_failed->sheet && saysTheSame(m_failed->acts.front(), act, m_failed->arrived);
}

bool JobJournal::arrivedBefore(const NewAct &act) const
{
    return m_failed && m_failed->arrived && failedBefore(act);
}

const std::vector<NewAct> *JobJournal::failedActs(const FilledSheet &sheet) const
{
    return m_failed && m_failed->sheet == sheet ? &m_failed->acts : nullptr;
}

Result<ActSeq> JobJournal::store(std::vector<NewAct> acts, const std::optional<FilledSheet> &sheet)
{
    Q_ASSERT(sheet ? !acts.empty() : acts.size() == 1);
    if (!sheet && failedBefore(acts.front()))
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
        alone = *version == m_version && !m_stale;
        return appendAll(transaction, acts);
    });
    if (!stored) {
        const bool arrived = m_failed && m_failed->arrived && m_failed->acts == acts;
        m_failed = Failed{std::move(acts), sheet, arrived};
        return tl::unexpected(stored.error());
    }
    m_failed.reset();
    // Where another computer has written since, its acts may stand before ours: then all is read on. If that cannot be read now, ours are
    // stored all the same and are shown.
    if (alone || !readOn())
        takeUp(*stored);
    m_news = true;
    return stored->back().seq;
}

void JobJournal::takeUp(const std::vector<Act> &acts)
{
    for (const Act &act : acts) {
        foldOne(m_state, act);
        m_readUpTo = std::max(m_readUpTo, act.seq);
    }
}

Result<std::optional<ActSeq>> JobJournal::readOnToTakeBack(const std::function<bool(const Fact &)> &isThis)
{
    // A taking back that was on disk is done: doing it again would take one more act back.
    const bool takesBack = m_failed && !m_failed->arrived && isThis(m_failed->acts.front().fact);
    if (const Done fresh = readOn(); !fresh)
        return tl::unexpected(fresh.error());
    if (!takesBack || !m_failed->arrived)
        return std::optional<ActSeq>{};
    const auto done = actOfUid(m_state.acts, m_failed->acts.front().uid);
    m_failed.reset();
    return done == m_state.acts.end() ? std::optional<ActSeq>{} : std::optional(done->seq);
}

Done JobJournal::readOn()
{
    Done read = readNew();
    m_stale = m_stale || !read;
    return read;
}

Done JobJournal::readNew()
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
    if (m_stale || *version != m_version) {
        if (Done loaded = loadFrameAnew(); !loaded)
            return loaded;
        m_version = *version;
    }
    if (std::ranges::any_of(*acts, [this](const Act &act) { return act.what.withdraws && act.what.job != m_state.frame->job.id; })) {
        // What another job withdrew may lay bare an act that was of no account when this one was opened.
        if (Done again = readAllAnew(); !again)
            return again;
    }
    for (const Act &act : *acts)
        foldOne(m_state, act);
    if (!acts->empty())
        m_readUpTo = acts->back().seq;
    m_news = m_news || !acts->empty();
    noteArrival(*acts);
    return {};
}

Done JobJournal::readAllAnew()
{
    const auto acts = jobActs(*m_garage.internals().database, m_state.frame->job.id, m_state.frame->engine.id);
    if (!acts)
        return tl::unexpected(acts.error());
    m_state = fold(m_state.frame, *acts);
    return {};
}

void JobJournal::noteArrival(const std::vector<Act> &acts)
{
    if (m_failed && actOfUid(acts, m_failed->acts.back().uid) != acts.end())
        m_failed->arrived = true;
}

Done JobJournal::reloadFrame()
{
    Done loaded = loadFrameAnew();
    m_stale = !loaded;
    return loaded;
}

Done JobJournal::loadFrameAnew()
{
    auto frame = loadFrame(m_garage, m_state.frame->job.id);
    if (!frame)
        return tl::unexpected(frame.error());
    m_state = fold(std::move(*frame), std::vector<Act>(m_state.acts));
    m_stale = false;
    m_news = true;
    return {};
}

} // namespace asleft
