#include <forms/fitting_form.h>

#include <words/numbers.h>

#include <parts/fields.h>

#include "form_layout.h"
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tools_model.h>
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

} // namespace

FittingForm::FittingForm(ToolKind kind, ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_kind(kind), m_tools(tools), m_mark(mark), m_name(new ValueField(wordsOf(kind).name)),
      m_size(new ValueField(wordsOf(kind).size)), m_length(new ValueField(tr("Length, drive to fastener"))),
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
    column->addWidget(m_name);
    column->addWidget(m_size);
    addPair(*column, m_length, m_unit);
    addEnd(*column, m_message, m_save);
    const bool adapter = m_kind == ToolKind::Adapter;
    m_size->setPlaceholder(adapter ? tr("13 mm, may be left empty") : tr("13 mm"));
    m_length->setNote(tr("0 for a straight extension, which changes no setting"));
    m_size->setHidden(m_kind == ToolKind::AngleGauge);
    m_length->setHidden(!adapter);
    m_unit->setHidden(!adapter);
}

QList<ValueField *> FittingForm::fields() const
{
    switch (m_kind) {
    case ToolKind::AngleGauge: return {m_name};
    case ToolKind::Adapter: return {m_name, m_size, m_length};
    case ToolKind::FeelerSet:
    case ToolKind::DialGauge:
    case ToolKind::Micrometer:
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead: // each has a form of its own
    case ToolKind::Socket: break;
    }
    return {m_name, m_size};
}

void FittingForm::wire()
{
    const auto asked = fields();
    for (ValueField *field : asked)
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
    for (ValueField *field : {m_name, m_size})
        connect(field, &ValueField::edited, field, &ValueField::accept);
    connect(m_length, &ValueField::edited, this, [this] { readLength(false); });
    connect(m_length, &ValueField::left, this, [this] { readLength(true); });
    connect(m_unit, &ChoiceKeys::chosen, this, [this] { readLength(false); });
    chainByEnter(asked);
    connect(asked.back(), &ValueField::entered, this, &FittingForm::save);
    connect(m_save, &KeyButton::clicked, this, &FittingForm::save);
}

LengthUnit FittingForm::lengthUnit() const
{
    return lengthUnits.at(std::size_t(m_unit->choice()));
}

void FittingForm::readLength(bool refuse)
{
    markField(m_length, readMaybe<Length>(m_length, lengthUnit(), m_mark), refuse);
}

void FittingForm::save()
{
    if (m_name->text().trimmed().isEmpty())
        m_name->refuse(wordsOf(m_kind).unnamed);
    if (m_kind == ToolKind::Adapter) {
        readLength(true);
        if (m_length->text().trimmed().isEmpty())
            m_length->refuse(tr("Measure the adapter from the middle of the drive to that of the fastener; without it no setting can be "
                                "told."));
    }
    if (focusRefused(fields()))
        return;
    const auto added = m_tools.addFitting({.kind = m_kind,
                                           .name = m_name->text().toStdString(),
                                           .size = m_size->text().toStdString(),
                                           .length = m_length->text().toStdString(),
                                           .unit = lengthUnit()},
                                          m_mark);
    if (!added) {
        refuse(added.error());
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(m_name->text().trimmed()));
    for (ValueField *field : fields())
        field->setText({});
    m_name->edit()->setFocus(Qt::OtherFocusReason);
}

void FittingForm::refuse(const Error &error)
{
    if (error.kind != ErrorKind::AdapterOutOfRange) {
        m_message->refuse(sentence(error));
        return;
    }
    m_length->refuse(sentence(error));
    m_length->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
