#include <forms/vehicle_form.h>

#include <drawn/engine_view.h>
#include <parts/choice_keys.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/vehicles.h>

#include <QVBoxLayout>

namespace asleft {

namespace {

using Field = VehicleField;
using Choice = VehicleChoice;

} // namespace

VehicleForm::VehicleForm(DecimalMark mark, QWidget *parent) : QWidget(parent), m_mark(mark), m_fields(new VehicleFields)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_fields);
    connect(m_fields, &VehicleFields::edited, this, &VehicleForm::changedHere);
    connect(m_fields, &VehicleFields::left, this, &VehicleForm::leftField);
    connect(m_fields, &VehicleFields::finished, this, &VehicleForm::finished);
    setTyped({});
}

void VehicleForm::setTyped(const VehicleTyped &typed)
{
    m_left.clear();
    m_fields->setTyped(typed);
    choice(Choice::MeterReplaced)->setVisible(typed.meterReplaced);
    tellNumber(true);
    redraw(reading());
}

void VehicleForm::setLastMeter(const std::optional<MeterReading> &last, const QString &note)
{
    m_lastMeter = last;
    field(Field::Meter)->setNote(note);
}

MeterUnit VehicleForm::meterUnit() const
{
    return MeterUnit(choice(Choice::MeterUnit)->choice());
}

bool VehicleForm::meterReplaced() const
{
    return m_fields->yes(Choice::MeterReplaced);
}

VehicleReading VehicleForm::reading() const
{
    return readVehicle(typed(), m_mark, m_lastMeter);
}

void VehicleForm::changedHere()
{
    const VehicleReading now = reading();
    redraw(now);
    m_fields->mend(now);
    tellNumber(!field(Field::Number)->edit()->hasFocus());
    offerAnotherMeter(now);
    Q_EMIT edited();
}

void VehicleForm::leftField(VehicleField left)
{
    m_left.insert(left);
    if (left == Field::Number)
        tellNumber(true);
    tell(reading());
}

/// What is wrong with the fields that were left.
void VehicleForm::tell(const VehicleReading &now)
{
    m_fields->mend(now);
    for (const auto &[field, error] : now.refusals)
        if (m_left.contains(field))
            this->field(field)->refuse(refusalSentence(field, error));
    offerAnotherMeter(now);
}

/// What the check digit says; of a number that is still being typed there is nothing to say.
void VehicleForm::tellNumber(bool whole)
{
    const VehicleNumber number = checkVehicleNumber(field(Field::Number)->text().toStdString());
    const bool tells = whole || number.check != NumberCheck::NoCheckDigit;
    field(Field::Number)->setNote(tells ? vehicleNumberText(number) : QString());
}

/// A meter that reads less than it did may be another one: that can be said beside it, and unsaid.
void VehicleForm::offerAnotherMeter(const VehicleReading &now)
{
    const auto refused = now.refusals.find(Field::Meter);
    const bool less = refused != now.refusals.end() && refused->second.kind == ErrorKind::MeterRunsBack;
    ChoiceKeys *which = choice(Choice::MeterReplaced);
    which->setVisible(meterReplaced() || (less && (field(Field::Meter)->isRefused() || !which->isHidden())));
}

void VehicleForm::redraw(const VehicleReading &now)
{
    const Layout layout = now.text.engine.layout;
    // Of no cylinders there is no numbering, only the bars between the banks.
    const int cylinders = qBound(0, now.text.engine.cylinders, 24);
    field(Field::Numbering)->setPlaceholder(cylinders == 0 ? QString() : QString::fromStdString(usualNumbering(layout, cylinders)));
    m_fields->view()->show(sketchOf(now.text.engine, m_mark));
}

std::optional<VehicleText> VehicleForm::take()
{
    const VehicleReading now = reading();
    const bool refused = m_fields->refuse(now);
    offerAnotherMeter(now);
    return refused ? std::nullopt : std::optional(now.text);
}

bool VehicleForm::refuse(const Error &error)
{
    if (error.kind == ErrorKind::MeterRunsBack) {
        refuseMeter(error);
        return true;
    }
    const bool ofCylinders = error.kind == ErrorKind::CylinderLabelCount || error.kind == ErrorKind::CylindersInUse;
    if (!ofCylinders || field(Field::Numbering)->isHidden())
        return false;
    field(Field::Numbering)->refuse(sentence(error));
    return true;
}

void VehicleForm::refuseMeter(const Error &error)
{
    ValueField *meter = field(Field::Meter);
    meter->refuse(refusalSentence(Field::Meter, error));
    choice(Choice::MeterReplaced)->setVisible(meterReplaced() || error.kind == ErrorKind::MeterRunsBack);
    meter->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
