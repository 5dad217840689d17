#include "pages/tools_page.h"

#include "pages/feeler_form.h"
#include "pages/person_form.h"
#include "pages/tools_model.h"
#include "parts/heading.h"
#include "parts/ink_of.h"
#include "parts/message_line.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/sheet_head.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

Heading *listHead(const QString &words)
{
    auto *head = new Heading(words, TextSize::BodyStrong);
    head->setIndent(8);
    return head;
}

} // namespace

ToolsPage::ToolsPage(Desk &desk, ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_head(new SheetHead(tr("Tools"))), m_feelers(new FeelerForm(tools, desk.mark())),
      m_people(new PersonForm(tools)), m_message(new MessageLine)
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin - 8, 12, sheetMargin, 12);
    columns->setSpacing(18);
    columns->addWidget(rackColumn(), 3);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(peopleColumn(), 2);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addWidget(m_message);
    page->addLayout(columns, 1);
    m_head->setBeside(tr("what is measured with, and by whom"));
    const auto tell = [this] {
        m_message->clear();
        if (m_tools.failure())
            m_message->refuse(sentence(*m_tools.failure()));
    };
    connect(&tools, &ToolsModel::changed, this, tell);
    tell();
}

QWidget *ToolsPage::rackColumn()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    rows->addWidget(listHead(tr("Feeler sets")));
    auto *list = new RuledList(tr("Feeler sets"), m_tools.feelerRows());
    list->setEmptyWords(tr("No feeler set yet. Without one, readings are logged as they are typed."));
    list->setFitted(true);
    rows->addWidget(list, 50);
    rows->addSpacing(10);
    rows->addWidget(m_feelers);
    rows->addStretch(1);
    connect(list, &RuledList::chosen, this, [this](qint64 id) {
        if (const Tool *set = m_tools.tool(id))
            m_feelers->look(*set);
    });
    return column;
}

QWidget *ToolsPage::peopleColumn()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    rows->addWidget(listHead(tr("People")));
    auto *list = new RuledList(tr("People"), m_tools.peopleRows());
    list->setEmptyWords(tr("Nobody yet. Whoever logs something is asked for their initials."));
    list->setFitted(true);
    rows->addWidget(list, 50);
    rows->addSpacing(10);
    rows->addWidget(m_people);
    rows->addStretch(1);
    return column;
}

} // namespace asleft
