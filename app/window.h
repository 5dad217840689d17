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
    [[nodiscard]] VehiclesPage *vehiclesPage() const { return m_vehiclesPage; }
    [[nodiscard]] JobsPage *jobsPage() const { return m_jobsPage; }
    [[nodiscard]] BenchPage *benchPage() const { return m_benchPage; }
    [[nodiscard]] SpecsPage *specsPage() const { return m_specsPage; }
    [[nodiscard]] ToolsPage *toolsPage() const { return m_toolsPage; }
    [[nodiscard]] const VehiclesModel &vehicles() const { return *m_vehicles; }
    [[nodiscard]] const JobsModel &jobs() const { return *m_jobs; }

private:
    void lay();
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
    VehiclesPage *m_vehiclesPage;
    JobsPage *m_jobsPage;
    BenchPage *m_benchPage;
    SpecsPage *m_specsPage;
    ToolsPage *m_toolsPage;
    QStackedLayout *m_stack;
    Heading *m_readOnly = nullptr;
    PlacesBar *m_places;
};

} // namespace asleft
