#include <forms/torque_form.h>

#include "form_layout.h"
#include <forms/spec_reader.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>

#include <words/errors.h>
#include <words/numbers.h>

#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

QString wrenchRefusal(TorqueWrenchField, const Error &error)
{
    if (error.kind == ErrorKind::NameMissing)
        return TorqueForm::tr("Give the wrench a name, such as the number on it.");
    if (error.kind == ErrorKind::EmptyText)
        return TorqueForm::tr("Type the range marked on the wrench, as 20 to 200 N·m.");
    return sentence(error);
}

/// Whether what it is good for can be told, whatever it is called.
bool isSound(const TorqueWrenchReading &reading)
{
    return std::ranges::all_of(reading.refusals, [](const auto &refusal) { return refusal.first == TorqueWrenchField::Name; });
}

} // namespace

TorqueForm::TorqueForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark),
      m_fields({{TorqueWrenchField::Name, new ValueField(tr("Name of the wrench"))},
                {TorqueWrenchField::Least, new ValueField(tr("Marked from"))},
                {TorqueWrenchField::Most, new ValueField(tr("Marked up to"))},
                {TorqueWrenchField::Deviation, new ValueField(tr("May be off by, percent"))},
                {TorqueWrenchField::CalibrationDue, new ValueField(tr("Calibration due"))},
                {TorqueWrenchField::Lever, new ValueField(tr("Lever, drive to grip mark"))}}),
      m_how(new ChoiceKeys(tr("The wrench"), {tr("is set, and gives way"), tr("is read")})),
      m_unit(new ChoiceKeys(tr("Bare numbers of the wrench count in"), torqueUnitTexts())),
      m_leverUnit(new ChoiceKeys(tr("Bare lengths count in"), lengthUnitTexts())), m_judgement(new MessageLine),
      m_save(new KeyButton(tr("Save the torque wrench"))), m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_save});
}

void TorqueForm::buildLayout()
{
    QVBoxLayout *column = columnUnder(tr("New torque wrench"), this);
    column->addWidget(m_how);
    column->addWidget(name());
    addPair(*column, least(), most());
    column->addWidget(m_unit);
    addPair(*column, deviation(), due());
    addPair(*column, lever(), m_leverUnit);
    column->addWidget(m_judgement);
    addEnd(*column, m_message, m_save);
    deviation()->setPlaceholder(tr("by ISO 6789"));
    due()->setPlaceholder(tr("2027-03-31"));
    lever()->setPlaceholder(tr("not known"));
    lever()->setNote(tr("wanted with an adapter"));
}

void TorqueForm::wire()
{
    const auto tellNow = [this] { tell(reading()); };
    for (const auto &[which, field] : m_fields) {
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
        connect(field, &ValueField::edited, this, tellNow);
        connect(field, &ValueField::left, this, [this, which = which] { leave(which); });
    }
    for (ChoiceKeys *keys : {m_how, m_unit, m_leverUnit})
        connect(keys, &ChoiceKeys::chosen, this, tellNow);
    chainByEnter(allOf(m_fields));
    connect(lever(), &ValueField::entered, this, &TorqueForm::save);
    connect(m_save, &KeyButton::clicked, this, &TorqueForm::save);
}

TorqueWrenchText TorqueForm::typed() const
{
    return {.kind = m_how->choice() == 0 ? ToolKind::TorqueSet : ToolKind::TorqueRead,
            .name = name()->text().toStdString(),
            .least = least()->text().toStdString(),
            .most = most()->text().toStdString(),
            .unit = torqueChoices.at(std::size_t(m_unit->choice())),
            .deviation = deviation()->text().toStdString(),
            .calibrationDue = due()->text().toStdString(),
            .lever = lever()->text().toStdString(),
            .lengthUnit = lengthUnits.at(std::size_t(m_leverUnit->choice()))};
}

void TorqueForm::tell(const TorqueWrenchReading &reading)
{
    mendFields(m_fields, reading.refusals, wrenchRefusal);
    const TorqueTool &wrench = *reading.tool.torque;
    const auto today = todayIn(m_tools.garage());
    due()->setNote(isOverdue(wrench, today) ? calibrationWords(wrench.calibrationDue, today) : QString());
    m_judgement->quiet(isSound(reading) ? worthWords(wrench) : QString());
}

void TorqueForm::leave(TorqueWrenchField field)
{
    const TorqueWrenchReading now = reading();
    tell(now);
    // Only what was left is refused: the rest may still be on its way.
    refuseLeft(m_fields, field, now.refusals, wrenchRefusal);
}

void TorqueForm::save()
{
    const TorqueWrenchReading now = reading();
    tell(now);
    if (refuseFields(m_fields, now.refusals, wrenchRefusal))
        return;
    if (const auto added = m_tools.addTorqueWrench(typed(), m_mark); !added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(QString::fromStdString(now.tool.name)));
    clear();
}

void TorqueForm::clear()
{
    for (const auto &[which, field] : m_fields)
        field->setText({});
    tell(reading());
    name()->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
