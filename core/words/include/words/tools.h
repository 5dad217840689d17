#pragma once

#include <shop/things.h>

#include <QString>

namespace asleft {

// Tools, adjusters and the rule a shop decides by.

QString toolKindName(ToolKind kind);         ///< "feeler set"
QString adjusterKindName(AdjusterKind kind); ///< "screw and lock nut"
QString decisionRuleName(DecisionRule rule);

} // namespace asleft
