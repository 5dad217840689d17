#include "pages/vehicle_form.h"

#include "pages/engine_view.h"
#include "parts/choice_keys.h"
#include "parts/rule.h"

#include <show/words.h>

#include <QGridLayout>

#include <array>

namespace asleft {

namespace {

using Field = VehicleField;

constexpr std::array camFields{Field::IntakeOpens,   Field::IntakeCloses, Field::ExhaustOpens,
                               Field::ExhaustCloses, Field::CheckLift,    Field::Ramp};
constexpr int gridColumns = 12;

} // namespace

VehicleForm::VehicleForm(DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_mark(mark), m_meterUnit(new ChoiceKeys(tr("Meter counts"), {tr("km"), tr("mi"), tr("h")})),
      m_layout(new ChoiceKeys(tr("Layout"), {tr("in line"), tr("V"), tr("flat")})),
      m_rotation(new ChoiceKeys(tr("Turns, seen from the front"), {tr("clockwise"), tr("anticlockwise")})),
      m_cam(new ChoiceKeys(tr("Cam events known"), {tr("no"), tr("yes")})), m_view(new EngineView)
{
    addFields();
    auto *grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(10);
    grid->setVerticalSpacing(10);
    for (int column = 0; column < gridColumns; ++column)
        grid->setColumnStretch(column, 1);
    layVehicle(*grid);
    layEngine(*grid);
    layCam(*grid);
    grid->setRowStretch(grid->rowCount(), 1);
    chain();
    wire();
    setTyped({});
}

ValueField *VehicleForm::add(VehicleField field, const QString &label)
{
    auto *made = new ValueField(label);
    m_fields.emplace(field, made);
    return made;
}

void VehicleForm::addFields()
{
    add(Field::Name, tr("Name"));
    add(Field::Mark, tr("Plate or number"));
    add(Field::Meter, tr("Meter"));
    add(Field::EngineName, tr("Engine name"));
    add(Field::Cylinders, tr("Cylinders"));
    add(Field::FiringOrder, tr("Firing order"))->setPlaceholder(tr("as the maker gives it: 1-3-4-2"));
    add(Field::Gaps, tr("Firing gaps"))->setPlaceholder(tr("even"));
    add(Field::Numbering, tr("Cylinder numbers"));
    add(Field::ValveOrder, tr("Valves along the head"))->setPlaceholder(tr("intakes and exhausts in two lines"));
    add(Field::Pitch, tr("Adjusting screw, pitch"))->setPlaceholder(tr("not known"));
    add(Field::Ratio, tr("Rocker ratio"))->setPlaceholder(QStringLiteral("1"));
    add(Field::IntakeOpens, tr("Intake opens before TDC"));
    add(Field::IntakeCloses, tr("Intake closes after BDC"));
    add(Field::ExhaustOpens, tr("Exhaust opens before BDC"));
    add(Field::ExhaustCloses, tr("Exhaust closes after TDC"));
    add(Field::CheckLift, tr("Given at a lift of"))->setPlaceholder(tr("not known"));
    add(Field::Ramp, tr("Ramp allowance"))->setPlaceholder(tr("20°"));
    field(Field::Gaps)->setNote(tr("or degrees to the next one: 90-270"));
    field(Field::ValveOrder)->setNote(tr("or in one line: E I I E E I I E"));
    field(Field::Pitch)->setNote(tr("tells how far to turn it"));
    field(Field::Ratio)->setNote(tr("leaf over screw travel"));
    field(Field::Numbering)->setNote(tr("along each bank, front first"));
}

void VehicleForm::layVehicle(QGridLayout &grid)
{
    grid.addWidget(field(Field::Name), 0, 0, 1, 4);
    grid.addWidget(field(Field::Mark), 0, 4, 1, 2);
    grid.addWidget(field(Field::Meter), 0, 6, 1, 3);
    grid.addWidget(m_meterUnit, 0, 9, 1, 3);
    grid.addWidget(new Rule, 1, 0, 1, gridColumns);
}

void VehicleForm::layEngine(QGridLayout &grid)
{
    grid.addWidget(field(Field::EngineName), 2, 0, 1, 4);
    grid.addWidget(m_layout, 2, 4, 1, 3);
    grid.addWidget(field(Field::Cylinders), 3, 0, 1, 2);
    grid.addWidget(field(Field::FiringOrder), 3, 2, 1, 5);
    grid.addWidget(field(Field::Gaps), 4, 0, 1, 4);
    grid.addWidget(field(Field::Numbering), 4, 4, 1, 3);
    grid.addWidget(field(Field::ValveOrder), 5, 0, 1, 7);
    grid.addWidget(m_view, 2, 7, 4, 5);
    grid.addWidget(field(Field::Pitch), 6, 0, 1, 3);
    grid.addWidget(field(Field::Ratio), 6, 3, 1, 2);
    grid.addWidget(m_rotation, 6, 5, 1, 4);
    grid.addWidget(m_cam, 6, 9, 1, 3);
}

void VehicleForm::layCam(QGridLayout &grid)
{
    int column = 0;
    int row = 7;
    for (const Field of : camFields) {
        grid.addWidget(field(of), row, column, 1, 3);
        column += 3;
        if (column < gridColumns)
            continue;
        column = 0;
        ++row;
    }
}

void VehicleForm::chain()
{
    chainByEnter({field(Field::Name), field(Field::Mark), field(Field::Meter)});
    chainByEnter({field(Field::Cylinders), field(Field::FiringOrder), field(Field::Gaps), field(Field::Numbering), field(Field::ValveOrder),
                  field(Field::Pitch), field(Field::Ratio)});
    const auto onTo = [this](Field from, ChoiceKeys *keys) {
        connect(field(from), &ValueField::entered, keys, [keys] { keys->takeFocus(); });
    };
    onTo(Field::Meter, m_meterUnit);
    onTo(Field::EngineName, m_layout);
    onTo(Field::Ratio, m_rotation);
    QList<ValueField *> cam;
    for (const Field of : camFields)
        cam.append(field(of));
    chainByEnter(cam);
    connect(field(Field::Ramp), &ValueField::entered, this, &VehicleForm::finished);
}

void VehicleForm::wire()
{
    for (const auto &[field, widget] : m_fields) {
        connect(widget, &ValueField::edited, this, &VehicleForm::changedHere);
        connect(widget, &ValueField::left, this, [this, field = field] { leftField(field); });
    }
    for (ChoiceKeys *keys : {m_meterUnit, m_layout, m_rotation, m_cam})
        connect(keys, &ChoiceKeys::chosen, this, &VehicleForm::changedHere);
    connect(m_cam, &ChoiceKeys::chosen, this, [this](int known) { showCam(known == 1); });
    m_cam->setLast(true);
    connect(m_cam, &ChoiceKeys::entered, this, [this] {
        if (m_cam->choice() == 0)
            Q_EMIT finished();
        else
            field(Field::IntakeOpens)->edit()->setFocus(Qt::TabFocusReason);
    });
}

VehicleTyped VehicleForm::typed() const
{
    VehicleTyped typed;
    for (const auto &[field, widget] : m_fields)
        if (!widget->text().isEmpty())
            typed.texts.emplace(field, widget->text());
    typed.meterUnit = meterUnit();
    typed.layout = Layout(m_layout->choice());
    typed.rotation = Rotation(m_rotation->choice());
    typed.camKnown = m_cam->choice() == 1;
    return typed;
}

void VehicleForm::setTyped(const VehicleTyped &typed)
{
    m_left.clear();
    for (const auto &[field, widget] : m_fields) {
        widget->setText(typed.text(field));
        widget->accept();
    }
    m_meterUnit->setChoice(int(typed.meterUnit));
    m_layout->setChoice(int(typed.layout));
    m_rotation->setChoice(int(typed.rotation));
    m_cam->setChoice(typed.camKnown ? 1 : 0);
    showCam(typed.camKnown);
    redraw();
}

void VehicleForm::setMeterNote(const QString &note)
{
    field(Field::Meter)->setNote(note);
}

MeterUnit VehicleForm::meterUnit() const
{
    return MeterUnit(m_meterUnit->choice());
}

void VehicleForm::focusFirst()
{
    field(Field::Name)->edit()->setFocus(Qt::TabFocusReason);
}

VehicleReading VehicleForm::reading() const
{
    return readVehicle(typed(), m_mark);
}

void VehicleForm::showCam(bool known)
{
    for (const Field of : camFields)
        field(of)->setVisible(known);
}

void VehicleForm::changedHere()
{
    redraw();
    mend(reading());
    Q_EMIT edited();
}

void VehicleForm::leftField(VehicleField left)
{
    m_left.insert(left);
    const VehicleReading now = reading();
    mend(now);
    for (const auto &[field, error] : now.refusals)
        if (m_left.contains(field))
            this->field(field)->refuse(refusalSentence(field, error));
}

/// While typing, refusals only go or follow what is typed; new ones wait until a field is left.
void VehicleForm::mend(const VehicleReading &reading)
{
    for (const auto &[field, widget] : m_fields) {
        if (!widget->isRefused())
            continue;
        const auto still = reading.refusals.find(field);
        if (still == reading.refusals.end())
            widget->accept();
        else
            widget->refuse(refusalSentence(field, still->second));
    }
}

void VehicleForm::redraw()
{
    const VehicleReading now = reading();
    const Layout layout = now.text.engine.layout;
    field(Field::Numbering)->setPlaceholder(QString::fromStdString(usualNumbering(layout, qBound(0, now.text.engine.cylinders, 24))));
    EngineSketch sketch = sketchOf(now.text.engine, m_mark);
    m_view->show(sketch);
}

std::optional<VehicleText> VehicleForm::take()
{
    const VehicleReading now = reading();
    mend(now);
    for (const auto &[field, error] : now.refusals)
        this->field(field)->refuse(refusalSentence(field, error));
    if (now.refusals.empty())
        return now.text;
    ValueField *first = field(now.refusals.begin()->first);
    first->edit()->setFocus(Qt::OtherFocusReason);
    return std::nullopt;
}

bool VehicleForm::refuse(const Error &error)
{
    if (error.kind != ErrorKind::CylinderLabelCount && error.kind != ErrorKind::CylindersInUse)
        return false;
    field(Field::Numbering)->refuse(sentence(error));
    return true;
}

} // namespace asleft
