#include "window.h"

#include "bench/bench_page.h"
#include "pages/jobs_model.h"
#include "pages/jobs_page.h"
#include "pages/specs_model.h"
#include "pages/specs_page.h"
#include "pages/tools_model.h"
#include "pages/tools_page.h"
#include "pages/vehicles_model.h"
#include "pages/vehicles_page.h"
#include "parts/heading.h"
#include "parts/ink_of.h"

#include <QFileInfo>
#include <QShortcut>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr QSize leastSize(1024, 700);
constexpr QSize firstSize(1280, 800);
constexpr int placeCount = 5;

QString titleOf(const Garage &garage)
{
    const QString name = QFileInfo(QString::fromStdString(garage.path())).completeBaseName();
    return garage.readOnly() ? Window::tr("%1 (only to be read) - Asleft").arg(name) : Window::tr("%1 - Asleft").arg(name);
}

} // namespace

Window::Window(Desk &desk, QWidget *parent)
    : QWidget(parent), m_desk(desk), m_vehicles(new VehiclesModel(desk.garage(), this)), m_jobs(new JobsModel(desk.garage(), this)),
      m_specs(new SpecsModel(desk.garage(), *m_vehicles, this)), m_tools(new ToolsModel(desk.garage(), this)), m_stack(new QStackedLayout),
      m_places(new PlacesBar)
{
    setWindowTitle(titleOf(desk.garage()));
    setMinimumSize(leastSize);
    resize(firstSize);
    lay();
    wire();
    shortcuts();
    nameLook();
}

Window::~Window() = default;

void Window::lay()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(m_stack, 1);
    for (int place = 0; place < placeCount; ++place)
        m_stack->addWidget(new QWidget);
    if (m_desk.garage().readOnly())
        column->addWidget(readOnlyStrip());
    column->addWidget(m_places);
}

QWidget *Window::readOnlyStrip()
{
    auto *strip = new QWidget;
    auto *row = new QHBoxLayout(strip);
    row->setContentsMargins(sheetMargin, 0, sheetMargin, 8);
    m_readOnly = Heading::wrapped(readOnlySentence(), TextSize::Small, Heading::Tone::Quiet);
    row->addWidget(m_readOnly);
    return strip;
}

void Window::wire()
{
    connect(m_places, &PlacesBar::placeWanted, this, &Window::goTo);
    connect(m_places, &PlacesBar::otherLookWanted, this, &Window::changeLook);
    connect(&m_desk, &Desk::lookChanged, this, &Window::nameLook);
}

void Window::settle(Place place, QWidget *page)
{
    const int index = int(place);
    QWidget *before = m_stack->widget(index);
    m_stack->removeWidget(before);
    delete before;
    m_stack->insertWidget(index, page);
}

VehiclesPage *Window::vehiclesPage()
{
    if (m_vehiclesPage)
        return m_vehiclesPage;
    m_vehiclesPage = new VehiclesPage(m_desk, *m_vehicles, this);
    settle(Place::Vehicles, m_vehiclesPage);
    connect(m_vehiclesPage, &VehiclesPage::specsWanted, this, [this](EngineId engine) {
        specsPage()->chooseEngine(engine);
        goTo(Place::Specs);
    });
    connect(m_vehiclesPage, &VehiclesPage::newJobWanted, this, [this](EngineId engine) {
        goTo(Place::Jobs);
        jobsPage()->beginNew(engine);
    });
    return m_vehiclesPage;
}

JobsPage *Window::jobsPage()
{
    if (m_jobsPage)
        return m_jobsPage;
    m_jobsPage = new JobsPage(*m_jobs, *m_vehicles, this);
    settle(Place::Jobs, m_jobsPage);
    connect(m_jobsPage, &JobsPage::benchWanted, this, &Window::openOnBench);
    return m_jobsPage;
}

BenchPage *Window::benchPage()
{
    if (m_benchPage)
        return m_benchPage;
    m_benchPage = new BenchPage(m_desk, this);
    settle(Place::Bench, m_benchPage);
    return m_benchPage;
}

SpecsPage *Window::specsPage()
{
    if (m_specsPage)
        return m_specsPage;
    m_specsPage = new SpecsPage(m_desk, *m_specs, *m_vehicles, this);
    settle(Place::Specs, m_specsPage);
    return m_specsPage;
}

ToolsPage *Window::toolsPage()
{
    if (m_toolsPage)
        return m_toolsPage;
    m_toolsPage = new ToolsPage(m_desk, *m_tools, this);
    settle(Place::Tools, m_toolsPage);
    return m_toolsPage;
}

QWidget *Window::pageAt(Place place)
{
    switch (place) {
    case Place::Vehicles: return vehiclesPage();
    case Place::Jobs: return jobsPage();
    case Place::Bench: return benchPage();
    case Place::Specs: return specsPage();
    case Place::Tools: return toolsPage();
    }
    return nullptr;
}

void Window::shortcuts()
{
    for (int place = 0; place < placeCount; ++place) {
        auto *shortcut = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + place)), this);
        connect(shortcut, &QShortcut::activated, this, [this, place] { goTo(Place(place)); });
    }
}

void Window::begin()
{
    if (m_jobs->jobs().empty())
        goTo(Place::Vehicles);
    else
        openOnBench(m_jobs->jobs().front().id);
}

void Window::goTo(Place place)
{
    m_places->setPlace(place);
    m_stack->setCurrentWidget(pageAt(place));
}

void Window::openOnBench(JobId job)
{
    benchPage()->openJob(job);
    goTo(Place::Bench);
}

void Window::changeLook()
{
    m_desk.setLook(m_desk.look() == Look::Light ? Look::Dark : Look::Light);
}

void Window::nameLook()
{
    const bool light = m_desk.look() == Look::Light;
    m_places->setOtherLook(light ? tr("dark") : tr("light"));
    m_places->lookKey()->setAccessibleName(light ? tr("Change to the dark look") : tr("Change to the light look"));
}

} // namespace asleft
