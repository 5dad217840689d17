#pragma once

#include <joints/strength.h>
#include <measure/band.h>

#include <optional>

namespace asleft {

/// How the thread is when it is tightened.
enum class ThreadCondition { Dry, Oiled, ThreadLock, Sealant, AntiSeize };
/// The surface of a fastener.
enum class Finish { Black, Zinc, Cadmium };
/// What the thread is cut into.
enum class FemaleMaterial { Iron, Steel, Aluminium, Insert };

/// Nut factor K: black 0.30, zinc 0.20, cadmium 0.16 (dry); oiled 0.18; anti-seize 0.12 (Shigley, Table 8-15); oiled is never
/// above dry. Thread-lock and sealant count as oiled while wet (common practice, no source).
double nutFactor(ThreadCondition condition, Finish finish = Finish::Zinc);

/// F = T/(K·d) in newtons. \pre k > 0, diameter > 0
double preloadNewtons(Torque torque, double nutFactor, Length diameter);
/// T = K·d·F, rounded to the smallest unit.
Torque torqueForPreload(double newtons, double nutFactor, Length diameter);

/// Preload by this torque as a share of the proof load, 1 = all of it; nothing where the class has none for this size.
std::optional<double> shareOfProof(Torque torque, const Thread &thread, StrengthClass strength, double nutFactor);

/// A torque that makes no sense for its thread.
struct TorqueDoubt {
    double times = 1;                 ///< times what the thread takes, that is 75 % of proof load: above 1 too much, below too little
    std::optional<TorqueUnit> meant;  ///< the unit in which the same digits would make sense, the first of those there are
    std::optional<Torque> meantValue; ///< what that would be
    bool operator==(const TorqueDoubt &) const = default;
};
/// Questions a torque that is above 1.5 times, or below a twentieth of, what the thread takes at 75 % of proof load (`floorCounts` false: a
/// snug torque before an angle, or a small screw into soft metal, is never too little). Nothing where it makes sense or nothing is known.
/// Asked at entry, never refused.
std::optional<TorqueDoubt> questionTorque(const Typed<Torque> &torque, const Thread &thread, StrengthClass strength, double nutFactor,
                                          bool floorCounts = true);

/// What general practice takes off a torque that states no condition of its own, in percent: oil on the threads 10, newly plated 20, into
/// aluminium 30 (TM 9-2320-362-14&P App. F). The largest that applies; never used where the manual states its own condition.
int generalAllowancePercent(bool oiled, bool newlyPlated, FemaleMaterial material);

} // namespace asleft
