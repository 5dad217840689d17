#pragma once

#include <shop/outlook.h>

#include <QString>
#include <QStringList>

#include <vector>

namespace asleft {

// A joint and its passes.

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

/// What takes hold of it: "socket 10 mm"; empty where it is not said.
QString driveLine(const Joint &joint);
/// "21 200 N, 75 % of its proof load", "17 800 N in the M6, …" where the fasteners differ; for a doubt, the question: "60 lbf·ft is 13
/// times what an M5 takes; 60 lbf·in?".
QString preloadSentence(const PreloadCheck &check, const Joint &joint);
QString preloadQuestion(const PreloadCheck &check, const Joint &joint);
/// What is left of general practice to be minded: oil in a blind hole, allowances never used beside the manual's condition.
QStringList jointCautions(const Joint &joint);

} // namespace asleft
