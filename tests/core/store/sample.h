#pragma once

#include <shop/acts.h>
#include <store/database.h>
#include <store/things.h>

#include <string>
#include <vector>

namespace asleft {

/// A joint of eight with two revisions, and what it is tightened with.
struct SampleJoint {
    JointId joint;
    ToolId wrench;
    ToolId adapter;
};

/// The things a journal speaks of, stored in a garage.
struct Sample {
    VehicleId vehicle;
    EngineId engine;
    PersonId person;
    ToolId feelers;
    SpecId spec;
    JobId job;
    std::vector<PointId> points;
    std::vector<StepId> steps;
    SampleJoint cover;
};

EngineDesign inLineFour();
Typed<Length> hundredths(int count);

/// One on its way into the garage.
Vehicle newVehicle(const std::string &name, const std::string &mark = {});
Tool newFeelerSet(const std::string &name, const std::string &leavesText, const std::vector<Typed<Length>> &leaves);

Typed<Torque> newtonMetres(int count);
Tool newWrench(const std::string &name, int least, int most);
SampleJoint storeSampleJoint(Transaction &transaction, EngineId engine);

/// Stores a sample in one transaction.
Sample storeSample(Database &database);

/// One act of the sample's job.
NewAct actOf(const Sample &sample, const Uid &uid, Fact fact);
/// A reading without a value.
ReadingFact unmeasured(const Sample &sample, std::size_t point, ReadingForm form);
ReadingFact readingOf(const Sample &sample, std::size_t point, int hundredthsFelt);

/// One fact of every kind, those with optional parts both with and without them. `reading` is an act stored before them that read
/// the sample's first point.
std::vector<Fact> everyKindOfFact(const Sample &sample, ActSeq reading);
/// Those of them that speak of the sample's joint.
std::vector<Fact> everyKindOfJointFact(const SampleJoint &sample);

} // namespace asleft
