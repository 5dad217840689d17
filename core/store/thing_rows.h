#pragma once

#include "rows.h"

#include <shop/joint.h>
#include <shop/things.h>

/// The ordinary rows of a garage, each described once.
namespace asleft::store {

template <>
struct RowOf<Vehicle> {
    static constexpr auto parts = std::tuple(key(&Vehicle::id), column("name", &Vehicle::name), column("mark", &Vehicle::mark),
                                             column("number", &Vehicle::number), column("stand", &Vehicle::stand));
};

template <>
struct RowOf<MeterReading> {
    static constexpr auto parts =
        std::tuple(key(&MeterReading::id), column("vehicle", &MeterReading::vehicle), column("unit", &MeterReading::unit),
                   column("thousandths", &MeterReading::thousandths), column("text", &MeterReading::text),
                   column("at_ms", &MeterReading::at), column("replaced", &MeterReading::replaced));
};

template <>
struct RowOf<Person> {
    static constexpr auto parts = std::tuple(key(&Person::id), column("initials", &Person::initials), column("name", &Person::name));
};

/// Its steps are read by their job.
template <>
struct RowOf<Job> {
    static constexpr auto parts = std::tuple(key(&Job::id), column("vehicle", &Job::vehicle), column("engine", &Job::engine),
                                             column("title", &Job::title), column("opened_ms", &Job::opened));
    static Job made(std::tuple<JobId, VehicleId, EngineId, std::string, Moment> &&read)
    {
        auto &[id, vehicle, engine, title, opened] = read;
        return {id, vehicle, engine, std::move(title), opened, {}};
    }
};

template <>
struct RowOf<Step> {
    static constexpr auto parts = std::tuple(key(&Step::id), column("kind", &Step::kind), column("title", &Step::title),
                                             column("detail", &Step::detail), column("before_gate", &Step::before),
                                             list("job_step_caution", "caution", &Step::cautions), column("joint", &Step::joint));
};

template <>
struct RowOf<SpecSource> {
    static constexpr auto parts =
        std::tuple(column("manual", &SpecSource::manual), column("page", &SpecSource::page), column("certainty", &SpecSource::certainty));
};

/// What is asked stands in bands of its own.
template <>
struct RowOf<Spec> {
    static constexpr auto parts =
        std::tuple(key(&Spec::id), column("engine", &Spec::engine), column("subject", &Spec::subject), column("revision", &Spec::revision),
                   column("condition", &Spec::condition), part(&Spec::source));
    static Spec made(std::tuple<SpecId, EngineId, SpecSubject, int, EngineCondition, SpecSource> &&read)
    {
        auto &[id, engine, subject, revision, condition, source] = read;
        return {id, engine, subject, revision, condition, std::move(source), {}};
    }
};

template <class Q>
struct RowOf<Band<Q>> {
    static constexpr auto parts = std::tuple(column("form", &Band<Q>::form), column("low", &Band<Q>::low), column("high", &Band<Q>::high),
                                             column("nominal", &Band<Q>::nominal), column("unit", &Band<Q>::unit),
                                             column("text", &Band<Q>::text), column("tolerance_assumed", &Band<Q>::toleranceAssumed));
};

template <>
struct RowOf<TableLine> {
    static constexpr auto parts =
        std::tuple(column("cylinder", &TableLine::cylinder), column("stroke", &TableLine::event), column("points", &TableLine::points));
};
template <>
struct RowOf<TurningTable> {
    static constexpr auto parts = std::tuple(column("engine", &TurningTable::engine), column("revision", &TurningTable::revision),
                                             part(&TurningTable::source), list("turning_table_line", &TurningTable::lines));
};

template <>
struct RowOf<FastenerPosition> {
    static constexpr auto parts =
        std::tuple(column("number", &FastenerPosition::number), column("x", &FastenerPosition::x), column("y", &FastenerPosition::y),
                   column("thread", &FastenerPosition::thread), column("length", &FastenerPosition::length));
};

/// Where an arc begins and ends.
template <>
struct Cells<std::optional<CrankArc>> {
    static void put(QVariantList &row, const std::optional<CrankArc> &arc)
    {
        row += arc ? values(arc->starts, arc->ends) : QVariantList{QVariant(), QVariant()};
    }
    static std::optional<CrankArc> take(Row &row)
    {
        const auto starts = row.quantityIfAny<Angle>();
        const auto ends = row.quantityIfAny<Angle>();
        return starts && ends ? std::optional(CrankArc{*starts, *ends}) : std::nullopt;
    }
};

template <>
struct RowOf<CamEvents> {
    static constexpr auto parts = std::tuple(column("intake_opens_before_tdc", &CamEvents::intakeOpensBeforeTdc),
                                             column("intake_closes_after_bdc", &CamEvents::intakeClosesAfterBdc),
                                             column("exhaust_opens_before_bdc", &CamEvents::exhaustOpensBeforeBdc),
                                             column("exhaust_closes_after_tdc", &CamEvents::exhaustClosesAfterTdc),
                                             column("ramp_allowance", &CamEvents::rampAllowance),
                                             column("exhaust_again_starts, exhaust_again_ends", &CamEvents::exhaustAgain),
                                             column("injector_starts, injector_ends", &CamEvents::injector),
                                             column("check_lift", &CamEvents::checkLift), column("cam_assumed", &CamEvents::assumed));
};
template <>
struct RowOf<EngineText> {
    static constexpr auto parts = std::tuple(
        column("layout", &EngineText::layout), column("cylinders", &EngineText::cylinders),
        column("firing_order", &EngineText::firingOrder), column("gaps", &EngineText::gaps), column("numbering", &EngineText::numbering),
        column("valve_order", &EngineText::valveOrder), part(&EngineText::cam), column("rotation", &EngineText::rotation),
        column("cycle", &EngineText::cycle), column("valves", &EngineText::valves), column("bridged", &EngineText::bridged),
        column("bridge_screws", &EngineText::bridgeScrews), column("injectors", &EngineText::injectors),
        column("decompressors", &EngineText::decompressors), column("barring", &EngineText::barring));
};
template <>
struct RowOf<ScrewText> {
    static constexpr auto parts = std::tuple(column("screw_pitch", &ScrewText::pitch), column("screw_ratio", &ScrewText::ratio),
                                             column("adjuster_kind", &ScrewText::kind), column("bleed_down", &ScrewText::bleedDown));
};
/// An engine as a person would type it.
struct EngineRow {
    std::string name;
    EngineText text;
    ScrewText screw;
};
template <>
struct RowOf<EngineRow> {
    static constexpr auto parts = std::tuple(column("name", &EngineRow::name), part(&EngineRow::text), part(&EngineRow::screw));
};

/// What a torque wrench is marked for. Whether it is read, and its lever, follow from what else is said of the tool.
template <>
struct Cells<std::optional<TorqueTool>> {
    static void put(QVariantList &row, const std::optional<TorqueTool> &torque);
    static std::optional<TorqueTool> take(Row &row);
};
template <>
struct RowOf<Tool> {
    static constexpr auto parts =
        std::tuple(key(&Tool::id), column("name", &Tool::name), column("leaves_text", &Tool::leavesText),
                   list("feeler_leaf", "nm, unit, text", &Tool::leaves), column("kind", &Tool::kind),
                   column("error_nm, error_unit, error_text", &Tool::permissibleError),
                   column("resolution_nm, resolution_unit, resolution_text", &Tool::resolution),
                   column("least, least_unit, least_text, most, most_unit, most_text, deviation_numerator, deviation_denominator, "
                          "calibration_due",
                          &Tool::torque),
                   column("deviation_text", &Tool::deviationText), column("lever_nm, lever_unit, lever_text", &Tool::lever),
                   column("length_nm, length_unit, length_text", &Tool::length), column("size", &Tool::size));
};

template <>
struct RowOf<Pattern> {
    static constexpr auto parts = std::tuple(column("pattern", &Pattern::kind), list("joint_place", &Pattern::places));
};
template <>
struct RowOf<JointText> {
    static constexpr auto parts = std::tuple(
        column("name", &JointText::name), column("thread_text", &JointText::thread), column("strength_text", &JointText::strength),
        part(&JointText::pattern), column("order_text", &JointText::order), column("target_text", &JointText::target),
        column("other_target_text", &JointText::otherTarget), column("unit", &JointText::unit), column("passes_text", &JointText::passes),
        column("settle", &JointText::settle), column("condition", &JointText::condition), column("finish", &JointText::finish),
        column("drive", &JointText::drive), column("drive_size", &JointText::driveSize), column("female", &JointText::female),
        column("engagement", &JointText::engagement), column("blind_hole", &JointText::blindHole),
        column("single_use", &JointText::singleUse), part(&JointText::source), column("answered", &JointText::answered));
};
/// A revision of a joint: what was typed, and what that was read as, written the house's way.
struct JointRow {
    JointId joint;
    int revision;
    JointText text;
    std::optional<std::string> thread;
    std::optional<StrengthClass> strength;
    std::string order;
    bool orderGenerated;
    std::string passes;
    std::vector<Band<Torque>> target;
};
template <>
struct RowOf<JointRow> {
    static constexpr auto parts = std::tuple(
        column("joint", &JointRow::joint), column("revision", &JointRow::revision), part(&JointRow::text),
        column("thread", &JointRow::thread), column("strength", &JointRow::strength), column("tightening_order", &JointRow::order),
        column("order_generated", &JointRow::orderGenerated), column("passes", &JointRow::passes), list("joint_band", &JointRow::target));
};

} // namespace asleft::store
