#pragma once

#include <shop/outlook.h>

#include <QString>

namespace asleft {

// The names of what a joint is made of.

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

} // namespace asleft
