#pragma once

#include <joints/order.h>
#include <joints/passes.h>
#include <joints/preload.h>
#include <shop/things.h>

namespace asleft {

/// What takes hold of a fastener.
enum class DriveKind { Unsaid, Socket, Spanner, HexKey, SixLobe, Screwdriver };

/// What may be used once only.
enum class SingleUse { No, TorqueToYield, CrushWasher };

/// Why a joint may be gone over until none moves.
enum class SettleGround { No, Limiters, ManualSaysSo };

/// A joint as a person types it.
struct JointText {
    std::string name;
    std::string thread;   ///< of its fasteners, where the pattern names no other; may be empty
    std::string strength; ///< class or grade; may be empty
    Pattern pattern;
    std::string order;                         ///< the manual's; empty: generated
    std::string target;                        ///< a band of torque, as parseBand() reads it; may be empty where no pass asks for it
    std::string otherTarget;                   ///< the same as printed in the other unit system; may be empty
    TorqueUnit unit = TorqueUnit::NewtonMetre; ///< what bare numbers count in
    std::string passes;                        ///< as parsePasses() reads them; empty: the target
    SettleGround settle = SettleGround::No;
    std::optional<ThreadCondition> condition = {}; ///< as the manual states it; empty: it does not
    Finish finish = Finish::Zinc;
    DriveKind drive = DriveKind::Unsaid;
    std::string driveSize = {};                ///< as typed: "10 mm"
    std::optional<FemaleMaterial> female = {}; ///< what its thread is cut into; empty: unknown
    std::string engagement = {};               ///< how far it goes in, as typed; may be empty
    bool blindHole = false;                    ///< oil in it is a caution
    SingleUse singleUse = SingleUse::No;
    SpecSource source = {};
    std::string answered = {}; ///< why a questioned torque is right all the same; empty: not asked, or not answered
    bool operator==(const JointText &) const = default;
};

/// One revision of a joint: fasteners that are tightened together. Never edited: a change is a new revision.
struct Joint {
    JointId id;
    int revision = 1; ///< counts up from 1 within a joint
    EngineId engine;
    JointText text;
    // what the text says
    std::optional<Thread> thread = {};
    std::optional<StrengthClass> strength = {};
    TighteningOrder order = {};
    bool orderGenerated = false;
    std::optional<SpecBand<Torque>> target = {};
    std::vector<Pass> passes = {};

    [[nodiscard]] Tightening tightening() const { return {order, passes}; }
};

/// Reads a joint. Refuses what its parts refuse, the first of them in the order of JointField: name (NameMissing), thread (also those of
/// single fasteners), class, pattern, order, target, passes and whether they fit together, and texts longer than a name may be. The ids of
/// the result are not meant.
Result<Joint> readJoint(const JointText &text, DecimalMark mark = DecimalMark::Point);

/// What the passes go by: the nominal, else the middle, of the band printed in the system of `unit`, of the first without one; of a band
/// with one limit, that. Nothing without a target.
std::optional<Typed<Torque>> targetOf(const Joint &joint, std::optional<TorqueUnit> unit = {});

/// What a pass asks of the fastener, by the target as printed in the system of `unit`: nothing for finger-tight and for angles. A torque
/// equal to what the passes go by is the target, in whichever unit it is asked.
/// \pre pass < joint.passes.size()
std::optional<Torque> wantedInPass(const Joint &joint, std::size_t pass, std::optional<TorqueUnit> unit = {});

/// The band a pass is judged by: that of the target, in the system of `unit`, for a pass to the target, to a torque equal to it, or until
/// none moves; nullptr for all others.
const Band<Torque> *bandOfPass(const Joint &joint, std::size_t pass, TorqueUnit unit);

/// The thread of one fastener.
std::optional<Thread> threadOf(const Joint &joint, int fastener);

/// Whether two revisions ask the same of the hand: target, passes, order, threads, class and condition, however they are typed.
bool asksTheSame(const Joint &a, const Joint &b);

/// How much of what its thread bears a joint's torque takes: the preload check.
struct PreloadCheck {
    double newtons = 0;
    std::optional<double> shareOfProof = {}; ///< where the class is known
    double nutFactor = 0;
    std::optional<TorqueDoubt> doubt = {};
    Thread thread = {};        ///< of the joint's several the one that is the worst off
    Typed<Torque> torque = {}; ///< the target; without one the highest torque of the passes
};
/// Of the target, else of the highest torque its passes ask for, and of every thread among the fasteners the worst: doubted by the most,
/// else nearest to its proof load, else the joint's own. Where no class is typed, 8.8 or grade 5 is taken for the doubt alone (common
/// practice, no source). Nothing without thread or torque. Where the manual states no condition, that of the finish, dry.
std::optional<PreloadCheck> preloadCheck(const Joint &joint);

/// What is done with an adapter: the tool, if it is on the rack, and how it sits.
struct FitUsed {
    std::optional<ToolId> adapter = {};
    AdapterFit fit = {};
    bool operator==(const FitUsed &) const = default;
};

/// Torque wrenches and adapters among the tools of a shop, for chooseTool().
struct Rack {
    std::vector<const Tool *> wrenches;
    std::vector<TorqueTool> torqueTools; ///< of the wrenches
    std::vector<const Tool *> adapters;
    std::vector<Length> adapterLengths;
};
Rack rackOf(const std::vector<Tool> &tools);

/// What to set a wrench to, or to read on it, in the wrench's own unit and in figures that can be set: settingFor(). Refuses a tool
/// without torque (ToolNotForTorque), and, with an adapter that changes anything, one without a lever (LeverMissing) and what
/// wrenchSetting() refuses. Where the rounded figures would take the fastener out of `band` though `wanted` lies in it, they are rounded
/// towards it, or finer.
Result<Typed<Torque>> settingOn(const Tool &tool, Torque wanted, const std::optional<AdapterFit> &fit, const Band<Torque> *band = nullptr);

/// Looks along the rack for what a pass asks: of each wrench by the target as printed in its own system, and so that its figures stay in
/// the band, as settingOn() does. Nothing for finger-tight and for angles. \pre pass < joint.passes.size()
std::optional<ToolAdvice> adviceFor(const Joint &joint, std::size_t pass, const Rack &rack, std::chrono::sys_days today,
                                    const std::optional<AdapterFit> &fit = {});

/// What one joint asks of the rack, once for each torque its passes ask for.
struct ToolWanted {
    JointId joint;
    Torque torque;     ///< by the target as printed first
    ToolAdvice advice; ///< indexes into the rack
    bool target = false;
};
/// At planning time. Each torque of a joint once, in the order of its passes. `today` decides what is overdue.
std::vector<ToolWanted> toolsWanted(const Joint &joint, const Rack &rack, std::chrono::sys_days today);

} // namespace asleft
