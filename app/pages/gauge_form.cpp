#include "pages/gauge_form.h"

#include "pages/tool_words.h"
#include "pages/tools_model.h"
#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/value_field.h"
#include "read_only.h"

#include <show/words.h>

#include <QHBoxLayout>
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
      m_worth(new MessageLine), m_save(new KeyButton(tr("Save the gauge"))), m_message(new MessageLine)
{
    lay();
    wire();
    keepFromWriting(tools.garage(), {m_save});
    tellWorth();
}

void GaugeForm::lay()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(8, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("New gauge"), TextSize::BodyStrong));
    column->addWidget(m_kind);
    column->addWidget(m_name);
    auto *errors = new QHBoxLayout;
    errors->setSpacing(10);
    errors->addWidget(m_error, 1);
    errors->addWidget(m_resolution, 1);
    column->addLayout(errors);
    column->addWidget(m_unit);
    column->addWidget(m_worth);
    column->addWidget(m_message);
    column->addWidget(m_save, 0, Qt::AlignLeft);
    m_save->setStrong(true);
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
    connect(m_unit, &ChoiceKeys::chosen, this, &GaugeForm::tellWorth);
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
    tellWorth();
}

std::optional<Typed<Length>> GaugeForm::read(ValueField *field, bool refuse)
{
    const bool blank = field->text().trimmed().isEmpty();
    const auto value = parse<Length>(field->text().toStdString(), unit(), m_mark);
    if (blank || value)
        field->accept();
    else if (refuse || field->isRefused())
        field->refuse(sentence(value.error()));
    return value ? std::optional(*value) : std::nullopt;
}

void GaugeForm::tellWorth()
{
    Tool gauge{ToolId(0), {}, {}, {}, toolKind(), {}, {}};
    gauge.permissibleError = read(m_error, false);
    gauge.resolution = read(m_resolution, false);
    const bool typed = gauge.permissibleError || gauge.resolution;
    m_worth->quiet(typed ? gaugeWords(gauge) : QString());
}

void GaugeForm::save()
{
    const bool named = !m_name->text().trimmed().isEmpty();
    if (!named)
        m_name->refuse(tr("Give the gauge a name, such as the number on it."));
    read(m_error, true);
    read(m_resolution, true);
    for (ValueField *field : {m_name, m_error, m_resolution}) {
        if (field->isRefused()) {
            field->edit()->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
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
    tellWorth();
    m_name->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
