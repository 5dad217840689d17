#include <bench/bench_page.h>

#include <bench/bench_flow.h>
#include <bench/bench_sheet_pane.h>
#include <bench/open_column.h>
#include <bench/session_pane.h>
#include <bench/steps_column.h>
#include <bench/turn_pane.h>
#include <parts/bench_sheet_saving.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/page_head.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/specs.h>
#include <words/vehicles.h>

#include <QApplication>
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
    connect(m_steps, &StepsColumn::sessionWanted, this, [this] { m_flow->openSession(); });
    connect(m_steps, &StepsColumn::typeWanted, this, &BenchPage::typeSheet);
    connect(m_steps, &StepsColumn::printWanted, this, &BenchPage::printSheet);
    connect(m_steps, &StepsColumn::turnedOver, this, &BenchPage::takeFocus);
    connect(m_open, &OpenColumn::wanted, this, [this](const Subject &about) { m_flow->openSubject(about); });
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
    onKey(QKeySequence::Undo, [this] {
        if (m_flow)
            m_flow->takeBack(false);
    });
    onKey(QKeySequence::Redo, [this] {
        if (m_flow)
            m_flow->takeBack(true);
    });
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

Pane *BenchPage::paneOf(PaneMaker maker) const
{
    return m_flow ? m_flow->pane(maker) : nullptr;
}

void BenchPage::openJob(JobId job)
{
    if (this->job() == job) {
        // Another job may have failed to open since; this one is still here.
        if (sheet() == m_nothing)
            m_flow->goOn();
        return;
    }
    if (m_flow && !m_flow->mayLoseJob())
        return;
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
    // The panes go before the book they read.
    m_flow.reset();
    m_book = std::move(book);
    m_flow = std::make_unique<BenchFlow>(m_context, *m_book, m_middle);
    connect(m_flow.get(), &BenchFlow::shown, this, &BenchPage::paneShown);
    connect(m_flow.get(), &BenchFlow::done, m_message, &MessageLine::done);
    connect(m_flow.get(), &BenchFlow::stayed, this, &BenchPage::showSteps);
    connect(m_flow.get(), &BenchFlow::keypadTargetChanged, this, &BenchPage::aimKeypad);
    connect(m_book.get(), &JobBook::changed, this, &BenchPage::refresh);
    refresh();
    m_flow->show({makePane<SessionPane>});
}

void BenchPage::paneShown()
{
    m_message->clear();
    aimKeypad();
    showSteps();
    takeFocus();
}

void BenchPage::aimKeypad()
{
    m_steps->setKeypadTarget(m_flow->current() ? m_flow->current()->keypadTarget() : nullptr);
}

void BenchPage::viewStep(StepId step)
{
    if (m_flow)
        m_flow->viewStep(step);
}

void BenchPage::turnCrank()
{
    m_flow->show({makePane<TurnPane>});
}

void BenchPage::typeSheet()
{
    if (m_flow && !m_context.garage().readOnly())
        m_flow->show({makePane<BenchSheetPane>});
}

void BenchPage::printSheet()
{
    if (m_book)
        m_saving->ask(m_context.garage(), *job(), rememberedPaper());
}

void BenchPage::takeFocus()
{
    if (m_flow && m_flow->current())
        m_flow->current()->takeFocus();
    // A line that is done has nothing to press: the keyboard would wander off the page.
    const QWidget *now = QApplication::focusWidget();
    if (m_book && isVisible() && now && !isAncestorOf(now))
        steps()->setFocus(Qt::OtherFocusReason);
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
    if (m_flow && sheet() == pane<SessionPane>())
        m_flow->openSession();
}

void BenchPage::refresh()
{
    showHeader();
    showSteps();
    m_open->present(m_book->state());
    if (m_flow->current())
        m_flow->current()->jobChanged();
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
        m_steps->present(m_book.get(), m_flow->viewed());
}

} // namespace asleft
