#include "pages/specs_page.h"

#include "pages/spec_form.h"
#include "pages/specs_model.h"
#include "pages/table_form.h"
#include "pages/vehicles_model.h"
#include "parts/heading.h"
#include "parts/ink_of.h"
#include "parts/message_line.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/scroll_sheet.h"
#include "parts/sheet_head.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int listWidth = 272;

QString bandLine(const Spec &spec)
{
    const QString bands = std::visit([](const auto &asked) { return bandText(asked.first); }, spec.asked);
    return spec.subject == SpecSubject::LockNut ? bands : QStringLiteral("%1 %2").arg(bands, conditionName(spec.condition));
}

QVBoxLayout *plainColumn(QWidget *column)
{
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    return rows;
}

Heading *listHead(const QString &words)
{
    auto *head = new Heading(words, TextSize::BodyStrong);
    head->setIndent(8);
    return head;
}

} // namespace

SpecsPage::SpecsPage(Desk &desk, SpecsModel &specs, VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_specs(specs), m_vehicles(vehicles), m_head(new SheetHead(tr("Specs"))),
      m_vehicleList(new RuledList(tr("Engines"), vehicles.rows())),
      m_sectionList(new RuledList(tr("What the manual asks"), &m_sectionRows)), m_message(new MessageLine), m_table(new TableForm(specs)),
      m_stack(new QStackedLayout)
{
    lay(desk);
    wire();
    if (!m_specs.engineId() && !m_vehicles.vehicles().empty())
        m_specs.setEngine(m_vehicles.vehicles().front().engine.id);
    showEngine();
    chooseSection(Section::IntakeLash);
}

void SpecsPage::lay(Desk &desk)
{
    for (const SpecSubject subject : {SpecSubject::IntakeLash, SpecSubject::ExhaustLash, SpecSubject::LockNut}) {
        m_forms.push_back(new SpecForm(subject, m_specs, desk.mark()));
        m_stack->addWidget(new ScrollSheet(m_forms.back()));
    }
    m_stack->addWidget(new ScrollSheet(m_table));
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin - 8, 12, sheetMargin, 12);
    columns->setSpacing(18);
    columns->addWidget(listColumn());
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(m_stack, 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(columns, 1);
}

QWidget *SpecsPage::listColumn()
{
    auto *column = new QWidget;
    column->setFixedWidth(listWidth);
    QVBoxLayout *rows = plainColumn(column);
    rows->addWidget(listHead(tr("Engine of")));
    rows->addWidget(m_vehicleList, 50);
    rows->addSpacing(12);
    rows->addWidget(listHead(tr("Asked by the manual")));
    rows->addWidget(m_sectionList, 50);
    rows->addWidget(m_message);
    rows->addStretch(1);
    m_vehicleList->setFitted(true);
    m_vehicleList->setEmptyWords(tr("No vehicles yet: the page Vehicles takes the first one."));
    m_sectionList->setFitted(true);
    return column;
}

void SpecsPage::wire()
{
    connect(m_vehicleList, &RuledList::chosen, this, [this](qint64 vehicle) {
        if (const VehicleRow *row = m_vehicles.at(vehicle))
            m_specs.setEngine(row->engine.id);
    });
    connect(m_sectionList, &RuledList::chosen, this, [this](qint64 section) { m_stack->setCurrentIndex(int(section)); });
    connect(m_sectionList, &RuledList::opened, this, [this](qint64 section) {
        if (Section(section) == Section::CrankPositions)
            m_table->focusFirst();
        else
            form(Section(section))->focusFirst();
    });
    connect(&m_specs, &SpecsModel::engineChanged, this, &SpecsPage::showEngine);
    connect(&m_specs, &SpecsModel::specsChanged, this, &SpecsPage::showSections);
    connect(&m_vehicles, &VehiclesModel::changed, this, [this] {
        if (!m_specs.engineId() && !m_vehicles.vehicles().empty())
            m_specs.setEngine(m_vehicles.vehicles().front().engine.id);
    });
}

void SpecsPage::chooseEngine(EngineId engine)
{
    m_specs.setEngine(engine);
}

void SpecsPage::chooseSection(Section section)
{
    m_sectionList->setCurrentId(qint64(section));
    m_stack->setCurrentIndex(int(section));
}

void SpecsPage::showEngine()
{
    const VehicleRow *row = m_specs.engine();
    m_vehicleList->setCurrentId(row ? std::optional<qint64>(row->vehicle.id.key()) : std::nullopt);
    m_head->setBeside(row ? QString::fromStdString(row->vehicle.name) : QString());
    m_head->setRight(row ? engineWords(row->engine) : QString(), row ? layoutName(row->engine.design.layout) : QString());
    showSections();
}

void SpecsPage::showSections()
{
    QList<RuledRow> rows;
    for (const SpecSubject subject : {SpecSubject::IntakeLash, SpecSubject::ExhaustLash, SpecSubject::LockNut}) {
        const Spec *now = m_specs.now(subject);
        RuledRow row;
        row.id = rows.size();
        row.title = subjectName(subject);
        row.note = now ? bandLine(*now) : tr("no spec yet");
        rows.append(row);
    }
    RuledRow crank;
    crank.id = rows.size();
    crank.title = tr("Crank positions");
    crank.note = m_specs.table() ? sourceText(m_specs.table()->source) : tr("generated until typed");
    rows.append(crank);
    m_sectionRows.setRows(rows);
    m_message->clear();
    if (m_specs.failure())
        m_message->refuse(sentence(*m_specs.failure()));
}

} // namespace asleft
