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
      m_specs(new SpecsModel(desk.garage(), *m_vehicles, this)), m_tools(new ToolsModel(desk.garage(), this)),
      m_vehiclesPage(new VehiclesPage(desk, *m_vehicles)), m_jobsPage(new JobsPage(*m_jobs, *m_vehicles)), m_benchPage(new BenchPage(desk)),
      m_specsPage(new SpecsPage(desk, *m_specs, *m_vehicles)), m_toolsPage(new ToolsPage(desk, *m_tools)), m_stack(new QStackedLayout),
      m_places(new PlacesBar)
{
    setWindowTitle(titleOf(desk.garage()));
    setMinimumSize(leastSize);
    resize(firstSize);
    lay();
    wire();
    shortcuts();
    nameLook();
    goTo(Place::Vehicles);
}

Window::~Window() = default;

void Window::lay()
{
    // In the order of Place.
    for (QWidget *page : {static_cast<QWidget *>(m_vehiclesPage), static_cast<QWidget *>(m_jobsPage), static_cast<QWidget *>(m_benchPage),
                          static_cast<QWidget *>(m_specsPage), static_cast<QWidget *>(m_toolsPage)})
        m_stack->addWidget(page);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addLayout(m_stack, 1);
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
    connect(m_jobsPage, &JobsPage::benchWanted, this, &Window::openOnBench);
    connect(m_vehiclesPage, &VehiclesPage::specsWanted, this, [this](EngineId engine) {
        m_specsPage->chooseEngine(engine);
        goTo(Place::Specs);
    });
    connect(m_vehiclesPage, &VehiclesPage::newJobWanted, this, [this](EngineId engine) {
        goTo(Place::Jobs);
        m_jobsPage->beginNew(engine);
    });
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
    m_stack->setCurrentIndex(int(place));
}

void Window::openOnBench(JobId job)
{
    m_benchPage->openJob(job);
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
