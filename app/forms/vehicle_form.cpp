#include <forms/vehicle_form.h>

#include <drawn/engine_view.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/heading.h>
#include <parts/key_button.h>

#include <measure/text.h>
#include <words/errors.h>
#include <words/vehicles.h>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

using Field = VehicleField;
using Choice = VehicleChoice;

/// In the order of the keys: the fewest cylinders first, the rare ones last.
constexpr std::array layouts{Layout::Single, Layout::InLine, Layout::Vee, Layout::Flat, Layout::W, Layout::Radial, Layout::Opposed};

int placeOf(Layout layout)
{
    return int(std::ranges::find(layouts, layout) - layouts.begin());
}

} // namespace

VehicleForm::VehicleForm(DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_mark(mark), m_readMeter(new KeyButton(tr("Read the meter"))), m_move(new KeyButton(tr("Move engine"))),
      m_place(new Heading({}, TextSize::Small, Heading::Tone::Quiet)), m_view(new EngineView), m_vehicleGroup(nullptr),
      m_engineGroup(nullptr)
{
    m_move->setPlain(true);
    addFields();
    addChoices();
    buildLayout();
    wire();
    setTyped({});
}

void VehicleForm::wire()
{
    for (const auto &[field, widget] : m_fields) {
        connect(widget, &ValueField::edited, this, &VehicleForm::changedHere);
        connect(widget, &ValueField::left, this, [this, field = field] { leftField(field); });
        connect(widget, &ValueField::entered, this, [this, field = field] { entered(field); });
    }
    for (const auto &[choice, keys] : m_choices)
        connect(keys, &ChoiceKeys::chosen, this, &VehicleForm::changedHere);
    // Which meter it is decides about what was read from it.
    connect(choice(Choice::MeterReplaced), &ChoiceKeys::chosen, this, [this] { leftField(Field::Meter); });
    ChoiceKeys *cam = choice(Choice::CamKnown);
    cam->setLast(true);
    connect(cam, &ChoiceKeys::entered, this, [this, cam] {
        if (cam->choice() == 0)
            Q_EMIT finished();
        else
            cam->key(1)->moveOn();
    });
}

/// Enter goes the way of Tab, and from the last field to saving.
void VehicleForm::entered(VehicleField from)
{
    const VehicleTyped now = typed();
    const auto later = [&](const auto &field) { return field.first > from && isAskedFor(field.first, now); };
    // Behind every field but those of the cam there is at least the choice whether the cam is known, where there is an engine.
    const bool last = (from >= Field::IntakeOpens) && std::ranges::none_of(m_fields, later);
    if (last)
        Q_EMIT finished();
    else
        field(from)->moveOn();
}

bool VehicleForm::yes(VehicleChoice which) const
{
    return choice(which)->choice() == 1;
}

VehicleTyped VehicleForm::typed() const
{
    VehicleTyped typed;
    typed.about = m_about;
    for (const auto &[field, widget] : m_fields)
        if (!widget->text().isEmpty())
            typed.texts.emplace(field, widget->text().toStdString());
    typed.meterUnit = meterUnit();
    typed.meterReplaced = meterReplaced();
    typed.layout = layouts.at(std::size_t(choice(Choice::Layout)->choice()));
    typed.cycle = Cycle(choice(Choice::Cycle)->choice());
    typed.rotation = Rotation(choice(Choice::Rotation)->choice());
    typed.bridged = yes(Choice::Bridged);
    typed.bridgeScrews = yes(Choice::BridgeScrews);
    typed.injectors = yes(Choice::Injectors);
    typed.decompressors = yes(Choice::Decompressors);
    typed.adjusters = AdjusterKind(choice(Choice::Adjusters)->choice());
    typed.camKnown = yes(Choice::CamKnown);
    return typed;
}

void VehicleForm::setTyped(const VehicleTyped &typed)
{
    m_left.clear();
    m_about = typed.about;
    for (const auto &[field, widget] : m_fields) {
        widget->setText(QString::fromStdString(typed.text(field)));
        widget->accept();
    }
    choice(Choice::MeterUnit)->setChoice(int(typed.meterUnit));
    choice(Choice::MeterReplaced)->setChoice(typed.meterReplaced ? 1 : 0);
    choice(Choice::Layout)->setChoice(placeOf(typed.layout));
    choice(Choice::Cycle)->setChoice(int(typed.cycle));
    choice(Choice::Rotation)->setChoice(int(typed.rotation));
    choice(Choice::Bridged)->setChoice(typed.bridged ? 1 : 0);
    choice(Choice::BridgeScrews)->setChoice(typed.bridgeScrews ? 1 : 0);
    choice(Choice::Injectors)->setChoice(typed.injectors ? 1 : 0);
    choice(Choice::Decompressors)->setChoice(typed.decompressors ? 1 : 0);
    choice(Choice::Adjusters)->setChoice(int(typed.adjusters));
    choice(Choice::CamKnown)->setChoice(typed.camKnown ? 1 : 0);
    showWhatApplies(typed);
    choice(Choice::MeterReplaced)->setVisible(typed.meterReplaced);
    tellNumber(true);
    redraw(reading());
}

void VehicleForm::setLastMeter(const std::optional<MeterReading> &last, const QString &note)
{
    m_lastMeter = last;
    field(Field::Meter)->setNote(note);
}

void VehicleForm::setPlace(const QString &words)
{
    m_place->setText(words);
    m_place->setVisible(!words.isEmpty());
}

MeterUnit VehicleForm::meterUnit() const
{
    return MeterUnit(choice(Choice::MeterUnit)->choice());
}

bool VehicleForm::meterReplaced() const
{
    return yes(Choice::MeterReplaced);
}

void VehicleForm::focusFirst()
{
    const Field first = m_about == VehicleTyped::About::Engine ? Field::EngineName : Field::Name;
    field(first)->edit()->setFocus(Qt::TabFocusReason);
}

VehicleReading VehicleForm::reading() const
{
    return readVehicle(typed(), m_mark, m_lastMeter);
}

void VehicleForm::showWhatApplies(const VehicleTyped &typed)
{
    m_vehicleGroup->setVisible(typed.about != VehicleTyped::About::Engine);
    m_engineGroup->setVisible(typed.about != VehicleTyped::About::Vehicle);
    for (const auto &[field, widget] : m_fields)
        widget->setVisible(isAskedFor(field, typed));
    choice(Choice::BridgeScrews)->setVisible(typed.bridged);
    m_readMeter->setEnabled(!isBlank(typed.text(Field::Meter)));
    const bool twoStroke = typed.cycle == Cycle::TwoStroke;
    field(Field::ExhaustCloses)->setLabel(twoStroke ? tr("Exhaust closes after BDC") : tr("Exhaust closes after TDC"));
    field(Field::Valves)->setPlaceholder(twoStroke ? QStringLiteral("0+2") : QStringLiteral("1+1"));
}

void VehicleForm::changedHere()
{
    showWhatApplies(typed());
    const VehicleReading now = reading();
    redraw(now);
    mend(now);
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
    mend(now);
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

/// While typing, refusals only go or follow what is typed; new ones wait until a field is left.
void VehicleForm::mend(const VehicleReading &reading)
{
    mendFields(m_fields, reading.refusals, refusalSentence);
}

void VehicleForm::redraw(const VehicleReading &now)
{
    const Layout layout = now.text.engine.layout;
    // Of no cylinders there is no numbering, only the bars between the banks.
    const int cylinders = qBound(0, now.text.engine.cylinders, 24);
    field(Field::Numbering)->setPlaceholder(cylinders == 0 ? QString() : QString::fromStdString(usualNumbering(layout, cylinders)));
    m_view->show(sketchOf(now.text.engine, m_mark));
}

std::optional<VehicleText> VehicleForm::take()
{
    const VehicleReading now = reading();
    mend(now);
    const bool refused = refuseFields(m_fields, now.refusals, refusalSentence);
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
