#include "bench/valve_sheet.h"

#include "bench/bar_view.h"
#include "bench/head_view.h"
#include "bench/reading_edit.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/rule.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

ValveSheet::ValveSheet(Desk &desk, JobBook &book, QWidget *parent) : QWidget(parent), m_desk(desk), m_book(book)
{
    build();
    connect(m_head, &HeadView::pointChosen, this,
            [this](qsizetype index) { takeInHand(m_book.state().frame->engine.points.at(std::size_t(index)).id); });
    connect(m_bar, &ReadingBar::valueEntered, this, &ValveSheet::enter);
    connect(m_bar, &ReadingBar::keyed, this, &ValveSheet::press);
    connect(m_bar, &ReadingBar::typing, this, [this] {
        m_asked.reset();
        // What is being typed stays what it was begun as, whatever another seat logs meanwhile.
        if (m_inHand && !m_phase)
            m_phase = phaseOf(*m_inHand);
    });
    connect(m_bar, &ReadingBar::nothingEntered, this, &ValveSheet::moveOn);
    connect(m_bar, &ReadingBar::unitChosen, this, [this](LengthUnit unit) {
        m_unit = unit;
        showBar();
        focusValue();
    });
    connect(m_bar, &ReadingBar::arrowPressed, this, [this](Qt::Key arrow) {
        const auto &points = m_book.state().frame->engine.points;
        const auto now = std::ranges::find(points, m_inHand, [](const SettingPoint &point) { return std::optional(point.id); });
        const auto next = now == points.end() ? std::nullopt : m_head->neighbour(now - points.begin(), arrow);
        if (next)
            takeInHand(points.at(std::size_t(*next)).id);
    });
    connect(m_turn, &KeyButton::clicked, this, &ValveSheet::turnWanted);
    connect(m_planKey, &KeyButton::clicked, this, &ValveSheet::planWanted);
    connect(m_allHere, &KeyButton::clicked, this, &ValveSheet::logAllHere);
    connect(m_undo, &KeyButton::clicked, this, &ValveSheet::undo);
    m_inHand = nextValveAct(m_book.state()).point;
    refresh();
}

void ValveSheet::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);

    auto *crank = new QHBoxLayout;
    crank->setSpacing(8);
    auto *words = new QVBoxLayout;
    words->setSpacing(3);
    m_place = new Heading({}, TextSize::BodyStrong);
    m_sets = new Heading({}, TextSize::SmallStrong);
    words->addWidget(m_place);
    words->addWidget(m_sets);
    crank->addLayout(words, 1);
    m_undo = new KeyButton(tr("undo"));
    m_planKey = new KeyButton(tr("plan"));
    m_planKey->setToolTip(tr("Choose the crank plan"));
    m_planKey->setAccessibleName(m_planKey->toolTip());
    for (KeyButton *key : {m_undo, m_planKey})
        key->setPlain(true);
    m_allHere = new KeyButton(tr("All set here"));
    m_allHere->setToolTip(tr("Every point the plan sets here: set with the spec's leaf, locked, felt again"));
    m_turn = new KeyButton(tr("Turn the crank"));
    for (KeyButton *key : {m_undo, m_planKey, m_allHere, m_turn})
        crank->addWidget(key, 0, Qt::AlignTop);
    column->addLayout(crank);
    m_then = new Heading({}, TextSize::Small);
    m_known = new Heading({}, TextSize::Small, Heading::Tone::Quiet);
    for (Heading *line : {m_then, m_known}) {
        line->setWordWrap(true);
        column->addWidget(line);
    }

    m_head = new HeadView;
    column->addWidget(m_head, 1);
    column->addWidget(new Rule(Rule::Weight::Heavy));
    m_bar = new ReadingBar(m_desk.mark());
    column->addWidget(m_bar);
}

void ValveSheet::refresh()
{
    showCrank();
    showPlan();
    showHead();
    showBar();
}

void ValveSheet::showCrank()
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    const auto crank = state.crank ? state.crank->crank : std::nullopt;
    m_place->setText(crankName(design, crank));
    if (crank) {
        const CrankSaying saying = sayCrank(design, *crank);
        m_place->setToolTip(strokeCheckSentence(design, strokeCheck(design, saying.place.cylinder)));
    }
    const auto last = undoable(state, m_desk.garage().seat());
    m_undo->setEnabled(last.has_value());
    const auto act = std::ranges::find(state.acts, last, [](const Act &each) { return std::optional(each.seq); });
    m_undo->setToolTip(act == state.acts.end() ? QString() : tr("Take back: %1 (Ctrl+Z)").arg(actText(*act, state)));
}

void ValveSheet::showPlan()
{
    const JobState &state = m_book.state();
    const CrankPlan plan = state.plan ? *state.plan : m_book.proposedPlan();
    const EngineDesign &design = state.frame->engine.design;
    const auto setsAt = [&](std::size_t position) { return QString::fromStdString(describePoints(design, plan.positions[position])); };
    const auto stands = planPositionHere(state);
    m_sets->setText(stands ? setsAt(*stands) : tr("at no position of the plan"));
    m_then->setVisible(plan.positions.size() > (stands ? 1U : 0U));
    if (m_then->isVisibleTo(this)) {
        const std::size_t next = stands ? (*stands + 1) % plan.positions.size() : 0;
        m_then->setText(tr("Then %1: %2").arg(placeInText(design, plan.positions[next].place), setsAt(next)));
    }
    m_known->setText(tr("%1 · plan %2").arg(crankKnown(state, m_desk.garage().now()), planSource(design, plan)));
}

void ValveSheet::showHead()
{
    const JobState &state = m_book.state();
    m_head->setDesign(state.frame->engine.design);
    QStringList names;
    QList<PointLook> looks;
    std::optional<qsizetype> inHand;
    for (const SettingPoint &point : state.frame->engine.points) {
        const bool held = m_inHand == point.id;
        if (held)
            inHand = looks.size();
        names.append(pointName(*state.frame, point.id));
        looks.append(lookOf(state, point.id, held));
    }
    m_head->setPoints(names, looks, inHand);
}

Phase ValveSheet::phaseOf(PointId point) const
{
    return m_phase.value_or(phaseNow(m_book.state().point(point)));
}

void ValveSheet::showBar()
{
    const JobState &state = m_book.state();
    const NextAct next = nextValveAct(state);
    BarView view;
    if (m_inHand)
        view = barViewOf(m_book, *m_inHand, phaseOf(*m_inHand), m_unit);
    else
        view.now = next.kind == NextAct::Kind::NothingOpen ? tr("Every valve is set. Enter goes on to the next line.")
                                                           : nextActSentence(next, state, m_book.tool());
    if (!m_inHand && m_unit)
        view.unit = *m_unit;
    m_bar->present(view);
    const bool turning = next.kind == NextAct::Kind::TurnCrank && !m_inHand;
    m_turn->setStrong(turning);
    m_allHere->setEnabled(
        std::ranges::any_of(state.frame->engine.points, [&](const SettingPoint &point) { return canBeLeftHere(state, point); }));
}

void ValveSheet::takeInHand(PointId point)
{
    m_inHand = point;
    m_phase.reset();
    m_asked.reset();
    m_bar->clearValue();
    refresh();
    focusValue();
}

void ValveSheet::focusValue()
{
    m_bar->focusValue();
}

void ValveSheet::goToNext()
{
    m_inHand = nextValveAct(m_book.state()).point;
    m_phase.reset();
    m_asked.reset();
    m_bar->clearValue();
}

void ValveSheet::undo()
{
    after(m_book.undo());
}

void ValveSheet::redo()
{
    after(m_book.redo());
}

void ValveSheet::moveOn()
{
    const NextAct next = nextValveAct(m_book.state());
    switch (next.kind) {
    case NextAct::Kind::TurnCrank: Q_EMIT turnWanted(); break;
    case NextAct::Kind::ConfirmCrank: Q_EMIT crankWanted(); break;
    case NextAct::Kind::NothingOpen: Q_EMIT finished(); break;
    // Enter on nothing logs nothing; it goes to the point that is next.
    default:
        if (next.point != m_inHand && next.point)
            takeInHand(*next.point);
    }
}

void ValveSheet::enter(const ReadingText &reading)
{
    if (!m_inHand)
        return;
    const auto *bands = lashBandsOf(m_book, *m_inHand);
    const bool far = bands && farOff(reading, bands->printedFor(reading.value.unit));
    const QString typed = typedText(reading.value);
    const QString question =
        far ? tr("%1 is far from what the manual asks. Nothing is logged yet; Enter again if it is so.").arg(typed) : QString();
    const ReadingEntry entry{
        .point = *m_inHand, .phase = phaseOf(*m_inHand), .form = reading.form, .value = reading.value, .next = reading.next};
    if (mayGoOn(*m_inHand, typed, question))
        after(m_book.logReading(entry));
}

void ValveSheet::press(ReadingBar::Key key)
{
    if (!m_inHand)
        return;
    const PointId point = *m_inHand;
    if (key == ReadingBar::Key::OtherPhase) {
        m_phase = phaseOf(point) == Phase::AsFound ? Phase::AsLeft : Phase::AsFound;
        showBar();
        focusValue();
        return;
    }
    if (key == ReadingBar::Key::Keep || key == ReadingBar::Key::CheckAgain) {
        after(key == ReadingBar::Key::Keep ? m_book.keepAsLeft(point, {}) : m_book.sendToCheckAgain({point}, {}));
        return;
    }
    const QString about = QString::number(int(key));
    if (!mayGoOn(point, about, {}))
        return;
    switch (key) {
    case ReadingBar::Key::NutOpen: after(m_book.openNut(point)); break;
    case ReadingBar::Key::SpecLeaf: after(m_book.logReading({.point = point, .phase = Phase::AsLeft, .specLeaf = true})); break;
    case ReadingBar::Key::Loose: after(m_book.logReading({.point = point, .phase = phaseOf(point), .form = ReadingForm::Loose})); break;
    case ReadingBar::Key::Tight: after(m_book.logReading({.point = point, .phase = phaseOf(point), .form = ReadingForm::Tight})); break;
    case ReadingBar::Key::ByFeel: after(m_book.logReading({.point = point, .phase = phaseOf(point), .form = ReadingForm::ByFeel})); break;
    case ReadingBar::Key::Keep:
    case ReadingBar::Key::CheckAgain:
    case ReadingBar::Key::OtherPhase: break;
    }
}

ValveSheet::Question ValveSheet::questionAbout(std::optional<PointId> point, const QString &about) const
{
    const auto &crank = m_book.state().crank;
    return {point, about, crank ? std::optional(crank->seq) : std::nullopt};
}

bool ValveSheet::mayGoOn(PointId point, const QString &about, const QString &farOffQuestion)
{
    const Question question = questionAbout(point, about);
    if (m_asked == question)
        return true;
    const JobState &state = m_book.state();
    const Here place = here(state, point);
    QStringList why;
    if (place == Here::NotHere)
        why.append(tr("%1 may be off its seat with the crank here. Nothing is logged yet; the same again logs it, with that remark.")
                       .arg(pointName(*state.frame, point)));
    else if (place == Here::Unknown)
        why.append(tr("Nobody knows where the crank stands. Nothing is logged yet; the same again logs it, with that remark."));
    if (!farOffQuestion.isEmpty())
        why.append(farOffQuestion);
    if (why.isEmpty())
        return true;
    m_asked = question;
    m_bar->ask(why.join(QChar::Space));
    return false;
}

void ValveSheet::logAllHere()
{
    const Question question = questionAbout(std::nullopt, QStringLiteral("all"));
    if (m_asked == question) {
        after(m_book.leaveAllHere());
        return;
    }
    const JobState &state = m_book.state();
    QStringList names;
    for (const SettingPoint &point : state.frame->engine.points)
        if (canBeLeftHere(state, point))
            names.append(pointShort(*state.frame, point.id));
    m_asked = question;
    m_bar->ask(tr("%1: all set with the spec's leaf, locked, felt again? Nothing is logged yet; “All set here” once more logs it.")
                   .arg(names.join(QStringLiteral(", "))));
}

void ValveSheet::after(const Result<ActSeq> &logged)
{
    m_asked.reset();
    if (!logged) {
        m_bar->refuse(sentence(logged.error()));
        return;
    }
    m_bar->clearValue();
    m_phase.reset();
    const JobState &state = m_book.state();
    const auto act = std::ranges::find(state.acts, *logged, &Act::seq);
    m_inHand = act == state.acts.end() ? nextValveAct(state).point : inHandAfter(*act);
    refresh();
    if (act != state.acts.end())
        m_bar->done(actText(*act, state));
    focusValue();
    // The crank's place was taken back: it is asked for before anything more is set.
    if (!m_book.sitting().crankConfirmed)
        Q_EMIT crankWanted();
}

std::optional<PointId> ValveSheet::inHandAfter(const Act &act) const
{
    const JobState &state = m_book.state();
    // A nut just opened stays in hand: it is this valve that is being set. What was taken back comes in hand again.
    if (const auto *open = std::get_if<NutOpenFact>(&act.what.fact))
        return open->point;
    if (act.what.withdraws) {
        const auto target = std::ranges::find(state.acts, *act.what.withdraws, &Act::seq);
        const auto points = target == state.acts.end() ? std::vector<PointId>{} : pointsOf(target->what.fact);
        if (!points.empty())
            return points.front();
    }
    return nextValveAct(state).point;
}

} // namespace asleft
