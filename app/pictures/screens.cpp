#include <pictures/screens.h>

#include "bench_screens.h"
#include <forms/feeler_form.h>
#include <forms/gauge_form.h>
#include <forms/joint_ticks.h>
#include <forms/new_job_form.h>
#include <forms/spec_form.h>
#include <forms/table_form.h>
#include <forms/table_row.h>
#include <forms/torque_form.h>
#include <forms/vehicle_form.h>
#include <pages/jobs_page.h>
#include <pages/specs_page.h>
#include <pages/tools_page.h>
#include <pages/vehicles_page.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/vehicles_model.h>
#include <window/window.h>

#include <algorithm>

namespace asleft {

namespace {

using Field = VehicleField;

/// A V engine half typed: two cylinders are not in the firing order yet.
VehicleTyped halfTyped()
{
    VehicleTyped typed;
    typed.layout = Layout::Vee;
    typed.texts = {{Field::Name, "Marrow 6 truck"},  {Field::Mark, "KD 41 882"}, {Field::Meter, "61 200"},
                   {Field::EngineName, "V6 diesel"}, {Field::Cylinders, "6"},    {Field::FiringOrder, "1-4-2-5"}};
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
    typed.texts[Field::FiringOrder] = "1-4-2-5-3-3";
    typed.texts[Field::Gaps] = "90-150-90-150-90-140";
    typed.texts[Field::Pitch] = "1,250";
    typed.camKnown = true;
    typed.texts[Field::IntakeOpens] = "abc";
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
    typed.texts[SpecField::Band] = ".012 to .018 in";
    typed.texts[SpecField::OtherBand] = "0.30-0.46 mm";
    form->setTyped(typed);
    form->field(SpecField::Band)->edit()->setFocus();
}

void typeTable(Window &window)
{
    window.specsPage()->chooseSection(SpecsPage::Section::CrankPositions);
    TableForm *form = window.specsPage()->table();
    while (form->rows() < 2)
        form->addRow();
    const auto engine = window.vehicles().firstEngine();
    const VehicleRow *row = engine ? window.vehicles().withEngine(*engine) : nullptr;
    if (!row || !row->engine)
        return;
    const EngineDesign &design = row->engine->design;
    CrankPlan plan = generatePlan(design, PlanWay::TwoPositions);
    if (plan.positions.size() < 2)
        return;
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

/// The first joint of the tractor.
void showJoint(Window &window)
{
    for (const VehicleRow &row : window.vehicles().vehicles())
        if (row.vehicle.name.starts_with("Hollin") && row.engine)
            window.specsPage()->chooseEngine(row.engine->id);
    const auto &rows = window.specsPage()->jointRows().rows();
    if (rows.size() > 1)
        window.specsPage()->chooseJoint(JointId(rows.front().id));
}

void typeFeelers(Window &window)
{
    FeelerForm *form = window.toolsPage()->feelers();
    form->name()->setText(QStringLiteral("Long leaves"));
    form->leaves()->setText(QStringLiteral("0.05-1.00 by 0.05 mm"));
    Q_EMIT form->leaves()->edited();
}

/// The engine on the line in hand goes elsewhere.
void openMove(Window &window)
{
    window.vehiclesPage()->beginMove();
}

void typeGauge(Window &window)
{
    window.toolsPage()->chooseSection(ToolsPage::Section::Gauges);
    GaugeForm *form = window.toolsPage()->gauges();
    form->name()->setText(QStringLiteral("Dial gauge, long stem"));
    form->permissibleError()->setText(QStringLiteral("0.02"));
    form->resolution()->setText(QStringLiteral("0.01"));
    Q_EMIT form->resolution()->edited();
}

/// A wrench as it is typed, and what it is good for.
void typeWrench(Window &window)
{
    window.toolsPage()->chooseSection(ToolsPage::Section::TorqueWrenches);
    TorqueForm *form = window.toolsPage()->wrenches();
    form->name()->setText(QStringLiteral("Dial wrench"));
    form->least()->setText(QStringLiteral("10"));
    form->most()->setText(QStringLiteral("80"));
    Q_EMIT form->most()->edited();
}

/// A job of the tractor with all its joints, and the tools they want.
void planJoints(Window &window)
{
    for (const VehicleRow &row : window.vehicles().vehicles())
        if (row.vehicle.name.starts_with("Hollin") && row.engine)
            window.jobsPage()->beginNew(row.engine->id);
    for (JointTick *tick : window.jobsPage()->newJob()->joints()->ticks())
        tick->click();
}

std::vector<Screen> pageScreens()
{
    return {
        {"vehicles", Page::Vehicles, {}},
        {"vehicles-new", Page::Vehicles, typeNewVehicle},
        {"vehicles-refused", Page::Vehicles, typeRefusedVehicle},
        {"vehicles-move", Page::Vehicles, openMove},
        {"jobs", Page::Jobs, {}},
        {"jobs-new", Page::Jobs, [](Window &window) { window.jobsPage()->beginNew({}); }},
        {"jobs-new-joints", Page::Jobs, planJoints},
        {"jobs-joint", Page::Jobs, [](Window &window) { window.jobsPage()->beginJoint(); }},
        {"specs", Page::Specs, {}},
        {"specs-typed", Page::Specs, typeSpec},
        {"specs-torque", Page::Specs, [](Window &window) { window.specsPage()->chooseSection(SpecsPage::Section::LockNut); }},
        {"specs-positions", Page::Specs, [](Window &window) { window.specsPage()->chooseSection(SpecsPage::Section::CrankPositions); }},
        {"specs-positions-doubted", Page::Specs, typeTable},
        {"specs-joint", Page::Specs, showJoint},
        {"specs-joint-new", Page::Specs, [](Window &window) { window.specsPage()->chooseJoint(std::nullopt); }},
        {"tools", Page::Tools, {}},
        {"tools-typed", Page::Tools, typeFeelers},
        {"tools-gauge", Page::Tools, typeGauge},
        {"tools-wrench", Page::Tools, typeWrench},
    };
}

} // namespace

const std::vector<Screen> &screens()
{
    static const std::vector<Screen> all = [] {
        std::vector<Screen> screens = pageScreens();
        for (Screen &screen : benchScreens())
            screens.push_back(std::move(screen));
        return screens;
    }();
    return all;
}

} // namespace asleft
