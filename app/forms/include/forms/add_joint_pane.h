#pragma once

#include <forms/engine_joints.h>
#include <parts/jobs_model.h>

#include <QWidget>

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;

/// A joint for a job that is open already: those of its engine that have no lines in it yet, and the tools each wants.
class AddJointPane : public QWidget {
    Q_OBJECT

public:
    AddJointPane(Garage &garage, JobsModel &jobs, QWidget *parent = nullptr);

    /// \pre the job is on the list
    void beginFor(JobId job);
    [[nodiscard]] std::optional<JobId> job() const { return m_job; }
    [[nodiscard]] RuledList *list() const { return m_list; }
    [[nodiscard]] const RuledRows &rows() const { return m_rows; }
    [[nodiscard]] Notes *wanted() const { return m_wanted; }
    [[nodiscard]] KeyButton *addKey() const { return m_add; }
    [[nodiscard]] KeyButton *leaveKey() const { return m_leave; }
    [[nodiscard]] MessageLine *message() const { return m_message; }

Q_SIGNALS:
    /// The lines of the joint are in the job.
    void added(const QString &name);
    void left();

private:
    void buildLayout();
    void wire();
    void show();
    void showWanted();
    void addChosen();
    [[nodiscard]] const Joint *chosen() const;

    JobsModel &m_jobs;
    EngineJoints m_joints;
    std::optional<JobId> m_job;
    Heading *m_head;
    RuledRows m_rows;
    RuledList *m_list;
    MessageLine *m_message;
    KeyButton *m_add;
    KeyButton *m_leave;
    Heading *m_wantedHead;
    Notes *m_wanted;
};

} // namespace asleft
