#include <forms/new_job_form.h>

#include "tools_wanted.h"
#include <forms/joint_ticks.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/value_field.h>
#include <parts/vehicles_model.h>

#include <words/cautions.h>
#include <words/errors.h>
#include <words/job.h>
#include <work/jobs.h>
#include <work/joints.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

/// A line for each sheet, known by its place.
QList<RuledRow> rowsOf(const std::vector<JobSheet> &sheets)
{
    QList<RuledRow> rows;
    for (const JobSheet &sheet : sheets) {
        RuledRow row;
        row.id = rows.size();
        row.title = QString::fromStdString(sheet.title);
        rows.append(row);
    }
    return rows;
}

std::vector<Caution> cautionsOf(const JobSheet &sheet)
{
    std::vector<Caution> all;
    for (const SheetLine &line : sheet.lines)
        for (const Caution caution : line.cautions)
            if (std::ranges::find(all, caution) == all.end())
                all.push_back(caution);
    return all;
}

Heading *columnHead(const QString &words)
{
    auto *head = Heading::wrapped(words, TextSize::BodyStrong);
    head->setIndent(8);
    return head;
}

QList<RuledRow> rowsOf(const JobSheet &sheet, const std::vector<Joint> &joints)
{
    QList<RuledRow> rows;
    for (const SheetLine &line : sheet.lines) {
        RuledRow row;
        row.id = rows.size() + 1;
        row.title = lineTitle(line, joints);
        row.note = gateName(line.before);
        rows.append(row);
    }
    return rows;
}

} // namespace

NewJobForm::NewJobForm(VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_vehicles(vehicles), m_joints(vehicles.garage()), m_panes(builtInSheets()),
      m_vehicleList(new RuledList(tr("Vehicle of the new job"), vehicles.rows())),
      m_sheetList(new RuledList(tr("Job sheet"), &m_sheetRows)), m_title(new ValueField(tr("Title"))),
      m_open(new KeyButton(tr("Open the job"))), m_message(new MessageLine), m_ticks(new JointTicks(tr("Joints that come off"))),
      m_noJoints(new MessageLine), m_wantedHead(columnHead(tr("Tools wanted"))), m_wanted(new Notes(tr("Tools wanted"))),
      m_lines(new RuledList(tr("Lines of the job sheet"), &m_lineRows)), m_cautions(new RuledList(tr("Cautions"), &m_cautionRows))
{
    auto *columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(14);
    columns->addWidget(choices(), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(new ScrollPane(planned()), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(new ScrollPane(minded()), 1);
    m_sheetRows.setRows(rowsOf(m_panes));
    m_sheetList->setCurrentId(0);
    wire();
    m_open->setStrong(true);
    keepFromWriting(vehicles.garage(), {m_open});
    showPane();
    showJoints();
}

void NewJobForm::wire()
{
    connect(m_sheetList, &RuledList::chosen, this, &NewJobForm::showPane);
    connect(m_vehicleList, &RuledList::chosen, m_message, &MessageLine::clear);
    connect(m_vehicleList, &RuledList::chosen, this, &NewJobForm::showEngine);
    connect(&m_vehicles, &VehiclesModel::changed, this, &NewJobForm::showEngine);
    connect(&m_joints, &EngineJoints::changed, this, &NewJobForm::showJoints);
    connect(m_ticks, &JointTicks::changed, this, &NewJobForm::plan);
    connect(m_title, &ValueField::edited, m_title, &ValueField::accept);
    connect(m_title, &ValueField::entered, this, &NewJobForm::openWanted);
    connect(m_open, &KeyButton::clicked, this, &NewJobForm::openWanted);
}

QWidget *NewJobForm::choices()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(10);
    auto *vehicle = new Heading(tr("Vehicle, or engine on the stand"), TextSize::Small, Heading::Tone::Quiet);
    vehicle->setIndent(8);
    rows->addWidget(vehicle);
    rows->addWidget(m_vehicleList, 50);
    m_vehicleList->setFitted(true);
    m_vehicleList->setWholeNotes(true);
    m_vehicleList->setEmptyWords(tr("No vehicles yet: the page Vehicles takes the first one."));
    auto *sheet = new Heading(tr("Job sheet"), TextSize::Small, Heading::Tone::Quiet);
    sheet->setIndent(8);
    rows->addWidget(sheet);
    rows->addWidget(m_sheetList, 20);
    m_sheetList->setFitted(true);
    auto *below = new QVBoxLayout;
    below->setContentsMargins(8, 0, 0, 0);
    below->addWidget(m_title);
    below->addWidget(m_message);
    below->addWidget(m_open, 0, Qt::AlignLeft);
    rows->addLayout(below);
    rows->addStretch(1);
    return column;
}

/// What is taken off, and the lines that makes.
QWidget *NewJobForm::planned()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 4, 0);
    rows->setSpacing(8);
    rows->addWidget(columnHead(tr("Joints, as they come off")));
    rows->addWidget(m_ticks);
    auto *none = new QHBoxLayout;
    none->setContentsMargins(8, 0, 0, 0);
    none->addWidget(m_noJoints);
    rows->addLayout(none);
    rows->addSpacing(10);
    rows->addWidget(columnHead(tr("Lines")));
    rows->addWidget(m_lines);
    m_lines->setWhole(true);
    rows->addStretch(1);
    return column;
}

/// What to have at hand, and what to mind.
QWidget *NewJobForm::minded()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 4, 0);
    rows->setSpacing(8);
    rows->addWidget(m_wantedHead);
    auto *wanted = new QHBoxLayout;
    wanted->setContentsMargins(8, 0, 0, 0);
    wanted->addWidget(m_wanted);
    rows->addLayout(wanted);
    rows->addWidget(columnHead(tr("Cautions")));
    rows->addWidget(m_cautions);
    m_cautions->setWholeNotes(true);
    m_cautions->setWhole(true);
    auto *standing = new MessageLine;
    auto *below = new QHBoxLayout;
    below->setContentsMargins(8, 0, 0, 0);
    below->addWidget(standing);
    rows->addLayout(below);
    rows->addStretch(1);
    standing->quiet(standingSentence()); // said in its place: a line without a page would flash up as a window
    return column;
}

void NewJobForm::showPane()
{
    const QString before = m_presetTitle;
    m_presetTitle = QString::fromStdString(chosenSheet().title);
    if (m_title->text().isEmpty() || m_title->text() == before)
        m_title->setText(m_presetTitle);
    plan();
}

void NewJobForm::showEngine()
{
    const VehicleRow *row = vehicle() ? m_vehicles.at(*vehicle()) : nullptr;
    const auto engine = row && row->engine ? std::optional(row->engine->id) : std::nullopt;
    if (engine == m_joints.engine())
        return;
    m_joints.setEngine(engine);
}

void NewJobForm::showJoints()
{
    m_noJoints->clear();
    if (m_joints.failure())
        m_noJoints->refuse(sentence(*m_joints.failure()));
    else if (!m_joints.engine())
        m_noJoints->quiet(tr("Choose the vehicle: the joints of its engine are offered here."));
    else if (m_joints.joints().empty())
        m_noJoints->quiet(tr("This engine has no joints yet: the page Specs takes them."));
    m_ticks->setJoints(m_joints.joints());
    plan();
}

const JobSheet &NewJobForm::chosenSheet() const
{
    return m_panes.at(std::size_t(m_sheetList->currentId().value_or(0)));
}

std::vector<Joint> NewJobForm::tickedJoints() const
{
    std::vector<Joint> ticked;
    for (const JointId id : m_ticks->ticked())
        if (const Joint *joint = m_joints.joint(id))
            ticked.push_back(*joint);
    return ticked;
}

void NewJobForm::plan()
{
    const auto ticked = tickedJoints();
    m_planned = withJoints(chosenSheet(), ticked);
    m_lineRows.setRows(rowsOf(m_planned, m_joints.joints()));
    m_wanted->setNotes(toolsWantedNotes(ticked, m_joints.tools(), m_joints.today()));
    m_wantedHead->setVisible(!ticked.empty());
    m_wanted->setVisible(!ticked.empty());
    showCautions();
}

void NewJobForm::showCautions()
{
    QList<RuledRow> cautions;
    for (const Caution caution : cautionsOf(m_planned)) {
        const CautionWords words = cautionWords(caution);
        RuledRow row;
        row.id = qint64(caution) + 1;
        row.title = words.title;
        row.note = words.sentence;
        cautions.append(row);
    }
    m_cautionRows.setRows(cautions);
}

void NewJobForm::chooseVehicle(std::optional<qint64> vehicle)
{
    // With a single vehicle there is nothing to choose.
    if (!vehicle && m_vehicles.vehicles().size() == 1)
        vehicle = idOf(m_vehicles.vehicles().front());
    m_vehicleList->setCurrentId(vehicle);
    showEngine();
}

std::optional<qint64> NewJobForm::vehicle() const
{
    return m_vehicleList->currentId();
}

QString NewJobForm::title() const
{
    return m_title->text();
}

void NewJobForm::focusFirst()
{
    if (vehicle())
        m_title->edit()->setFocus(Qt::TabFocusReason);
    else
        m_vehicleList->setFocus(Qt::TabFocusReason);
}

void NewJobForm::clear()
{
    m_title->setText(m_presetTitle);
    m_title->accept();
    m_message->clear();
    m_ticks->clear();
}

} // namespace asleft
