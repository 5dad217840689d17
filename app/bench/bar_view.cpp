#include "bench/bar_view.h"

#include <show/point_shape.h>
#include <show/words.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

struct BarWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::ReadingBar)
};

/// Spec's leaf and its neighbours on the feeler set, smallest first.
QList<Typed<Length>> leavesNear(const Tool *set, const std::optional<Typed<Length>> &middle)
{
    QList<Typed<Length>> near;
    if (!set)
        return near;
    std::vector<Typed<Length>> leaves = set->leaves;
    const std::int64_t wanted = middle ? middle->value.smallest() : 0;
    const auto distance = [wanted](const Typed<Length> &leaf) { return std::abs(leaf.value.smallest() - wanted); };
    std::ranges::stable_sort(leaves, {}, distance);
    leaves.resize(std::min<std::size_t>(leaves.size(), 5));
    std::ranges::sort(leaves, {}, &Typed<Length>::value);
    for (const auto &leaf : leaves)
        near.append(leaf);
    return near;
}

std::optional<ScaleValue> scaleOf(const std::optional<Judged> &judged)
{
    const auto interval = judged ? intervalOf(judged->reading) : std::nullopt;
    if (!interval)
        return std::nullopt;
    return ScaleValue{*interval, judged->reading.value->unit, judged->verdict};
}

const Spec *lashSpecOf(const JobBook &book, PointId point)
{
    const JobFrame &frame = *book.state().frame;
    return frame.lashNow(frame.point(point)->adjuster.side);
}

/// What to do now at this point.
QString nowAt(const JobBook &book, PointId point)
{
    const JobState &state = book.state();
    const NextAct act = pointAct(state, point);
    if (act.kind == NextAct::Kind::NothingOpen)
        return BarWords::tr("%1: %2").arg(pointName(*state.frame, point), lookWords(lookOf(state, point, false)));
    return nextActSentence(act, state, book.tool());
}

/// The manual sets the point here although geometry doubts it; that was asked when the table was typed, and stays said.
bool isDoubtfulHere(const JobState &state, PointId point)
{
    const SettingPoint *found = state.frame->point(point);
    const bool known = found && state.crank && state.crank->crank;
    return known && here(state, point) == Here::InPlan && !maySet(state.frame->engine.design, found->adjuster, *state.crank->crank);
}

} // namespace

const SpecBand<Length> *lashBandsOf(const JobBook &book, PointId point)
{
    const JobFrame &frame = *book.state().frame;
    return frame.lashBandsNow(frame.point(point)->adjuster.side);
}

BarView barViewOf(const JobBook &book, PointId point, Phase phase, std::optional<LengthUnit> unit)
{
    const JobState &state = book.state();
    const PointState &now = state.point(point);
    const Spec *spec = lashSpecOf(book, point);
    const auto *bands = lashBandsOf(book, point);
    BarView view;
    view.hasPoint = true;
    view.now = nowAt(book, point);
    view.spec = spec ? specLine(*spec) : BarWords::tr("No spec yet: what is logged is kept and judged by nothing");
    if (isDoubtfulHere(state, point))
        view.spec += BarWords::tr(" · by its cam it may be off its seat here: the table was kept as printed");
    if (const Spec *nut = state.frame->specNow(SpecSubject::LockNut))
        view.beside = BarWords::tr("lock nut %1").arg(bandText(std::get<SpecBand<Torque>>(nut->asked)));
    view.phase = phase;
    if (bands)
        view.bands = *bands;
    // In the system of the leaves in hand where the manual prints it: what is asked for, typed and logged is then one unit.
    const auto leaf = bands ? specLeaf(*bands, book.tool()) : std::nullopt;
    view.unit = unit.value_or(leaf ? leaf->unit : bands ? bands->first.unit : LengthUnit::Millimetre);
    view.hasLeaf = leaf.has_value();
    view.leaves = leavesNear(book.tool(), leaf);
    // With the nut open what was found no longer holds.
    if (now.stage != PointStage::NutOpen)
        view.logged = scaleOf(now.left ? now.left : now.found);
    view.canKeep = now.stage == PointStage::Left && !now.settled();
    view.canCheckAgain = now.stage == PointStage::Left && now.settled();
    view.judge = [frame = state.frame, spec, condition = book.sitting().condition, point](const ReadingText &text) {
        const ReadingFact fact{.point = point,
                               .form = text.form,
                               .value = text.value,
                               .next = text.next,
                               .judgedBy = {},
                               .tool = {},
                               .condition = condition,
                               .corrects = {}};
        return verdictOf(fact, spec);
    };
    return view;
}

} // namespace asleft
