#pragma once

#include <shop/state.h>

#include <optional>
#include <string>
#include <vector>

namespace asleft {

/// A reading as it is about to be logged.
struct ReadingEntry {
    PointId point;
    Phase phase = Phase::AsFound;
    ReadingForm form = ReadingForm::Exact;
    std::optional<Typed<Length>> value = {};
    std::optional<Typed<Length>> next = {};
    bool specLeaf = false;
    std::optional<Typed<Angle>> turned = {}; ///< of ReadingForm::Turned; with specLeaf, the spec's own turns
    bool operator==(const ReadingEntry &) const = default;
};

/// One line of a bench sheet filled in with a pencil.
struct SheetEntry {
    PointId point;
    std::optional<ReadingEntry> found = {}; ///< their `point` and `phase` are filled in
    std::optional<ReadingEntry> left = {};
    bool operator==(const SheetEntry &) const = default;
};

/// Fasteners about to be ticked.
struct TickEntry {
    JointId joint;
    std::vector<TickSlot> places; ///< all of the pass and round in hand
    bool moved = false;           ///< of a settle pass
    TickHow how = TickHow::SetTool;
    std::optional<ToolId> tool = {};           ///< the wrench or angle gauge
    std::optional<FitUsed> fit = {};           ///< an adapter on the wrench
    std::optional<Typed<Torque>> reading = {}; ///< of ReadTool: on the wrench
    std::string reason = {};                   ///< of ByFeel
    std::optional<int> revision = {};          ///< of the joint as it was shown: another one by now is refused (JointChanged)
    std::optional<Typed<Torque>> setting = {}; ///< as it was shown; reckoned here without one, and refused where it differs (JointChanged)
    bool operator==(const TickEntry &) const = default;
};

/// Fasteners about to be noted as loosened.
struct LoosenEntry {
    JointId joint;
    std::vector<int> fasteners;
    FoundHow how = FoundHow::NotNoted;
    std::optional<Typed<Torque>> torque = {};
    std::optional<ToolId> tool = {};
    std::string note = {};
    std::optional<int> revision = {}; ///< of the joint as it was shown: another one by now is refused (JointChanged)
    bool operator==(const LoosenEntry &) const = default;
};

/// What a reading would be logged as now, and what it would be worth.
struct ReadingAsLogged {
    ReadingFact fact;
    Verdict verdict;
};

/// What ticks would be logged as now, and what each of them would be worth.
struct TicksAsLogged {
    TicksFact fact;
    std::vector<TickMade> made; ///< in the order of the entry's places
};

/// What is asked once a session and then known: a session begins when a job is opened in a program that has just started.
struct Session {
    std::optional<PersonId> who;
    std::optional<ToolId> tool;
    EngineCondition condition = EngineCondition::Cold;
    std::optional<TypedTemperature> temperature = {};
    std::optional<std::int64_t> minutesSinceRun = {};
    bool crankConfirmed = false;
    bool turningCautionsRead = false;
};

} // namespace asleft
