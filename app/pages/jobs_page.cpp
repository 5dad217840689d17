#include <pages/jobs_page.h>

#include <forms/add_joint_pane.h>
#include <forms/new_job_form.h>
#include <pages/job_view.h>
#include <parts/bench_sheet_saving.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/page_head.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>
#include <parts/vehicles_model.h>

#include <words/errors.h>

#include <QHBoxLayout>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int listWidth = 272;

} // namespace

JobsPage::JobsPage(JobsModel &jobs, VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_jobs(jobs), m_vehicles(vehicles), m_head(new PageHead(tr("Jobs"))),
      m_list(new RuledList(tr("List of jobs"), jobs.rows())), m_new(new KeyButton(tr("New job"))),
      m_addJoint(new KeyButton(tr("Add a joint"))), m_sheet(new JobView), m_newJob(new NewJobForm(vehicles)),
      m_joints(new AddJointPane(vehicles.garage(), jobs)), m_stack(new QStackedLayout), m_message(new MessageLine),
      m_saving(new BenchSheetSaving(this))
{
    buildLayout();
    wire();
    wireSheet();
    wireJoints();
    keepFromWriting(vehicles.garage(), {m_new, m_addJoint});
    m_jobs.refresh();
    if (m_jobs.jobs().empty())
        beginNew({});
    else
        choose(m_jobs.jobs().front().id.key());
}

void JobsPage::buildLayout()
{
    auto *list = new QWidget;
    list->setFixedWidth(listWidth);
    auto *rows = new QVBoxLayout(list);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(m_list, 1);
    auto *told = new QHBoxLayout;
    told->setContentsMargins(8, 0, 0, 0);
    told->addWidget(m_message);
    rows->addLayout(told);
    auto *keys = new QHBoxLayout;
    keys->setContentsMargins(8, 0, 0, 0);
    keys->setSpacing(10);
    keys->addWidget(m_new, 1);
    keys->addWidget(m_addJoint, 1);
    rows->addLayout(keys);
    m_list->setEmptyWords(tr("No jobs yet. The first one is opened on the right."));

    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(paneMargin - 8, 12, paneMargin, 12);
    columns->setSpacing(18);
    columns->addWidget(list);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(m_stack, 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(columns, 1);
    // Only now: a stack without a page of its own shows its first sheet as a window.
    m_stack->addWidget(m_sheet);
    m_stack->addWidget(m_newJob);
    m_stack->addWidget(m_joints);
}

void JobsPage::wire()
{
    connect(m_list, &RuledList::chosen, this, &JobsPage::choose);
    connect(m_list, &RuledList::opened, this, [this](qint64 job) { Q_EMIT benchWanted(JobId(job)); });
    connect(m_new, &KeyButton::clicked, this, [this] { beginNew({}); });
    connect(m_sheet->benchKey(), &KeyButton::clicked, this, [this] {
        if (m_current)
            Q_EMIT benchWanted(JobId(*m_current));
    });
    connect(m_newJob, &NewJobForm::openWanted, this, &JobsPage::openNew);
    connect(&m_jobs, &JobsModel::changed, this, &JobsPage::jobsChanged);
    connect(&m_jobs, &JobsModel::outdated, this, [this] {
        if (isVisible())
            m_jobs.refresh();
    });
}

void JobsPage::wireSheet()
{
    connect(m_sheet->paperKey(), &KeyButton::clicked, this, [this] {
        m_sheet->paperMessage()->clear();
        if (m_current)
            m_saving->ask(m_vehicles.garage(), JobId(*m_current), m_sheet->paper());
    });
    connect(m_saving, &BenchSheetSaving::written, m_sheet->paperMessage(), &MessageLine::done);
    connect(m_saving, &BenchSheetSaving::refused, m_sheet->paperMessage(), &MessageLine::refuse);
}

void JobsPage::wireJoints()
{
    connect(m_addJoint, &KeyButton::clicked, this, &JobsPage::beginJoint);
    connect(m_joints, &AddJointPane::added, this, [this](const QString &name) {
        choose(m_joints->job()->key());
        m_message->done(tr("%1 is on this job now.").arg(name));
        m_list->setFocus(Qt::OtherFocusReason);
    });
    connect(m_joints, &AddJointPane::left, this, [this] {
        choose(m_joints->job()->key());
        m_list->setFocus(Qt::OtherFocusReason);
    });
}

void JobsPage::beginJoint()
{
    if (!m_current)
        return;
    m_message->clear();
    m_stack->setCurrentWidget(m_joints);
    m_joints->beginFor(JobId(*m_current));
}

void JobsPage::beginNew(std::optional<EngineId> engine)
{
    const VehicleRow *wanted = engine ? m_vehicles.withEngine(*engine) : nullptr;
    m_current.reset();
    m_addJoint->setEnabled(false);
    m_message->clear();
    m_list->setCurrentId({});
    m_newJob->chooseVehicle(wanted ? std::optional(idOf(*wanted)) : m_newJob->vehicle());
    m_head->setBeside(tr("new job"));
    m_head->setRight({}, {});
    m_stack->setCurrentWidget(m_newJob);
    m_newJob->focusFirst();
}

void JobsPage::choose(qint64 job)
{
    m_current = job;
    m_addJoint->setEnabled(true);
    m_message->clear();
    m_list->setCurrentId(job);
    m_stack->setCurrentWidget(m_sheet);
    m_sheet->paperMessage()->clear();
    showJob();
}

void JobsPage::showJob()
{
    const JobLine *job = m_current ? m_jobs.at(*m_current) : nullptr;
    if (!job)
        return;
    const auto glance = m_jobs.glance(job->id);
    m_head->setBeside(QString::fromStdString(job->vehicleName));
    m_head->setRight(glance ? glance->meter : QString(), {});
    m_sheet->show(*job, glance, m_jobs.now());
}

void JobsPage::openNew()
{
    m_newJob->chooseVehicle(m_newJob->vehicle());
    const VehicleRow *vehicle = m_newJob->vehicle() ? m_vehicles.at(*m_newJob->vehicle()) : nullptr;
    if (!vehicle) {
        m_newJob->message()->refuse(tr("Choose the vehicle, or the engine on the stand, this job is for."));
        m_newJob->focusFirst();
        return;
    }
    if (!vehicle->engine) {
        m_newJob->message()->refuse(
            tr("%1 has no engine now. No job was opened; put an engine in on the page Vehicles first.").arg(rowName(*vehicle)));
        return;
    }
    const auto opened = m_jobs.open(vehicle->vehicle.id, vehicle->engine->id, m_newJob->sheet(), m_newJob->title());
    if (!opened) {
        refuseNew(opened.error());
        return;
    }
    m_newJob->clear();
    choose(opened->key());
    Q_EMIT benchWanted(*opened);
}

void JobsPage::refuseNew(const Error &error)
{
    if (error.kind != ErrorKind::NameMissing && error.kind != ErrorKind::TextTooLong) {
        m_newJob->message()->refuse(sentence(error));
        return;
    }
    m_newJob->titleField()->refuse(sentence(error));
    m_newJob->titleField()->edit()->setFocus(Qt::OtherFocusReason);
}

void JobsPage::jobsChanged()
{
    m_message->clear();
    if (m_jobs.failure())
        m_message->refuse(sentence(*m_jobs.failure()));
    showJob();
}

void JobsPage::showEvent(QShowEvent *event)
{
    QWidget::showEvent(event);
    m_jobs.refresh();
}

} // namespace asleft
