#pragma once

#include <shop/joint.h>
#include <shop/things.h>
#include <store/database.h>

#include <optional>
#include <string>
#include <variant>
#include <vector>

/// The ordinary rows of a garage. Reading one by an id that is not there gives NotFound.
namespace asleft {

// vehicles and their engines

/// Vehicle::id is not looked at. There is one stand at most.
Result<VehicleId> insertVehicle(Transaction &transaction, const Vehicle &vehicle);
/// Changes name, mark and number; a stand stays one.
Done updateVehicle(Transaction &transaction, const Vehicle &vehicle);
/// In the order they were entered, the stand among them.
Result<std::vector<Vehicle>> vehicles(Database &database);
Result<Vehicle> vehicle(Database &database, VehicleId id);

/// An engine on its way into the garage.
struct NewEngine {
    VehicleId vehicle;
    std::string name;
    EngineDesign design;
    ScrewText screw;
    Moment fitted;
};

/// Stores the engine with a setting point for each of its adjusters, fitted to its vehicle.
Result<EngineId> insertEngine(Transaction &transaction, const NewEngine &engine);
/// Changes name, design and screw; Engine::vehicle and Engine::points are not looked at. An adjuster that is new gets a setting point; one
/// the design no longer has keeps its row for the acts that speak of it, but is not listed any more.
Done updateEngine(Transaction &transaction, const Engine &engine);
/// Moves an engine to another vehicle.
Done fitEngine(Transaction &transaction, EngineId engine, VehicleId vehicle, Moment fitted);
/// One row of where an engine has been.
struct EngineFit {
    VehicleId vehicle;
    Moment fitted;
};
/// Oldest first.
Result<std::vector<EngineFit>> engineFits(Database &database, EngineId engine);
/// Those fitted to a vehicle now, or all of them, in the order they were entered.
Result<std::vector<Engine>> engines(Database &database, std::optional<VehicleId> in = {});
Result<Engine> engine(Database &database, EngineId id);

struct NewMeterReading {
    VehicleId vehicle;
    MeterUnit unit = MeterUnit::Kilometre;
    std::int64_t thousandths = 0;
    std::string text;
    Moment at;
    bool replaced = false;
};

Result<MeterReadingId> insertMeterReading(Transaction &transaction, const NewMeterReading &reading);
/// The one of the latest date; of the same date, the one entered last.
Result<std::optional<MeterReading>> latestMeter(Database &database, VehicleId vehicle);
/// That of every vehicle which has one.
Result<std::vector<MeterReading>> latestMeters(Database &database);
/// Oldest first; of the same date, in the order they were entered.
Result<std::vector<MeterReading>> meterReadings(Database &database, VehicleId vehicle);

// people and tools

Result<PersonId> insertPerson(Transaction &transaction, const std::string &initials, const std::string &name);
Result<std::vector<Person>> people(Database &database);
/// Tool::id is not looked at.
Result<ToolId> insertTool(Transaction &transaction, const Tool &tool);
/// A torque wrench is next due on this day from now on; without one, it is not known. \pre the tool is a torque wrench
Done insertCalibration(Transaction &transaction, ToolId wrench, std::optional<std::chrono::sys_days> due, Moment at);
/// Each wrench with the day it is due that was said last.
Result<std::vector<Tool>> tools(Database &database);

// how the shop decides

Result<DecisionRule> decisionRule(Database &database);
Done updateDecisionRule(Transaction &transaction, DecisionRule rule);

// what the manual says

struct NewSpec {
    EngineId engine;
    SpecSubject subject = SpecSubject::IntakeLash;
    EngineCondition condition = EngineCondition::Cold;
    SpecSource source;
    std::variant<SpecBand<Length>, SpecBand<Torque>, SpecBand<Angle>> asked;
};

/// The next revision of its subject. \pre a torque is asked exactly where the subject is a LockNut
Result<SpecId> insertSpec(Transaction &transaction, const NewSpec &spec);
/// Every revision, oldest first.
Result<std::vector<Spec>> specs(Database &database, EngineId engine);

/// The next revision of the engine's table; returns which.
Result<int> insertTable(Transaction &transaction, EngineId engine, const SpecSource &source, const std::vector<TableLine> &lines);
/// The latest revision.
Result<std::optional<TurningTable>> table(Database &database, EngineId engine);

// joints

/// Stores the first revision of a joint; Joint::id and Joint::revision are not looked at.
Result<JointId> insertJoint(Transaction &transaction, const Joint &joint);
/// The next revision of Joint::id; returns which. Joint::revision and Joint::engine are not looked at.
Result<int> insertJointRevision(Transaction &transaction, const Joint &joint);
/// Every revision of the engine's joints, in the order they were stored.
Result<std::vector<Joint>> joints(Database &database, EngineId engine);
/// Whether any act speaks of the joint.
Result<bool> jointWorkedOn(Database &database, JointId joint);

// jobs

struct NewJob {
    VehicleId vehicle;
    EngineId engine;
    std::string title;
    Moment opened;
    std::vector<SheetLine> lines; ///< its steps, in order
};

/// Where a job stands in the list of those worked on last.
struct JobPlace {
    std::int64_t worked = 0; ///< seq of its last act; before it has one, of the last act of the garage when it was opened
    JobId job;
    bool operator==(const JobPlace &) const = default;
};

/// One line of a list of jobs.
struct JobRow {
    JobId id;
    VehicleId vehicle;
    std::string vehicleName;
    EngineId engine;
    std::string engineName;
    std::string title;
    Moment opened;
    std::optional<Moment> lastAct;
    JobPlace place;
    bool operator==(const JobRow &) const = default;
};

Result<JobId> insertJob(Transaction &transaction, const NewJob &job);
/// Puts a further line at the end of a job.
Result<StepId> appendStep(Transaction &transaction, JobId job, const SheetLine &line);
/// The one worked on last first, in the order of the journal; after a place, those that follow it.
Result<std::vector<JobRow>> jobs(Database &database, int most, const std::optional<JobPlace> &after = {});
/// Whether any job of the engine has acts, wherever the engine was when it was opened.
Result<bool> engineWorkedOn(Database &database, EngineId engine);
Result<Job> job(Database &database, JobId id);

// What finds jobs faster follows from their acts: whether it does, and made anew from them.
Result<bool> lastWorkedAsActsSay(Database &database);
Done tellLastWorkedAnew(Transaction &transaction);

} // namespace asleft
