// How what a person says at the Bench, or has written on paper, becomes a reading: the part that knows leaves, turns and specs.
#include "readings.h"

namespace asleft {

namespace {

const Tool *toolOf(const JobState &state, const Session &session)
{
    return session.tool ? state.frame->tool(*session.tool) : nullptr;
}

/// A reading says its values, unless it was taken by feel; a bracket rises.
Done checkValues(const ReadingEntry &entry)
{
    const bool bracket = entry.form == ReadingForm::Bracket;
    if ((bracket || entry.form == ReadingForm::Exact) && !entry.value)
        return fail(ErrorKind::EmptyText);
    if (bracket && !entry.next)
        return fail(ErrorKind::EmptyText);
    if (bracket && entry.next->value <= entry.value->value)
        return fail(ErrorKind::BandUpsideDown, entry.value->text, entry.next->text);
    if (entry.form == ReadingForm::Turned && !entry.turned)
        return fail(ErrorKind::EmptyText);
    return {};
}

/// Without what the form does not speak of.
ReadingEntry tidied(ReadingEntry entry)
{
    if (entry.form == ReadingForm::ByFeel)
        entry.specLeaf = false;
    if (entry.form == ReadingForm::ByFeel || entry.form == ReadingForm::Turned)
        entry.value.reset();
    if (entry.form != ReadingForm::Bracket)
        entry.next.reset();
    if (entry.form != ReadingForm::Turned)
        entry.turned.reset();
    return entry;
}

/// "As the spec asks", of a spec in turns from zero lash.
bool meansSpecTurns(const ReadingEntry &entry, const SpecBand<Angle> *turns)
{
    return turns && entry.specLeaf && !entry.value && (entry.form == ReadingForm::Exact || entry.form == ReadingForm::Turned);
}

/// Fills in the leaf or the turns the spec asks for where the entry says no more than that.
Result<ReadingEntry> asTheSpecAsks(ReadingEntry entry, const JobState &state, const Tool *tool)
{
    const AdjusterRef adjuster = state.frame->point(entry.point)->adjuster;
    const auto *turns = state.frame->turnsNow(adjuster);
    if (meansSpecTurns(entry, turns)) {
        entry.form = ReadingForm::Turned;
        if (!entry.turned)
            entry.turned = specTurns(*turns);
    }
    entry = tidied(std::move(entry));
    const bool leafTried = entry.form == ReadingForm::Loose || entry.form == ReadingForm::Tight;
    const bool needsLeaf = leafTried || (entry.specLeaf && entry.form == ReadingForm::Exact);
    if (needsLeaf && !entry.value) {
        if (const auto *bands = state.frame->lashBandsNow(adjuster))
            entry.value = specLeaf(*bands, tool);
    }
    // Loose or tight without a spec is still worth writing down; a spec leaf without a spec is not.
    const bool said = entry.value || entry.turned;
    if (entry.specLeaf && !said)
        return fail(ErrorKind::NotFound, Noun::LashSpec);
    return entry;
}

/// Whether a tool measured it: nothing can measure what was done by feel, and turns are counted.
bool measuredWithTool(ReadingForm form)
{
    return form != ReadingForm::ByFeel && form != ReadingForm::Turned;
}

/// What the shop's rule wants kept of the tool: leaves that fit or do not are intervals already.
std::optional<Length> uncertaintyKept(const ReadingEntry &entry, const JobState &state, const Tool *tool)
{
    if (state.frame->rule != DecisionRule::WithUncertainty || entry.form != ReadingForm::Exact || !tool)
        return std::nullopt;
    return uncertaintyOf(*tool, entry.value->value);
}

bool isOutOfPosition(const JobState &state, PointId point)
{
    const Here place = here(state, point);
    return place == Here::NotHere || place == Here::Unknown;
}

ReadingFact factFrom(const ReadingEntry &entry, const JobState &state, const Session &session)
{
    const Tool *tool = toolOf(state, session);
    const PointState &point = state.point(entry.point);
    const Spec *spec = state.frame->specNow(state.frame->point(entry.point)->adjuster);
    ReadingFact reading{.point = entry.point,
                        .phase = entry.phase,
                        .form = entry.form,
                        .value = entry.value,
                        .next = entry.next,
                        .judgedBy = {},
                        .tool = {},
                        .condition = session.condition,
                        .specLeaf = entry.specLeaf,
                        .outOfPosition = isOutOfPosition(state, entry.point),
                        .corrects = {},
                        .turned = entry.turned,
                        .uncertainty = uncertaintyKept(entry, state, tool),
                        .temperature = session.temperature,
                        .minutesSinceRun = session.minutesSinceRun};
    // What was done by feel was judged by no spec.
    if (spec && entry.form != ReadingForm::ByFeel)
        reading.judgedBy = spec->id;
    if (measuredWithTool(entry.form))
        reading.tool = session.tool;
    if (entry.phase == Phase::AsFound && point.found)
        reading.corrects = point.found->seq;
    return reading;
}

} // namespace

Result<ReadingFact> readingFrom(const ReadingEntry &entry, const JobState &state, const Session &session)
{
    if (!state.frame->point(entry.point))
        return fail(ErrorKind::WrongJob, Noun::Point);
    const auto whole = asTheSpecAsks(entry, state, toolOf(state, session));
    if (!whole)
        return tl::unexpected(whole.error());
    if (const Done said = checkValues(*whole); !said)
        return tl::unexpected(said.error());
    return factFrom(*whole, state, session);
}

Result<ActSeq> JobBook::logReading(const ReadingEntry &entry)
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    auto reading = readingFrom(entry, m_state, m_session);
    if (!reading)
        return tl::unexpected(reading.error());
    return log(std::move(*reading));
}

Result<ActSeq> JobBook::leaveAllHere()
{
    if (const Done may = mayAct(); !may)
        return tl::unexpected(may.error());
    AllLeftFact all;
    for (const SettingPoint &point : m_state.frame->engine.points) {
        if (!canBeLeftHere(m_state, point))
            continue;
        auto reading = readingFrom({.point = point.id, .phase = Phase::AsLeft, .specLeaf = true}, m_state, m_session);
        if (!reading)
            return tl::unexpected(reading.error());
        all.readings.push_back(std::move(*reading));
    }
    if (all.readings.empty())
        return fail(ErrorKind::NotFound, Noun::PointToSetHere);
    return log(std::move(all));
}

} // namespace asleft
