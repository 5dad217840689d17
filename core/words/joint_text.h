#pragma once

#include <words/job.h>

namespace asleft {

// What the sentences about joints are made of.

inline constexpr double hundredPercent = 100;

/// "2, 5 and 7", "1 to 12 and 14": sorted, runs of four and more drawn together.
QString numbersText(const std::vector<int> &fasteners);
/// "fasteners 2, 5 and 7", within a sentence.
QString fastenersInText(const std::vector<int> &fasteners);
QString jointName(const Joint &joint);
/// The unit its torques are printed in.
TorqueUnit unitOf(const Joint &joint);
QString jointTorqueText(const Joint &joint, Torque value);
/// "finger-tight", "50 %", "target", "20 N·m", "+90°", "settling, round 2": a pass within brackets.
QString passShort(const Joint &joint, std::size_t pass, int round);
/// "40 mm adapter straight out", "40 mm adapter at 45°".
QString fitText(const AdapterFit &fit, TorqueUnit beside);
/// "± 4 %".
QString deviationText(const Rational &percent);
QString toolName(const Tool &tool);
/// "20 to 200 N·m": what a torque wrench is marked for.
QString rangeText(const TorqueTool &tool);
/// The revision its work goes by; null where the engine has no such joint.
const Joint *jointOf(const JobState &state, std::optional<JointId> joint);
/// What to do with a fastener in a pass: "to the target, 32 N·m".
QString passInstruction(const Joint &joint, std::size_t pass);
/// The torque a tick is worth, in the unit of the band it was judged by, never with the digits of the limit it broke; a torque that was
/// typed first in its own unit and words: "33 ft-lb (44.74 N·m)", "30 N·m" of a pass that asks for it.
QString tickTorqueText(const TickMade &tick, const Joint &joint);

// What an act on a joint was.

QString jointActText(const LoosenedFact &fact, const JobFrame &frame);
QString jointActText(const TicksFact &fact, const JobFrame &frame);
QString jointActText(const UntickedFact &fact, const JobFrame &frame);
QString jointActText(const JointBegunFact &fact, const JobFrame &frame);
QString jointActText(const FittedFact &fact, const JobFrame &frame);
QString jointActText(const AcceptedFact &fact, const JobFrame &frame);
/// Of a finding about it.
QString jointActText(const FastenerSubject &about, const std::string &finding, const JobFrame &frame);

// What is open of a joint.

OpenWords jointOpenWords(const open::FastenersLoose &item, const JobState &state);
OpenWords jointOpenWords(const open::FittedUnsaid &item, const JobState &state);
OpenWords jointOpenWords(const open::Reused &item, const JobState &state);
OpenWords jointOpenWords(const open::FastenerFound &item, const JobState &state);
OpenWords jointOpenWords(const open::FastenerByFeel &item, const JobState &state);
OpenWords jointOpenWords(const open::TorqueOutside &item, const JobState &state);
OpenWords jointOpenWords(const open::TorqueUnproved &item, const JobState &state);
OpenWords jointOpenWords(const open::Unsettled &item, const JobState &state);
OpenWords jointOpenWords(const open::JointRevised &item, const JobState &state);
OpenWords jointOpenWords(const open::JointUnsure &item, const JobState &state);
OpenWords jointOpenWords(const open::JointAssumed &item, const JobState &state);
OpenWords jointOpenWords(const open::CalibrationOverdue &item, const JobState &state);

// What is next at a joint.

QString jointNextSentence(const next::LoosenJoint &act, const JobState &state);
QString jointNextSentence(const next::TightenNext &act, const JobState &state);
QString jointNextSentence(const next::SettleJoint &act, const JobState &state);

/// A line for each joint that was begun and is not tight: "Rocker cover: 5 of 12 tight".
QStringList jointResumeLines(const JobState &state);

} // namespace asleft
