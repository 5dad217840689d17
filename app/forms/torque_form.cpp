#include <forms/torque_form.h>

#include <words/numbers.h>

#include <parts/fields.h>

#include "form_layout.h"
#include <forms/spec_reader.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>
#include <words/numbers.h>

#include <QVBoxLayout>

namespace asleft {

TorqueForm::TorqueForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark), m_how(new ChoiceKeys(tr("The wrench"), {tr("is set, and gives way"), tr("is read")})),
      m_name(new ValueField(tr("Name of the wrench"))), m_least(new ValueField(tr("Marked from"))),
      m_most(new ValueField(tr("Marked up to"))), m_unit(new ChoiceKeys(tr("Bare numbers of the wrench count in"), torqueUnitTexts())),
      m_deviation(new ValueField(tr("May be off by, percent"))), m_due(new ValueField(tr("Calibration due"))),
      m_lever(new ValueField(tr("Lever, drive to grip mark"))), m_leverUnit(new ChoiceKeys(tr("Bare lengths count in"), lengthUnitTexts())),
      m_judgement(new MessageLine), m_save(new KeyButton(tr("Save the torque wrench"))), m_message(new MessageLine)
{
    buildLayout();
    wire();
    keepFromWriting(tools.garage(), {m_save});
}

void TorqueForm::buildLayout()
{
    QVBoxLayout *column = columnUnder(tr("New torque wrench"), this);
    column->addWidget(m_how);
    column->addWidget(m_name);
    addPair(*column, m_least, m_most);
    column->addWidget(m_unit);
    addPair(*column, m_deviation, m_due);
    addPair(*column, m_lever, m_leverUnit);
    column->addWidget(m_judgement);
    addEnd(*column, m_message, m_save);
    m_deviation->setPlaceholder(tr("by ISO 6789"));
    m_due->setPlaceholder(tr("2027-03-31"));
    m_lever->setPlaceholder(tr("not known"));
    m_lever->setNote(tr("wanted with an adapter"));
}

void TorqueForm::wire()
{
    for (ValueField *field : fields()) {
        connect(field, &ValueField::edited, m_message, &MessageLine::clear);
        connect(field, &ValueField::edited, this, &TorqueForm::tell);
        connect(field, &ValueField::left, this, [this, field] { leave(field); });
    }
    connect(m_name, &ValueField::edited, m_name, &ValueField::accept);
    for (ChoiceKeys *keys : {m_how, m_unit, m_leverUnit})
        connect(keys, &ChoiceKeys::chosen, this, &TorqueForm::tell);
    chainByEnter(fields());
    connect(m_lever, &ValueField::entered, this, &TorqueForm::save);
    connect(m_save, &KeyButton::clicked, this, &TorqueForm::save);
}

QString TorqueForm::textOf(const ValueField *field) const
{
    return field->text().trimmed();
}

TorqueUnit TorqueForm::torqueUnit() const
{
    return torqueChoices.at(std::size_t(m_unit->choice()));
}

LengthUnit TorqueForm::lengthUnit() const
{
    return lengthUnits.at(std::size_t(m_leverUnit->choice()));
}

TorqueWrenchText TorqueForm::typed() const
{
    return {.kind = m_how->choice() == 0 ? ToolKind::TorqueSet : ToolKind::TorqueRead,
            .name = plainText(m_name),
            .least = plainText(m_least),
            .most = plainText(m_most),
            .unit = torqueUnit(),
            .deviation = plainText(m_deviation),
            .calibrationDue = plainText(m_due),
            .lever = plainText(m_lever),
            .lengthUnit = lengthUnit()};
}

Result<std::optional<Typed<Torque>>> TorqueForm::readTorque(const ValueField *field) const
{
    return readMaybe<Torque>(field, torqueUnit(), m_mark);
}

Result<std::optional<Typed<Length>>> TorqueForm::readLever() const
{
    return readMaybe<Length>(m_lever, lengthUnit(), m_mark);
}

Result<std::optional<Rational>> TorqueForm::readDeviation() const
{
    QString percent = textOf(m_deviation);
    if (percent.endsWith(u'%'))
        percent.chop(1);
    if (percent.trimmed().isEmpty())
        return std::optional<Rational>();
    return parseNumber(percent.trimmed().toStdString(), m_mark).map([](Rational value) { return std::optional(value); });
}

std::optional<TorqueTool> TorqueForm::read(bool refuse)
{
    const auto least = readTorque(m_least);
    const auto most = readTorque(m_most);
    const auto deviation = readDeviation();
    const auto due = readDay(m_due);
    const auto lever = readLever();
    markField(m_least, least, refuse);
    markField(m_most, most, refuse);
    markField(m_deviation, deviation, refuse);
    markField(m_due, due, refuse);
    markField(m_lever, lever, refuse);
    m_due->setNote(due && *due && **due < todayIn(m_tools.garage()) ? calibrationWords(*due, todayIn(m_tools.garage())) : QString());
    if (!least || !*least || !most || !*most || !deviation || !due || !lever)
        return std::nullopt;
    return TorqueTool{.read = m_how->choice() == 1,
                      .least = **least,
                      .most = **most,
                      .deviationPercent = *deviation,
                      .calibrationDue = *due,
                      .lever = *lever ? std::optional((*lever)->value) : std::nullopt};
}

ValueField *TorqueForm::fieldOf(ErrorKind kind) const
{
    switch (kind) {
    case ErrorKind::TorqueRange: return m_most;
    case ErrorKind::DeviationOutOfRange: return m_deviation;
    case ErrorKind::LeverOutOfRange: return m_lever;
    case ErrorKind::DateUnread: return m_due;
    case ErrorKind::NameMissing:
    case ErrorKind::TextTooLong: return m_name;
    default: return nullptr;
    }
}

std::vector<TorqueTool> TorqueForm::parts() const
{
    const Typed<Torque> some{Torque::ofSmallest(1), TorqueUnit::NewtonMetre, {}};
    std::vector<TorqueTool> parts;
    const auto least = readTorque(m_least);
    const auto most = readTorque(m_most);
    if (least && *least && most && *most)
        parts.push_back({.least = **least, .most = **most});
    if (const auto deviation = readDeviation())
        parts.push_back({.least = some, .most = some, .deviationPercent = *deviation});
    if (const auto lever = readLever(); lever && *lever)
        parts.push_back({.least = some, .most = some, .lever = (*lever)->value});
    return parts;
}

void TorqueForm::refuseUnsound(const QList<ValueField *> &among)
{
    for (const TorqueTool &part : parts()) {
        const Done sound = checkTorqueTool(part);
        ValueField *field = sound ? nullptr : fieldOf(sound.error().kind);
        if (field && among.contains(field))
            field->refuse(sentence(sound.error()));
    }
}

void TorqueForm::tell()
{
    QList<ValueField *> refused;
    for (ValueField *field : fields())
        if (field->isRefused())
            refused.append(field);
    const auto wrench = read(false);
    // What was refused stays so until it is mended, whichever field is typed in.
    refuseUnsound(refused);
    m_judgement->quiet(wrench && checkTorqueTool(*wrench) ? worthWords(*wrench) : QString());
}

void TorqueForm::leave(ValueField *field)
{
    if (textOf(field).isEmpty())
        return;
    // Only what was left is refused: the rest may still be on its way.
    if (field == m_least || field == m_most)
        markField(field, readTorque(field), true);
    else if (field == m_deviation)
        markField(field, readDeviation(), true);
    else if (field == m_due)
        markField(field, readDay(m_due), true);
    else if (field == m_lever)
        markField(field, readLever(), true);
    if (field == m_name || field == m_least || field->isRefused())
        return;
    refuseUnsound({field});
}

void TorqueForm::save()
{
    read(true);
    refuseUnsound(fields());
    for (ValueField *field : {m_least, m_most})
        if (textOf(field).isEmpty())
            field->refuse(tr("Type the range marked on the wrench, as 20 to 200 N·m."));
    if (textOf(m_name).isEmpty())
        m_name->refuse(tr("Give the wrench a name, such as the number on it."));
    if (focusRefused(fields()))
        return;
    const auto added = m_tools.addTorqueWrench(typed(), m_mark);
    if (!added) {
        if (ValueField *field = fieldOf(added.error().kind)) {
            field->refuse(sentence(added.error()));
            field->edit()->setFocus(Qt::OtherFocusReason);
        } else {
            m_message->refuse(sentence(added.error()));
        }
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(textOf(m_name)));
    clear();
}

void TorqueForm::clear()
{
    for (ValueField *field : fields())
        field->setText({});
    tell();
    m_name->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
