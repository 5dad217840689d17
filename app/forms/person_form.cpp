#include <forms/person_form.h>

#include "form_layout.h"
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tools_model.h>
#include <parts/value_field.h>

#include <words/errors.h>

#include <QVBoxLayout>

namespace asleft {

PersonForm::PersonForm(ToolsModel &tools, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_initials(new ValueField(tr("Initials"))), m_name(new ValueField(tr("Name"))),
      m_save(new KeyButton(tr("Save the person"))), m_message(new MessageLine)
{
    QVBoxLayout *column = columnUnder(tr("New person"), this);
    column->addWidget(m_initials);
    column->addWidget(m_name);
    addEnd(*column, m_message, m_save);
    keepFromWriting(tools.garage(), {m_save});
    m_name->setPlaceholder(tr("may be left empty"));
    for (ValueField *field : {m_initials, m_name}) {
        connect(field, &ValueField::edited, field, &ValueField::accept);
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
    }
    chainByEnter({m_initials, m_name});
    connect(m_name, &ValueField::entered, this, &PersonForm::save);
    connect(m_save, &KeyButton::clicked, this, &PersonForm::save);
}

void PersonForm::save()
{
    if (m_initials->text().trimmed().isEmpty()) {
        m_initials->refuse(tr("Type the initials that go beside what this person does."));
        m_initials->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto added = m_tools.addPerson(m_initials->text(), m_name->text());
    if (!added) {
        m_initials->refuse(sentence(added.error()));
        m_initials->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_message->done(tr("%1 works here.").arg(m_initials->text().trimmed()));
    m_initials->setText({});
    m_name->setText({});
    m_initials->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
