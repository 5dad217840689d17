#pragma once

#include "scripted.h"

#include <work/job_book.h>
#include <work/jobs.h>
#include <work/joints.h>
#include <work/specs.h>
#include <work/vehicles.h>
#include <work/workshop.h>

#include <chrono>
#include <initializer_list>
#include <string_view>

namespace asleft {

/// What the whole garage shares.
struct Workshop {
    PersonId anouk;
    PersonId marta;
    PersonId tom;
    ToolId metricLeaves;
    ToolId inchLeaves;
    ToolId thinLeaves;
    ToolId dialGauge;
    ToolId micrometer;
    ToolId smallWrench;
    ToolId largeWrench;
    ToolId crowFoot;
};

/// An act of the story was refused; it ends there.
struct Refused {
    Error error;
};

/// The value, or the end of the story.
template <class T>
T told(Result<T> result)
{
    if (!result)
        throw Refused{std::move(result.error())};
    return *std::move(result);
}
inline void told(const Done &done)
{
    if (!done)
        throw Refused{done.error()};
}

/// The garage with its clock in the teller's hand.
class Telling {
public:
    Telling(Garage &garage, ScriptedClock &clock) : m_garage(garage), m_clock(clock) {}

    [[nodiscard]] Garage &garage() const { return m_garage; }

    /// From here on it is this day and time, UTC.
    void at(std::chrono::year_month_day day, std::chrono::minutes timeOfDay);
    void later(int minutes) { m_clock.forward(std::chrono::minutes(minutes)); }

    NewVehicle vehicle(const VehicleText &text) { return told(addVehicle(m_garage, text)); }
    void spec(EngineId engine, SpecSubject subject, const SpecText &text) { told(reviseSpec(m_garage, engine, subject, text)); }
    /// The same of a band in millimetres, newton-metres or turns, as one manual prints it for a cold engine.
    void spec(EngineId engine, SpecSubject subject, std::string band, const SpecSource &source);
    JointId joint(EngineId engine, const JointText &text) { return told(addJoint(m_garage, engine, text)); }
    /// A job from the sheet for valves, with lines for the joints the engine has.
    std::unique_ptr<JobBook> valveJob(const NewVehicle &vehicle);
    /// The same on an engine wherever it is now.
    std::unique_ptr<JobBook> valveJobOn(EngineId engine);

private:
    Garage &m_garage;
    ScriptedClock &m_clock;
};

/// One session at a job; a few minutes pass with every act.
class Sitter {
public:
    Sitter(Telling &telling, JobBook &book, PersonId who, ToolId leaves);

    /// The engine is cold: so warm, and so long after it ran.
    void coldAt(std::string_view temperature, std::string_view sinceRun);
    void measuringWith(ToolId tool);
    /// Marks the next undone line done.
    void step();
    /// Takes the proposed plan, and finds the crank at its first position.
    void beginValveSet();
    void found(std::string_view point, std::string_view value);
    void left(std::string_view point, std::string_view value);
    /// With the spec's leaf or turns, locked, felt again.
    void leftAsTheSpecAsks(std::string_view point);
    /// More than the spec's leaf.
    void foundLoose(std::string_view point);
    void foundByFeel(std::string_view point);
    void nutOpen(std::string_view point);
    void turnTo(std::size_t position);
    void foundAt(JointId joint, int fastener, std::string_view torque, ToolId wrench);
    void foundLooseByFeel(JointId joint, std::vector<int> fasteners);
    /// The next so many fasteners of the joint, one by one, with a wrench that is set.
    void tighten(JointId joint, int fasteners, ToolId wrench);

private:
    [[nodiscard]] PointId at(std::string_view point) const;
    void reading(std::string_view point, Phase phase, std::string_view value);

    Telling &m_telling;
    JobBook &m_book;
};

// The stories, in the order of their dates.
NewVehicle tellSorrelBefore(Telling &telling, const Workshop &workshop);
void tellCorrow(Telling &telling, const Workshop &workshop);
void tellPintail(Telling &telling, const Workshop &workshop);
void tellSorrel(Telling &telling, const Workshop &workshop, const NewVehicle &van);
void tellDunnock(Telling &telling, const Workshop &workshop);
void tellBrindle(Telling &telling, const Workshop &workshop);
void tellAldermoor(Telling &telling, const Workshop &workshop);
void tellHollin(Telling &telling, const Workshop &workshop);

} // namespace asleft
