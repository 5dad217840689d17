// The things a job's acts speak of, looked up.
#include <shop/state.h>

#include <algorithm>

namespace asleft {

namespace {

template <class Rows, class Id>
auto rowWithId(const Rows &rows, Id id) -> const typename Rows::value_type *
{
    const auto row = std::ranges::find(rows, id, &Rows::value_type::id);
    return row == rows.end() ? nullptr : &*row;
}

template <class Q>
const SpecBand<Q> *askedIn(const Spec *spec)
{
    return spec ? std::get_if<SpecBand<Q>>(&spec->asked) : nullptr;
}

} // namespace

const SettingPoint *JobFrame::point(PointId id) const
{
    return rowWithId(engine.points, id);
}

const SettingPoint *JobFrame::pointAt(AdjusterRef valve) const
{
    const auto found = std::ranges::find(engine.points, valve, &SettingPoint::adjuster);
    return found == engine.points.end() ? nullptr : &*found;
}

const Step *JobFrame::step(StepId id) const
{
    return rowWithId(job.steps, id);
}

const Person *JobFrame::person(PersonId id) const
{
    return rowWithId(people, id);
}

const Joint *JobFrame::jointNow(JointId id) const
{
    const Joint *newest = nullptr;
    for (const Joint &joint : joints) {
        if (joint.id == id && (!newest || joint.revision > newest->revision))
            newest = &joint;
    }
    return newest;
}

const Joint *JobFrame::joint(JointId id, int revision) const
{
    const auto found = std::ranges::find_if(joints, [&](const Joint &joint) { return joint.id == id && joint.revision == revision; });
    return found == joints.end() ? nullptr : &*found;
}

const Tool *JobFrame::tool(ToolId id) const
{
    return rowWithId(tools, id);
}

const Spec *JobFrame::spec(SpecId id) const
{
    return rowWithId(specs, id);
}

const Spec *JobFrame::specNow(SpecSubject subject) const
{
    const Spec *newest = nullptr;
    for (const Spec &spec : specs) {
        if (spec.subject == subject && (!newest || spec.revision > newest->revision))
            newest = &spec;
    }
    return newest;
}

const Spec *JobFrame::specNow(AdjusterRef adjuster) const
{
    return specNow(subjectOf(adjuster));
}

const SpecBand<Length> *JobFrame::lashBandsNow(AdjusterRef adjuster) const
{
    return askedIn<Length>(specNow(adjuster));
}

const SpecBand<Angle> *JobFrame::turnsNow(AdjusterRef adjuster) const
{
    return askedIn<Angle>(specNow(adjuster));
}

} // namespace asleft
