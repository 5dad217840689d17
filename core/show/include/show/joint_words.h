#pragma once

#include <shop/outlook.h>

#include <QString>
#include <QStringList>

namespace asleft {

QString strengthName(StrengthClass strength);           ///< "class 8.8", "grade 5", "A2-70"
QString threadConditionName(ThreadCondition condition); ///< "dry"
QString finishName(Finish finish);                      ///< "zinc-plated"
QString femaleMaterialName(FemaleMaterial material);    ///< "aluminium"
QString driveKindName(DriveKind drive);                 ///< "socket"
QString singleUseName(SingleUse use);                   ///< "torque-to-yield"
QString settleGroundName(SettleGround ground);          ///< "the joint has limiters"
QString foundHowName(FoundHow how);                     ///< "loose by feel"
QString tickHowName(TickHow how);                       ///< "by feel"
QString fittedName(Fitted fitted);                      ///< "new"
QString acceptedWhatName(AcceptedWhat what);

/// "finger-tight", "to 50 %: 16 N·m", "to the target: 32 N·m", "turn on by 45°, 90° in all", "until none moves, round 2 of at most 3";
/// with no round in hand, `round` 0: "until none moves, at most 3 rounds".
QString passName(const Joint &joint, std::size_t pass, int round = 1);
/// "pass 2 of 3".
QString passPlace(const Joint &joint, std::size_t pass);
/// "12 around a circle, M8x1.25, class 8.8": what a joint is, for a list.
QString jointLine(const Joint &joint);
/// "32 ± 4 N·m oiled · Workshop Manual p. 41"; what it is not sure of.
QString jointSpecLine(const Joint &joint);
/// "7-3-1-5 · generated, centre outward", "… · as the manual prints it".
QString orderLine(const Joint &joint);
/// "loosen 4-1-3-2 · the reverse of the manual's order".
QString looseningLine(const Joint &joint);
/// "Fasteners 2, 5 and 7", "Fastener 3".
QString fastenersName(const std::vector<int> &fasteners);

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
/// What takes hold of it: "socket 10 mm"; empty where it is not said.
QString driveLine(const Joint &joint);
/// "21 200 N, 75 % of its proof load", "17 800 N in the M6, …" where the fasteners differ; for a doubt, the question: "60 lbf·ft is 13
/// times what an M5 takes; 60 lbf·in?".
QString preloadSentence(const PreloadCheck &check, const Joint &joint);
QString preloadQuestion(const PreloadCheck &check, const Joint &joint);
/// What is left of general practice to be minded: oil in a blind hole, allowances never used beside the manual's condition.
QStringList jointCautions(const Joint &joint);

/// "28 N·m", "loose by feel", "broken: head off".
QString foundText(const FastenerFound &found);
/// "32 N·m with small wrench", "by feel: no wrench reaches", with its verdict.
QString tickText(const TickMade &tick, const JobFrame &frame);
/// All that is known of a fastener, a line each.
QStringList fastenerLines(const JobState &state, JointId joint, int fastener);
/// "Several were loose: 2, 5 and 7 of 12." as it is noted by one click.
QString looseFinding(const Joint &joint, const std::vector<int> &fasteners);
/// What jointWants() asks, as a sentence; empty for nothing.
QString jointWantsSentence(const JointWants &wants, const Joint &joint);

} // namespace asleft
