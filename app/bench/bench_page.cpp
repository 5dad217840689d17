#include "bench/bench_page.h"

#include "bench/crank_sheet.h"
#include "bench/keypad.h"
#include "bench/open_column.h"
#include "bench/plan_sheet.h"
#include "bench/reading_edit.h"
#include "bench/sitting_sheet.h"
#include "bench/step_sheet.h"
#include "bench/turn_sheet.h"
#include "bench/valve_sheet.h"
#include "parts/heading.h"
#include "parts/ink_of.h"
#include "parts/key_button.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/sheet_head.h"

#include <show/point_shape.h>
#include <show/words.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int stepsWidth = 252;
constexpr int openWidth = 272;
constexpr int milliseconds = 500; ///< between two looks at what other seats have done

} // namespace

BenchPage::BenchPage(Desk &desk, QWidget *parent) : QWidget(parent), m_desk(desk)
{
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 10);
    page->setSpacing(8);
    m_head = new SheetHead(tr("Bench"));
    page->addWidget(m_head);
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin, 0, sheetMargin, 0);
    columns->setSpacing(16);
    page->addLayout(columns, 1);
    buildSteps(columns);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_middle = new QStackedWidget;
    m_nothing = new Heading(tr("No job is open. Choose one under Jobs, or begin a new one there."), TextSize::Now, Heading::Tone::Quiet);
    m_nothing->setWordWrap(true);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_middle->addWidget(m_nothing);
    columns->addWidget(m_middle, 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_open = new OpenColumn(desk);
    m_open->setFixedWidth(openWidth);
    columns->addWidget(m_open);

    connect(m_steps, &RuledList::chosen, this, [this](qint64 id) { viewStep(StepId(id)); });
    connect(m_open, &OpenColumn::stepWanted, this, &BenchPage::viewStep);
    connect(m_open, &OpenColumn::pointWanted, this, [this](PointId point) {
        if (!m_book->sitting().who)
            return;
        showHead();
        if (sheet() == m_valves)
            m_valves->takeInHand(point);
    });
    auto *look = new QTimer(this);
    look->start(milliseconds);
    connect(look, &QTimer::timeout, this, [this] {
        // What cannot be read now is read at the next look; an act of one's own says what is wrong.
        if (m_book)
            (void)m_book->catchUp();
    });
    connect(new QShortcut(QKeySequence::Undo, this), &QShortcut::activated, this, [this] { takeBack(false); });
    connect(new QShortcut(QKeySequence::Redo, this), &QShortcut::activated, this, [this] { takeBack(true); });
}

BenchPage::~BenchPage() = default;

void BenchPage::buildSteps(QHBoxLayout *columns)
{
    auto *column = new QVBoxLayout;
    column->setSpacing(4);
    auto *line = new QHBoxLayout;
    line->addWidget(new Heading(tr("Steps"), TextSize::BodyStrong), 1);
    m_count = new Heading({}, TextSize::Small, Heading::Tone::Quiet);
    line->addWidget(m_count);
    column->addLayout(line);
    m_stepRows = new RuledRows(this);
    m_steps = new RuledList(tr("Steps"), m_stepRows);
    m_steps->setPaintIcon([this](QPainter &painter, const QRectF &area, qint64 id, const Ink &ink) {
        const Step *step = m_book ? m_book->state().frame->step(StepId(id)) : nullptr;
        if (step)
            paintStep(painter, area, stepLookOf(m_book->state(), *step), ink);
    });
    m_keypad = new Keypad;
    m_left = new QStackedWidget;
    m_left->addWidget(m_steps);
    m_left->addWidget(m_keypad);
    m_left->setFixedWidth(stepsWidth);
    column->addWidget(m_left, 1);
    m_padKey = new KeyButton(tr("Keypad"));
    m_padKey->setCheckable(true);
    m_padKey->setToolTip(tr("Digits to touch, in place of the steps"));
    m_sittingKey = new KeyButton(tr("Who, leaves"));
    m_sittingKey->setPlain(true);
    m_sittingKey->setToolTip(tr("Somebody else takes over, another feeler set, cold or hot"));
    m_sittingKey->setEnabled(false);
    auto *foot = new QHBoxLayout;
    foot->addWidget(m_padKey);
    foot->addWidget(m_sittingKey);
    foot->addStretch(1);
    column->addLayout(foot);
    connect(m_sittingKey, &KeyButton::clicked, this, &BenchPage::openSitting);
    connect(m_padKey, &KeyButton::toggled, this, [this](bool on) {
        m_left->setCurrentWidget(on ? static_cast<QWidget *>(m_keypad) : m_steps);
        m_padKey->setText(on ? tr("Steps") : tr("Keypad"));
        takeFocus();
    });
    columns->addLayout(column);
}

std::optional<JobId> BenchPage::job() const
{
    return m_book ? std::optional(m_book->state().frame->job.id) : std::nullopt;
}

QWidget *BenchPage::sheet() const
{
    return m_middle->currentWidget();
}

void BenchPage::openJob(JobId job)
{
    if (this->job() == job) {
        // Another job may have failed to open since; this one is still here.
        if (sheet() == m_nothing)
            goOn();
        return;
    }
    auto book = JobBook::open(m_desk.garage(), job);
    if (!book) {
        m_nothing->setText(sentence(book.error()));
        m_middle->setCurrentWidget(m_nothing);
        return;
    }
    for (QWidget *old : {static_cast<QWidget *>(m_sitting), static_cast<QWidget *>(m_valves), static_cast<QWidget *>(m_crank),
                         static_cast<QWidget *>(m_turn), static_cast<QWidget *>(m_step), static_cast<QWidget *>(m_plan)})
        delete old;
    m_sitting = nullptr;
    m_book = std::move(*book);
    m_viewed.reset();
    buildSheets();
    m_sittingKey->setEnabled(true);
    connect(m_book.get(), &JobBook::changed, this, &BenchPage::refresh);
    refresh();
    showSheet(m_sitting);
}

void BenchPage::buildSheets()
{
    buildSitting();
    m_valves = new ValveSheet(m_desk, *m_book);
    m_crank = new CrankSheet(m_desk, *m_book);
    m_turn = new TurnSheet(m_desk, *m_book);
    m_step = new StepSheet(m_desk, *m_book);
    m_plan = new PlanSheet(m_desk, *m_book);
    for (QWidget *sheet : {static_cast<QWidget *>(m_valves), static_cast<QWidget *>(m_crank), static_cast<QWidget *>(m_turn),
                           static_cast<QWidget *>(m_step), static_cast<QWidget *>(m_plan)})
        m_middle->addWidget(sheet);
    m_keypad->setTarget(m_valves->bar()->edit());

    const auto backToHead = [this] { showSheet(m_valves); };
    connect(m_step, &StepSheet::done, this, &BenchPage::goOn);
    connect(m_valves, &ValveSheet::finished, this, &BenchPage::goOn);
    connect(m_valves, &ValveSheet::turnWanted, this, &BenchPage::turnCrank);
    connect(m_valves, &ValveSheet::crankWanted, this, [this] { showSheet(m_crank); });
    connect(m_valves, &ValveSheet::planWanted, this, [this] {
        m_plan->refresh();
        showSheet(m_plan);
    });
    connect(m_crank, &CrankSheet::answered, this, backToHead);
    connect(m_turn, &TurnSheet::turned, this, backToHead);
    connect(m_turn, &TurnSheet::left, this, backToHead);
    connect(m_turn, &TurnSheet::crankWanted, this, [this] { showSheet(m_crank); });
    connect(m_plan, &PlanSheet::left, this, backToHead);
}

void BenchPage::buildSitting()
{
    SittingSheet *old = std::exchange(m_sitting, new SittingSheet(m_desk, *m_book));
    m_middle->addWidget(m_sitting);
    if (old)
        old->deleteLater();
    connect(m_sitting, &SittingSheet::begun, this, &BenchPage::goOn);
}

void BenchPage::openSitting()
{
    buildSitting();
    showSheet(m_sitting);
}

void BenchPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    // People and feeler sets may have come on another page meanwhile.
    if (m_book && sheet() == m_sitting)
        openSitting();
}

void BenchPage::keepPlan()
{
    const JobState &state = m_book->state();
    const bool setsValves = std::ranges::any_of(state.frame->job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    // The plan is stored with the job from its first sitting on, so that a newer program does not reshuffle half a job. If it cannot be
    // stored now, it is tried again the next time the head is shown, and the next act says what is wrong.
    if (setsValves && !state.plan)
        (void)m_book->choosePlan(m_book->proposedPlan());
}

void BenchPage::goOn()
{
    keepPlan();
    const JobState &state = m_book->state();
    const NextAct next = nextAct(state);
    if (next.step)
        viewStep(*next.step);
    else if (next.point)
        showHead();
    else if (!state.frame->job.steps.empty())
        viewStep(m_viewed.value_or(state.frame->job.steps.back().id));
}

void BenchPage::viewStep(StepId id)
{
    const Step *step = m_book ? m_book->state().frame->step(id) : nullptr;
    if (!step)
        return;
    m_viewed = id;
    if (!m_book->sitting().who) {
        showSheet(m_sitting);
        return;
    }
    if (step->kind == StepKind::Note) {
        m_step->showStep(id);
        showSheet(m_step);
        return;
    }
    showHead();
}

void BenchPage::showHead()
{
    keepPlan();
    // Whether a valve may be set hangs on where the crank stands: that is asked first, once a sitting.
    showSheet(m_book->sitting().crankConfirmed ? static_cast<QWidget *>(m_valves) : m_crank);
}

void BenchPage::turnCrank()
{
    // What cannot be done yet is said where it is mended, at the head.
    if (const auto open = openNuts(m_book->state()); !open.empty()) {
        QStringList names;
        for (const PointId point : open)
            names.append(pointShort(*m_book->state().frame, point));
        showSheet(m_valves);
        m_valves->takeInHand(open.front());
        m_valves->bar()->refuse(sentence(Error{ErrorKind::NutStillOpen, {names.join(QStringLiteral(", ")).toStdString()}}));
        return;
    }
    if (!m_book->sitting().crankConfirmed) {
        showHead();
        return;
    }
    m_turn->refresh();
    showSheet(m_turn);
}

void BenchPage::showSheet(QWidget *sheet)
{
    if (sheet == m_valves) {
        m_valves->bar()->quiet();
        const auto &steps = m_book->state().frame->job.steps;
        const auto valveStep = std::ranges::find(steps, StepKind::ValveSet, &Step::kind);
        if (valveStep != steps.end())
            m_viewed = valveStep->id;
        if (!m_valves->inHand() || here(m_book->state(), *m_valves->inHand()) != Here::InPlan)
            m_valves->goToNext();
        m_valves->refresh();
    }
    if (sheet == m_crank)
        m_crank->refresh();
    m_middle->setCurrentWidget(sheet);
    showSteps();
    takeFocus();
}

void BenchPage::takeFocus()
{
    QWidget *sheet = m_middle->currentWidget();
    if (sheet == m_sitting && m_sitting)
        m_sitting->takeFocus();
    else if (sheet == m_valves && m_valves)
        m_valves->focusValue();
    else if (sheet == m_crank && m_crank)
        m_crank->takeFocus();
    else if (sheet == m_turn && m_turn)
        m_turn->takeFocus();
    else if (sheet == m_step && m_step)
        m_step->takeFocus();
    else if (sheet == m_plan && m_plan)
        m_plan->takeFocus();
}

void BenchPage::takeBack(bool again)
{
    if (!m_book || !m_book->sitting().who)
        return;
    if (sheet() != m_valves)
        showSheet(m_valves);
    again ? m_valves->redo() : m_valves->undo();
}

void BenchPage::refresh()
{
    showHeader();
    showSteps();
    m_open->present(m_book->state());
    m_valves->refresh();
    m_step->refresh();
    if (sheet() == m_turn)
        m_turn->refresh();
    if (sheet() == m_crank)
        m_crank->refresh();
    // Queued: the key that chose a plan is one of those that are built anew.
    if (sheet() == m_plan)
        QTimer::singleShot(0, m_plan, &PlanSheet::refresh);
}

void BenchPage::showHeader()
{
    const JobState &state = m_book->state();
    m_head->setTitle(QString::fromStdString(state.frame->vehicle.name));
    m_head->setBeside(QString::fromStdString(state.frame->job.title));
    const Sitting &sitting = m_book->sitting();
    const Person *person = sitting.who ? state.frame->person(*sitting.who) : nullptr;
    QStringList words;
    if (person)
        words.append(tr("who: %1").arg(QString::fromStdString(person->initials)));
    if (const Tool *set = m_book->tool())
        words.append(QString::fromStdString(set->name));
    if (person)
        words.append(conditionName(sitting.condition));
    m_head->setRight(state.frame->meter ? meterText(*state.frame->meter) : QString(), words.join(QStringLiteral(" · ")));
}

void BenchPage::showSteps()
{
    if (!m_book)
        return;
    const JobState &state = m_book->state();
    QList<RuledRow> rows;
    int done = 0;
    for (const Step &step : state.frame->job.steps) {
        const bool isDone = stepDone(state, step);
        done += isDone ? 1 : 0;
        rows.append({.id = step.id.key(), .title = QString::fromStdString(step.title), .note = {}, .right = {}, .quiet = isDone});
    }
    m_stepRows->setRows(rows);
    m_count->setText(tr("%1 of %2").arg(done).arg(rows.size()));
    m_steps->setCurrentId(m_viewed ? std::optional(m_viewed->key()) : std::nullopt);
    m_steps->viewport()->update();
}

} // namespace asleft
