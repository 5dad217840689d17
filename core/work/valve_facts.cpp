// How what a person says of valves, at the Bench or on paper, becomes a fact: the part that knows leaves, turns and specs.
#include "valve_facts.h"

#include "internals.h"
#include "names.h"

#include <shop/outlook.h>

#include <algorithm>

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

Result<ReadingAsLogged> readingAsLogged(const ReadingEntry &entry, const JobState &state, const Session &session)
{
    auto fact = readingFrom(entry, state, session);
    if (!fact)
        return tl::unexpected(fact.error());
    const Verdict verdict = verdictOf(*fact, fact->judgedBy ? state.frame->spec(*fact->judgedBy) : nullptr);
    return ReadingAsLogged{std::move(*fact), verdict};
}

Result<Fact> allLeftFrom(const JobState &state, const Session &session)
{
    AllLeftFact all;
    for (const SettingPoint &point : state.frame->engine.points) {
        if (!canBeLeftHere(state, point))
            continue;
        auto reading = readingFrom({.point = point.id, .phase = Phase::AsLeft, .specLeaf = true}, state, session);
        if (!reading)
            return tl::unexpected(reading.error());
        all.readings.push_back(std::move(*reading));
    }
    if (all.readings.empty())
        return fail(ErrorKind::NotFound, Noun::PointToSetHere);
    return all;
}

Result<Fact> nutOpenFrom(PointId point, const JobState &state)
{
    return state.frame->point(point) ? Result<Fact>(NutOpenFact{point}) : fail(ErrorKind::WrongJob, Noun::Point);
}

Result<Fact> keptFrom(PointId point, std::string_view reason, const JobState &state)
{
    if (!state.frame->point(point))
        return fail(ErrorKind::WrongJob, Noun::Point);
    const PointState &now = state.point(point);
    if (now.stage != PointStage::Left || !now.left || now.settled())
        return fail(ErrorKind::NothingToKeep, namesOf(*state.frame, {point}));
    auto why = checkedNote(reason);
    if (!why)
        return tl::unexpected(why.error());
    return KeepFact{now.left->seq, point, std::move(*why)};
}

Result<Fact> checkAgainFrom(const std::vector<PointId> &points, Disturbance cause, std::string_view why, const JobState &state)
{
    const bool known = std::ranges::all_of(points, [&](PointId point) { return state.frame->point(point) != nullptr; });
    if (points.empty() || !known)
        return fail(ErrorKind::WrongJob, Noun::Point);
    std::vector<PointId> left;
    std::ranges::copy_if(points, std::back_inserter(left), [&](PointId point) { return state.point(point).stage == PointStage::Left; });
    if (left.empty())
        return fail(ErrorKind::NotFound, Noun::PointThatWasLeft);
    auto note = checkedNote(why);
    if (!note)
        return tl::unexpected(note.error());
    return CheckAgainFact{std::move(left), std::move(*note), cause};
}

} // namespace asleft
