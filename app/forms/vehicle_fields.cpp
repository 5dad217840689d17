#include <forms/vehicle_fields.h>

#include "form_layout.h"
#include <drawn/engine_view.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/rule.h>

#include <measure/text.h>
#include <words/crank.h>

#include <QGridLayout>
#include <QHBoxLayout>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

using Field = VehicleField;
using Choice = VehicleChoice;

constexpr int vehicleColumns = 12;
constexpr int engineColumns = 7;
constexpr int drawingColumns = 5;
constexpr int valveColumns = 4;
/// Room enough for any meter, and for the sentence under it.
constexpr int widestMeter = 420;
/// A stretch that takes what there is up to its most, and leaves the rest.
constexpr int beforeAnythingElse = 1000;
constexpr int spacing = 10;

/// Columns of equal weight.
QGridLayout *groupGrid(int columns)
{
    auto *grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(spacing);
    grid->setVerticalSpacing(spacing);
    for (int column = 0; column < columns; ++column)
        grid->setColumnStretch(column, 1);
    return grid;
}

QVBoxLayout *groupColumn(QWidget *group)
{
    auto *column = new QVBoxLayout(group);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing);
    return column;
}

/// In the order of the keys: the fewest cylinders first, the rare ones last.
constexpr std::array layouts{Layout::Single, Layout::InLine, Layout::Vee, Layout::Flat, Layout::W, Layout::Radial, Layout::Opposed};

int placeOf(Layout layout)
{
    return int(std::ranges::find(layouts, layout) - layouts.begin());
}

} // namespace

VehicleFields::VehicleFields(QWidget *parent)
    : QWidget(parent), m_readMeter(new KeyButton(tr("Read the meter"))), m_move(new KeyButton(tr("Move engine"))),
      m_place(new Heading({}, TextSize::Small, Heading::Tone::Quiet)), m_view(new EngineView)
{
    m_move->setPlain(true);
    addFields();
    addChoices();
    buildLayout();
    wire();
}

ValueField *VehicleFields::add(VehicleField field, const QString &label, const QString &placeholder, const QString &note)
{
    auto *made = new ValueField(label);
    made->setPlaceholder(placeholder);
    made->setNote(note);
    m_fields.emplace(field, made);
    return made;
}

void VehicleFields::addFields()
{
    add(Field::Name, tr("Name"));
    add(Field::Mark, tr("Plate or number"));
    add(Field::Number, tr("Maker's vehicle number"), tr("not known"));
    add(Field::Meter, tr("Meter"));
    add(Field::EngineName, tr("Engine name"));
    add(Field::Cylinders, tr("Cylinders"));
    add(Field::FiringOrder, tr("Firing order"), tr("as the maker gives it: 1-3-4-2"));
    add(Field::Gaps, tr("Firing gaps"), tr("even"), tr("or degrees to the next one: 90-270"));
    add(Field::Numbering, tr("Cylinder numbers"), {}, tr("along each bank, front first"));
    add(Field::Barring, tr("Teeth, ring gear / pinion"), tr("none"), tr("where a pinion turns it: 132/11"));
    add(Field::Valves, tr("Valves a cylinder"), {}, tr("intakes + exhausts: 2+1"));
    add(Field::ValveOrder, tr("Valves along the head"), tr("intakes and exhausts in two lines"), tr("or in one line: E I I E E I I E"));
    add(Field::Pitch, tr("Adjusting screw, pitch"), tr("not known"), tr("tells how far to turn it"));
    add(Field::Ratio, tr("Rocker ratio"), QStringLiteral("1"), tr("leaf over screw travel"));
    add(Field::BleedDown, tr("Wait after setting"), tr("no wait"), tr("minutes until they have bled down"));
    addCamFields();
}

void VehicleFields::addCamFields()
{
    const QString afterFiring = tr("degrees after firing dead centre");
    add(Field::IntakeOpens, tr("Intake opens before TDC"));
    add(Field::IntakeCloses, tr("Intake closes after BDC"));
    add(Field::ExhaustOpens, tr("Exhaust opens before BDC"));
    add(Field::ExhaustCloses, tr("Exhaust closes after TDC"));
    add(Field::CheckLift, tr("Given at a lift of"), tr("not known"));
    add(Field::Ramp, tr("Ramp allowance"), tr("20°"));
    add(Field::ExhaustAgainFrom, tr("Second exhaust lift, from"), tr("none"), afterFiring);
    add(Field::ExhaustAgainTo, tr("Second exhaust lift, to"), tr("none"));
    add(Field::InjectorFrom, tr("Injector driven from"), QStringLiteral("-70"), afterFiring);
    add(Field::InjectorTo, tr("Injector driven to"), QStringLiteral("70"));
}

void VehicleFields::addChoices()
{
    const QStringList noYes{tr("no"), tr("yes")};
    const auto make = [this](Choice choice, const QString &label, const QStringList &words) {
        m_choices.emplace(choice, new ChoiceKeys(label, words));
    };
    make(Choice::MeterUnit, tr("Meter counts"), {tr("km"), tr("mi"), tr("h")});
    make(Choice::MeterReplaced, tr("Which meter"), {tr("the same"), tr("another")});
    make(Choice::Cycle, tr("Fires"), {cycleName(Cycle::FourStroke), cycleName(Cycle::TwoStroke)});
    make(Choice::Layout, tr("Layout"), {tr("single"), tr("in line"), tr("V"), tr("flat"), tr("W"), tr("radial"), tr("opposed")});
    make(Choice::Rotation, tr("Turns, seen from the front"), {tr("clockwise"), tr("anticlockwise")});
    make(Choice::Bridged, tr("Pairs under bridges"), noYes);
    make(Choice::BridgeScrews, tr("Screws on the bridges"), noYes);
    make(Choice::Injectors, tr("Injectors to set"), noYes);
    make(Choice::Decompressors, tr("Decompressors to set"), noYes);
    make(Choice::Adjusters, tr("Adjusters"), {tr("screws"), tr("hydraulic")});
    make(Choice::CamKnown, tr("Cam events known"), noYes);
}

void VehicleFields::buildLayout()
{
    m_vehicleGroup = vehicleGroup();
    m_engineGroup = new QWidget;
    auto *engine = groupColumn(m_engineGroup);
    engine->addWidget(engineHead());
    QGridLayout *grid = groupGrid(engineColumns);
    buildEngine(*grid);
    auto *drawn = new QHBoxLayout;
    drawn->setSpacing(spacing);
    drawn->addLayout(grid, engineColumns);
    drawn->addWidget(m_view, drawingColumns);
    engine->addLayout(drawn);
    engine->addLayout(groupHead(tr("Valves")));
    grid = groupGrid(valveColumns);
    buildValves(*grid);
    engine->addLayout(grid);
    engine->addLayout(groupHead(tr("Cam")));
    grid = groupGrid(valveColumns);
    buildCam(*grid);
    engine->addLayout(grid);
    auto *column = groupColumn(this);
    column->addWidget(m_vehicleGroup);
    column->addWidget(m_engineGroup);
    column->addStretch(1);
}

QWidget *VehicleFields::vehicleGroup()
{
    auto *group = new QWidget;
    auto *column = groupColumn(group);
    QGridLayout *grid = groupGrid(vehicleColumns);
    column->addLayout(grid);
    grid->addWidget(field(Field::Name), 0, 0, 1, 5);
    grid->addWidget(field(Field::Mark), 0, 5, 1, 3);
    grid->addWidget(field(Field::Number), 0, 8, 1, 4);
    auto *meter = new QHBoxLayout;
    meter->setSpacing(spacing);
    field(Field::Meter)->setMaximumWidth(widestMeter);
    meter->addWidget(field(Field::Meter), beforeAnythingElse);
    meter->addWidget(choice(Choice::MeterUnit));
    meter->addWidget(choice(Choice::MeterReplaced));
    meter->addLayout(besideFields(m_readMeter));
    meter->addStretch(1);
    column->addLayout(meter);
    return group;
}

QWidget *VehicleFields::engineHead()
{
    auto *head = new QWidget;
    auto *row = new QHBoxLayout(head);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(14);
    row->addWidget(new Heading(tr("Engine"), TextSize::BodyStrong));
    row->addWidget(m_place);
    row->addWidget(new Rule, 1, Qt::AlignVCenter);
    row->addWidget(m_move);
    return head;
}

void VehicleFields::buildEngine(QGridLayout &grid)
{
    grid.addWidget(field(Field::EngineName), 0, 0, 1, 3);
    grid.addWidget(choice(Choice::Cycle), 0, 3, 1, 4);
    grid.addWidget(choice(Choice::Layout), 1, 0, 1, 7);
    grid.addWidget(field(Field::Cylinders), 2, 0, 1, 2);
    grid.addWidget(field(Field::FiringOrder), 2, 2, 1, 5);
    grid.addWidget(field(Field::Gaps), 3, 0, 1, 4);
    grid.addWidget(field(Field::Numbering), 3, 4, 1, 3);
    grid.addWidget(field(Field::Barring), 4, 0, 1, 3);
    grid.addWidget(choice(Choice::Rotation), 4, 3, 1, 4);
}

void VehicleFields::buildValves(QGridLayout &grid)
{
    grid.addWidget(field(Field::Valves), 0, 0);
    grid.addWidget(field(Field::ValveOrder), 0, 1, 1, 2);
    grid.addWidget(choice(Choice::Bridged), 1, 0);
    grid.addWidget(choice(Choice::BridgeScrews), 1, 1);
    grid.addWidget(choice(Choice::Injectors), 1, 2);
    grid.addWidget(choice(Choice::Decompressors), 1, 3);
    grid.addWidget(choice(Choice::Adjusters), 2, 0);
    grid.addWidget(field(Field::Pitch), 2, 1);
    grid.addWidget(field(Field::Ratio), 2, 2);
    grid.addWidget(field(Field::BleedDown), 2, 1);
}

void VehicleFields::buildCam(QGridLayout &grid)
{
    grid.addWidget(choice(Choice::CamKnown), 0, 0);
    grid.addWidget(field(Field::IntakeOpens), 1, 0);
    grid.addWidget(field(Field::IntakeCloses), 1, 1);
    grid.addWidget(field(Field::ExhaustOpens), 2, 0);
    grid.addWidget(field(Field::ExhaustCloses), 2, 1);
    grid.addWidget(field(Field::CheckLift), 2, 2);
    grid.addWidget(field(Field::Ramp), 2, 3);
    grid.addWidget(field(Field::ExhaustAgainFrom), 3, 0);
    grid.addWidget(field(Field::ExhaustAgainTo), 3, 1);
    grid.addWidget(field(Field::InjectorFrom), 3, 2);
    grid.addWidget(field(Field::InjectorTo), 3, 3);
}

void VehicleFields::wire()
{
    for (const auto &[field, widget] : m_fields) {
        connect(widget, &ValueField::edited, this, &VehicleFields::changedHere);
        connect(widget, &ValueField::left, this, [this, field = field] { Q_EMIT left(field); });
        connect(widget, &ValueField::entered, this, [this, field = field] { entered(field); });
    }
    for (const auto &[choice, keys] : m_choices)
        connect(keys, &ChoiceKeys::chosen, this, &VehicleFields::changedHere);
    // Which meter it is decides about what was read from it.
    connect(choice(Choice::MeterReplaced), &ChoiceKeys::chosen, this, [this] { Q_EMIT left(Field::Meter); });
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
void VehicleFields::entered(VehicleField from)
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

bool VehicleFields::yes(VehicleChoice which) const
{
    return choice(which)->choice() == 1;
}

VehicleTyped VehicleFields::typed() const
{
    VehicleTyped typed;
    typed.about = m_about;
    for (const auto &[field, widget] : m_fields)
        if (!widget->text().isEmpty())
            typed.texts.emplace(field, widget->text().toStdString());
    typed.meterUnit = MeterUnit(choice(Choice::MeterUnit)->choice());
    typed.meterReplaced = yes(Choice::MeterReplaced);
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

void VehicleFields::setTyped(const VehicleTyped &typed)
{
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
}

void VehicleFields::setPlace(const QString &words)
{
    m_place->setText(words);
    m_place->setVisible(!words.isEmpty());
}

void VehicleFields::focusFirst()
{
    const Field first = m_about == VehicleTyped::About::Engine ? Field::EngineName : Field::Name;
    field(first)->edit()->setFocus(Qt::TabFocusReason);
}

void VehicleFields::showWhatApplies(const VehicleTyped &typed)
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

void VehicleFields::changedHere()
{
    showWhatApplies(typed());
    Q_EMIT edited();
}

void VehicleFields::mend(const VehicleReading &reading)
{
    mendFields(m_fields, reading.refusals, refusalSentence);
}

bool VehicleFields::refuse(const VehicleReading &reading)
{
    mend(reading);
    return refuseFields(m_fields, reading.refusals, refusalSentence);
}

} // namespace asleft
