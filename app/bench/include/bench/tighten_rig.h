#pragma once

#include <shop/state.h>

#include <QString>

#include <chrono>
#include <optional>

namespace asleft {

/// What a person wants a joint to be tightened with; what is empty is left to the rack.
struct RigChoice {
    std::optional<ToolId> wrench = {}; ///< empty: the best that reaches
    std::optional<FitUsed> fit = {};   ///< empty: no adapter
    bool byMark = false;               ///< angles by a mark, although there is a gauge
    std::optional<ToolId> gauge = {};  ///< for angles; empty: the first on the rack
    bool operator==(const RigChoice &) const = default;
};

/// What the pass in hand is done with.
struct Rig {
    enum class Kind {
        Hand,        ///< finger-tight: no tool
        Wrench,      ///< a wrench: set, or read
        Angle,       ///< turned on, with a gauge or by a mark
        NoneReaches, ///< no wrench on the rack reaches, and none was chosen all the same
    };
    Kind kind = Kind::Hand;
    const Tool *tool = nullptr;           ///< the wrench or the gauge
    std::optional<Torque> wanted = {};    ///< at the fastener, as printed in the wrench's own system
    TorqueUnit unit{};                    ///< that it is printed in
    std::optional<FitUsed> fit = {};      ///< with a wrench
    std::optional<ToolReach> reach = {};  ///< of the wrench
    const Band<Torque> *band = nullptr;   ///< it is judged by, of the joint; nullptr where it is not
    std::optional<Typed<Torque>> setting; ///< of the wrench; empty where it cannot be reckoned
    std::optional<Error> wrong = {};      ///< why it cannot
    Rack rack = {};
    ToolAdvice advice = {};

    [[nodiscard]] bool isRead() const { return kind == Kind::Wrench && tool->kind == ToolKind::TorqueRead; }
};

/// Points into frame and joint. \pre `pass` is one of the joint's
Rig rigOf(const JobFrame &frame, const Joint &joint, std::size_t pass, const RigChoice &choice, std::chrono::sys_days today);

/// Its name; of one without, what it is.
QString toolLabel(const Tool &tool);

/// What to set, in a few words, to be shown large: "Set to 23.6 lbf·ft", "Turn 90°".
QString rigLarge(const Rig &rig, const Joint &joint, std::size_t pass);
/// What is worth knowing beneath it: the tool, what the fastener gets, how the tool stands to that.
QString rigSmall(const Rig &rig, const Joint &joint, std::size_t pass);

} // namespace asleft
