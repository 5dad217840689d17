#include <bench/bar_view.h>

#include <draw/point_shape.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/specs.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

struct BarWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::ReadingBar)
};

constexpr int mostChips = 5;

/// Spec's leaf and its neighbours on the feeler set, smallest first.
QList<BarChip> leavesNear(const Tool *tool, const std::optional<Typed<Length>> &middle, LengthUnit unit)
{
    QList<BarChip> chips;
    if (!tool)
        return chips;
    std::vector<Typed<Length>> leaves = tool->leaves;
    const std::int64_t wanted = middle ? middle->value.smallest() : 0;
    const auto distance = [wanted](const Typed<Length> &leaf) { return std::abs(leaf.value.smallest() - wanted); };
    std::ranges::stable_sort(leaves, {}, distance);
    leaves.resize(std::min<std::size_t>(leaves.size(), mostChips));
    std::ranges::sort(leaves, {}, &Typed<Length>::value);
    for (const auto &leaf : leaves) {
        const QString text = typedText(leaf);
        // Beside another unit a bare number would be taken for one of that.
        chips.append({leaf.unit == unit ? QString::fromStdString(leaf.text) : text, text, BarWords::tr("Leaf %1").arg(text)});
    }
    return chips;
}

QString quartersText(int quarters)
{
    constexpr int quartersOfTurn = 4;
    const int whole = quarters / quartersOfTurn;
    const QString part = QStringList{{}, QStringLiteral("1/4"), QStringLiteral("1/2"), QStringLiteral("3/4")}[quarters % quartersOfTurn];
    return whole == 0 ? part : part.isEmpty() ? QString::number(whole) : QStringLiteral("%1 %2").arg(whole).arg(part);
}

/// Steps around the middle of the band as the manual would print them, fewest first: quarters of a turn, or every 15 degrees.
QList<BarChip> turnsNear(const Band<Angle> &band)
{
    const bool inTurns = band.unit == AngleUnit::Turn;
    const int step = inTurns ? 90 : 15;
    const Angle wanted = band.nominal ? *band.nominal : band.low ? *band.low : band.high.value_or(Angle{});
    const int middle = int(toDegrees(wanted) / step + 0.5);
    QList<BarChip> chips;
    for (int steps = std::max(1, middle - 2); chips.size() < mostChips; ++steps) {
        const QString text = inTurns ? quartersText(steps) : degreesText(degrees(steps * step));
        chips.append({text, text, inTurns ? BarWords::tr("%1 turns").arg(text) : text});
    }
    return chips;
}

const Spec *specOf(const JobBook &book, PointId point)
{
    const JobFrame &frame = *book.state().frame;
    return frame.specNow(frame.point(point)->adjuster);
}

/// What to do now at this point.
QString nowAt(const JobBook &book, PointId point)
{
    const JobState &state = book.state();
    const NextAct act = pointAct(state, point);
    if (std::holds_alternative<next::NothingOpen>(act))
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

QString specWords(const JobBook &book, PointId point)
{
    const Spec *spec = specOf(book, point);
    QString words = spec ? specLine(*spec) : BarWords::tr("No spec yet: what is logged is kept and judged by nothing");
    if (isDoubtfulHere(book.state(), point))
        words += BarWords::tr(" · by its cam it may be off its seat here: the table was kept as printed");
    return words;
}

QString nutWords(const JobBook &book)
{
    const Spec *nut = book.state().frame->specNow(SpecSubject::LockNut);
    const auto *torque = nut ? std::get_if<SpecBand<Torque>>(&nut->asked) : nullptr;
    return torque ? BarWords::tr("lock nut %1").arg(bandText(*torque)) : QString();
}

void addBand(BarView &view, const JobBook &book, PointId point, std::optional<LengthUnit> unit)
{
    const JobFrame &frame = *book.state().frame;
    if (const auto *turns = turnsOf(frame, point)) {
        view.turns = *turns;
        view.hasLeaf = true;
        view.chips = turnsNear(turns->first);
        return;
    }
    const auto *bands = lashBandsOf(frame, point);
    const auto leaf = bands ? specLeaf(*bands, book.tool()) : std::nullopt;
    if (bands)
        view.bands = *bands;
    view.unit = unit.value_or(usualUnit(book, point));
    view.hasLeaf = leaf.has_value();
    view.chips = leavesNear(book.tool(), leaf, view.unit);
}

bool isLeft(const PointState &point)
{
    return point.stage == PointStage::Left;
}

} // namespace

const SpecBand<Angle> *turnsOf(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? frame.turnsNow(found->adjuster) : nullptr;
}

LengthUnit usualUnit(const JobBook &book, PointId point)
{
    const auto *bands = lashBandsOf(*book.state().frame, point);
    const auto leaf = bands ? specLeaf(*bands, book.tool()) : std::nullopt;
    return leaf ? leaf->unit : bands ? bands->first.unit : LengthUnit::Millimetre;
}

BarView barViewOf(const JobBook &book, PointId point, Phase phase, std::optional<LengthUnit> unit)
{
    const JobState &state = book.state();
    const PointState &now = state.point(point);
    BarView view;
    view.hasPoint = true;
    view.now = nowAt(book, point);
    view.spec = specWords(book, point);
    view.beside = nutWords(book);
    view.phase = phase;
    addBand(view, book, point, unit);
    // With the nut open what was found no longer holds.
    const auto &logged = now.left ? now.left : now.found;
    if (now.stage != PointStage::NutOpen && logged)
        view.logged = judgementOf(*state.frame, *logged);
    view.canKeep = isLeft(now) && !now.settled();
    view.canCheckAgain = std::ranges::any_of(state.points, [](const auto &each) { return isLeft(each.second); });
    view.worth = [&book, point, phase](const TypedReading &reading) {
        return judgementOf(book, entryOf(reading, point, phase), book.session().condition);
    };
    return view;
}

} // namespace asleft
