#pragma once

#include <base/result.h>
#include <joints/adapter.h>
#include <measure/band.h>
#include <measure/parse.h>
#include <measure/rational.h>

#include <chrono>
#include <optional>
#include <span>
#include <vector>

namespace asleft {

/// A torque wrench as far as choosing it goes.
struct TorqueTool {
    bool read = false;   ///< a dial or digital one shows what was reached; else it is set and gives way
    Typed<Torque> least; ///< the range it is marked for
    Typed<Torque> most;
    std::optional<Rational> deviationPercent = {}; ///< permissible, of the reading; empty: by ISO 6789
    std::optional<std::chrono::sys_days> calibrationDue = {};
    std::optional<Length> lever = {}; ///< L, from the drive to the grip mark
    bool operator==(const TorqueTool &) const = default;
};

/// Whether its calibration was due before today; what is not known is not overdue.
bool isOverdue(const TorqueTool &tool, std::chrono::sys_days today);

/// Refuses a range upside down, below nothing or from nothing to nothing (TorqueRange, least, most).
Done checkTorqueRange(const Typed<Torque> &least, const Typed<Torque> &most);
/// Refuses a deviation of 0 or above 50 % (DeviationOutOfRange).
Done checkDeviation(const Rational &percent);
/// Refuses a lever of 0 or above longestLever (LeverOutOfRange).
Done checkLever(Length lever);
/// Refuses what any of these refuses.
Done checkTorqueTool(const TorqueTool &tool);

/// The tool's permissible deviation in percent: its own, else ISO 6789's for its largest torque (clickWrenchDeviation()).
Rational deviationOf(const TorqueTool &tool);

/// What the tool is set to, or has to show, so that the fastener gets `wanted`, in the tool's own unit and in figures that can be set: to a
/// tenth of a newton-metre or pound-foot, a whole pound-inch and kilogram-force centimetre, a hundredth of a kilogram-force metre, and
/// finer until a step is at most one percent. Where these would take the fastener out of `band` though `wanted` lies in it, they are
/// rounded towards it, or finer. Nothing where the fit cannot be reckoned.
std::optional<Typed<Torque>> settingFor(const TorqueTool &tool, Torque wanted, const std::optional<AdapterFit> &fit = {},
                                        const Band<Torque> *band = nullptr);

/// How one tool stands to one torque. A miss says why: its setting lies outside the tool's range; or the fit cannot be reckoned, the lever
/// being unknown or hardly longer than an adapter turned back, and the setting is the bare torque.
struct ToolReach {
    std::size_t tool = 0;               ///< its index among those asked about
    std::optional<std::size_t> adapter; ///< an index among the adapters, where it takes one to reach
    Torque setting;                     ///< what it is set to or has to show, in figures that can be set: settingFor()
    bool reaches = false;               ///< the setting lies in its range, ends included
    bool wellInside = false;            ///< and at or above a fifth of its largest torque, from where ISO 6789 tests it
    double shareOfRange = 0;            ///< setting over largest torque
    Rational deviation;                 ///< permissible, in percent
    bool calibrationOverdue = false;    ///< due before today
    bool calibrationUnknown = false;
};

/// What helps where no tool reaches.
struct WayOut {
    enum class Kind {
        Borrow,      ///< a tool that reaches from a fifth of `most`
        WithAdapter, ///< `reach`: a tool and an adapter on the rack, straight out or back along the handle
        ByFeel,
    };
    Kind kind;
    std::optional<ToolReach> reach = {};
    std::optional<Angle> angle = {}; ///< of WithAdapter: 0 or 180°
    std::optional<Torque> most = {}; ///< of Borrow: the largest torque a fitting tool may have
};

struct ToolAdvice {
    std::vector<ToolReach> reaching; ///< best first: calibrated, well inside, the least deviation, the smallest tool
    std::vector<ToolReach> misses;   ///< as they lie on the rack
    std::vector<WayOut> waysOut;     ///< empty where one reaches
};

/// What is asked of one tool.
struct ToolAsk {
    Torque wanted;                      ///< at the fastener
    const Band<Torque> *band = nullptr; ///< what its figures have to stay in
};

/// Looks along the rack for a torque at the fastener; `fit` is an adapter that is used anyway (a tool whose lever is unknown then misses,
/// unless the fit changes nothing). `adapters` are lengths there are, for the ways out: at most one with an adapter, the best, in place of
/// `fit`; then to borrow; and by feel, always. `asks`: of each of the tools, where it is not simply `wanted`: a manual prints a target in
/// both systems, each rounded for itself. \pre the torque is one a field takes, and checkTorqueTool() lets every tool pass
ToolAdvice chooseTool(Torque wanted, std::span<const TorqueTool> tools, std::span<const Length> adapters, std::chrono::sys_days today,
                      const std::optional<AdapterFit> &fit = {}, std::span<const ToolAsk> asks = {});

/// Permissible deviation as a torque, rounded up: what a tool may be off at `value`. \pre 0 ≤ value
Torque deviationAt(const TorqueTool &tool, Torque value);

} // namespace asleft
