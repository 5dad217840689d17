#include <pages/specs_page.h>

#include <forms/joint_form.h>
#include <forms/spec_form.h>
#include <forms/table_form.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/message_line.h>
#include <parts/page_head.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/specs_model.h>
#include <parts/vehicles_model.h>

#include <words/crank.h>
#include <words/errors.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/specs.h>

#include <QHBoxLayout>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

constexpr int specListWidth = 272;
constexpr qint64 newJoint = 0; ///< the row for it; those of joints have their keys, which begin with 1

using Section = SpecsPage::Section;

/// In the order of Section; the crank positions have a form of their own.
constexpr std::array subjects{SpecSubject::IntakeLash,   SpecSubject::ExhaustLash, SpecSubject::BridgeScrew,
                              SpecSubject::Decompressor, SpecSubject::Injector,    SpecSubject::LockNut};

/// What there is to set on an engine; a lock nut is asked for everywhere.
bool hasSubject(const EngineDesign &design, SpecSubject subject)
{
    if (subject == SpecSubject::LockNut)
        return true;
    return std::ranges::any_of(design.adjusters(), [subject](AdjusterRef adjuster) { return subjectOf(adjuster) == subject; });
}

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

SpecsPage::SpecsPage(AppContext &context, SpecsModel &specs, VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_specs(specs), m_vehicles(vehicles), m_head(new PageHead(tr("Specs"))),
      m_vehicleList(new RuledList(tr("Engines"), vehicles.engineRows())),
      m_sectionList(new RuledList(tr("What the manual asks"), &m_sectionRows)), m_jointList(new RuledList(tr("Joints"), &m_jointRows)),
      m_message(new MessageLine), m_table(new TableForm(specs)), m_jointForm(new JointForm(specs, context.mark())),
      m_stack(new QStackedLayout)
{
    buildLayout(context);
    wire();
    if (!m_specs.engineId())
        m_specs.setEngine(m_vehicles.firstEngine());
    showEngine();
}

void SpecsPage::buildLayout(AppContext &context)
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(paneMargin - 8, 12, paneMargin, 12);
    columns->setSpacing(18);
    columns->addWidget(listColumn());
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(m_stack, 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(columns, 1);
    // Only now: a stack without a page of its own shows its first sheet as a window.
    for (const SpecSubject subject : subjects) {
        m_forms.push_back(new SpecForm(subject, m_specs, context.mark()));
        m_stack->addWidget(new ScrollPane(m_forms.back()));
    }
    m_stack->addWidget(new ScrollPane(m_table));
    m_stack->addWidget(new ScrollPane(m_jointForm));
}

QWidget *SpecsPage::listColumn()
{
    auto *column = new QWidget;
    column->setFixedWidth(specListWidth);
    QVBoxLayout *rows = plainColumn(column);
    rows->addWidget(listHead(tr("Engine of")));
    rows->addWidget(m_vehicleList, 40);
    rows->addSpacing(12);
    rows->addWidget(listHead(tr("Asked by the manual")));
    rows->addWidget(m_sectionList, 60);
    rows->addSpacing(12);
    rows->addWidget(listHead(tr("Joints")));
    rows->addWidget(m_jointList, 50);
    rows->addWidget(m_message);
    rows->addStretch(1);
    m_vehicleList->setFitted(true);
    m_vehicleList->setEmptyWords(tr("No engines yet: the page Vehicles takes the first one."));
    m_sectionList->setFitted(true);
    m_jointList->setFitted(true);
    m_jointList->setWholeNotes(true);
    return column;
}

void SpecsPage::wire()
{
    connect(m_vehicleList, &RuledList::chosen, this, [this](qint64 vehicle) {
        if (const VehicleRow *row = m_vehicles.at(vehicle))
            m_specs.setEngine(row->engine->id);
    });
    connect(m_sectionList, &RuledList::chosen, this, [this](qint64 section) { chooseSection(Section(section)); });
    connect(m_sectionList, &RuledList::opened, this, [this](qint64 section) {
        if (Section(section) == Section::CrankPositions)
            m_table->focusFirst();
        else
            form(Section(section))->focusFirst();
    });
    connect(m_jointList, &RuledList::chosen, this,
            [this](qint64 joint) { chooseJoint(joint == newJoint ? std::nullopt : std::optional(JointId(joint))); });
    connect(m_jointList, &RuledList::opened, m_jointForm, &JointForm::focusFirst);
    connect(m_jointForm, &JointForm::added, this, &SpecsPage::chooseJoint);
    connect(&m_specs, &SpecsModel::jointsChanged, this, &SpecsPage::showJoints);
    connect(&m_specs, &SpecsModel::engineChanged, this, &SpecsPage::showEngine);
    connect(&m_specs, &SpecsModel::specsChanged, this, &SpecsPage::showSections);
    connect(&m_vehicles, &VehiclesModel::changed, this, [this] {
        if (!m_specs.engineId())
            m_specs.setEngine(m_vehicles.firstEngine());
    });
}

void SpecsPage::chooseEngine(EngineId engine)
{
    m_specs.setEngine(engine);
}

void SpecsPage::chooseSection(Section section)
{
    if (!m_sectionRows.indexOf(qint64(section)).isValid())
        return;
    m_section = section;
    m_showsJoint = false;
    m_jointList->setCurrentId(std::nullopt);
    m_sectionList->setCurrentId(qint64(section));
    m_stack->setCurrentIndex(int(section));
}

void SpecsPage::chooseJoint(std::optional<JointId> joint)
{
    const qint64 row = joint ? joint->key() : newJoint;
    if (!m_jointRows.indexOf(row).isValid())
        return;
    m_showsJoint = true;
    m_sectionList->setCurrentId(std::nullopt);
    m_jointList->setCurrentId(row);
    if (m_jointForm->joint() != joint)
        m_jointForm->showJoint(joint);
    m_stack->setCurrentIndex(m_stack->count() - 1);
}

void SpecsPage::showJoints()
{
    QList<RuledRow> rows;
    for (const Joint &joint : m_specs.joints()) {
        RuledRow row;
        row.id = joint.id.key();
        row.title = QString::fromStdString(joint.text.name);
        row.note = jointLine(joint);
        rows.append(row);
    }
    if (m_specs.engineId()) {
        RuledRow row;
        row.id = newJoint;
        row.title = tr("New joint");
        rows.append(row);
    }
    m_jointRows.setRows(rows);
    if (!m_showsJoint)
        return;
    const auto shown = m_jointForm->joint();
    if (m_jointRows.indexOf(shown ? shown->key() : newJoint).isValid())
        m_jointList->setCurrentId(shown ? shown->key() : newJoint);
    else
        chooseSection(m_section);
}

void SpecsPage::showEngine()
{
    const VehicleRow *row = m_specs.engine();
    m_vehicleList->setCurrentId(row ? std::optional(idOf(*row)) : std::nullopt);
    m_head->setBeside(row ? rowName(*row) : QString());
    m_head->setRight(row ? engineWords(*row->engine) : QString(), row ? layoutName(row->engine->design.layout) : QString());
    showSections();
    showJoints();
}

void SpecsPage::showSections()
{
    const VehicleRow *engine = m_specs.engine();
    QList<RuledRow> rows;
    for (std::size_t at = 0; at < subjects.size(); ++at) {
        const Spec *now = m_specs.now(subjects.at(at));
        // A value that was typed stays in sight, also where the engine was found not to have it.
        if (!now && engine && !hasSubject(engine->engine->design, subjects.at(at)))
            continue;
        if (!engine && at >= std::size_t(Section::BridgeScrew) && at <= std::size_t(Section::Injector))
            continue;
        RuledRow row;
        row.id = qint64(at);
        row.title = subjectName(subjects.at(at));
        row.note = now ? bandLine(*now) : tr("no spec yet");
        rows.append(row);
    }
    RuledRow crank;
    crank.id = qint64(Section::CrankPositions);
    crank.title = tr("Crank positions");
    crank.note = m_specs.table() ? sourceText(m_specs.table()->source) : tr("generated until typed");
    rows.append(crank);
    m_sectionRows.setRows(rows);
    const bool stays = m_sectionRows.indexOf(qint64(m_section)).isValid();
    if (!m_showsJoint)
        chooseSection(stays ? m_section : Section(rows.front().id));
    else if (!stays)
        m_section = Section(rows.front().id);
    m_message->clear();
    if (m_specs.failure())
        m_message->refuse(sentence(*m_specs.failure()));
}

} // namespace asleft
