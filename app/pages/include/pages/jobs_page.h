#pragma once

#include <parts/app_context.h>

#include <QWidget>

class QStackedLayout;

namespace asleft {

class AddJointPane;
class JobView;
class JobsModel;
class KeyButton;
class MessageLine;
class NewJobForm;
class RuledList;
class PageHead;
class BenchSheetSaving;
class VehiclesModel;

/// The jobs of the garage, the one worked on last first; a new one is opened on the same sheet.
class JobsPage : public QWidget {
    Q_OBJECT

public:
    JobsPage(JobsModel &jobs, VehiclesModel &vehicles, QWidget *parent = nullptr);

    /// A new job on this engine, or on whichever is chosen then.
    void beginNew(std::optional<EngineId> engine);
    void choose(qint64 job);
    [[nodiscard]] NewJobForm *newJob() const { return m_newJob; }
    /// A joint more for the job in hand; without one, nothing happens.
    void beginJoint();
    [[nodiscard]] AddJointPane *moreJoints() const { return m_joints; }
    [[nodiscard]] KeyButton *jointKey() const { return m_addJoint; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] JobView *sheet() const { return m_sheet; }
    [[nodiscard]] RuledList *list() const { return m_list; }

Q_SIGNALS:
    /// The person wants this job on the Bench.
    void benchWanted(asleft::JobId job);

protected:
    void showEvent(QShowEvent *event) override;

private:
    void buildLayout();
    void wire();
    void wireSheet();
    void wireJoints();
    void openNew();
    void refuseNew(const Error &error);
    void jobsChanged();
    void showJob();

    JobsModel &m_jobs;
    VehiclesModel &m_vehicles;
    PageHead *m_head;
    RuledList *m_list;
    KeyButton *m_new;
    KeyButton *m_addJoint;
    JobView *m_sheet;
    NewJobForm *m_newJob;
    AddJointPane *m_joints;
    QStackedLayout *m_stack;
    MessageLine *m_message;
    BenchSheetSaving *m_saving;
    std::optional<qint64> m_current; ///< empty: the new one
};

} // namespace asleft
