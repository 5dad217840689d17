#include <forms/add_joint_pane.h>

#include "tools_wanted.h"
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>

#include <words/errors.h>
#include <words/joints.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

AddJointPane::AddJointPane(Garage &garage, JobsModel &jobs, QWidget *parent)
    : QWidget(parent), m_jobs(jobs), m_joints(garage), m_head(Heading::wrapped({}, TextSize::Now)),
      m_list(new RuledList(tr("Joints of the engine"), &m_rows)), m_message(new MessageLine), m_add(new KeyButton(tr("Put it on the job"))),
      m_leave(new KeyButton(tr("Leave the job as it is"))), m_wantedHead(new Heading(tr("Tools wanted"), TextSize::BodyStrong)),
      m_wanted(new Notes(tr("Tools wanted")))
{
    buildLayout();
    wire();
    keepFromWriting(garage, {m_add});
}

void AddJointPane::buildLayout()
{
    auto *left = new QVBoxLayout;
    left->setSpacing(8);
    left->addWidget(m_head);
    left->addWidget(
        Heading::wrapped(tr("Its lines, loosen and tighten, come at the end of the job."), TextSize::Small, Heading::Tone::Quiet));
    left->addWidget(new Rule);
    left->addWidget(m_list, 50);
    m_list->setFitted(true);
    m_list->setWholeNotes(true);
    left->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(m_add);
    keys->addWidget(m_leave);
    keys->addStretch(1);
    left->addLayout(keys);
    left->addStretch(1);
    m_add->setStrong(true);

    auto *column = new QWidget;
    auto *right = new QVBoxLayout(column);
    right->setContentsMargins(0, 0, 4, 0);
    right->setSpacing(8);
    right->addWidget(m_wantedHead);
    right->addWidget(m_wanted);
    right->addStretch(1);

    auto *columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(18);
    columns->addLayout(left, 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(new ScrollPane(column), 1);
}

void AddJointPane::wire()
{
    connect(m_list, &RuledList::chosen, this, &AddJointPane::showWanted);
    connect(m_list, &RuledList::opened, this, &AddJointPane::addChosen);
    connect(m_add, &KeyButton::clicked, this, &AddJointPane::addChosen);
    connect(m_leave, &KeyButton::clicked, this, &AddJointPane::left);
    auto *leaving = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    leaving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(leaving, &QShortcut::activated, this, &AddJointPane::left);
    const auto again = [this] {
        if (m_job && isVisible())
            show();
    };
    connect(&m_joints, &EngineJoints::changed, this, again);
    connect(&m_jobs, &JobsModel::changed, this, again);
}

void AddJointPane::beginFor(JobId job)
{
    m_job = job;
    m_message->clear();
    m_list->setCurrentId({});
    show();
    // With a single joint there is nothing to choose.
    if (m_rows.rowCount() == 1) {
        m_list->setCurrentId(m_rows.rows().front().id);
        showWanted();
    }
    m_list->setFocus(Qt::OtherFocusReason);
}

void AddJointPane::show()
{
    const JobLine *job = m_jobs.at(m_job->key());
    m_head->setText(job ? tr("A joint more: %1").arg(QString::fromStdString(job->title)) : QString());
    const auto known = m_jobs.jointsOf(*m_job);
    if (known)
        m_joints.setEngine(known->engine);
    QList<RuledRow> rows;
    for (const Joint &joint : m_joints.joints()) {
        if (!known || std::ranges::find(known->present, joint.id) != known->present.end())
            continue;
        RuledRow row;
        row.id = joint.id.key();
        row.title = QString::fromStdString(joint.text.name);
        row.note = jointLine(joint);
        rows.append(row);
    }
    m_list->setEmptyWords(m_joints.joints().empty() ? tr("This engine has no joints yet: the page Specs takes them.")
                                                    : tr("Every joint of this engine is on this job already."));
    m_rows.setRows(rows);
    m_add->setEnabled(!rows.isEmpty());
    if (!known)
        m_message->refuse(sentence(known.error()));
    else if (m_joints.failure())
        m_message->refuse(sentence(*m_joints.failure()));
    showWanted();
}

const Joint *AddJointPane::chosen() const
{
    const auto id = m_list->currentId();
    return id && m_rows.indexOf(*id).isValid() ? m_joints.joint(JointId(*id)) : nullptr;
}

void AddJointPane::showWanted()
{
    const Joint *joint = chosen();
    if (joint)
        m_message->clear();
    m_wanted->setNotes(joint ? toolsWantedNotes({*joint}, m_joints.tools(), m_joints.today()) : QList<Notes::Note>());
    m_wantedHead->setVisible(joint);
}

void AddJointPane::addChosen()
{
    const Joint *joint = chosen();
    if (!joint) {
        m_message->refuse(tr("Choose the joint that comes off too."));
        return;
    }
    // A copy: what it changes comes back and reads the joints anew.
    const Joint wanted = *joint;
    if (const Done done = m_jobs.addJoint(*m_job, wanted); !done) {
        m_message->refuse(sentence(done.error()));
        return;
    }
    Q_EMIT added(QString::fromStdString(wanted.text.name));
}

} // namespace asleft
