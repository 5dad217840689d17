#include "telling.h"

#include <algorithm>

namespace asleft {

void Telling::at(std::chrono::year_month_day day, std::chrono::minutes timeOfDay)
{
    const std::chrono::milliseconds since = std::chrono::sys_days(day).time_since_epoch() + timeOfDay;
    m_clock.set({since.count()});
}

void Telling::spec(EngineId engine, SpecSubject subject, std::string band, const SpecSource &source)
{
    spec(engine, subject, {.band = std::move(band), .otherBand = {}, .source = source});
}

std::unique_ptr<JobBook> Telling::valveJob(const NewVehicle &vehicle)
{
    const JobSheet sheet = withJoints(builtInSheets().front(), newestOf(told(joints(m_garage, vehicle.engine))));
    return told(JobBook::open(m_garage, told(openJob(m_garage, vehicle.vehicle, vehicle.engine, sheet, sheet.title))));
}

std::unique_ptr<JobBook> Telling::valveJobOn(EngineId engine)
{
    return valveJob({told(engineStays(m_garage, engine)).back().vehicle, engine});
}

Sitter::Sitter(Telling &telling, JobBook &book, PersonId who, ToolId leaves) : m_telling(telling), m_book(book)
{
    m_book.setWho(who);
    m_book.setTool(leaves);
}

void Sitter::coldAt(std::string_view temperature, std::string_view sinceRun)
{
    m_book.setCondition(EngineCondition::Cold, told(parseTemperature(temperature, TemperatureUnit::Celsius)),
                        told(parseSinceRun(sinceRun)));
}

void Sitter::measuringWith(ToolId tool)
{
    m_book.setTool(tool);
}

void Sitter::step()
{
    m_telling.later(11);
    const auto &steps = m_book.state().frame->job.steps;
    const auto next = std::ranges::find_if(steps, [&](const Step &step) { return !stepDone(m_book.state(), step); });
    told(m_book.markStepDone(next->id));
}

void Sitter::beginValveSet()
{
    m_telling.later(6);
    const CrankPlan plan = m_book.proposedPlan();
    told(m_book.choosePlan(plan));
    m_telling.later(4);
    told(m_book.readTurningCautions());
    m_telling.later(1);
    told(m_book.confirmCrank(plan.positions.front().crank));
}

void Sitter::found(std::string_view point, std::string_view value)
{
    reading(point, Phase::AsFound, value);
}

void Sitter::left(std::string_view point, std::string_view value)
{
    reading(point, Phase::AsLeft, value);
}

void Sitter::foundLoose(std::string_view point)
{
    m_telling.later(2);
    told(m_book.logReading({.point = at(point), .phase = Phase::AsFound, .form = ReadingForm::Loose}));
}

void Sitter::foundByFeel(std::string_view point)
{
    m_telling.later(2);
    told(m_book.logReading({.point = at(point), .phase = Phase::AsFound, .form = ReadingForm::ByFeel}));
}

void Sitter::leftAsTheSpecAsks(std::string_view point)
{
    m_telling.later(3);
    told(m_book.logReading({.point = at(point), .phase = Phase::AsLeft, .specLeaf = true}));
}

void Sitter::nutOpen(std::string_view point)
{
    m_telling.later(1);
    told(m_book.openNut(at(point)));
}

void Sitter::turnTo(std::size_t position)
{
    m_telling.later(3);
    told(m_book.turnCrank(m_book.state().plan->positions.at(position).crank));
}

void Sitter::foundAt(JointId joint, int fastener, std::string_view torque, ToolId wrench)
{
    m_telling.later(1);
    told(m_book.loosen({.joint = joint,
                        .fasteners = {fastener},
                        .how = FoundHow::Measured,
                        .torque = told(parse<Torque>(torque, TorqueUnit::NewtonMetre)),
                        .tool = wrench}));
}

void Sitter::foundLooseByFeel(JointId joint, std::vector<int> fasteners)
{
    m_telling.later(1);
    told(m_book.loosen({.joint = joint, .fasteners = std::move(fasteners), .how = FoundHow::LooseByFeel}));
}

void Sitter::tighten(JointId joint, int fasteners, ToolId wrench)
{
    for (int i = 0; i < fasteners; ++i) {
        m_telling.later(1);
        told(m_book.tick(
            {.joint = joint, .places = {m_book.state().joints.at(joint).progress.next.value()}, .how = TickHow::SetTool, .tool = wrench}));
    }
}

PointId Sitter::at(std::string_view point) const
{
    const Engine &engine = m_book.state().frame->engine;
    const auto named = [&](const SettingPoint &known) { return shortName(engine.design, known.adjuster) == point; };
    return std::ranges::find_if(engine.points, named)->id;
}

void Sitter::reading(std::string_view point, Phase phase, std::string_view value)
{
    m_telling.later(2);
    told(m_book.logReading({.point = at(point), .phase = phase, .value = told(parse<Length>(value, LengthUnit::Millimetre))}));
}

} // namespace asleft
