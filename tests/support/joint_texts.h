#pragma once

#include <shop/joint.h>

namespace asleft {

/// Twelve screws around a cover at 32 ± 4 N·m with limiters: half of it, the target, and again until none moves.
inline JointText coverText()
{
    JointText text;
    text.name = "Valve cover";
    text.thread = "M8";
    text.strength = "8.8";
    text.pattern = *coverPattern(12);
    text.target = "32 ± 4 N·m";
    text.passes = "50 %, target, settle 3";
    text.settle = SettleGround::Limiters;
    text.condition = ThreadCondition::Oiled;
    text.drive = DriveKind::Socket;
    text.driveSize = "13 mm";
    text.source = {"Hollin workshop manual", "41", Certainty::ReadInManual};
    return text;
}

/// A row tightened straight to its target.
inline JointText rowText(int fasteners = 4, std::string target = "32 ± 4 N·m")
{
    JointText text = coverText();
    text.name = "Thermostat housing";
    text.pattern = *rowPattern(fasteners);
    text.target = std::move(target);
    text.passes = {};
    text.settle = SettleGround::No;
    return text;
}

/// A small screw that a wrench from 6 N·m does not reach.
inline JointText sensorText()
{
    JointText text = rowText(1, "3 ± 0.5 N·m");
    text.name = "Sensor";
    text.thread = "M5";
    return text;
}

/// The joint it describes, which must be one, as the first of a garage.
inline Joint jointOfText(const JointText &text, DecimalMark mark = DecimalMark::Point)
{
    Joint joint = readJoint(text, mark).value();
    joint.id = JointId(1);
    return joint;
}

} // namespace asleft
