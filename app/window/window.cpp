#include <window/window.h>

#include <bench/bench_page.h>
#include <pages/jobs_page.h>
#include <pages/specs_page.h>
#include <pages/tools_page.h>
#include <pages/vehicles_page.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/jobs_model.h>
#include <parts/message_line.h>
#include <parts/specs_model.h>
#include <parts/tools_model.h>
#include <parts/vehicles_model.h>
#include <window/one_press.h>

#include <QFileInfo>
#include <QFrame>
#include <QShortcut>
#include <QStackedLayout>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <chrono>

namespace asleft {

namespace {

constexpr QSize leastSize(1024, 700);
constexpr QSize firstSize(1280, 800);
constexpr int pageCount = 5;
constexpr int noticeWidth = 560;
constexpr int noticeAbove = 8;
constexpr std::chrono::seconds noticeTime{6};

QString titleOf(const Garage &garage)
{
    const QString name = QFileInfo(QString::fromStdString(garage.path())).completeBaseName();
    return garage.readOnly() ? Window::tr("%1 (only to be read) - Asleft").arg(name) : Window::tr("%1 - Asleft").arg(name);
}

} // namespace

Window::Window(AppContext &context, QWidget *parent)
    : QWidget(parent), m_context(context), m_vehicles(new VehiclesModel(context.garage(), this)),
      m_jobs(new JobsModel(context.garage(), this)), m_specs(new SpecsModel(context.garage(), *m_vehicles, this)),
      m_tools(new ToolsModel(context.garage(), this)), m_stack(new QStackedLayout), m_tabs(new PageTabs),
      m_onePress(new OnePress(context.garage(), this)), m_noticeFrame(new QFrame(this)), m_notice(new MessageLine(m_noticeFrame)),
      m_noticeTime(new QTimer(this))
{
    setWindowTitle(titleOf(context.garage()));
    setMinimumSize(leastSize);
    resize(firstSize);
    buildLayout();
    wire();
    shortcuts();
    nameLook();
}

Window::~Window() = default;

void Window::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(m_stack, 1);
    for (int page = 0; page < pageCount; ++page)
        m_stack->addWidget(new QWidget);
    if (m_context.garage().readOnly())
        column->addWidget(readOnlyStrip());
    column->addWidget(m_tabs);
}

QWidget *Window::readOnlyStrip()
{
    auto *strip = new QWidget;
    auto *row = new QHBoxLayout(strip);
    row->setContentsMargins(paneMargin, 0, paneMargin, 8);
    m_readOnly = Heading::wrapped(readOnlySentence(), TextSize::Small, Heading::Tone::Quiet);
    row->addWidget(m_readOnly);
    return strip;
}

void Window::wire()
{
    connect(m_tabs, &PageTabs::pageWanted, this, &Window::goTo);
    connect(m_tabs, &PageTabs::otherLookWanted, this, &Window::changeLook);
    connect(&m_context, &AppContext::lookChanged, this, &Window::nameLook);
    connect(m_onePress, &OnePress::swallowed, this, &Window::tellSwallowed);
    connect(m_noticeTime, &QTimer::timeout, m_noticeFrame, &QFrame::hide);
    connect(m_noticeTime, &QTimer::timeout, m_notice, &MessageLine::clear);
    m_noticeTime->setSingleShot(true);
    m_noticeTime->setInterval(noticeTime);
    m_noticeFrame->hide();
    m_noticeFrame->setAutoFillBackground(true);
    m_noticeFrame->setFrameShape(QFrame::Box);
    auto *inside = new QVBoxLayout(m_noticeFrame);
    inside->setContentsMargins(16, 10, 16, 10);
    inside->addWidget(m_notice);
}

/// Lies over the page, so that nothing under the hand moves.
void Window::placeNotice()
{
    const int width = std::min(noticeWidth, this->width() - 2 * paneMargin);
    const int height = m_noticeFrame->heightForWidth(width);
    m_noticeFrame->setGeometry((this->width() - width) / 2, m_tabs->y() - height - noticeAbove, width, height);
}

void Window::tellSwallowed()
{
    m_notice->clear();
    m_notice->refuse(tr("Pressed twice: the second press was too soon after the first and was not taken. Press again if it was meant."));
    m_noticeFrame->show();
    placeNotice();
    m_noticeFrame->raise();
    m_noticeTime->start();
}

void Window::resizeEvent(QResizeEvent *event)
{
    QWidget::resizeEvent(event);
    placeNotice();
}

void Window::settle(Page page, QWidget *widget)
{
    const int index = int(page);
    QWidget *before = m_stack->widget(index);
    m_stack->removeWidget(before);
    delete before;
    m_stack->insertWidget(index, widget);
}

VehiclesPage *Window::vehiclesPage()
{
    if (m_vehiclesPage)
        return m_vehiclesPage;
    m_vehiclesPage = new VehiclesPage(m_context, *m_vehicles, this);
    settle(Page::Vehicles, m_vehiclesPage);
    connect(m_vehiclesPage, &VehiclesPage::specsWanted, this, [this](EngineId engine) {
        specsPage()->chooseEngine(engine);
        goTo(Page::Specs);
    });
    connect(m_vehiclesPage, &VehiclesPage::newJobWanted, this, [this](EngineId engine) {
        goTo(Page::Jobs);
        jobsPage()->beginNew(engine);
    });
    return m_vehiclesPage;
}

JobsPage *Window::jobsPage()
{
    if (m_jobsPage)
        return m_jobsPage;
    m_jobsPage = new JobsPage(*m_jobs, *m_vehicles, this);
    settle(Page::Jobs, m_jobsPage);
    connect(m_jobsPage, &JobsPage::benchWanted, this, &Window::openOnBench);
    return m_jobsPage;
}

BenchPage *Window::benchPage()
{
    if (m_benchPage)
        return m_benchPage;
    m_benchPage = new BenchPage(m_context, this);
    settle(Page::Bench, m_benchPage);
    return m_benchPage;
}

SpecsPage *Window::specsPage()
{
    if (m_specsPage)
        return m_specsPage;
    m_specsPage = new SpecsPage(m_context, *m_specs, *m_vehicles, this);
    settle(Page::Specs, m_specsPage);
    return m_specsPage;
}

ToolsPage *Window::toolsPage()
{
    if (m_toolsPage)
        return m_toolsPage;
    m_toolsPage = new ToolsPage(m_context, *m_tools, this);
    settle(Page::Tools, m_toolsPage);
    return m_toolsPage;
}

QWidget *Window::pageAt(Page page)
{
    switch (page) {
    case Page::Vehicles: return vehiclesPage();
    case Page::Jobs: return jobsPage();
    case Page::Bench: return benchPage();
    case Page::Specs: return specsPage();
    case Page::Tools: return toolsPage();
    }
    return nullptr;
}

void Window::shortcuts()
{
    for (int page = 0; page < pageCount; ++page) {
        auto *shortcut = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + page)), this);
        connect(shortcut, &QShortcut::activated, this, [this, page] { goTo(Page(page)); });
    }
}

void Window::begin()
{
    const auto last = asleft::jobs(m_context.garage(), 1);
    if (!last || last->empty())
        goTo(Page::Vehicles);
    else
        openOnBench(last->front().id);
}

void Window::goTo(Page page)
{
    m_tabs->setPage(page);
    m_stack->setCurrentWidget(pageAt(page));
}

void Window::openOnBench(JobId job)
{
    benchPage()->openJob(job);
    goTo(Page::Bench);
}

void Window::changeLook()
{
    m_context.setLook(m_context.look() == Look::Light ? Look::Dark : Look::Light);
}

void Window::nameLook()
{
    const bool light = m_context.look() == Look::Light;
    m_tabs->setOtherLook(light ? tr("dark") : tr("light"));
    m_tabs->lookKey()->setAccessibleName(light ? tr("Change to the dark look") : tr("Change to the light look"));
}

} // namespace asleft
