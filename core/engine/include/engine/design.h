#pragma once

#include <base/result.h>
#include <measure/parse.h>

#include <compare>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace asleft {

enum class Layout {
    InLine,
    Vee,
    Flat,
    Single,
    W,       ///< three or four rows fanned out over one crankshaft
    Radial,  ///< around the crankshaft, in one or more rows behind each other
    Opposed, ///< two flat engines stacked over each other, geared together: four rows, or two with one level
};

enum class Cycle {
    FourStroke, ///< every cylinder fires once in 720°
    TwoStroke,  ///< once in 360°; exhaust valves only, the air comes in through ports
};

/// A cylinder's place in EngineDesign::labels; not the number painted on it.
struct Cylinder {
    int index = 0;
    auto operator<=>(const Cylinder &) const = default;
};

enum class Side { Intake, Exhaust };

/// What an adjuster sets.
enum class PointKind {
    BridgeScrew,  ///< seats a bridge evenly on its two valves; goes before the lash of that pair
    Lash,         ///< the clearance of a valve, or of a bridged pair
    Decompressor, ///< the clearance of a lever that holds an exhaust valve off its seat
    Injector,     ///< the height or lash of a cam-driven injector
};

/// One adjuster on the engine: what it sets, on which side of which cylinder.
struct AdjusterRef {
    Cylinder cylinder;
    Side side = Side::Intake; ///< of a decompressor: exhaust; of an injector it says nothing and is intake
    PointKind kind = PointKind::Lash;
    int number = 0; ///< among those of the same kind and side of the cylinder, front first from 0
    auto operator<=>(const AdjusterRef &) const = default;
};

/// The valves of each cylinder and what else is set there; the same at every cylinder.
struct ValveTrain {
    int intakes = 1;           ///< 0 (two-stroke) to 3
    int exhausts = 1;          ///< 1 to 4
    bool bridged = false;      ///< an even number of valves of one side is opened in pairs through bridges: one lash a pair
    bool bridgeScrews = false; ///< each bridge has a screw of its own; never without bridges
    bool injectors = false;
    bool decompressors = false;

    [[nodiscard]] bool isBridged(Side side) const;
    /// How many lashes are set on a side of one cylinder.
    [[nodiscard]] int lashes(Side side) const;
    bool operator==(const ValveTrain &) const = default;
};

/// An arc of the crank, in degrees after the cylinder's own firing dead centre; negative is before it.
struct CrankArc {
    Angle starts;
    Angle ends; ///< after `starts`, less than a cycle later
    bool operator==(const CrankArc &) const = default;
};

/// When the valves leave and meet their seats, in crank degrees; negative is allowed (an intake may open after TDC).
/// The usual ones, said to be assumed: 20/60/60/20; for a two-stroke, whose intake events count for nothing, twoStrokeCam().
struct CamEvents {
    Angle intakeOpensBeforeTdc = degrees(20);
    Angle intakeClosesAfterBdc = degrees(60);
    Angle exhaustOpensBeforeBdc = degrees(60);
    Angle exhaustClosesAfterTdc = degrees(20); ///< of a two-stroke: after BDC
    Angle rampAllowance = degrees(20);         ///< on each side of an arc, where the ramp takes up lash before the computer moves
    std::optional<CrankArc> exhaustAgain;      ///< a second lift of the exhaust valves, for an engine brake or to decompress
    /// While the injector's cam drives it; empty: 70° before to 70° after the firing dead centre, assumed.
    std::optional<CrankArc> injector;
    std::string checkLift; ///< the lift the events are given at, as typed; empty if unknown
    bool assumed = true;   ///< true: nobody gave events, these are the program's usual ones

    bool operator==(const CamEvents &) const = default;
};

/// The usual events of a two-stroke with exhaust valves: they open 90° before BDC and close 60° after it. From memory, no source.
CamEvents twoStrokeCam();

/// Which way the crankshaft turns in normal running, seen from the front (the end away from the flywheel).
enum class Rotation { Clockwise, Anticlockwise };

/// How the valves of a bank stand on its head, for drawing it.
enum class ValveRows {
    One, ///< all in one line along the head, in the order of EngineDesign::valveOrder
    Two, ///< intakes in one line, exhausts in another
};

/// Where the crank is turned by a pinion on the ring gear.
struct Barring {
    int ringTeeth = 0;
    int pinionTeeth = 0;
    bool operator==(const Barring &) const = default;
};

/// What is fixed about an engine. Made by designEngine(), which checks it; the parts then fit each other.
struct EngineDesign {
    Layout layout = Layout::InLine;
    Cycle cycle = Cycle::FourStroke;
    std::vector<std::string> labels; ///< cylinder names as the maker gives them ("1", "A3"), in bank order, front first
    std::vector<std::vector<Cylinder>>
        banks; ///< along each bank, front first; of a radial engine around each row in its direction of rotation from the top
    std::vector<Cylinder> firingOrder; ///< every cylinder once
    std::vector<Angle> gaps;           ///< gaps[i] is from firingOrder[i] to the next one; they add up to the cycle
    ValveTrain train;
    CamEvents cam;
    Rotation rotation = Rotation::Clockwise;
    std::optional<Barring> barring;
    ValveRows valveRows = ValveRows::Two;
    std::vector<std::vector<Side>> valveOrder; ///< the lashes along each bank, front first; only drawn when valveRows is One

    [[nodiscard]] int cylinders() const { return static_cast<int>(labels.size()); }
    [[nodiscard]] const std::string &label(Cylinder cylinder) const { return labels.at(static_cast<std::size_t>(cylinder.index)); }
    [[nodiscard]] std::optional<Cylinder> named(std::string_view label) const;
    /// Every adjuster: by bank, front first; of a cylinder intake before exhaust, each bridge screw before the lash of its pair, then
    /// decompressor and injector.
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
    std::string valveOrder; ///< empty: intakes in one line, exhausts in the other; else the lashes along each bank `E I I E E I I E`,
                            ///< banks parted by `/`, or once for all banks
    CamEvents cam;
    Rotation rotation = Rotation::Clockwise;
    Cycle cycle = Cycle::FourStroke;
    /// Valves of a cylinder: `2` to `5` (the half, rounded up, are intakes), `2+1` intakes + exhausts, `0+4`; empty: 1+1, two-stroke 0+2.
    std::string valves;
    bool bridged = false;
    bool bridgeScrews = false;
    bool injectors = false;
    bool decompressors = false;
    std::string barring; ///< teeth of ring gear and pinion, `132/11`; empty: not turned that way
};

/// Fewest and most cylinders a layout has: single 1, in line 1–12, V 2–24 and flat 2–16 (even), W 3–24, radial 3–24, opposed 4–24 (even).
struct CylinderRange {
    int fewest;
    int most;
    bool evenOnly;
};
CylinderRange cylinderRange(Layout layout);

/// How the cylinders are usually numbered: in line 1…n; with several banks alternating between them, `1 3 5 7 / 2 4 6 8`. W: four banks
/// where they divide, else three; radial: one row up to nine, else two; opposed: four rows where they divide, else two.
std::string usualNumbering(Layout layout, int cylinders);

/// The fields of an EngineText that can be refused.
enum class EngineField {
    Cylinders,
    Numbering,
    FiringOrder,
    Gaps,
    Valves,
    ValveOrder,
    IntakeEvents,
    ExhaustEvents,
    ExhaustAgain,
    Injector,
    Ramp,
    CheckLift,
    Barring,
};

struct EngineReading {
    EngineDesign design; ///< whole where nothing is refused
    std::map<EngineField, Error> refusals;
};

/// Reads an engine as typed, field by field: a slip in one hides none in another, unless that one rests on it. Refuses with the kinds of
/// "engines" in ErrorKind: a cylinder missing, twice or unknown in the order, gaps that do not add up to the cycle, a bank too many, and so
/// on. Where a layout leaves the number of banks open, the numbering decides it by its `/`; all banks are equally long. Bridge screws count
/// only where valves are bridged. A two-stroke whose cam is assumed gets the events of twoStrokeCam().
EngineReading readEngine(const EngineText &text, DecimalMark mark = DecimalMark::Point);

/// The whole engine, or the first of its refusals.
Result<EngineDesign> designEngine(const EngineText &text, DecimalMark mark = DecimalMark::Point);

/// The texts that designEngine() reads back as `design`, for editing and for storing.
EngineText describeDesign(const EngineDesign &design);

/// An adjuster's short name, the same everywhere: "I3", "E3"; "I3a", "I3b" where a side has several; "BI3", "BE3" a bridge's screw,
/// "D3" a decompressor, "J3" an injector.
std::string shortName(const EngineDesign &design, AdjusterRef valve);

} // namespace asleft
