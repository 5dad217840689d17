#include "pages/tools_page.h"

#include "pages/feeler_form.h"
#include "pages/gauge_form.h"
#include "pages/person_form.h"
#include "pages/rule_form.h"
#include "pages/tools_model.h"
#include "parts/heading.h"
#include "parts/ink_of.h"
#include "parts/message_line.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/scroll_sheet.h"
#include "parts/sheet_head.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

/// A column of the page: a list with its head, and below it the form for one more.
struct Column {
    Column(const QString &head, RuledRows *shown, const QString &emptyWords) : widget(new QWidget), list(new RuledList(head, shown))
    {
        rows = new QVBoxLayout(widget);
        rows->setContentsMargins(0, 0, 4, 0);
        rows->setSpacing(8);
        auto *heading = new Heading(head, TextSize::BodyStrong);
        heading->setIndent(8);
        rows->addWidget(heading);
        list->setEmptyWords(emptyWords);
        list->setWhole(true);
        rows->addWidget(list);
        rows->addSpacing(10);
    }

    QWidget *widget;
    RuledList *list;
    QVBoxLayout *rows;
};

} // namespace

ToolsPage::ToolsPage(Desk &desk, ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_head(new SheetHead(tr("Tools"))), m_feelers(new FeelerForm(tools, desk.mark())),
      m_gauges(new GaugeForm(tools, desk.mark())), m_people(new PersonForm(tools)), m_rule(new RuleForm(tools)), m_message(new MessageLine)
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin - 8, 12, sheetMargin - 4, 12);
    columns->setSpacing(14);
    columns->addWidget(new ScrollSheet(feelerColumn()), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(new ScrollSheet(gaugeColumn()), 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(new ScrollSheet(peopleColumn()), 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addWidget(m_message);
    page->addLayout(columns, 1);
    m_head->setBeside(tr("what is measured with, by whom, and how it is judged"));
    const auto tell = [this] {
        m_message->clear();
        if (m_tools.failure())
            m_message->refuse(sentence(*m_tools.failure()));
    };
    connect(&tools, &ToolsModel::changed, this, tell);
    tell();
}

QWidget *ToolsPage::feelerColumn()
{
    const Column column(tr("Feeler sets"), m_tools.feelerRows(),
                        tr("No feeler set yet. Without one, readings are logged as they are typed."));
    column.rows->addWidget(m_feelers);
    column.rows->addStretch(1);
    connect(column.list, &RuledList::chosen, this, [this](qint64 id) {
        if (const Tool *set = m_tools.tool(id))
            m_feelers->look(*set);
    });
    return column.widget;
}

QWidget *ToolsPage::gaugeColumn()
{
    const Column column(tr("Gauges"), m_tools.gaugeRows(), tr("No dial gauge or micrometer yet."));
    column.rows->addWidget(m_gauges);
    column.rows->addStretch(1);
    return column.widget;
}

QWidget *ToolsPage::peopleColumn()
{
    const Column column(tr("People"), m_tools.peopleRows(), tr("Nobody yet. Whoever logs something is asked for their initials."));
    column.rows->addWidget(m_people);
    column.rows->addSpacing(14);
    column.rows->addWidget(new Rule);
    column.rows->addWidget(m_rule);
    column.rows->addStretch(1);
    return column.widget;
}

} // namespace asleft
