#pragma once

#include <measure/parse.h>

#include <compare>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace asleft {

struct FingerTight {
    bool operator==(const FingerTight &) const = default;
};
struct PercentOfTarget {
    int percent; ///< 1 to 99
    bool operator==(const PercentOfTarget &) const = default;
};
/// To the target torque.
struct AtTarget {
    bool operator==(const AtTarget &) const = default;
};
/// To a torque of its own, below the target: a snug torque.
struct AtTorque {
    Typed<Torque> torque;
    bool operator==(const AtTorque &) const = default;
};
/// Turned on by this angle.
struct AngleOn {
    Typed<Angle> angle;
    bool operator==(const AngleOn &) const = default;
};
inline constexpr int mostSettleRounds = 10;
/// To the target round after round, until none moves.
struct Settle {
    int mostRounds = 3; ///< 1 to mostSettleRounds
    bool operator==(const Settle &) const = default;
};
/// One round over a joint.
using Pass = std::variant<FingerTight, PercentOfTarget, AtTarget, AtTorque, AngleOn, Settle>;

inline constexpr int mostPasses = 12;

/// Reads passes parted by commas or semicolons, in order: `finger, 50 %, target, settle 3`; `40 N·m, +45°, +45°, +30°`. A pass is `finger`
/// (`finger-tight`, `hand`), `50 %`, `target` (`100 %`), a torque (digits alone in `fieldUnit`), `+ 90°` (`+90 deg`, `+1/4 turn`), `settle`
/// (`settle 3`: at most three rounds). A comma between two digits is a decimal mark. Empty text is one pass, the target. The texts kept
/// have their unit written out and single blanks, so that they read the same whatever the field's unit is by then. Refuses with PassUnread,
/// PassOverTarget (a percentage above 100), what parse() refuses, and more than twelve (PassesTooMany).
Result<std::vector<Pass>> parsePasses(std::string_view text, TorqueUnit fieldUnit, DecimalMark mark = DecimalMark::Point);
/// What parsePasses() reads as the same.
std::string writePasses(const std::vector<Pass> &passes);

/// What passes stand on.
struct PassGround {
    std::optional<Torque> target; ///< nominal, else the middle of the band; empty: none is given
    bool settleAllowed = false;   ///< the joint has limiters, or the manual says so
};

/// Refuses: none (PassesEmpty); finger-tight not first (FingerNotFirst); percentages or torques that do not rise (PassesFall, the pass);
/// a torque of its own above the target (PassOverTarget); a target or a percentage where there is no target (TargetMissing); an angle with
/// no torque before it (AngleWithoutSnug) or above two turns in all (AngleTooLarge, the sum); settle where it is not allowed
/// (SettleNotAllowed), after an angle (SettleAfterAngle), before the target or twice (SettleMisplaced); any torque after an angle
/// (TorqueAfterAngle); and, where there is a target and no angle, a last torque below it or none (PassesStopShort, the last pass).
Done checkPasses(const std::vector<Pass> &passes, const PassGround &ground);

/// How many rounds a pass may take: 1 but for Settle.
int roundsOf(const Pass &pass);
/// Whether any of them turns on by an angle.
bool anyAngle(std::span<const Pass> passes);
/// Whether a pass asks for a torque that no later one goes over. \pre pass < passes.size()
bool isLastTorque(std::span<const Pass> passes, std::size_t pass);

/// The torque a pass asks for at the fastener: nothing for finger-tight and for an angle; of Settle, the target.
std::optional<Torque> torqueOfPass(const Pass &pass, std::optional<Torque> target);

/// The sum of the angles up to and with pass `upTo`.
Angle totalAngle(std::span<const Pass> passes, std::size_t upTo);

/// One fastener in one pass; of a settle pass, in one of its rounds.
struct TickSlot {
    int fastener = 1;
    int pass = 0;  ///< an index into the passes
    int round = 1; ///< 1 but for Settle
    auto operator<=>(const TickSlot &) const = default;
};
struct Tick {
    TickSlot place;
    bool moved = false; ///< of Settle: it moved before the wrench gave way
    bool operator==(const Tick &) const = default;
};

/// The way a joint is tightened.
struct Tightening {
    std::vector<int> order; ///< fastener numbers
    std::vector<Pass> passes;
};

/// How far a joint has come.
struct TighteningProgress {
    std::optional<TickSlot> next;       ///< nothing once all is done
    int pass = 0;                       ///< the pass in hand, passes.size() when finished
    int round = 1;                      ///< the round in hand
    std::vector<int> doneInRound = {};  ///< in the order of tightening
    std::vector<int> movedInRound = {}; ///< of Settle
    bool unsettled = false;             ///< the last round there may be has gone by and some moved still
    [[nodiscard]] bool finished() const { return !next; }
};

/// Folds ticks, in whatever order they were made; ticks of no place there is, and a second one of a place, count for nothing but that
/// the last `moved` holds. A pass begins once every fastener has the one before.
TighteningProgress progressOf(const Tightening &tightening, std::span<const Tick> ticks);

/// The places still to be ticked in the pass and round in hand, in order.
std::vector<TickSlot> restOfPass(const Tightening &tightening, const TighteningProgress &progress);

} // namespace asleft
