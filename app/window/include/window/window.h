#pragma once

#include <parts/app_context.h>
#include <window/page_tabs.h>

#include <QWidget>

class QFrame;
class QStackedLayout;
class QTimer;

namespace asleft {

class BenchPage;
class Heading;
class JobsModel;
class JobsPage;
class MessageLine;
class OnePress;
class SpecsModel;
class SpecsPage;
class ToolsModel;
class ToolsPage;
class VehiclesModel;
class VehiclesPage;

/// One garage on the context: its pages, and the tabs along the bottom edge.
class Window : public QWidget {
    Q_OBJECT

public:
    explicit Window(AppContext &context, QWidget *parent = nullptr);
    ~Window() override;

    /// Where one begins: on the Bench with the job worked on last, or with the vehicles.
    void begin();
    void goTo(Page page);
    void openOnBench(JobId job);
    [[nodiscard]] Page page() const { return m_tabs->page(); }

    /// Says that the garage may only be read; nullptr in any other.
    [[nodiscard]] Heading *readOnlyLine() const { return m_readOnly; }
    [[nodiscard]] PageTabs *tabs() const { return m_tabs; }
    [[nodiscard]] OnePress *onePress() const { return m_onePress; }
    /// Says for a while that a press was swallowed.
    [[nodiscard]] MessageLine *notice() const { return m_notice; }
    // Each page is made when it is first wanted: the window opens with one of them.
    [[nodiscard]] VehiclesPage *vehiclesPage();
    [[nodiscard]] JobsPage *jobsPage();
    [[nodiscard]] BenchPage *benchPage();
    [[nodiscard]] SpecsPage *specsPage();
    [[nodiscard]] ToolsPage *toolsPage();
    [[nodiscard]] VehiclesModel &vehicles() { return *m_vehicles; }
    [[nodiscard]] JobsModel &jobs() { return *m_jobs; }

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void buildLayout();
    QWidget *pageAt(Page page);
    void settle(Page page, QWidget *widget);
    QWidget *readOnlyStrip();
    void wire();
    void shortcuts();
    void changeLook();
    void nameLook();
    void tellSwallowed();
    void placeNotice();

    AppContext &m_context;
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
    PageTabs *m_tabs;
    OnePress *m_onePress;
    QFrame *m_noticeFrame;
    MessageLine *m_notice;
    QTimer *m_noticeTime;
};

} // namespace asleft
