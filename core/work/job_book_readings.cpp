// How what a person says at the Bench becomes a reading: the part of the JobBook that knows leaves and specs.
#include <work/job_book.h>

namespace asleft {

namespace {

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
    return {};
}

/// Fills in the leaf the spec asks for where the entry says no more than "with the spec's leaf".
Result<ReadingEntry> withLeaf(ReadingEntry entry, const JobState &state, const Tool *set)
{
    if (entry.form == ReadingForm::ByFeel)
        entry.value.reset();
    if (entry.form != ReadingForm::Bracket)
        entry.next.reset();
    const bool needsLeaf = entry.specLeaf || entry.form == ReadingForm::Loose || entry.form == ReadingForm::Tight;
    if (!needsLeaf || entry.value)
        return entry;
    const auto *bands = state.frame->lashBandsNow(state.frame->point(entry.point)->adjuster.side);
    if (bands)
        entry.value = specLeaf(*bands, set);
    // Loose or tight without a spec is still worth writing down; a spec leaf without a spec is not.
    if (entry.specLeaf && !entry.value)
        return fail(ErrorKind::NotFound, "lash spec");
    return entry;
}

} // namespace

ReadingFact JobBook::factFrom(const ReadingEntry &entry) const
{
    const PointState &point = m_state.point(entry.point);
    const Spec *spec = m_state.frame->lashNow(m_state.frame->point(entry.point)->adjuster.side);
    ReadingFact reading{.point = entry.point,
                        .phase = entry.phase,
                        .form = entry.form,
                        .value = entry.value,
                        .next = entry.next,
                        .judgedBy = {},
                        .tool = {},
                        .condition = m_sitting.condition,
                        .specLeaf = entry.specLeaf,
                        .outOfPlace = false,
                        .corrects = {}};
    // What was done by feel was judged by no spec and measured with no tool.
    if (spec && entry.form != ReadingForm::ByFeel)
        reading.judgedBy = spec->id;
    if (entry.form != ReadingForm::ByFeel)
        reading.tool = m_sitting.tool;
    const Here place = here(m_state, entry.point);
    reading.outOfPlace = place == Here::NotHere || place == Here::Unknown;
    if (entry.phase == Phase::AsFound && point.found)
        reading.corrects = point.found->seq;
    return reading;
}

Result<ActSeq> JobBook::logReading(const ReadingEntry &entry)
{
    if (!m_state.frame->point(entry.point))
        return fail(ErrorKind::WrongJob, "point");
    const auto whole = withLeaf(entry, m_state, tool());
    if (!whole)
        return tl::unexpected(whole.error());
    if (const Done said = checkValues(*whole); !said)
        return tl::unexpected(said.error());
    return log(factFrom(*whole));
}

Result<ActSeq> JobBook::leaveAllHere()
{
    AllLeftFact all;
    for (const SettingPoint &point : m_state.frame->engine.points) {
        if (!canBeLeftHere(m_state, point))
            continue;
        const auto entry = withLeaf({.point = point.id, .phase = Phase::AsLeft, .specLeaf = true}, m_state, tool());
        if (!entry)
            return tl::unexpected(entry.error());
        all.readings.push_back(factFrom(*entry));
    }
    if (all.readings.empty())
        return fail(ErrorKind::NotFound, "point to set here");
    return log(std::move(all));
}

} // namespace asleft
