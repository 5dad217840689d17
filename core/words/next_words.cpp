#include "joint_text.h"

#include <words/crank.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/readings.h>

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
    AdjusterRef adjuster;
    const SpecBand<Length> *bands = nullptr;
    const SpecBand<Angle> *turns = nullptr; ///< turned on from zero lash instead of felt
    std::optional<Typed<Length>> leaf = std::nullopt;
};

Aim aimOf(const JobState &state, PointId point, const Tool *leaves)
{
    Aim aim{state.frame->engine, {}};
    const SettingPoint *found = state.frame->point(point);
    if (!found)
        return aim;
    aim.adjuster = found->adjuster;
    aim.turns = state.frame->turnsNow(found->adjuster);
    aim.bands = state.frame->lashBandsNow(found->adjuster);
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

/// What is asked of a screw turned on from zero lash: "3/4 turn", or its band.
QString turnsText(const SpecBand<Angle> &turns)
{
    const Band<Angle> &band = turns.first;
    return band.nominal ? turnedText(*band.nominal, band.unit) : bandText(band);
}

QString setFromZero(const Aim &aim)
{
    return NextWords::tr("Find zero lash, turn in %1, lock").arg(turnsText(*aim.turns));
}

/// Without a number to set it to.
QString setByKind(PointKind kind)
{
    switch (kind) {
    case PointKind::BridgeScrew: return NextWords::tr("Seat the bridge evenly on both valves, lock");
    case PointKind::Injector: return NextWords::tr("Set, lock, measure again");
    case PointKind::Lash:
    case PointKind::Decompressor: break;
    }
    return NextWords::tr("Set, lock, feel again");
}

QString setSentence(const Aim &aim)
{
    if (aim.turns)
        return setFromZero(aim);
    if (!aim.leaf)
        return setByKind(aim.adjuster.kind);
    return aim.adjuster.kind == PointKind::Injector ? NextWords::tr("Set %1, lock, measure again").arg(leafText(*aim.leaf))
                                                    : NextWords::tr("Set %1, lock, feel again").arg(leafText(*aim.leaf));
}

QString checkSentence(const QString &name, const Aim &aim)
{
    if (aim.turns)
        return NextWords::tr("%1: check again. %2", "point, what to do").arg(name, setFromZero(aim));
    return aim.leaf ? NextWords::tr("%1: check again. Feel %2, set if it has moved").arg(name, leafText(*aim.leaf))
                    : NextWords::tr("%1: check again. Feel it, set if it has moved").arg(name);
}

QString fractionText(SimpleFraction fraction)
{
    const int whole = fraction.numerator / fraction.denominator;
    const int rest = fraction.numerator % fraction.denominator;
    if (rest == 0)
        return NextWords::tr("%n turn(s)", nullptr, whole);
    const QString part = NextWords::tr("%1/%2", "fraction of a turn").arg(rest).arg(fraction.denominator);
    return whole == 0 ? part : NextWords::tr("%1 %2", "turns, fraction").arg(whole).arg(part);
}

/// How far to turn to get from the one exact value that was read to the leaf; nothing where either is not known.
std::optional<double> turnsToLeaf(const Aim &aim, const Judged &judged)
{
    // The pitch is that of the lash screws; what other screws do to the gap is not known.
    const bool exact = judged.reading.form == ReadingForm::Exact && judged.reading.value && aim.adjuster.kind == PointKind::Lash;
    if (!exact || !aim.leaf || !aim.engine.adjuster)
        return std::nullopt;
    return screwTurns(judged.reading.value->value - aim.leaf->value, *aim.engine.adjuster);
}

/// Which way a screw goes is known of a clearance; of an injector's height it hangs on how it is measured.
QString turnSentence(const Aim &aim, const Judged &judged)
{
    if (aim.adjuster.kind == PointKind::Injector)
        return NextWords::tr("Turn the screw");
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
    if (aim.turns)
        return setFromZero(aim);
    const QString turn = turnSentence(aim, judged);
    if (aim.leaf && aim.adjuster.kind == PointKind::Injector)
        return NextWords::tr("%1, lock, measure %2 again").arg(turn, leafText(*aim.leaf));
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
        return checkSentence(name, aim);
    if (!point.found)
        return NextWords::tr("%1: %2", "point, what to do").arg(name, setSentence(aim));
    if (isOutside(*point.found))
        return NextWords::tr("%1: found %2. %3").arg(name, verdictName(point.found->verdict), correctSentence(aim, *point.found));
    if (point.found->verdict == Verdict::Inside)
        return NextWords::tr("%1: found inside. Log it as left, or set it anew").arg(name);
    return NextWords::tr("%1: found %2. %3").arg(name, verdictName(point.found->verdict), setSentence(aim));
}

/// A value that its own uncertainty leaves open is settled by a better tool or a value nearer the middle, one between leaves by a nearer
/// leaf.
QString tooClose(const QString &name, const PointState &point)
{
    return point.left && point.left->reading.uncertainty
               ? NextWords::tr("%1: too close to call. Set it nearer the middle of its band, or keep it").arg(name)
               : NextWords::tr("%1: too close to call. Feel with a nearer leaf, or keep it").arg(name);
}

QString setOrKeep(const QString &name, const Aim &aim, const PointState &point)
{
    if (point.left && isOutside(*point.left))
        return NextWords::tr("%1: %2. %3").arg(name, verdictName(point.left->verdict), correctSentence(aim, *point.left));
    return tooClose(name, point);
}

/// What to do now, one function for each kind.
class NextTelling {
public:
    NextTelling(const JobState &state, const Tool *leaves) : m_state(state), m_frame(*state.frame), m_leaves(leaves) {}

    QString operator()(const next::NothingOpen &) const { return NextWords::tr("Nothing is left to do here"); }
    QString operator()(const next::ConfirmCrank &) const { return NextWords::tr("Confirm where the crank stands"); }

    QString operator()(const next::LockNut &act) const
    {
        return NextWords::tr("%1: nut open. %2").arg(nameOf(act), setSentence(aimAt(act)));
    }

    /// A hydraulic tappet full of oil tells nothing to a leaf: it is set from zero lash at once.
    QString operator()(const next::FeelPoint &act) const
    {
        const Aim aim = aimOf(m_state, act.point, nullptr);
        if (aim.turns || (aim.adjuster.kind == PointKind::BridgeScrew && !aim.bands))
            return NextWords::tr("%1: %2", "point, what to do").arg(nameOf(act), setSentence(aim));
        const QString name = pointInText(m_frame, act.point);
        return aim.adjuster.kind == PointKind::Injector ? NextWords::tr("Measure %1").arg(name) : NextWords::tr("Feel %1").arg(name);
    }

    QString operator()(const next::SetPoint &act) const { return setOrLeave(nameOf(act), aimAt(act), m_state.point(act.point)); }
    QString operator()(const next::SetOrKeep &act) const { return setOrKeep(nameOf(act), aimAt(act), m_state.point(act.point)); }

    QString operator()(const next::TurnCrank &act) const
    {
        if (!m_state.plan || act.position >= m_state.plan->positions.size())
            return NextWords::tr("Turn the crank to the next position");
        const EngineDesign &design = m_frame.engine.design;
        const PlanPosition &position = m_state.plan->positions[act.position];
        const QString place = positionInText(design, position);
        if (!m_state.crank || !m_state.crank->crank)
            return NextWords::tr("Turn the crank to %1").arg(place);
        return NextWords::tr("Turn the crank %1 to %2").arg(degreesText(travel(design, *m_state.crank->crank, position.crank)), place);
    }

    QString operator()(const next::DoStep &act) const
    {
        const Step *step = m_frame.step(act.step);
        return step ? stepTitle(*step, m_frame) : NextWords::tr("Do the next line");
    }

    template <std::derived_from<next::OfJoint> AtJoint>
    QString operator()(const AtJoint &act) const
    {
        return jointNextSentence(act, m_state);
    }

private:
    [[nodiscard]] QString nameOf(const next::OfPoint &act) const { return pointName(m_frame, act.point); }
    [[nodiscard]] Aim aimAt(const next::OfPoint &act) const { return aimOf(m_state, act.point, m_leaves); }

    const JobState &m_state;
    const JobFrame &m_frame;
    const Tool *m_leaves;
};

} // namespace

QString nextActSentence(const NextAct &act, const JobState &state, const Tool *leaves)
{
    return std::visit(NextTelling(state, leaves), act);
}

} // namespace asleft
