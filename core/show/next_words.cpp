#include <show/words.h>

#include <QCoreApplication>

#include <cmath>

namespace asleft {

namespace {

class NextWords {
    Q_DECLARE_TR_FUNCTIONS(NextWords)
};

/// The spec of a point, as far as it helps to say what to do.
struct Aim {
    const Engine &engine;
    const SpecBand<Length> *bands = nullptr;
    std::optional<Typed<Length>> leaf = std::nullopt;
};

Aim aimOf(const JobState &state, PointId point, const Tool *leaves)
{
    Aim aim{state.frame->engine};
    const SettingPoint *found = state.frame->point(point);
    aim.bands = found ? state.frame->lashBandsNow(found->adjuster.side) : nullptr;
    if (!aim.bands)
        return aim;
    const bool haveLeaves = leaves && !leaves->leaves.empty();
    aim.leaf = specLeaf(haveLeaves ? aim.bands->printedFor(leaves->leaves.front().unit) : aim.bands->first, leaves);
    return aim;
}

/// "0.40", "12 thou": the unit stands beside the sentence, but a bare whole number would not be known for thou.
QString leafText(const Typed<Length> &leaf)
{
    const QString number = exactNumber(leaf.value, leaf.unit);
    return leaf.unit == LengthUnit::Thou ? NextWords::tr("%1 %2", "number, unit").arg(number, unitText(leaf.unit)) : number;
}

QString setSentence(const Aim &aim)
{
    return aim.leaf ? NextWords::tr("Set %1, lock, feel again").arg(leafText(*aim.leaf)) : NextWords::tr("Set, lock, feel again");
}

QString fractionText(SimpleFraction fraction)
{
    const int whole = fraction.numerator / fraction.denominator;
    const int rest = fraction.numerator % fraction.denominator;
    if (rest == 0)
        return whole == 1 ? NextWords::tr("1 turn") : NextWords::tr("%1 turns").arg(whole);
    const QString part = NextWords::tr("%1/%2", "fraction of a turn").arg(rest).arg(fraction.denominator);
    return whole == 0 ? part : NextWords::tr("%1 %2", "turns, fraction").arg(whole).arg(part);
}

/// How far to turn to get from the one exact value that was read to the leaf; nothing where either is not known.
std::optional<double> turnsToLeaf(const Aim &aim, const Judged &judged)
{
    const bool exact = judged.reading.form == ReadingForm::Exact && judged.reading.value;
    if (!exact || !aim.leaf || !aim.engine.adjuster)
        return std::nullopt;
    return screwTurns(judged.reading.value->value - aim.leaf->value, *aim.engine.adjuster);
}

QString turnSentence(const Aim &aim, const Judged &judged)
{
    const auto turns = turnsToLeaf(aim, judged);
    // The verdict is of the spec it was judged by; which way to turn hangs on the leaf of today's.
    const bool in = turns ? *turns > 0 : judged.verdict == Verdict::High;
    const auto fraction = turns ? nearestSimpleFraction(std::abs(*turns)) : std::nullopt;
    if (!fraction)
        return in ? NextWords::tr("Turn in") : NextWords::tr("Turn out");
    return in ? NextWords::tr("Turn in about %1").arg(fractionText(*fraction))
              : NextWords::tr("Turn out about %1").arg(fractionText(*fraction));
}

QString correctSentence(const Aim &aim, const Judged &judged)
{
    const QString turn = turnSentence(aim, judged);
    return aim.leaf ? NextWords::tr("%1, lock, feel %2 again").arg(turn, leafText(*aim.leaf))
                    : NextWords::tr("%1, lock, feel again").arg(turn);
}

bool isOutside(const Judged &judged)
{
    return judged.verdict == Verdict::Low || judged.verdict == Verdict::High;
}

QString setOrLeave(const QString &name, const Aim &aim, const PointState &point)
{
    if (point.stage == PointStage::CheckAgain)
        return aim.leaf ? NextWords::tr("%1: check again. Feel %2, set if it has moved").arg(name, leafText(*aim.leaf))
                        : NextWords::tr("%1: check again. Feel it, set if it has moved").arg(name);
    if (!point.found)
        return NextWords::tr("%1: %2", "point, what to do").arg(name, setSentence(aim));
    if (isOutside(*point.found))
        return NextWords::tr("%1: found %2. %3").arg(name, verdictName(point.found->verdict), correctSentence(aim, *point.found));
    if (point.found->verdict == Verdict::Inside)
        return NextWords::tr("%1: found inside. Log it as left, or set it anew").arg(name);
    return NextWords::tr("%1: found %2. %3").arg(name, verdictName(point.found->verdict), setSentence(aim));
}

QString setOrKeep(const QString &name, const Aim &aim, const PointState &point)
{
    if (point.left && isOutside(*point.left))
        return NextWords::tr("%1: %2. %3").arg(name, verdictName(point.left->verdict), correctSentence(aim, *point.left));
    return NextWords::tr("%1: too close to call. Feel with a nearer leaf, or keep it").arg(name);
}

QString turnCrank(const NextAct &next, const JobState &state)
{
    if (!state.plan || !next.position || *next.position >= state.plan->positions.size())
        return NextWords::tr("Turn the crank to the next position");
    const PlanPosition &position = state.plan->positions[*next.position];
    const QString place = placeInText(state.frame->engine.design, position.place);
    if (!state.crank || !state.crank->crank)
        return NextWords::tr("Turn the crank to %1").arg(place);
    return NextWords::tr("Turn the crank %1 to %2").arg(degreesText(travel(*state.crank->crank, position.crank)), place);
}

QString doStep(const NextAct &next, const JobState &state)
{
    const Step *step = next.step ? state.frame->step(*next.step) : nullptr;
    return step ? QString::fromStdString(step->title) : NextWords::tr("Do the next line");
}

QString pointSentence(const NextAct &next, const JobState &state, const Tool *leaves)
{
    if (!next.point)
        return NextWords::tr("Choose a point");
    const QString name = pointName(*state.frame, *next.point);
    const Aim aim = aimOf(state, *next.point, leaves);
    const PointState &point = state.point(*next.point);
    if (next.kind == NextAct::Kind::LockNut)
        return NextWords::tr("%1: nut open. %2").arg(name, setSentence(aim));
    return next.kind == NextAct::Kind::SetOrKeep ? setOrKeep(name, aim, point) : setOrLeave(name, aim, point);
}

} // namespace

QString nextActSentence(const NextAct &next, const JobState &state, const Tool *leaves)
{
    switch (next.kind) {
    case NextAct::Kind::ConfirmCrank: return NextWords::tr("Confirm where the crank stands");
    case NextAct::Kind::LockNut:
    case NextAct::Kind::SetPoint:
    case NextAct::Kind::SetOrKeep: return pointSentence(next, state, leaves);
    case NextAct::Kind::FeelPoint:
        return next.point ? NextWords::tr("Feel %1").arg(pointInText(*state.frame, *next.point)) : NextWords::tr("Choose a point");
    case NextAct::Kind::TurnCrank: return turnCrank(next, state);
    case NextAct::Kind::DoStep: return doStep(next, state);
    case NextAct::Kind::NothingOpen: return NextWords::tr("Nothing is left to do here");
    }
    return {};
}

} // namespace asleft
