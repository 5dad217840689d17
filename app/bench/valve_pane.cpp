#include <bench/valve_pane.h>

#include "keep_plan.h"
#include <bench/bench_sheet_pane.h>
#include <bench/check_again_pane.h>
#include <bench/crank_pane.h>
#include <bench/plan_pane.h>
#include <bench/turn_pane.h>
#include <drawn/head_view.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>
#include <parts/rule.h>

#include <words/errors.h>
#include <words/job.h>
#include <words/numbers.h>
#include <words/points.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

ValvePane::ValvePane(AppContext &context, JobBook &book, QWidget *parent)
    : Pane(parent), m_context(context), m_book(book), m_others(book.state(), context.garage().station())
{
    build();
    wire();
    m_head->addShortcuts(this);
    m_inHand = pointOf(nextValveAct(m_book.state()));
    refresh();
}

void ValvePane::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    m_line = new CrankLine;
    column->addWidget(m_line);
    m_head = new HeadView;
    column->addWidget(m_head, 1);
    column->addWidget(new Rule(Rule::Weight::Heavy));
    m_bar = new EntryBar(tr("Reading"), valveKeys(), BesideField::Scale);
    column->addWidget(m_bar);
    keepFromWriting(m_context.garage(), {turnKey(), allHereKey(), sheetKey(), undoKey()});
    keepFromWriting(m_context.garage(), m_bar->keys());
}

void ValvePane::wire()
{
    connect(m_head, &HeadView::pointChosen, this,
            [this](qsizetype index) { takeInHand(m_book.state().frame->engine.points.at(std::size_t(index)).id); });
    connect(m_bar, &EntryBar::entered, this, &ValvePane::enter);
    connect(m_bar, &EntryBar::insteadTaken, this, &ValvePane::logInstead);
    connect(m_bar, &EntryBar::reasonGiven, this, &ValvePane::keep);
    connect(m_bar, &EntryBar::keyed, this, [this](int key) { press(Key(key)); });
    connect(m_bar, &EntryBar::typing, this, [this] {
        m_asked.reset();
        m_instead.reset();
        // What is being typed stays what it was begun as, whatever another computer logs meanwhile.
        if (m_inHand && !m_phase)
            m_phase = phaseOf(*m_inHand);
    });
    connect(m_bar, &EntryBar::unitChosen, this, [this](LengthUnit unit) {
        m_unit = unit;
        m_asked.reset();
        showBar();
        takeFocus();
    });
    connect(m_bar, &EntryBar::arrowPressed, this, &ValvePane::goAside);
    connect(m_line, &CrankLine::keyed, this, &ValvePane::pressLine);
}

void ValvePane::pressLine(CrankLine::Key key)
{
    switch (key) {
    case CrankLine::Key::Undo: takeBack(false); break;
    case CrankLine::Key::Plan: Q_EMIT wanted({makePane<PlanPane>}); break;
    case CrankLine::Key::Sheet: Q_EMIT wanted({makePane<BenchSheetPane>}); break;
    case CrankLine::Key::AllHere: logAllHere(); break;
    case CrankLine::Key::Turn: Q_EMIT wanted({makePane<TurnPane>}); break;
    }
}

void ValvePane::refresh()
{
    m_line->present(m_book, m_context.garage().now(), m_context.garage().station());
    showHead();
    showBar();
    hearOthers();
}

void ValvePane::showHead()
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

Phase ValvePane::phaseOf(PointId point) const
{
    if (m_phase)
        return *m_phase;
    // Turns from zero lash are counted while setting: nothing like them can be found.
    return turnsOf(*m_book.state().frame, point) ? Phase::AsLeft : phaseNow(m_book.state().point(point));
}

void ValvePane::showBar()
{
    const NextAct next = nextValveAct(m_book.state());
    const auto nowWithout = [&] {
        return std::holds_alternative<next::NothingOpen>(next) ? tr("Every point is set. Enter goes on to the next line.")
                                                               : nextActSentence(next, m_book.state(), m_book.tool());
    };
    EntryView view =
        m_inHand ? barViewOf(m_book, *m_inHand, choice(phaseOf(*m_inHand))) : barViewOfNone(m_book, nowWithout(), choice(Phase::AsFound));
    view.readOnly = readOnly();
    m_bar->present(view);
    turnKey()->setStrong(std::holds_alternative<next::TurnCrank>(next) && !m_inHand);
}

void ValvePane::hearOthers()
{
    const JobState &state = m_book.state();
    const Act *news = m_others.heardOf(
        state, [&](const Act &act) { return m_inHand && std::ranges::count(pointsOf(spokenOf(state, act).what.fact), *m_inHand) > 0; });
    if (!news)
        return;
    const QString said = otherStationText(*news, state);
    // A question asked before was about another state of the point.
    m_asked.reset();
    m_instead.reset();
    m_bar->notice(said);
    if (!m_bar->edit()->text().isEmpty())
        m_news = said;
}

void ValvePane::takeInHand(PointId point)
{
    m_inHand = point;
    m_phase.reset();
    m_asked.reset();
    m_news.clear();
    m_bar->clearValue();
    refresh();
    takeFocus();
}

void ValvePane::goAside(Qt::Key arrow)
{
    const auto &points = m_book.state().frame->engine.points;
    const auto now = std::ranges::find(points, m_inHand, [](const SettingPoint &point) { return std::optional(point.id); });
    const auto next = now == points.end() ? std::nullopt : m_head->neighbour(now - points.begin(), arrow);
    if (next)
        takeInHand(points.at(std::size_t(*next)).id);
}

std::optional<StepId> ValvePane::ownStep() const
{
    const auto &steps = m_book.state().frame->job.steps;
    const auto line = std::ranges::find(steps, StepKind::ValveSet, &Step::kind);
    return line == steps.end() ? std::nullopt : std::optional(line->id);
}

std::optional<PaneWanted> ValvePane::asksFirst()
{
    keepPlan(m_book);
    if (m_book.session().crankConfirmed || readOnly())
        return std::nullopt;
    return PaneWanted{makePane<CrankPane>};
}

void ValvePane::open()
{
    // What others did while it was out of sight is in sight now; it is no news.
    hearOthers();
    m_bar->quiet();
    if (!m_inHand || here(m_book.state(), *m_inHand) != Here::InPlan)
        goToNext();
    refresh();
}

void ValvePane::takeUp(const Subject &about)
{
    if (const auto *point = std::get_if<PointId>(&about))
        takeInHand(*point);
}

QLineEdit *ValvePane::keypadTarget() const
{
    return m_bar->edit();
}

void ValvePane::goToNext()
{
    m_inHand = pointOf(nextValveAct(m_book.state()));
    m_phase.reset();
    m_asked.reset();
    m_news.clear();
    m_bar->clearValue();
}

bool ValvePane::takeBack(bool again)
{
    log([&] { return again ? m_book.redo() : m_book.undo(); });
    return true;
}

void ValvePane::moveOn()
{
    const NextAct next = nextValveAct(m_book.state());
    const auto point = pointOf(next);
    if (std::holds_alternative<next::NothingOpen>(next))
        Q_EMIT finished();
    else if (point && point != m_inHand)
        // Enter on nothing logs nothing; it goes to the point that is next.
        takeInHand(*point);
    else if (std::holds_alternative<next::TurnCrank>(next) && !readOnly())
        Q_EMIT wanted({makePane<TurnPane>});
    else if (std::holds_alternative<next::ConfirmCrank>(next) && !readOnly())
        Q_EMIT wanted({makePane<CrankPane>});
}

void ValvePane::enter(const QString &text)
{
    if (text.isEmpty()) {
        moveOn();
        return;
    }
    if (!m_inHand || readOnly())
        return;
    const Phase phase = phaseOf(*m_inHand);
    const auto reading = readTyped(text, typedAs(m_book, *m_inHand, choice(phase)));
    if (!reading)
        m_bar->refuse(sentence(reading.error()));
    else
        logReading(entryOf(*reading, *m_inHand, phase), valueDoubt(*m_book.state().frame, *m_inHand, *reading, m_context.mark()));
}

void ValvePane::logReading(const ReadingEntry &entry, const ValueDoubt &doubt)
{
    if (mayGoOn(question(entry), entry.point, doubt))
        log([&] { return m_book.logReading(entry); });
}

void ValvePane::logInstead()
{
    // What else the question said, as where the crank stands, this answers too.
    if (m_inHand && m_instead)
        log([&] { return m_book.logReading(entryOf(*m_instead, *m_inHand, phaseOf(*m_inHand))); });
}

void ValvePane::keep(const QString &reason)
{
    if (m_inHand)
        log([&] { return m_book.keepAsLeft(*m_inHand, reason.toStdString()); });
}

void ValvePane::press(Key key)
{
    if (key == Key::CheckAgain) {
        Q_EMIT wanted({makePane<CheckAgainPane>, m_inHand ? std::optional<Subject>(*m_inHand) : std::nullopt});
        return;
    }
    if (!m_inHand)
        return;
    const PointId point = *m_inHand;
    ReadingEntry entry{.point = point, .phase = phaseOf(point)};
    switch (key) {
    case Key::SpecLeaf:
        entry.phase = Phase::AsLeft;
        entry.form = turnsOf(*m_book.state().frame, point) ? ReadingForm::Turned : ReadingForm::Exact;
        entry.specLeaf = true;
        break;
    case Key::Loose: entry.form = ReadingForm::Loose; break;
    case Key::Tight: entry.form = ReadingForm::Tight; break;
    case Key::ByFeel: entry.form = ReadingForm::ByFeel; break;
    case Key::NutOpen: openNut(point); return;
    case Key::Keep: m_bar->askReason(tr("Why it is kept; Enter alone keeps it without a reason"), tr("keep it")); return;
    case Key::OtherPhase:
        m_phase = entry.phase == Phase::AsFound ? Phase::AsLeft : Phase::AsFound;
        showBar();
        takeFocus();
        return;
    case Key::CheckAgain: return;
    }
    logReading(entry, {});
}

void ValvePane::openNut(PointId point)
{
    if (mayGoOn(question(NutOpened{point}), point, {}))
        log([&] { return m_book.openNut(point); });
}

ValvePane::Question ValvePane::question(decltype(Question::what) what) const
{
    const auto &crank = m_book.state().crank;
    return {std::move(what), crank ? std::optional(crank->seq) : std::nullopt};
}

bool ValvePane::mayGoOn(const Question &asked, PointId point, const ValueDoubt &doubt)
{
    if (m_asked == asked)
        return true;
    QStringList why;
    if (!m_news.isEmpty())
        why.append(tr("%1 Nothing of yours is logged yet; the same again logs it on top.").arg(m_news));
    why.append(placeDoubt(m_book.state(), point));
    if (!doubt.question.isEmpty())
        why.append(tr("%1 Enter again logs it as typed.").arg(doubt.question));
    why.removeAll(QString());
    if (why.isEmpty())
        return true;
    m_asked = asked;
    m_instead = doubt.instead;
    if (m_instead)
        m_bar->askWhich(why.join(QChar::Space), typedText(*m_instead));
    else
        m_bar->ask(why.join(QChar::Space));
    return false;
}

void ValvePane::logAllHere()
{
    const Question asked = question(AllHere{});
    if (m_asked == asked) {
        log([&] { return m_book.leaveAllHere(); });
        return;
    }
    const JobState &state = m_book.state();
    QStringList names;
    for (const SettingPoint &point : state.frame->engine.points)
        if (canBeLeftHere(state, point))
            names.append(pointShort(*state.frame, point.id));
    m_asked = asked;
    m_bar->ask(tr("%1: all set with what the spec asks, locked, felt again? Nothing is logged yet; “All set here” once more logs it.")
                   .arg(names.join(QStringLiteral(", "))));
}

void ValvePane::tellDone(ActSeq seq)
{
    const JobState &state = m_book.state();
    const auto act = std::ranges::find(state.acts, seq, &Act::seq);
    if (act == state.acts.end())
        return;
    m_bar->done(actText(*act, state));
    // It came on top of what another computer had just logged, which nobody here had seen yet.
    if (const Act *theirs = underneath(state, *act))
        m_bar->notice(otherStationText(*theirs, state));
}

void ValvePane::after(const Result<ActSeq> &logged)
{
    m_asked.reset();
    m_instead.reset();
    if (!logged) {
        if (hasMissed())
            refresh();
        m_bar->refuse(sentence(logged.error()));
        return;
    }
    m_bar->clearValue();
    m_phase.reset();
    m_news.clear();
    const JobState &state = m_book.state();
    const auto act = std::ranges::find(state.acts, *logged, &Act::seq);
    m_inHand = act == state.acts.end() ? pointOf(nextValveAct(state)) : inHandAfter(*act);
    refresh();
    tellDone(*logged);
    takeFocus();
    // The crank's place was taken back: it is asked for before anything more is set.
    if (!m_book.session().crankConfirmed)
        Q_EMIT wanted({makePane<CrankPane>});
}

std::optional<PointId> ValvePane::inHandAfter(const Act &act) const
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
    return pointOf(nextValveAct(state));
}

} // namespace asleft
