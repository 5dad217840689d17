#include <forms/feeler_form.h>

#include "form_layout.h"
#include <drawn/leaf_fan.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>

#include <words/errors.h>
#include <words/numbers.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

QString feelerRefusal(FeelerField, const Error &error)
{
    return error.kind == ErrorKind::NameMissing ? FeelerForm::tr("Give the set a name, such as the one on its handle.") : sentence(error);
}

} // namespace

FeelerForm::FeelerForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark),
      m_fields({{FeelerField::Name, new ValueField(tr("Name of the set"))}, {FeelerField::Leaves, new ValueField(tr("Leaves"))}}),
      m_unit(new ChoiceKeys(tr("Bare numbers count in"), lengthUnitTexts())), m_fan(new LeafFan),
      m_save(new KeyButton(tr("Save the feeler set"))), m_message(new MessageLine)
{
    QVBoxLayout *column = columnUnder(tr("New feeler set"), this);
    column->addWidget(name());
    column->addWidget(leaves());
    column->addWidget(m_unit);
    column->addWidget(m_fan);
    addEnd(*column, m_message, m_save);
    keepFromWriting(tools.garage(), {m_save});
    leaves()->setPlaceholder(tr("0.05-1.00 by 0.05 mm"));
    for (const auto &[which, field] : m_fields) {
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
        connect(field, &ValueField::edited, this, &FeelerForm::tell);
        connect(field, &ValueField::left, this, [this, which = which] { leave(which); });
    }
    connect(m_unit, &ChoiceKeys::chosen, this, &FeelerForm::tell);
    chainByEnter(allOf(m_fields));
    connect(leaves(), &ValueField::entered, this, &FeelerForm::save);
    connect(m_save, &KeyButton::clicked, this, &FeelerForm::save);
}

FeelerText FeelerForm::typed() const
{
    return {name()->text().toStdString(), leaves()->text().toStdString(), lengthUnits.at(std::size_t(m_unit->choice()))};
}

void FeelerForm::tell()
{
    const FeelerReading now = reading();
    const auto &read = now.tool.leaves;
    m_fan->show(read);
    leaves()->setNote(read.empty() ? QString() : leavesWords(read));
    mendFields(m_fields, now.refusals, feelerRefusal);
}

void FeelerForm::leave(FeelerField field)
{
    refuseLeft(m_fields, field, reading().refusals, feelerRefusal);
}

void FeelerForm::look(const Tool &set)
{
    if (!leaves()->text().isEmpty())
        return;
    m_fan->show(set.leaves);
    m_message->quiet(tr("%1: %2").arg(QString::fromStdString(set.name), QString::fromStdString(set.leavesText)));
}

void FeelerForm::save()
{
    const FeelerReading now = reading();
    tell();
    if (refuseFields(m_fields, now.refusals, feelerRefusal))
        return;
    const FeelerText text = typed();
    const auto added = m_tools.addFeelerSet(name()->text(), leaves()->text(), text.unit, m_mark);
    if (!added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(QString::fromStdString(now.tool.name)));
    for (const auto &[which, field] : m_fields)
        field->setText({});
    tell();
    name()->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
