#pragma once

#include <shop/outlook.h>

#include <QString>
#include <QStringList>

#include <vector>

namespace asleft {

// A fastener: what was found, what was done, what it still wants.

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
