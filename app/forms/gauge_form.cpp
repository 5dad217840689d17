#include <forms/gauge_form.h>

#include "form_layout.h"
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/tools.h>

#include <QVBoxLayout>

#include <array>

namespace asleft {

namespace {

constexpr std::array kinds{ToolKind::DialGauge, ToolKind::Micrometer};

QString gaugeRefusal(GaugeField, const Error &error)
{
    return error.kind == ErrorKind::NameMissing ? GaugeForm::tr("Give the gauge a name, such as the number on it.") : sentence(error);
}

} // namespace

GaugeForm::GaugeForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark),
      m_kind(new ChoiceKeys(tr("What it is"), {toolKindName(kinds.front()), toolKindName(kinds.back())})),
      m_fields({{GaugeField::Name, new ValueField(tr("Name of the gauge"))},
                {GaugeField::PermissibleError, new ValueField(tr("May be off by"))},
                {GaugeField::Resolution, new ValueField(tr("Is read to"))}}),
      m_unit(new ChoiceKeys(tr("Bare numbers of the gauge count in"), lengthUnitTexts())), m_judgement(new MessageLine),
      m_save(new KeyButton(tr("Save the gauge"))), m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_save});
    tell();
}

void GaugeForm::buildLayout()
{
    QVBoxLayout *column = columnUnder(tr("New gauge"), this);
    column->addWidget(m_kind);
    column->addWidget(name());
    addPair(*column, permissibleError(), resolution());
    column->addWidget(m_unit);
    column->addWidget(m_judgement);
    addEnd(*column, m_message, m_save);
    for (ValueField *field : {permissibleError(), resolution()})
        field->setPlaceholder(tr("not known"));
    permissibleError()->setNote(tr("largest permissible error, from its card"));
}

void GaugeForm::wire()
{
    for (const auto &[which, field] : m_fields) {
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
        connect(field, &ValueField::edited, this, &GaugeForm::tell);
        connect(field, &ValueField::left, this, [this, which = which] { leave(which); });
    }
    connect(m_kind, &ChoiceKeys::chosen, m_message, &MessageLine::clear);
    connect(m_unit, &ChoiceKeys::chosen, this, &GaugeForm::tell);
    chainByEnter(allOf(m_fields));
    connect(resolution(), &ValueField::entered, this, &GaugeForm::save);
    connect(m_save, &KeyButton::clicked, this, &GaugeForm::save);
}

GaugeText GaugeForm::typed() const
{
    return {.kind = kinds.at(std::size_t(m_kind->choice())),
            .name = name()->text().toStdString(),
            .permissibleError = permissibleError()->text().toStdString(),
            .resolution = resolution()->text().toStdString(),
            .unit = lengthUnits.at(std::size_t(m_unit->choice()))};
}

void GaugeForm::tell()
{
    const GaugeReading now = reading();
    mendFields(m_fields, now.refusals, gaugeRefusal);
    const bool known = now.tool.permissibleError || now.tool.resolution;
    m_judgement->quiet(known ? gaugeWords(now.tool) : QString());
}

void GaugeForm::leave(GaugeField field)
{
    refuseLeft(m_fields, field, reading().refusals, gaugeRefusal);
}

void GaugeForm::save()
{
    const GaugeReading now = reading();
    tell();
    if (refuseFields(m_fields, now.refusals, gaugeRefusal))
        return;
    if (const auto added = m_tools.addGauge(typed(), m_mark); !added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(QString::fromStdString(now.tool.name)));
    clear();
}

void GaugeForm::clear()
{
    for (const auto &[which, field] : m_fields)
        field->setText({});
    tell();
    name()->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
