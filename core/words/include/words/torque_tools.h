#pragma once

#include <shop/outlook.h>

#include <QString>

#include <optional>

namespace asleft {

// Wrenches, adapters, and which of them reaches a torque.

/// "Set to 23.6 lbf·ft", "Read 32 N·m": what to do with the wrench.
QString settingSentence(const Tool &tool, const Typed<Torque> &setting);
/// "32 N·m at the fastener, 40 mm adapter straight out, hand on the grip mark", "40 mm adapter across: the setting stays"; empty without
/// an adapter, and for a straight extension.
QString trueTorqueSentence(Torque wanted, TorqueUnit unit, const std::optional<FitUsed> &fit);
/// "± 4 %, at 21 % of its range, calibration due 31 Mar 2027", "… below where it is tested, from 40 N·m", "outside its range 20 to 200
/// N·m", "calibration overdue since …".
QString reachSentence(const ToolReach &reach, const Tool &tool);
/// "No tool here reaches 3 N·m." with the ways out: borrow one up to 15 N·m, an adapter, by feel.
QString noneReachesSentence(const ToolAdvice &advice, Torque wanted, TorqueUnit unit, const Rack &rack);
/// One line for the job's tool list: "32 N·m: small wrench, set, ± 4 %", or noneReachesSentence(); a torque a pass has of its own in the
/// unit and words it was typed in.
QString toolWantedLine(const ToolWanted &wanted, const Joint &joint, const Rack &rack);

} // namespace asleft
