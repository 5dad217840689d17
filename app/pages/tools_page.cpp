#include <pages/tools_page.h>

#include <forms/calibration_form.h>
#include <forms/feeler_form.h>
#include <forms/fitting_form.h>
#include <forms/gauge_form.h>
#include <forms/person_form.h>
#include <forms/rule_form.h>
#include <forms/torque_form.h>
#include <parts/heading.h>
#include <parts/ink_of.h>
#include <parts/page_head.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/tools_model.h>
#include <parts/value_field.h>

#include <words/errors.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <array>

namespace asleft {

namespace {

constexpr int indexWidth = 272;

using ToolSection = ToolsPage::Section;

constexpr std::array sections{ToolSection::FeelerSets, ToolSection::Gauges,  ToolSection::TorqueWrenches, ToolSection::AngleGauges,
                              ToolSection::Adapters,   ToolSection::Sockets, ToolSection::People,         ToolSection::Rule};

QString nameOf(ToolSection section)
{
    switch (section) {
    case ToolSection::FeelerSets: return ToolsPage::tr("Feeler sets");
    case ToolSection::Gauges: return ToolsPage::tr("Gauges");
    case ToolSection::TorqueWrenches: return ToolsPage::tr("Torque wrenches");
    case ToolSection::AngleGauges: return ToolsPage::tr("Angle gauges");
    case ToolSection::Adapters: return ToolsPage::tr("Adapters");
    case ToolSection::Sockets: return ToolsPage::tr("Sockets, keys, spanners");
    case ToolSection::People: return ToolsPage::tr("People");
    case ToolSection::Rule: return ToolsPage::tr("How the shop decides");
    }
    return {};
}

QString emptyWordsOf(ToolSection section)
{
    switch (section) {
    case ToolSection::FeelerSets: return ToolsPage::tr("No feeler set yet. Without one, readings are logged as they are typed.");
    case ToolSection::Gauges: return ToolsPage::tr("No dial gauge or micrometer yet.");
    case ToolSection::TorqueWrenches:
        return ToolsPage::tr("No torque wrench yet. Without one, everything is tightened by feel, and said so.");
    case ToolSection::AngleGauges: return ToolsPage::tr("No angle gauge yet. Without one, fasteners are turned on by a mark.");
    case ToolSection::Adapters: return ToolsPage::tr("No adapter yet: crow-feet and offset wrenches, with their length.");
    case ToolSection::Sockets: return ToolsPage::tr("No socket, key or spanner yet.");
    case ToolSection::People: return ToolsPage::tr("Nobody yet. Whoever logs something is asked for their initials.");
    case ToolSection::Rule: break;
    }
    return {};
}

} // namespace

ToolsPage::ToolsPage(AppContext &context, ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_head(new PageHead(tr("Tools"))), m_index(new RuledList(tr("Kinds of tools"), &m_indexRows)),
      m_feelers(new FeelerForm(tools, context.mark())), m_gauges(new GaugeForm(tools, context.mark())),
      m_wrenches(new TorqueForm(tools, context.mark())), m_calibration(new CalibrationForm(tools)),
      m_angleGauges(new FittingForm(ToolKind::AngleGauge, tools, context.mark())),
      m_adapters(new FittingForm(ToolKind::Adapter, tools, context.mark())),
      m_sockets(new FittingForm(ToolKind::Socket, tools, context.mark())), m_people(new PersonForm(tools)), m_rule(new RuleForm(tools)),
      m_message(new MessageLine), m_stack(new QStackedLayout)
{
    buildLayout();
    m_head->setBeside(tr("what is measured and tightened with, by whom, and how it is judged"));
    connect(m_index, &RuledList::chosen, this, [this](qint64 section) { chooseSection(ToolSection(section)); });
    connect(m_index, &RuledList::opened, this, &ToolsPage::focusForm);
    wireLists();
    connect(&tools, &ToolsModel::changed, this, &ToolsPage::showIndex);
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    saving->setAutoRepeat(false);
    connect(saving, &QShortcut::activated, this, &ToolsPage::save);
    showIndex();
    chooseSection(ToolSection::FeelerSets);
}

void ToolsPage::wireLists()
{
    connect(list(ToolSection::FeelerSets), &RuledList::chosen, this, [this](qint64 id) {
        if (const Tool *set = m_tools.tool(id))
            m_feelers->look(*set);
    });
    RuledList *wrenches = list(ToolSection::TorqueWrenches);
    connect(wrenches, &RuledList::chosen, this, [this](qint64 id) {
        if (const Tool *wrench = m_tools.tool(id))
            m_calibration->showWrench(*wrench);
    });
    connect(wrenches, &RuledList::opened, m_calibration, &CalibrationForm::focusDue);
}

void ToolsPage::buildLayout()
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(paneMargin - 8, 12, paneMargin - 4, 12);
    columns->setSpacing(14);
    columns->addWidget(indexColumn());
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(m_stack, 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(columns, 1);
    // Only now: a stack without a page of its own shows its first sheet as a window.
    for (const ToolSection section : sections)
        m_stack->addWidget(sheet(section, rowsOf(section), formOf(section)));
}

QWidget *ToolsPage::indexColumn()
{
    auto *column = new QWidget;
    column->setFixedWidth(indexWidth);
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    auto *head = new Heading(tr("Of the shop"), TextSize::BodyStrong);
    head->setIndent(8);
    rows->addWidget(head);
    rows->addWidget(m_index, 50);
    m_index->setFitted(true);
    rows->addWidget(m_message);
    rows->addStretch(1);
    return column;
}

QWidget *ToolsPage::sheet(ToolSection section, RuledRows *rows, QWidget *form)
{
    auto *sheet = new QWidget;
    auto *columns = new QHBoxLayout(sheet);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(14);
    if (rows) {
        auto *column = new QVBoxLayout;
        column->setSpacing(8);
        auto *head = new Heading(nameOf(section), TextSize::BodyStrong);
        head->setIndent(8);
        column->addWidget(head);
        auto *list = new RuledList(nameOf(section), rows);
        list->setEmptyWords(emptyWordsOf(section));
        list->setWholeNotes(true);
        column->addWidget(list, 1);
        if (section == ToolSection::TorqueWrenches)
            column->addWidget(m_calibration);
        columns->addLayout(column, 1);
        columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
        m_lists.push_back(list);
    }
    auto *around = new QWidget;
    auto *top = new QVBoxLayout(around);
    top->setContentsMargins(0, 0, 4, 0);
    top->addWidget(form);
    top->addStretch(1);
    columns->addWidget(new ScrollPane(around), 1);
    return sheet;
}

RuledRows *ToolsPage::rowsOf(ToolSection section) const
{
    // The first sections are the groups of tools, in their order.
    if (section == ToolSection::Rule)
        return nullptr;
    return section == ToolSection::People ? m_tools.peopleRows() : m_tools.rowsOf(ToolGroup(section));
}

void ToolsPage::save()
{
    switch (m_section) {
    case ToolSection::FeelerSets: m_feelers->save(); break;
    case ToolSection::Gauges: m_gauges->save(); break;
    case ToolSection::TorqueWrenches: m_calibration->isAncestorOf(focusWidget()) ? m_calibration->save() : m_wrenches->save(); break;
    case ToolSection::AngleGauges: m_angleGauges->save(); break;
    case ToolSection::Adapters: m_adapters->save(); break;
    case ToolSection::Sockets: m_sockets->save(); break;
    case ToolSection::People: m_people->save(); break;
    case ToolSection::Rule: break; // kept as it is chosen
    }
}

QWidget *ToolsPage::formOf(ToolSection section) const
{
    switch (section) {
    case ToolSection::FeelerSets: return m_feelers;
    case ToolSection::Gauges: return m_gauges;
    case ToolSection::TorqueWrenches: return m_wrenches;
    case ToolSection::AngleGauges: return m_angleGauges;
    case ToolSection::Adapters: return m_adapters;
    case ToolSection::Sockets: return m_sockets;
    case ToolSection::People: return m_people;
    case ToolSection::Rule: return m_rule;
    }
    return nullptr;
}

QString ToolsPage::noteOf(ToolSection section) const
{
    if (section == ToolSection::Rule)
        return m_tools.rule() == DecisionRule::Simple ? tr("as read") : tr("with uncertainty");
    const int count = rowsOf(section)->rowCount();
    if (count == 0)
        return tr("none yet");
    if (section == ToolSection::People)
        return tr("%1 at work here").arg(count);
    if (section == ToolSection::TorqueWrenches && m_tools.wrenchesOverdue() > 0)
        return tr("%1 on the rack, calibration overdue: %2").arg(count).arg(m_tools.wrenchesOverdue());
    return tr("%1 on the rack").arg(count);
}

void ToolsPage::showIndex()
{
    QList<RuledRow> rows;
    for (const ToolSection section : sections) {
        RuledRow row;
        row.id = qint64(section);
        row.title = nameOf(section);
        row.note = noteOf(section);
        rows.append(row);
    }
    m_indexRows.setRows(rows);
    m_message->clear();
    if (m_tools.failure())
        m_message->refuse(sentence(*m_tools.failure()));
}

void ToolsPage::chooseSection(ToolSection section)
{
    m_section = section;
    m_index->setCurrentId(qint64(section));
    m_stack->setCurrentIndex(int(section));
}

/// Enter on a line of the index goes to what is typed there.
void ToolsPage::focusForm()
{
    QWidget *first = formOf(m_section);
    for (QWidget *next = first->nextInFocusChain(); next != first; next = next->nextInFocusChain()) {
        if (!formOf(m_section)->isAncestorOf(next) || !next->isVisible() || !(next->focusPolicy() & Qt::TabFocus))
            continue;
        next->setFocus(Qt::TabFocusReason);
        return;
    }
}

} // namespace asleft
