#pragma once

#include "desk.h"
#include "places_bar.h"

#include <QWidget>

class QStackedLayout;

namespace asleft {

class BenchPage;
class Heading;
class JobsModel;
class JobsPage;
class SpecsModel;
class SpecsPage;
class ToolsModel;
class ToolsPage;
class VehiclesModel;
class VehiclesPage;

/// One garage on the desk: its pages, and the places along the bottom edge.
class Window : public QWidget {
    Q_OBJECT

public:
    explicit Window(Desk &desk, QWidget *parent = nullptr);
    ~Window() override;

    /// Where one begins: on the Bench with the job worked on last, or with the vehicles.
    void begin();
    void goTo(Place place);
    void openOnBench(JobId job);
    [[nodiscard]] Place place() const { return m_places->place(); }

    /// Says that the garage may only be read; nullptr in any other.
    [[nodiscard]] Heading *readOnlyLine() const { return m_readOnly; }
    [[nodiscard]] PlacesBar *places() const { return m_places; }
    // Each page is made when it is first wanted: the window opens with one of them.
    [[nodiscard]] VehiclesPage *vehiclesPage();
    [[nodiscard]] JobsPage *jobsPage();
    [[nodiscard]] BenchPage *benchPage();
    [[nodiscard]] SpecsPage *specsPage();
    [[nodiscard]] ToolsPage *toolsPage();
    [[nodiscard]] const VehiclesModel &vehicles() const { return *m_vehicles; }
    [[nodiscard]] const JobsModel &jobs() const { return *m_jobs; }

private:
    void lay();
    QWidget *pageAt(Place place);
    void settle(Place place, QWidget *page);
    QWidget *readOnlyStrip();
    void wire();
    void shortcuts();
    void changeLook();
    void nameLook();

    Desk &m_desk;
    VehiclesModel *m_vehicles;
    JobsModel *m_jobs;
    SpecsModel *m_specs;
    ToolsModel *m_tools;
    VehiclesPage *m_vehiclesPage = nullptr;
    JobsPage *m_jobsPage = nullptr;
    BenchPage *m_benchPage = nullptr;
    SpecsPage *m_specsPage = nullptr;
    ToolsPage *m_toolsPage = nullptr;
    QStackedLayout *m_stack;
    Heading *m_readOnly = nullptr;
    PlacesBar *m_places;
};

} // namespace asleft
