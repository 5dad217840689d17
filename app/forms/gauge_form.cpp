#include <forms/gauge_form.h>

#include <words/numbers.h>
#include <words/tools.h>

#include <parts/fields.h>

#include "form_layout.h"
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>
#include <words/numbers.h>

#include <QVBoxLayout>

#include <array>

namespace asleft {

namespace {

constexpr std::array kinds{ToolKind::DialGauge, ToolKind::Micrometer};

} // namespace

GaugeForm::GaugeForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark),
      m_kind(new ChoiceKeys(tr("What it is"), {toolKindName(kinds.front()), toolKindName(kinds.back())})),
      m_name(new ValueField(tr("Name of the gauge"))), m_error(new ValueField(tr("May be off by"))),
      m_resolution(new ValueField(tr("Is read to"))), m_unit(new ChoiceKeys(tr("Bare numbers of the gauge count in"), lengthUnitTexts())),
      m_judgement(new MessageLine), m_save(new KeyButton(tr("Save the gauge"))), m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_save});
    tellAccuracy();
}

void GaugeForm::buildLayout()
{
    QVBoxLayout *column = columnUnder(tr("New gauge"), this);
    column->addWidget(m_kind);
    column->addWidget(m_name);
    addPair(*column, m_error, m_resolution);
    column->addWidget(m_unit);
    column->addWidget(m_judgement);
    addEnd(*column, m_message, m_save);
    for (ValueField *field : {m_error, m_resolution})
        field->setPlaceholder(tr("not known"));
    m_error->setNote(tr("largest permissible error, from its card"));
}

void GaugeForm::wire()
{
    for (ValueField *field : {m_name, m_error, m_resolution})
        connect(field, &ValueField::edited, this, [this, field] { edited(field); });
    for (ValueField *field : {m_error, m_resolution})
        connect(field, &ValueField::left, this, [this, field] { read(field, true); });
    connect(m_kind, &ChoiceKeys::chosen, m_message, &MessageLine::clear);
    connect(m_unit, &ChoiceKeys::chosen, this, &GaugeForm::tellAccuracy);
    chainByEnter({m_name, m_error, m_resolution});
    connect(m_resolution, &ValueField::entered, this, &GaugeForm::save);
    connect(m_save, &KeyButton::clicked, this, &GaugeForm::save);
}

LengthUnit GaugeForm::unit() const
{
    return lengthUnits.at(std::size_t(m_unit->choice()));
}

ToolKind GaugeForm::toolKind() const
{
    return kinds.at(std::size_t(m_kind->choice()));
}

void GaugeForm::edited(ValueField *field)
{
    m_message->clear();
    if (field == m_name)
        m_name->accept();
    tellAccuracy();
}

std::optional<Typed<Length>> GaugeForm::read(ValueField *field, bool refuse)
{
    const auto value = readMaybe<Length>(field, unit(), m_mark);
    markField(field, value, refuse);
    return value ? *value : std::nullopt;
}

void GaugeForm::tellAccuracy()
{
    Tool gauge{ToolId(0), {}, {}, {}, toolKind(), {}, {}};
    gauge.permissibleError = read(m_error, false);
    gauge.resolution = read(m_resolution, false);
    const bool typed = gauge.permissibleError || gauge.resolution;
    m_judgement->quiet(typed ? gaugeWords(gauge) : QString());
}

void GaugeForm::save()
{
    if (m_name->text().trimmed().isEmpty())
        m_name->refuse(tr("Give the gauge a name, such as the number on it."));
    read(m_error, true);
    read(m_resolution, true);
    if (focusRefused({m_name, m_error, m_resolution}))
        return;
    const GaugeText text{toolKind(), m_name->text().toStdString(), m_error->text().toStdString(), m_resolution->text().toStdString(),
                         unit()};
    const auto added = m_tools.addGauge(text, m_mark);
    if (!added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(m_name->text().trimmed()));
    clear();
}

void GaugeForm::clear()
{
    for (ValueField *field : {m_name, m_error, m_resolution})
        field->setText({});
    tellAccuracy();
    m_name->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
