#include <forms/fitting_form.h>

#include "form_layout.h"
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tools_model.h>

#include <words/errors.h>
#include <words/numbers.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

/// What the form says of one kind of tool.
struct KindWords {
    QString head;
    QString name;
    QString unnamed;
    QString save;
    QString size;
};

KindWords wordsOf(ToolKind kind)
{
    switch (kind) {
    case ToolKind::AngleGauge:
        return {FittingForm::tr("New angle gauge"),
                FittingForm::tr("Name of the angle gauge"),
                FittingForm::tr("Give the angle gauge a name, such as where it hangs."),
                FittingForm::tr("Save the angle gauge"),
                {}};
    case ToolKind::Adapter:
        return {FittingForm::tr("New adapter"), FittingForm::tr("Name of the adapter"),
                FittingForm::tr("Give the adapter a name, such as crow-foot 13."), FittingForm::tr("Save the adapter"),
                FittingForm::tr("Fits")};
    case ToolKind::FeelerSet:
    case ToolKind::DialGauge:
    case ToolKind::Micrometer:
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead: // each has a form of its own
    case ToolKind::Socket: break;
    }
    return {FittingForm::tr("New socket, key or spanner"), FittingForm::tr("Name of the socket or key"),
            FittingForm::tr("Give it a name, such as deep socket 13."), FittingForm::tr("Save the socket or key"), FittingForm::tr("Size")};
}

/// The words of a field's refusal, of this kind of tool.
auto fittingRefusal(ToolKind kind)
{
    return [kind](FittingField field, const Error &error) {
        if (error.kind != ErrorKind::NameMissing)
            return sentence(error);
        if (field == FittingField::Name)
            return wordsOf(kind).unnamed;
        return FittingForm::tr("Measure the adapter from the middle of the drive to that of the fastener; without it no setting can be "
                               "told.");
    };
}

} // namespace

FittingForm::FittingForm(ToolKind kind, ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_kind(kind), m_tools(tools), m_mark(mark),
      m_fields({{FittingField::Name, new ValueField(wordsOf(kind).name)},
                {FittingField::Size, new ValueField(wordsOf(kind).size)},
                {FittingField::Length, new ValueField(tr("Length, drive to fastener"))}}),
      m_unit(new ChoiceKeys(tr("Bare lengths count in"), lengthUnitTexts())), m_save(new KeyButton(wordsOf(kind).save)),
      m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_save});
}

void FittingForm::buildLayout()
{
    QVBoxLayout *column = columnUnder(wordsOf(m_kind).head, this);
    column->addWidget(name());
    column->addWidget(size());
    addPair(*column, length(), m_unit);
    addEnd(*column, m_message, m_save);
    const bool adapter = m_kind == ToolKind::Adapter;
    size()->setPlaceholder(adapter ? tr("13 mm, may be left empty") : tr("13 mm"));
    length()->setNote(tr("0 for a straight extension, which changes no setting"));
    size()->setHidden(m_kind == ToolKind::AngleGauge);
    length()->setHidden(!adapter);
    m_unit->setHidden(!adapter);
}

QList<ValueField *> FittingForm::asked() const
{
    switch (m_kind) {
    case ToolKind::AngleGauge: return {name()};
    case ToolKind::Adapter: return {name(), size(), length()};
    case ToolKind::FeelerSet:
    case ToolKind::DialGauge:
    case ToolKind::Micrometer:
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead: // each has a form of its own
    case ToolKind::Socket: break;
    }
    return {name(), size()};
}

void FittingForm::wire()
{
    for (const auto &[which, field] : m_fields) {
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
        connect(field, &ValueField::edited, this, &FittingForm::mend);
        connect(field, &ValueField::left, this, [this, which = which] { leave(which); });
    }
    connect(m_unit, &ChoiceKeys::chosen, this, &FittingForm::mend);
    chainByEnter(asked());
    connect(asked().back(), &ValueField::entered, this, &FittingForm::save);
    connect(m_save, &KeyButton::clicked, this, &FittingForm::save);
}

FittingText FittingForm::typed() const
{
    return {.kind = m_kind,
            .name = name()->text().toStdString(),
            .size = size()->text().toStdString(),
            .length = length()->text().toStdString(),
            .unit = lengthUnits.at(std::size_t(m_unit->choice()))};
}

void FittingForm::mend()
{
    mendFields(m_fields, reading().refusals, fittingRefusal(m_kind));
}

void FittingForm::leave(FittingField field)
{
    refuseLeft(m_fields, field, reading().refusals, fittingRefusal(m_kind));
}

void FittingForm::save()
{
    const FittingReading now = reading();
    mend();
    if (refuseFields(m_fields, now.refusals, fittingRefusal(m_kind)))
        return;
    if (const auto added = m_tools.addFitting(typed(), m_mark); !added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(QString::fromStdString(now.tool.name)));
    for (ValueField *field : asked())
        field->setText({});
    name()->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
