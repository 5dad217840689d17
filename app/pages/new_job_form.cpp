#include "pages/new_job_form.h"

#include "pages/vehicles_model.h"
#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/value_field.h"
#include "read_only.h"

#include <show/words.h>
#include <work/jobs.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

QStringList titlesOf(const std::vector<JobSheet> &sheets)
{
    QStringList titles;
    for (const JobSheet &sheet : sheets)
        titles.append(QString::fromStdString(sheet.title));
    return titles;
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

QList<RuledRow> rowsOf(const JobSheet &sheet)
{
    QList<RuledRow> rows;
    for (const SheetLine &line : sheet.lines) {
        RuledRow row;
        row.id = rows.size() + 1;
        row.title = QString::fromStdString(line.title);
        row.note = gateName(line.before);
        rows.append(row);
    }
    return rows;
}

} // namespace

NewJobForm::NewJobForm(VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_vehicles(vehicles), m_sheets(builtInSheets()),
      m_vehicleList(new RuledList(tr("Vehicle of the new job"), vehicles.rows())),
      m_sheet(new ChoiceKeys(tr("Job sheet"), titlesOf(m_sheets))), m_title(new ValueField(tr("Title"))),
      m_open(new KeyButton(tr("Open the job"))), m_message(new MessageLine),
      m_lines(new RuledList(tr("Lines of the job sheet"), &m_lineRows)), m_cautions(new RuledList(tr("Cautions"), &m_cautionRows))
{
    auto *columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(18);
    columns->addWidget(choices(), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(lines(), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(cautions(), 1);
    connect(m_sheet, &ChoiceKeys::chosen, this, &NewJobForm::showSheet);
    connect(m_vehicleList, &RuledList::chosen, m_message, &MessageLine::clear);
    connect(m_title, &ValueField::edited, m_title, &ValueField::accept);
    connect(m_title, &ValueField::entered, this, &NewJobForm::openWanted);
    connect(m_open, &KeyButton::clicked, this, &NewJobForm::openWanted);
    m_open->setStrong(true);
    keepFromWriting(vehicles.garage(), {m_open});
    showSheet();
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
    m_vehicleList->setEmptyWords(tr("No vehicles yet: the page Vehicles takes the first one."));
    auto *below = new QVBoxLayout;
    below->setContentsMargins(8, 0, 0, 0);
    below->addWidget(m_sheet);
    below->addWidget(m_title);
    below->addWidget(m_message);
    below->addWidget(m_open, 0, Qt::AlignLeft);
    rows->addLayout(below);
    rows->addStretch(1);
    return column;
}

QWidget *NewJobForm::lines()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    auto *head = new Heading(tr("Lines"), TextSize::BodyStrong);
    head->setIndent(8);
    rows->addWidget(head);
    rows->addWidget(m_lines, 50);
    m_lines->setFitted(true);
    rows->addStretch(1);
    return column;
}

QWidget *NewJobForm::cautions()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    auto *head = new Heading(tr("Cautions"), TextSize::BodyStrong);
    head->setIndent(8);
    rows->addWidget(head);
    rows->addWidget(m_cautions, 1);
    m_cautions->setWholeNotes(true);
    auto *standing = new MessageLine;
    auto *below = new QHBoxLayout;
    below->setContentsMargins(8, 0, 0, 0);
    below->addWidget(standing);
    rows->addLayout(below);
    standing->quiet(standingSentence()); // said in its place: a line without a page would flash up as a window
    return column;
}

void NewJobForm::showSheet()
{
    const QString before = m_presetTitle;
    m_presetTitle = QString::fromStdString(sheet().title);
    if (m_title->text().isEmpty() || m_title->text() == before)
        m_title->setText(m_presetTitle);
    m_lineRows.setRows(rowsOf(sheet()));
    QList<RuledRow> cautions;
    for (const Caution caution : cautionsOf(sheet())) {
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
}

std::optional<qint64> NewJobForm::vehicle() const
{
    return m_vehicleList->currentId();
}

const JobSheet &NewJobForm::sheet() const
{
    return m_sheets.at(std::size_t(m_sheet->choice()));
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
}

} // namespace asleft
