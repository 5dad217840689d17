#include <bench/bench_page.h>

#include <bench/bench_sheet_pane.h>
#include <bench/check_again_pane.h>
#include <bench/crank_pane.h>
#include <bench/loosen_pane.h>
#include <bench/open_column.h>
#include <bench/paper_box.h>
#include <bench/plan_pane.h>
#include <bench/session_pane.h>
#include <bench/step_pane.h>
#include <bench/steps_column.h>
#include <bench/tighten_pane.h>
#include <bench/turn_pane.h>
#include <bench/valve_pane.h>
#include <parts/bench_sheet_saving.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/page_head.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/specs.h>
#include <words/vehicles.h>

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
constexpr int betweenLooks = 500;     ///< milliseconds between two looks at what other computers have done
constexpr qint64 soonest = 250;       ///< milliseconds; a clock that was set back is not asked over and over
constexpr qint64 longest = 3'600'000; ///< milliseconds

} // namespace

BenchPage::BenchPage(AppContext &context, QWidget *parent)
    : QWidget(parent), m_context(context), m_saving(new BenchSheetSaving(this)), m_waitOver(new QTimer(this))
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
    m_head = new PageHead(tr("Bench"));
    page->addWidget(m_head);
    auto *said = new QHBoxLayout;
    said->setContentsMargins(paneMargin, 0, paneMargin, 0);
    m_message = new MessageLine;
    said->addWidget(m_message);
    page->addLayout(said);
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(paneMargin, 0, paneMargin, 0);
    columns->setSpacing(16);
    page->addLayout(columns, 1);
    m_steps = new StepsColumn;
    keepFromWriting(m_context.garage(), {m_steps->sessionKey(), m_steps->typeKey()});
    columns->addWidget(m_steps);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_middle = new QStackedWidget;
    m_nothing =
        Heading::wrapped(tr("No job is open. Choose one under Jobs, or begin a new one there."), TextSize::Now, Heading::Tone::Quiet);
    m_nothing->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_middle->addWidget(m_nothing);
    columns->addWidget(m_middle, 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    m_open = new OpenColumn(m_context);
    columns->addWidget(m_open);
}

void BenchPage::wire()
{
    connect(m_steps, &StepsColumn::stepChosen, this, &BenchPage::viewStep);
    connect(m_steps, &StepsColumn::sessionWanted, this, &BenchPage::openSession);
    connect(m_steps, &StepsColumn::typeWanted, this, &BenchPage::typeSheet);
    connect(m_steps, &StepsColumn::printWanted, this, &BenchPage::printSheet);
    connect(m_steps, &StepsColumn::turnedOver, this, &BenchPage::takeFocus);
    connect(m_open, &OpenColumn::stepWanted, this, &BenchPage::viewStep);
    connect(m_open, &OpenColumn::pointWanted, this, &BenchPage::openPoint);
    connect(m_open, &OpenColumn::jointWanted, this, &BenchPage::openJoint);
    connect(m_saving, &BenchSheetSaving::written, m_message, &MessageLine::done);
    connect(m_saving, &BenchSheetSaving::refused, m_message, &MessageLine::refuse);
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
        showPane(m_paper);
        return;
    }
    auto book = JobBook::open(m_context.garage(), job);
    if (book) {
        takeJob(std::move(*book));
        return;
    }
    m_nothing->setText(sentence(book.error()));
    m_middle->setCurrentWidget(m_nothing);
}

void BenchPage::takeJob(std::unique_ptr<JobBook> book)
{
    qDeleteAll(m_panes);
    m_panes.clear();
    delete m_session;
    m_session = nullptr;
    m_book = std::move(book);
    m_viewed.reset();
    buildPanes();
    wirePanes();
    connect(m_book.get(), &JobBook::changed, this, &BenchPage::refresh);
    refresh();
    showPane(m_session);
}

void BenchPage::buildPanes()
{
    buildSession();
    m_valves = new ValvePane(m_context, *m_book);
    m_crank = new CrankPane(m_context, *m_book);
    m_turn = new TurnPane(m_context, *m_book);
    m_step = new StepPane(m_context, *m_book);
    m_plan = new PlanPane(m_context, *m_book);
    m_again = new CheckAgainPane(m_context, *m_book);
    m_paper = new BenchSheetPane(m_context, *m_book);
    m_tighten = new TightenPane(m_context, *m_book);
    m_loosen = new LoosenPane(m_context, *m_book);
    m_panes = {m_valves, m_crank, m_turn, m_step, m_plan, m_again, m_paper, m_tighten, m_loosen};
    for (Pane *sheet : m_panes)
        m_middle->addWidget(sheet);
    m_steps->setKeypadTarget(m_valves->bar()->edit());
}

void BenchPage::wirePanes()
{
    const auto backToHead = [this] { showPane(m_valves); };
    const auto askForCrank = [this] { showPane(m_crank); };
    connect(m_step, &StepPane::done, this, &BenchPage::goOn);
    connect(m_valves, &ValvePane::finished, this, &BenchPage::goOn);
    for (JointPane *sheet : std::initializer_list<JointPane *>{m_tighten, m_loosen})
        connect(sheet, &JointPane::finished, this, &BenchPage::goOn);
    connect(m_valves, &ValvePane::turnWanted, this, &BenchPage::turnCrank);
    connect(m_valves, &ValvePane::crankWanted, this, askForCrank);
    connect(m_valves, &ValvePane::sheetWanted, this, &BenchPage::typeSheet);
    connect(m_valves, &ValvePane::checkAgainWanted, this, &BenchPage::checkAgain);
    connect(m_valves, &ValvePane::planWanted, this, [this] { showPane(m_plan); });
    connect(m_crank, &CrankPane::answered, this, backToHead);
    connect(m_turn, &TurnPane::turned, this, backToHead);
    connect(m_turn, &TurnPane::left, this, backToHead);
    connect(m_turn, &TurnPane::crankWanted, this, askForCrank);
    connect(m_plan, &PlanPane::left, this, backToHead);
    connect(m_again, &CheckAgainPane::left, this, backToHead);
    connect(m_again, &CheckAgainPane::logged, this, [this](ActSeq act) {
        showPane(m_valves);
        m_valves->tellDone(act);
    });
    connect(m_paper, &BenchSheetPane::left, this, &BenchPage::showHead);
    connect(m_paper, &BenchSheetPane::logged, this, [this] {
        goOn();
        m_message->done(tr("The sheet is logged."));
    });
    connect(m_paper, &BenchSheetPane::boxFocused, this, [this](PaperBox *box) { m_steps->setKeypadTarget(box); });
}

void BenchPage::buildSession()
{
    SessionPane *old = std::exchange(m_session, new SessionPane(m_context, *m_book));
    m_middle->addWidget(m_session);
    if (old)
        old->deleteLater();
    connect(m_session, &SessionPane::begun, this, &BenchPage::goOn);
}

void BenchPage::openSession()
{
    if (currentPane() == m_paper && !m_paper->mayLeave())
        return;
    buildSession();
    showPane(m_session);
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
    if (m_book && sheet() == m_session)
        openSession();
}

bool BenchPage::hasBegun() const
{
    return m_book && (m_book->session().who || readOnly());
}

void BenchPage::refresh()
{
    showHeader();
    showSteps();
    m_open->present(m_book->state());
    m_valves->jobChanged();
    if (currentPane() && currentPane() != m_valves)
        currentPane()->jobChanged();
    waitForBleedDown();
}

/// What says that the crank has to stand is looked at again when that is over.
void BenchPage::waitForBleedDown()
{
    const auto until = bleedDownUntil(m_book->state());
    const Moment now = m_context.garage().now();
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
    const Session &session = m_book->session();
    const Person *person = session.who ? state.frame->person(*session.who) : nullptr;
    QStringList words;
    if (person)
        words.append(tr("who: %1").arg(QString::fromStdString(person->initials)));
    if (const Tool *set = m_book->tool())
        words.append(QString::fromStdString(set->name));
    if (person)
        words.append(conditionName(session.condition));
    if (person && session.temperature)
        words.append(temperatureText(*session.temperature));
    m_head->setRight(state.frame->meter ? meterText(*state.frame->meter) : QString(), words.join(QStringLiteral(" · ")));
}

void BenchPage::showSteps()
{
    if (m_book)
        m_steps->present(m_book.get(), m_viewed);
}

} // namespace asleft
