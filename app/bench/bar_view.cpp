#include <bench/bar_view.h>

#include <draw/point_shape.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/readings.h>
#include <words/specs.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

struct BarWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::ValvePane)
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

/// The band, the values to touch and the unit.
void addBand(EntryView &view, const JobBook &book, PointId point, const BarChoice &choice)
{
    const JobFrame &frame = *book.state().frame;
    if (const auto *turns = turnsOf(frame, point)) {
        view.turns = *turns;
        view.chips = turnsNear(turns->first);
        return;
    }
    const auto *bands = lashBandsOf(frame, point);
    const auto leaf = bands ? specLeaf(*bands, book.tool()) : std::nullopt;
    if (bands)
        view.bands = *bands;
    view.unit = typedAs(book, point, choice).unit;
    view.chips = leavesNear(book.tool(), leaf, view.unit);
}

bool isLeft(const PointState &point)
{
    return point.stage == PointStage::Left;
}

bool anyIsLeft(const JobState &state)
{
    return std::ranges::any_of(state.points, [](const auto &each) { return isLeft(each.second); });
}

/// The spec has a leaf to set with, or turns.
bool hasLeaf(const JobBook &book, PointId point)
{
    const JobFrame &frame = *book.state().frame;
    const auto *bands = lashBandsOf(frame, point);
    return turnsOf(frame, point) || (bands && specLeaf(*bands, book.tool()));
}

/// The keys of a point, or of none.
void addKeys(EntryView &view, const JobBook &book, std::optional<PointId> point, Phase phase)
{
    const auto key = [&view](ValveKey which) -> KeyNow & { return view.keys[int(which)]; };
    for (const ValveKey which : {ValveKey::Loose, ValveKey::Tight, ValveKey::NutOpen, ValveKey::ByFeel, ValveKey::OtherPhase})
        key(which).shown = point ? KeyShown::On : KeyShown::Off;
    key(ValveKey::SpecLeaf) = {point && hasLeaf(book, *point) ? KeyShown::Strong : KeyShown::Off,
                               view.turns ? BarWords::tr("spec turns, locked") : BarWords::tr("spec leaf, locked, felt")};
    view.shortWords[int(ValveKey::SpecLeaf)] = view.turns ? BarWords::tr("spec turns") : BarWords::tr("spec leaf");
    key(ValveKey::OtherPhase).words = phase == Phase::AsFound ? BarWords::tr("as found") : BarWords::tr("as left");
    if (point && isLeft(book.state().point(*point)) && !book.state().point(*point).settled())
        key(ValveKey::Keep).shown = KeyShown::On;
    if (anyIsLeft(book.state()))
        key(ValveKey::CheckAgain).shown = KeyShown::On;
}

/// On the scale and, where no scale shows it, in words; with the value as it was read under what is typed.
Preview previewOf(const Judgement &judged, const QString &typed, bool turns)
{
    Preview preview{.onScale = judged.onScale, .turnsOnScale = judged.turnsOnScale};
    if (typed.isEmpty())
        return preview;
    preview.echo = judged.uncertainty.isEmpty() ? typed : BarWords::tr("%1 %2", "value, its uncertainty").arg(typed, judged.uncertainty);
    const bool offScale = !(turns ? judged.turnsOnScale.has_value() : judged.onScale.has_value());
    preview.words = offScale ? judged.words : QString();
    return preview;
}

/// What stands logged of it. With the nut open what was found no longer holds.
std::optional<Judgement> loggedOf(const JobState &state, PointId point)
{
    const PointState &now = state.point(point);
    const auto &logged = now.left ? now.left : now.found;
    if (now.stage == PointStage::NutOpen || !logged)
        return std::nullopt;
    return judgementOf(*state.frame, *logged);
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

QList<BarKey> valveKeys()
{
    using Place = BarKey::Place;
    const auto key = [](ValveKey which, const QString &words, const QString &meaning, char16_t letter, Place place = Place::Work) {
        return BarKey{int(which), words, meaning, letter, place};
    };
    QList<BarKey> keys{
        key(ValveKey::SpecLeaf, {}, BarWords::tr("Set with the spec's leaf, locked, felt again"), u's'),
        key(ValveKey::Loose, BarWords::tr("loose"), BarWords::tr("More than the spec's leaf"), u'l'),
        key(ValveKey::Tight, BarWords::tr("tight"), BarWords::tr("Less than the spec's leaf"), u't'),
        key(ValveKey::NutOpen, BarWords::tr("nut open"), BarWords::tr("The lock nut is open now"), u'n'),
        key(ValveKey::ByFeel, BarWords::tr("by feel"), BarWords::tr("Done by feel, not measured"), u'f'),
        key(ValveKey::CheckAgain, BarWords::tr("check again"), BarWords::tr("Work done since may have moved what is left: check it again"),
            u'c', Place::Seldom),
        key(ValveKey::Keep, BarWords::tr("keep it"), BarWords::tr("Keep it as it is, outside its band"), u'k', Place::Seldom),
        key(ValveKey::OtherPhase, {}, BarWords::tr("Write this one as found or as left"), u'p', Place::Choice),
    };
    for (BarKey &each : keys) {
        each.bold = each.id == int(ValveKey::SpecLeaf);
        each.plain = each.id == int(ValveKey::CheckAgain);
    }
    return keys;
}

TypedAs typedAs(const JobBook &book, PointId point, const BarChoice &choice)
{
    return {choice.unit.value_or(usualUnit(book, point)), turnsOf(*book.state().frame, point) != nullptr, choice.mark};
}

EntryView barViewOfNone(const JobBook &book, const QString &now, const BarChoice &choice)
{
    EntryView view;
    view.now = now;
    view.field = EntryView::Field::Off;
    view.unit = choice.unit.value_or(view.unit);
    addKeys(view, book, std::nullopt, choice.phase);
    return view;
}

EntryView barViewOf(const JobBook &book, PointId point, const BarChoice &choice)
{
    EntryView view;
    view.field = EntryView::Field::On;
    view.now = nowAt(book, point);
    view.spec = specWords(book, point);
    view.small = nutWords(book);
    addBand(view, book, point, choice);
    addKeys(view, book, point, choice.phase);
    const TypedAs as = typedAs(book, point, choice);
    view.echo = BarWords::tr("%1, %2").arg(phaseName(choice.phase), as.turns ? BarWords::tr("turns") : unitText(as.unit));
    view.preview = [&book, point, as, phase = choice.phase](const QString &text) {
        if (text.isEmpty()) {
            const auto logged = loggedOf(book.state(), point);
            return logged ? previewOf(*logged, {}, as.turns) : Preview{};
        }
        const auto reading = readTyped(text, as);
        if (!reading)
            return Preview{};
        return previewOf(judgementOf(book, entryOf(*reading, point, phase), book.session().condition), typedText(*reading), as.turns);
    };
    return view;
}

} // namespace asleft
