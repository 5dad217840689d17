#pragma once

#include <shop/joint.h>
#include <work/garage.h>

#include <vector>

namespace asleft {

/// Describes a joint of an engine. Refuses what readJoint() refuses, a fastener's length longer than a name and an answer longer than a
/// note may be (TextTooLong), and a name another joint of the engine has (JointTaken).
Result<JointId> addJoint(Garage &garage, EngineId engine, const JointText &text, DecimalMark mark = DecimalMark::Point);
/// A further revision; the same text again stores nothing. Refuses as addJoint(), and a joint the engine does not have (NotFound). Once
/// jobs have worked on it, its fasteners keep their numbers (JointInUse).
Done reviseJoint(Garage &garage, JointId joint, EngineId engine, const JointText &text, DecimalMark mark = DecimalMark::Point);
/// Every revision, oldest first.
Result<std::vector<Joint>> joints(Garage &garage, EngineId engine);
/// The newest of each joint, in the order they were described.
std::vector<Joint> newestOf(const std::vector<Joint> &revisions);

/// A job sheet with lines for these joints, all to be done before first start: loosening, in the order given, behind the lines at its head
/// that come before turning the crank; tightening, what came loose last first, before two full turns by hand and whatever comes before
/// hand-over, else at its end.
JobSheet withJoints(JobSheet sheet, const std::vector<Joint> &joints);
/// Puts the lines of a joint at the end of a job that is open; one that is there already is not put there again. Refuses a joint of another
/// engine (WrongJob).
Done addJointToJob(Garage &garage, JobId job, const Joint &joint);

} // namespace asleft
