#include "bench_sheet.h"

#include "crank_moves.h"
#include "names.h"
#include "valve_facts.h"

#include <algorithm>
#include <set>

namespace asleft {

namespace {

bool isFilledIn(const SheetEntry &line)
{
    return line.found || line.left;
}

/// Writes the acts of a sheet one after the other, each onto the state the ones before it would make.
class SheetWriter {
public:
    /// `blank` is an act of this session that says nothing yet.
    SheetWriter(JobState state, const Session &session, NewAct blank)
        : m_state(std::move(state)), m_session(session), m_blank(std::move(blank))
    {
        if (!m_state.acts.empty())
            m_seq = m_state.acts.back().seq.key();
    }

    Done write(const std::vector<SheetEntry> &lines)
    {
        const CrankPlan plan = *m_state.plan;
        std::vector<SheetEntry> rest = lines;
        for (const PlanPosition &position : plan.positions) {
            const auto here = takeThoseOf(position, rest);
            if (here.empty())
                continue;
            standAt(position.crank);
            if (Done written = readings(here); !written)
                return written;
        }
        return readings(rest);
    }

    void say(Fact fact)
    {
        NewAct act = m_blank;
        act.fact = std::move(fact);
        foldOne(m_state, Act{ActSeq(++m_seq), act});
        m_acts.push_back(std::move(act));
    }

    [[nodiscard]] const JobState &state() const { return m_state; }
    [[nodiscard]] std::vector<NewAct> acts() && { return std::move(m_acts); }

private:
    /// The lines of a position, in its order; they are taken out of `rest`.
    std::vector<SheetEntry> takeThoseOf(const PlanPosition &position, std::vector<SheetEntry> &rest) const
    {
        std::vector<SheetEntry> here;
        for (const PlanPoint &planned : position.points) {
            const SettingPoint *point = m_state.frame->pointAt(planned.adjuster);
            const auto line = point ? std::ranges::find(rest, point->id, &SheetEntry::point) : rest.end();
            if (line == rest.end())
                continue;
            here.push_back(std::move(*line));
            rest.erase(line);
        }
        return here;
    }

    /// Turned to there if it stood elsewhere; where nobody knew, or it stands there, the sheet confirms it.
    void standAt(Angle crank)
    {
        const bool known = m_state.crank && m_state.crank->crank;
        const bool there = known && *m_state.crank->crank == crank;
        if (there && m_stood)
            return; // a manual's table may name one place in several lines
        m_stood = true;
        say(CrankFact{m_state.frame->engine.id, crank, known && !there ? CrankHow::Turned : CrankHow::Confirmed});
    }

    /// All that was found before anything was set, as it is done at the bench.
    Done readings(const std::vector<SheetEntry> &lines)
    {
        for (const SheetEntry &line : lines) {
            if (Done said = reading(line.point, Phase::AsFound, line.found); !said)
                return said;
        }
        for (const SheetEntry &line : lines) {
            if (Done said = reading(line.point, Phase::AsLeft, line.left); !said)
                return said;
        }
        return {};
    }

    Done reading(PointId point, Phase phase, const std::optional<ReadingEntry> &entry)
    {
        if (!entry)
            return {};
        ReadingEntry whole = *entry;
        whole.point = point;
        whole.phase = phase;
        auto fact = readingFrom(whole, m_state, m_session);
        if (!fact)
            return tl::unexpected(fact.error());
        say(std::move(*fact));
        return {};
    }

    JobState m_state;
    const Session &m_session;
    NewAct m_blank;
    std::int64_t m_seq = 0; ///< only to fold by: the file gives its own, which no act of a sheet speaks of
    bool m_stood = false;
    std::vector<NewAct> m_acts;
};

} // namespace

Result<FilledSheet> filledSheet(const std::vector<SheetEntry> &lines, std::optional<Moment> at, const JobFrame &frame,
                                const Session &session)
{
    std::vector<SheetEntry> filled;
    std::set<PointId> points;
    for (const SheetEntry &line : lines) {
        if (!frame.point(line.point))
            return fail(ErrorKind::WrongJob, Noun::Point);
        if (!isFilledIn(line))
            continue;
        if (!points.insert(line.point).second)
            return fail(ErrorKind::TablePointTwice, namesOf(frame, {line.point}));
        filled.push_back(line);
    }
    if (filled.empty())
        return fail(ErrorKind::NothingToLog);
    // The points stand along the engine: each bridge screw before the lash of its pair.
    std::ranges::sort(filled, {}, [&](const SheetEntry &line) { return frame.point(line.point); });
    return FilledSheet{std::move(filled), at, session.who, session.tool, session.condition, session.temperature, session.minutesSinceRun};
}

Result<std::vector<NewAct>> actsOf(const FilledSheet &sheet, JobState state, const Session &session, NewAct blank)
{
    if (sheet.at)
        blank.at = *sheet.at;
    SheetWriter writer(std::move(state), session, std::move(blank));
    if (!writer.state().plan)
        writer.say(PlanFact{writer.state().frame->engine.id, proposedPlan(writer.state())});
    if (const Done written = writer.write(sheet.lines); !written)
        return tl::unexpected(written.error());
    return std::move(writer).acts();
}

} // namespace asleft
