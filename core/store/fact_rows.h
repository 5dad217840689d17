#pragma once

#include "rows.h"

#include <shop/acts.h>

/// What acts say, each kind described once: the word of the kind, the table of its row, which hangs on the act's, and the columns and
/// lists. The order is that of the members, and that in which a checksum says them: it never changes for what was stored already.
/// A Fact that is not described here does not compile.
namespace asleft::store {

/// Where an adapter was used: length, angle, and the tool where it is on the rack.
template <>
struct Cells<std::optional<FitUsed>> {
    static void put(QVariantList &row, const std::optional<FitUsed> &used)
    {
        if (used)
            row += values(used->adapter, used->fit.length, used->fit.angle);
        else
            row += {QVariant(), QVariant(), QVariant()};
    }
    static std::optional<FitUsed> take(Row &row)
    {
        const auto adapter = row.idIfAny<ToolId>();
        const auto length = row.quantityIfAny<Length>();
        const auto angle = row.quantityIfAny<Angle>();
        if (length && angle)
            return FitUsed{adapter, {*length, *angle}};
        if (adapter || length || angle)
            row.refuse();
        return std::nullopt;
    }
};

/// A column for each kind of thing, one of them set. Fasteners stand in a list beside it.
template <>
struct Cells<Subject> {
    static void put(QVariantList &row, const Subject &subject);
    static Subject take(Row &row);
};

template <>
struct RowOf<ReadingFact> {
    static constexpr std::string_view kind = "reading", table = "fact_reading";
    static constexpr std::string_view listedAs = "place"; ///< several left at one stroke have a row each
    static constexpr auto parts = std::tuple(
        column("point", &ReadingFact::point), column("phase", &ReadingFact::phase), column("form", &ReadingFact::form),
        column("value_nm, value_unit, value_text", &ReadingFact::value), column("next_nm, next_unit, next_text", &ReadingFact::next),
        column("judged_by", &ReadingFact::judgedBy), column("tool", &ReadingFact::tool), column("condition", &ReadingFact::condition),
        column("spec_leaf", &ReadingFact::specLeaf), column("out_of_place", &ReadingFact::outOfPosition),
        column("corrects", &ReadingFact::corrects), laterColumn("turned", "turned, turned_unit, turned_text", &ReadingFact::turned),
        laterColumn("uncertainty", "uncertainty_nm", &ReadingFact::uncertainty),
        laterColumn("temperature", "temperature, temperature_unit, temperature_text", &ReadingFact::temperature),
        laterColumn("minutes since run", "minutes_since_run", &ReadingFact::minutesSinceRun));
};

template <>
struct RowOf<AllLeftFact> {
    static constexpr std::string_view kind = "all_left";
    static constexpr auto parts = std::tuple(list("fact_reading", &AllLeftFact::readings));
};

template <>
struct RowOf<NutOpenFact> {
    static constexpr std::string_view kind = "nut_open", table = "fact_nut_open";
    static constexpr auto parts = std::tuple(column("point", &NutOpenFact::point));
};

template <>
struct RowOf<CrankFact> {
    static constexpr std::string_view kind = "crank", table = "fact_crank";
    static constexpr auto parts =
        std::tuple(column("engine", &CrankFact::engine), column("crank", &CrankFact::crank), column("how", &CrankFact::how));
};

template <>
struct RowOf<PlanPoint> {
    static constexpr auto parts = std::tuple(column("cylinder, adjuster", &PlanPoint::adjuster), column("margin", &PlanPoint::margin));
};
template <>
struct RowOf<CrankPosition> {
    static constexpr auto parts = std::tuple(column("cylinder", &CrankPosition::cylinder), column("stroke", &CrankPosition::event));
};
template <>
struct RowOf<PlanPosition> {
    static constexpr auto parts =
        std::tuple(part(&PlanPosition::place), column("crank", &PlanPosition::crank), list("plan_point", &PlanPosition::points));
};
template <>
struct RowOf<CrankPlan> {
    static constexpr auto parts =
        std::tuple(column("generated", &CrankPlan::generated), column("way", &CrankPlan::way), column("source", &CrankPlan::source),
                   list("plan_position", &CrankPlan::positions, MayBeEmpty::Yes, "position"),
                   list("plan_unreached", "cylinder, adjuster", &CrankPlan::unreached), laterColumn("page", "page", &CrankPlan::page));
};
template <>
struct RowOf<PlanFact> {
    static constexpr std::string_view kind = "plan", table = "fact_plan";
    static constexpr auto parts = std::tuple(column("engine", &PlanFact::engine), part(&PlanFact::plan));
};

template <>
struct RowOf<StepDoneFact> {
    static constexpr std::string_view kind = "step_done", table = "fact_step_done";
    static constexpr auto parts = std::tuple(column("step", &StepDoneFact::step));
};

template <>
struct RowOf<KeepFact> {
    static constexpr std::string_view kind = "keep", table = "fact_keep";
    static constexpr auto parts =
        std::tuple(column("reading", &KeepFact::reading), column("point", &KeepFact::point), column("reason", &KeepFact::reason));
};

template <>
struct RowOf<CautionsFact> {
    static constexpr std::string_view kind = "cautions";
    static constexpr auto parts = std::tuple(list("fact_caution", "caution", &CautionsFact::cautions));
};

template <>
struct RowOf<CheckAgainFact> {
    static constexpr std::string_view kind = "check_again", table = "fact_check_again";
    static constexpr auto parts = std::tuple(list("check_again_point", "point", &CheckAgainFact::points),
                                             column("why", &CheckAgainFact::why), laterColumn("cause", "cause", &CheckAgainFact::cause));
};

/// Which act is withdrawn stands in the act's own row.
template <>
struct RowOf<WithdrawFact> {
    static constexpr std::string_view kind = "withdraw";
    static constexpr auto parts = std::tuple();
};

template <>
struct RowOf<LoosenedFact> {
    static constexpr std::string_view kind = "loosened", table = "fact_loosened";
    static constexpr auto parts =
        std::tuple(column("joint", &LoosenedFact::joint), column("revision", &LoosenedFact::revision),
                   list("loosened_fastener", "fastener", &LoosenedFact::fasteners, MayBeEmpty::No), column("how", &LoosenedFact::how),
                   column("torque, torque_unit, torque_text", &LoosenedFact::torque), column("tool", &LoosenedFact::tool),
                   column("note", &LoosenedFact::note));
};

template <>
struct RowOf<TickSlot> {
    static constexpr auto parts =
        std::tuple(column("fastener", &TickSlot::fastener), column("pass", &TickSlot::pass), column("round", &TickSlot::round));
};
template <>
struct RowOf<Tick> {
    static constexpr auto parts = std::tuple(part(&Tick::place), column("moved", &Tick::moved));
};
template <>
struct RowOf<TicksFact> {
    static constexpr std::string_view kind = "ticks", table = "fact_ticks";
    static constexpr auto parts =
        std::tuple(column("joint", &TicksFact::joint), column("revision", &TicksFact::revision),
                   list("tick", &TicksFact::ticks, MayBeEmpty::No), column("how", &TicksFact::how), column("tool", &TicksFact::tool),
                   column("setting, setting_unit, setting_text", &TicksFact::setting),
                   column("reading, reading_unit, reading_text", &TicksFact::reading),
                   column("adapter, adapter_nm, adapter_angle", &TicksFact::fit), column("lever_nm", &TicksFact::lever),
                   column("uncertainty", &TicksFact::uncertainty), column("out_of_range", &TicksFact::outOfRange),
                   column("calibration_overdue", &TicksFact::calibrationOverdue), column("reason", &TicksFact::reason));
};

template <>
struct RowOf<UntickedFact> {
    static constexpr std::string_view kind = "unticked", table = "fact_unticked";
    static constexpr auto parts =
        std::tuple(column("joint", &UntickedFact::joint), list("unticked_place", &UntickedFact::places, MayBeEmpty::No));
};

template <>
struct RowOf<JointBegunFact> {
    static constexpr std::string_view kind = "joint_begun", table = "fact_joint_begun";
    static constexpr auto parts = std::tuple(column("joint", &JointBegunFact::joint), column("revision", &JointBegunFact::revision));
};

template <>
struct RowOf<FittedFact> {
    static constexpr std::string_view kind = "fitted", table = "fact_fitted";
    static constexpr auto parts =
        std::tuple(column("joint", &FittedFact::joint), list("fitted_fastener", "fastener", &FittedFact::fasteners, MayBeEmpty::No),
                   column("fitted", &FittedFact::fitted));
};

template <>
struct RowOf<AcceptedFact> {
    static constexpr std::string_view kind = "accepted", table = "fact_accepted";
    static constexpr auto parts =
        std::tuple(column("joint", &AcceptedFact::joint), column("what", &AcceptedFact::what),
                   list("accepted_fastener", "fastener", &AcceptedFact::fasteners), column("reason", &AcceptedFact::reason));
    static bool isWhole(const AcceptedFact &fact) { return (fact.what == AcceptedWhat::Unsettled) == fact.fasteners.empty(); }
};

/// Fasteners belong to the joint a finding is about; of anything else there are none.
template <class Finding>
auto *fastenersIn(Finding &finding)
{
    auto *about = std::get_if<FastenerSubject>(&finding.subject);
    return about ? &about->fasteners : nullptr;
}
template <>
struct RowOf<FindingFact> {
    static constexpr std::string_view kind = "finding", table = "fact_finding";
    static constexpr auto fasteners = [](auto &finding) { return fastenersIn(finding); };
    static constexpr auto parts = std::tuple(column("joint, point, step, engine, vehicle", &FindingFact::subject),
                                             List<FindingFact, int, decltype(fasteners)>{"finding_fastener", "fastener", fasteners},
                                             column("text", &FindingFact::text));
    static FindingFact made(std::tuple<Subject, std::vector<int>, std::string> &&read)
    {
        return {std::get<0>(std::move(read)), std::get<2>(std::move(read))};
    }
};

} // namespace asleft::store
