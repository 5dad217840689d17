#pragma once

#include <base/result.h>
#include <measure/parse.h>

#include <compare>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace asleft {

enum class Layout { InLine, Vee, Flat };

/// A cylinder's place in EngineDesign::labels; not the number painted on it.
struct Cylinder {
    int index = 0;
    auto operator<=>(const Cylinder &) const = default;
};

enum class Side { Intake, Exhaust };

/// One valve adjuster on the engine: which side of which cylinder.
struct AdjusterRef {
    Cylinder cylinder;
    Side side = Side::Intake;
    auto operator<=>(const AdjusterRef &) const = default;
};

/// When the valves leave and meet their seats, in crank degrees; negative is allowed (an intake may open after TDC).
struct CamEvents {
    Angle intakeOpensBeforeTdc = degrees(20);
    Angle intakeClosesAfterBdc = degrees(60);
    Angle exhaustOpensBeforeBdc = degrees(60);
    Angle exhaustClosesAfterTdc = degrees(20);
    Angle rampAllowance = degrees(20); ///< on each side of an arc, where the ramp takes up lash before the seat moves
    std::string checkLift;             ///< the lift the events are given at, as typed; empty if unknown
    bool assumed = true;               ///< true: nobody gave events, these are the program's usual ones

    bool operator==(const CamEvents &) const = default;
};

/// Which way the crankshaft turns in normal running, seen from the front (the end away from the flywheel).
enum class Rotation { Clockwise, Anticlockwise };

/// How the valves of a bank stand on its head, for drawing it.
enum class ValveRows {
    One, ///< all in one line along the head, in the order of EngineDesign::valveOrder
    Two, ///< intakes in one line, exhausts in another
};

/// What is fixed about an engine. Made by designEngine(), which checks it; the parts then fit each other.
struct EngineDesign {
    Layout layout = Layout::InLine;
    std::vector<std::string> labels;          ///< cylinder names as the maker gives them ("1", "A3"), in bank order, front first
    std::vector<std::vector<Cylinder>> banks; ///< along each bank, front first: one bank in line, two for V and flat
    std::vector<Cylinder> firingOrder;        ///< every cylinder once
    std::vector<Angle> gaps;                  ///< gaps[i] is from firingOrder[i] to the next one; they add up to 720°
    CamEvents cam;
    Rotation rotation = Rotation::Clockwise;
    ValveRows valveRows = ValveRows::Two;
    std::vector<std::vector<Side>> valveOrder; ///< along each bank, front first, two a cylinder; only drawn when valveRows is One

    [[nodiscard]] int cylinders() const { return static_cast<int>(labels.size()); }
    [[nodiscard]] const std::string &label(Cylinder cylinder) const { return labels.at(static_cast<std::size_t>(cylinder.index)); }
    [[nodiscard]] std::optional<Cylinder> named(std::string_view label) const;
    /// Every valve: by bank, front first, intake before exhaust.
    [[nodiscard]] std::vector<AdjusterRef> adjusters() const;

    bool operator==(const EngineDesign &) const = default;
};

/// An engine as a person types it; empty texts take the usual answer.
struct EngineText {
    Layout layout = Layout::InLine;
    int cylinders = 4;
    std::string firingOrder; ///< `1-5-3-6-2-4`, `A1-B5-…`; separators: - , space
    std::string gaps; ///< empty: even; else one gap a cylinder in firing order, `90-270-…`, repeated as a pattern if shorter and it divides
    std::string numbering;  ///< empty: usualNumbering(); else labels along each bank, front first: `1 3 5 7 / 2 4 6 8`
    std::string valveOrder; ///< empty: intakes in one line, exhausts in the other; else along each bank `E I I E E I I E`, banks parted by
                            ///< `/`, or once for all banks
    CamEvents cam;
    Rotation rotation = Rotation::Clockwise;
};

/// Fewest and most cylinders a layout has: in line 1–12, V 2–16 and flat 2–12 (even).
struct CylinderRange {
    int fewest;
    int most;
    bool evenOnly;
};
CylinderRange cylinderRange(Layout layout);

/// How the cylinders are usually numbered: in line 1…n; V and flat alternating between the banks, `1 3 5 7 / 2 4 6 8`.
std::string usualNumbering(Layout layout, int cylinders);

/// Checks an engine as typed and fits its parts together. Refuses with the kinds of "engines" in ErrorKind: a cylinder missing,
/// twice or unknown in the order, gaps that do not add up to 720°, a bank too many, and so on.
Result<EngineDesign> designEngine(const EngineText &text, DecimalMark mark = DecimalMark::Point);

/// The texts that designEngine() reads back as `design`, for editing and for storing.
EngineText describeDesign(const EngineDesign &design);

/// "I3" or "E3": a valve's short name, the same everywhere.
std::string shortName(const EngineDesign &design, AdjusterRef valve);

} // namespace asleft
