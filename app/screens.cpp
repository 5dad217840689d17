#include "screens.h"

#include "bench/bench_page.h"
#include "bench/reading_bar.h"
#include "bench/reading_edit.h"
#include "bench/valve_sheet.h"
#include "pages/feeler_form.h"
#include "pages/jobs_page.h"
#include "pages/spec_form.h"
#include "pages/specs_page.h"
#include "pages/table_form.h"
#include "pages/table_row.h"
#include "pages/tools_page.h"
#include "pages/vehicle_form.h"
#include "pages/vehicles_model.h"
#include "pages/vehicles_page.h"
#include "parts/choice_keys.h"
#include "parts/key_button.h"
#include "window.h"

#include <algorithm>

namespace asleft {

namespace {

using Field = VehicleField;

/// A V engine half typed: two cylinders are not in the firing order yet.
VehicleTyped halfTyped()
{
    VehicleTyped typed;
    typed.layout = Layout::Vee;
    typed.texts = {{Field::Name, QStringLiteral("Marrow 6 truck")}, {Field::Mark, QStringLiteral("KD 41 882")},
                   {Field::Meter, QStringLiteral("61 200")},        {Field::EngineName, QStringLiteral("V6 diesel")},
                   {Field::Cylinders, QStringLiteral("6")},         {Field::FiringOrder, QStringLiteral("1-4-2-5")}};
    typed.meterUnit = MeterUnit::Kilometre;
    return typed;
}

void typeNewVehicle(Window &window)
{
    window.vehiclesPage()->beginNew();
    window.vehiclesPage()->form()->setTyped(halfTyped());
    window.vehiclesPage()->form()->field(Field::FiringOrder)->edit()->setFocus();
}

void typeRefusedVehicle(Window &window)
{
    VehicleTyped typed = halfTyped();
    typed.texts[Field::FiringOrder] = QStringLiteral("1-4-2-5-3-3");
    typed.texts[Field::Gaps] = QStringLiteral("90-150-90-150-90-140");
    typed.texts[Field::Pitch] = QStringLiteral("1,250");
    typed.camKnown = true;
    typed.texts[Field::IntakeOpens] = QStringLiteral("abc");
    window.vehiclesPage()->beginNew();
    VehicleForm *form = window.vehiclesPage()->form();
    form->setTyped(typed);
    Q_EMIT form->finished();
}

void typeSpec(Window &window)
{
    window.specsPage()->chooseSection(SpecsPage::Section::ExhaustLash);
    SpecForm *form = window.specsPage()->form(SpecsPage::Section::ExhaustLash);
    SpecTyped typed = form->typed();
    typed.texts[SpecField::Band] = QStringLiteral(".012 to .018 in");
    typed.texts[SpecField::OtherBand] = QStringLiteral("0.30-0.46 mm");
    form->setTyped(typed);
    form->field(SpecField::Band)->edit()->setFocus();
}

void typeTable(Window &window)
{
    window.specsPage()->chooseSection(SpecsPage::Section::CrankPositions);
    TableForm *form = window.specsPage()->table();
    while (form->rows() < 2)
        form->addRow();
    if (window.vehicles().vehicles().empty())
        return;
    const EngineDesign &design = window.vehicles().vehicles().front().engine.design;
    CrankPlan plan = generatePlan(design, PlanWay::TwoPositions);
    // One valve stands at the wrong position on purpose: the picture shows how geometry questions it.
    plan.positions.back().points.push_back(plan.positions.front().points.back());
    plan.positions.front().points.pop_back();
    for (int at = 0; at < 2; ++at) {
        const PlanPosition &position = plan.positions.at(std::size_t(at));
        form->row(at)->setLine({design.label(position.place.cylinder), position.place.event, describePoints(design, position)});
    }
    for (int at = 2; at < form->rows(); ++at)
        form->row(at)->setLine({});
    form->row(0)->points()->edit()->setFocus();
    form->save();
}

void typeFeelers(Window &window)
{
    FeelerForm *form = window.toolsPage()->feelers();
    form->name()->setText(QStringLiteral("Long leaves"));
    form->leaves()->setText(QStringLiteral("0.05-1.00 by 0.05 mm"));
    Q_EMIT form->leaves()->edited();
}

/// The job worked on last, with somebody at the Bench; false without a job.
bool sit(Window &window)
{
    window.begin();
    JobBook *book = window.benchPage()->book();
    if (!book || book->state().frame->people.empty())
        return false;
    const JobFrame &frame = *book->state().frame;
    if (!frame.tools.empty())
        book->setTool(frame.tools.front().id);
    book->setWho(frame.people.front().id);
    return true;
}

StepId stepOfKind(const JobBook &book, StepKind kind)
{
    const auto &steps = book.state().frame->job.steps;
    const auto found = std::ranges::find(steps, kind, &Step::kind);
    return found == steps.end() ? steps.front().id : found->id;
}

/// At the head, the crank confirmed where it was left.
bool goToHead(Window &window)
{
    if (!sit(window))
        return false;
    JobBook &book = *window.benchPage()->book();
    const auto crank = book.state().crank ? book.state().crank->crank : std::nullopt;
    (void)book.confirmCrank(crank.value_or(Angle{}));
    window.benchPage()->viewStep(stepOfKind(book, StepKind::ValveSet));
    return true;
}

void askForCrank(Window &window)
{
    if (sit(window))
        window.benchPage()->viewStep(stepOfKind(*window.benchPage()->book(), StepKind::ValveSet));
}

void openLine(Window &window)
{
    if (sit(window))
        window.benchPage()->viewStep(stepOfKind(*window.benchPage()->book(), StepKind::Note));
}

void typeOutside(Window &window)
{
    if (goToHead(window))
        window.benchPage()->valveSheet()->bar()->edit()->setText(QStringLiteral("0.55 mm"));
}

void openPlans(Window &window)
{
    if (goToHead(window))
        window.benchPage()->valveSheet()->planKey()->click();
}

void openKeypad(Window &window)
{
    if (goToHead(window))
        window.benchPage()->keypadKey()->click();
}

/// Every open nut locked first, so that the crank may be turned.
void openTurning(Window &window)
{
    if (!goToHead(window))
        return;
    JobBook &book = *window.benchPage()->book();
    for (const PointId point : openNuts(book.state()))
        (void)book.logReading({.point = point, .phase = Phase::AsLeft, .specLeaf = true});
    window.benchPage()->turnCrank();
}

void keepOutside(Window &window)
{
    if (!goToHead(window))
        return;
    JobBook &book = *window.benchPage()->book();
    const auto point = window.benchPage()->valveSheet()->inHand();
    const auto value = parse<Length>("0.55", LengthUnit::Millimetre);
    if (point && value)
        (void)book.logReading({.point = *point, .phase = Phase::AsLeft, .value = *value});
    window.benchPage()->valveSheet()->refresh();
}

} // namespace

const std::vector<Screen> &screens()
{
    static const std::vector<Screen> all{
        {"vehicles", Place::Vehicles, {}},
        {"vehicles-new", Place::Vehicles, typeNewVehicle},
        {"vehicles-refused", Place::Vehicles, typeRefusedVehicle},
        {"jobs", Place::Jobs, {}},
        {"jobs-new", Place::Jobs, [](Window &window) { window.jobsPage()->beginNew({}); }},
        {"bench", Place::Bench, [](Window &window) { goToHead(window); }},
        {"bench-opened", Place::Bench, [](Window &window) { window.begin(); }},
        {"bench-line", Place::Bench, openLine},
        {"bench-crank", Place::Bench, askForCrank},
        {"bench-outside", Place::Bench, typeOutside},
        {"bench-left-outside", Place::Bench, keepOutside},
        {"bench-keypad", Place::Bench, openKeypad},
        {"bench-plan", Place::Bench, openPlans},
        {"bench-turn", Place::Bench, openTurning},
        {"specs", Place::Specs, {}},
        {"specs-typed", Place::Specs, typeSpec},
        {"specs-torque", Place::Specs, [](Window &window) { window.specsPage()->chooseSection(SpecsPage::Section::LockNut); }},
        {"specs-positions", Place::Specs, [](Window &window) { window.specsPage()->chooseSection(SpecsPage::Section::CrankPositions); }},
        {"specs-positions-doubted", Place::Specs, typeTable},
        {"tools", Place::Tools, {}},
        {"tools-typed", Place::Tools, typeFeelers},
    };
    return all;
}

} // namespace asleft
