#include "bench/bench_page.h"

#include "bench/check_again_sheet.h"
#include "bench/crank_sheet.h"
#include "bench/loosen_sheet.h"
#include "bench/open_column.h"
#include "bench/paper_box.h"
#include "bench/paper_sheet.h"
#include "bench/plan_sheet.h"
#include "bench/reading_edit.h"
#include "bench/sitting_sheet.h"
#include "bench/step_sheet.h"
#include "bench/steps_column.h"
#include "bench/tighten_sheet.h"
#include "bench/turn_sheet.h"
#include "bench/valve_sheet.h"
#include "parts/heading.h"
#include "parts/ink_of.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/sheet_head.h"
#include "read_only.h"
#include "sheet_saving.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int narrow = 1200; ///< a page less wide has narrower columns beside the sheet
constexpr int stepsWidth = 252;
constexpr int openWidth = 272;
constexpr int narrowWidth = 216;      ///< of either
constexpr int betweenLooks = 500;     ///< milliseconds between two looks at what other seats have done
constexpr qint64 soonest = 250;       ///< milliseconds; a clock that was set back is not asked over and over
constexpr qint64 longest = 3'600'000; ///< milliseconds

} // namespace

BenchPage::BenchPage(Desk &desk, QWidget *parent)
    : QWidget(parent), m_desk(desk), m_saving(new SheetSaving(this)), m_waitOver(new QTimer(this))
{
    build();
    wire();
    shortcuts();
}

BenchPage::~BenchPage() = default;

void BenchPage::build()
{
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 10);
    page->setSpacing(8);
    m_head = new SheetHead(tr("Bench"));
    page->addWidget(m_head);
    auto *said = new QHBoxLayout;
    said->setContentsMargins(sheetMargin, 0, sheetMargin, 0);
    m_message = new MessageLine;
    said->addWidget(m_message);
    page->addLayout(said);
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin, 0, sheetMargin, 0);
    columns->setSpacing(16);
    page->addLayout(columns, 1);
    m_steps = new StepsColumn;
    keepFromWriting(m_desk.garage(), {m_steps->sittingKey(), m_steps->typeKey()});
    columns->addWidget(m_steps);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_middle = new QStackedWidget;
    m_nothing =
        Heading::wrapped(tr("No job is open. Choose one under Jobs, or begin a new one there."), TextSize::Now, Heading::Tone::Quiet);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_middle->addWidget(m_nothing);
    columns->addWidget(m_middle, 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_open = new OpenColumn(m_desk);
    columns->addWidget(m_open);
}

void BenchPage::wire()
{
    connect(m_steps, &StepsColumn::stepChosen, this, &BenchPage::viewStep);
    connect(m_steps, &StepsColumn::sittingWanted, this, &BenchPage::openSitting);
    connect(m_steps, &StepsColumn::typeWanted, this, &BenchPage::typeSheet);
    connect(m_steps, &StepsColumn::printWanted, this, &BenchPage::printSheet);
    connect(m_steps, &StepsColumn::turnedOver, this, &BenchPage::takeFocus);
    connect(m_open, &OpenColumn::stepWanted, this, &BenchPage::viewStep);
    connect(m_open, &OpenColumn::pointWanted, this, &BenchPage::openPoint);
    connect(m_open, &OpenColumn::jointWanted, this, &BenchPage::openJoint);
    connect(m_saving, &SheetSaving::written, m_message, &MessageLine::done);
    connect(m_saving, &SheetSaving::refused, m_message, &MessageLine::refuse);
    auto *look = new QTimer(this);
    look->start(betweenLooks);
    connect(look, &QTimer::timeout, this, [this] {
        // What cannot be read now is read at the next look; an act of one's own says what is wrong.
        if (m_book)
            (void)m_book->catchUp();
    });
    m_waitOver->setSingleShot(true);
    connect(m_waitOver, &QTimer::timeout, this, &BenchPage::refresh);
}

void BenchPage::shortcuts()
{
    // A standard key may be several sequences.
    const auto onKey = [this](const auto &keys, auto act) { connect(new QShortcut(keys, this), &QShortcut::activated, this, act); };
    onKey(QKeySequence::Undo, [this] { takeBack(false); });
    onKey(QKeySequence::Redo, [this] { takeBack(true); });
    onKey(QKeySequence(Qt::CTRL | Qt::Key_B), [this] { typeSheet(); });
    onKey(QKeySequence::Print, [this] { printSheet(); });
}

RuledList *BenchPage::steps() const
{
    return m_steps->list();
}

KeyButton *BenchPage::keypadKey() const
{
    return m_steps->keypadKey();
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
    if (m_paper && !m_paper->mayLose()) {
        showSheet(m_paper);
        return;
    }
    auto book = JobBook::open(m_desk.garage(), job);
    if (book) {
        takeJob(std::move(*book));
        return;
    }
    m_nothing->setText(sentence(book.error()));
    m_middle->setCurrentWidget(m_nothing);
}

void BenchPage::takeJob(std::unique_ptr<JobBook> book)
{
    qDeleteAll(m_sheets);
    m_sheets.clear();
    delete m_sitting;
    m_sitting = nullptr;
    m_book = std::move(book);
    m_viewed.reset();
    buildSheets();
    wireSheets();
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
    m_again = new CheckAgainSheet(m_desk, *m_book);
    m_paper = new PaperSheet(m_desk, *m_book);
    m_tighten = new TightenSheet(m_desk, *m_book);
    m_loosen = new LoosenSheet(m_desk, *m_book);
    m_sheets = {m_valves, m_crank, m_turn, m_step, m_plan, m_again, m_paper, m_tighten, m_loosen};
    for (MiddleSheet *sheet : m_sheets)
        m_middle->addWidget(sheet);
    m_steps->setKeypadTarget(m_valves->bar()->edit());
}

void BenchPage::wireSheets()
{
    const auto backToHead = [this] { showSheet(m_valves); };
    const auto askForCrank = [this] { showSheet(m_crank); };
    connect(m_step, &StepSheet::done, this, &BenchPage::goOn);
    connect(m_valves, &ValveSheet::finished, this, &BenchPage::goOn);
    for (JointSheet *sheet : std::initializer_list<JointSheet *>{m_tighten, m_loosen})
        connect(sheet, &JointSheet::finished, this, &BenchPage::goOn);
    connect(m_valves, &ValveSheet::turnWanted, this, &BenchPage::turnCrank);
    connect(m_valves, &ValveSheet::crankWanted, this, askForCrank);
    connect(m_valves, &ValveSheet::sheetWanted, this, &BenchPage::typeSheet);
    connect(m_valves, &ValveSheet::checkAgainWanted, this, &BenchPage::checkAgain);
    connect(m_valves, &ValveSheet::planWanted, this, [this] { showSheet(m_plan); });
    connect(m_crank, &CrankSheet::answered, this, backToHead);
    connect(m_turn, &TurnSheet::turned, this, backToHead);
    connect(m_turn, &TurnSheet::left, this, backToHead);
    connect(m_turn, &TurnSheet::crankWanted, this, askForCrank);
    connect(m_plan, &PlanSheet::left, this, backToHead);
    connect(m_again, &CheckAgainSheet::left, this, backToHead);
    connect(m_again, &CheckAgainSheet::logged, this, [this](ActSeq act) {
        showSheet(m_valves);
        m_valves->tellDone(act);
    });
    connect(m_paper, &PaperSheet::left, this, &BenchPage::showHead);
    connect(m_paper, &PaperSheet::logged, this, [this] {
        goOn();
        m_message->done(tr("The sheet is logged."));
    });
    connect(m_paper, &PaperSheet::boxFocused, this, [this](PaperBox *box) { m_steps->setKeypadTarget(box); });
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
    if (middleSheet() == m_paper && !m_paper->mayLeave())
        return;
    buildSitting();
    showSheet(m_sitting);
}

void BenchPage::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    m_steps->setFixedWidth(width() < narrow ? narrowWidth : stepsWidth);
    m_open->setFixedWidth(width() < narrow ? narrowWidth : openWidth);
}

void BenchPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    // People and tools may have come on another page meanwhile.
    if (m_book && sheet() == m_sitting)
        openSitting();
}

bool BenchPage::hasBegun() const
{
    return m_book && (m_book->sitting().who || readOnly());
}

void BenchPage::refresh()
{
    showHeader();
    showSteps();
    m_open->present(m_book->state());
    m_valves->refresh();
    if (middleSheet() && middleSheet() != m_valves)
        middleSheet()->refresh();
    waitForBleedDown();
}

/// What says that the crank has to stand is looked at again when that is over.
void BenchPage::waitForBleedDown()
{
    const auto until = bleedDownUntil(m_book->state());
    const Moment now = m_desk.garage().now();
    if (until && *until > now)
        m_waitOver->start(int(std::clamp<qint64>(until->utcMilliseconds - now.utcMilliseconds, soonest, longest)));
    else
        m_waitOver->stop();
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
    if (person && sitting.temperature)
        words.append(temperatureText(*sitting.temperature));
    m_head->setRight(state.frame->meter ? meterText(*state.frame->meter) : QString(), words.join(QStringLiteral(" · ")));
}

void BenchPage::showSteps()
{
    if (m_book)
        m_steps->present(m_book.get(), m_viewed);
}

} // namespace asleft
