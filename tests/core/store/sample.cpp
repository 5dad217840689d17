#include "sample.h"

#include "engine_texts.h"
#include "support.h"

#include <algorithm>
#include <iterator>

namespace asleft {

EngineDesign inLineFour()
{
    return designEngine(fourText()).value();
}

Typed<Length> hundredths(int count)
{
    return {micrometres(10 * count), LengthUnit::Millimetre, "0." + std::string(count < 10 ? "0" : "") + std::to_string(count)};
}

Vehicle newVehicle(const std::string &name, const std::string &mark)
{
    return {VehicleId(0), name, mark};
}

Tool newFeelerSet(const std::string &name, const std::string &leavesText, const std::vector<Typed<Length>> &leaves)
{
    return {ToolId(0), name, leavesText, leaves, ToolKind::FeelerSet, {}, {}};
}

Sample storeSample(Database &database)
{
    const auto band = parseBand<Length>("0.20-0.30", LengthUnit::Millimetre).value();
    const auto sample = committed(database, [&](Transaction &transaction) -> Result<Sample> {
        const VehicleId vehicle = insertVehicle(transaction, newVehicle("Lorry")).value();
        const EngineId engine = insertEngine(transaction, {vehicle, "Four", inLineFour(), {"1", ""}, Moment{5}}).value();
        const PersonId person = insertPerson(transaction, "ab", "").value();
        const ToolId feelers = insertTool(transaction, newFeelerSet("Leaves", "20-22", {hundredths(20), hundredths(22)})).value();
        const SpecId spec =
            insertSpec(transaction, {engine, SpecSubject::IntakeLash, EngineCondition::Cold, {"M", "1", {}}, SpecBand<Length>{band, {}}})
                .value();
        const JobId job =
            insertJob(transaction, {vehicle, engine, "Valves", Moment{10}, {{StepKind::ValveSet, "Set", "", {}, {}}}}).value();
        return Sample{vehicle, engine, person, feelers, spec, job, {}, {}, storeSampleJoint(transaction, engine)};
    });
    Sample whole = sample;
    const Engine storedEngine = engine(database, whole.engine).value();
    for (const SettingPoint &point : storedEngine.points)
        whole.points.push_back(point.id);
    const Job storedJob = job(database, whole.job).value();
    for (const Step &step : storedJob.steps)
        whole.steps.push_back(step.id);
    return whole;
}

NewAct actOf(const Sample &sample, const Uid &uid, Fact fact)
{
    return {uid, sample.job, sample.person, "seat", Moment{1000}, {}, std::move(fact)};
}

ReadingFact unmeasured(const Sample &sample, std::size_t point, ReadingForm form)
{
    return {sample.points.at(point), Phase::AsFound, form, {}, {}, {}, {}, EngineCondition::Cold, false, false, {}};
}

ReadingFact readingOf(const Sample &sample, std::size_t point, int hundredthsFelt)
{
    ReadingFact reading = unmeasured(sample, point, ReadingForm::Exact);
    reading.value = hundredths(hundredthsFelt);
    return reading;
}

namespace {

/// Readings with what only the second schema step can keep.
std::vector<ReadingFact> newerReadings(const Sample &sample)
{
    ReadingFact turned = unmeasured(sample, 2, ReadingForm::Turned);
    turned.turned = Typed<Angle>{degrees(270), AngleUnit::Turn, "3/4"};
    ReadingFact measured = readingOf(sample, 3, 25);
    measured.uncertainty = nanometres(28'868);
    measured.temperature = TypedTemperature{celsius(-5), TemperatureUnit::Fahrenheit, "23"};
    measured.minutesSinceRun = 150;
    ReadingFact all = turned;
    all.point = sample.points.at(4);
    all.turned = Typed<Angle>{Angle{}, AngleUnit::Degree, "0°"};
    all.uncertainty = Length{};
    all.temperature = TypedTemperature{celsius(82), TemperatureUnit::Celsius, "82"};
    all.minutesSinceRun = 0;
    return {turned, measured, all};
}

/// A plan of adjusters and events of every kind; no engine has them all.
CrankPlan motleyPlan(PlanWay way)
{
    CrankPlan plan{true, way, "", {}, {}};
    int cylinder = 0;
    for (const CrankEvent event : {CrankEvent::ExhaustOpens, CrankEvent::IntakeCloses, CrankEvent::IntakeFullyOpen,
                                   CrankEvent::ExhaustFullyOpen, CrankEvent::Compression, CrankEvent::Overlap})
        plan.positions.push_back({{Cylinder{cylinder++}, event}, degrees(cylinder), {}});
    const AdjusterRef adjusters[] = {
        {{1}, Side::Intake, PointKind::Lash, 2},       {{1}, Side::Exhaust, PointKind::Lash, 3},
        {{1}, Side::Intake, PointKind::BridgeScrew},   {{2}, Side::Exhaust, PointKind::BridgeScrew, 1},
        {{2}, Side::Exhaust, PointKind::Decompressor}, {{3}, Side::Intake, PointKind::Injector},
    };
    for (const AdjusterRef &adjuster : adjusters) {
        plan.positions.front().points.push_back({adjuster, degrees(-3)});
        plan.unreached.push_back(adjuster);
    }
    return plan;
}

} // namespace

std::vector<Fact> everyKindOfFact(const Sample &sample, ActSeq reading)
{
    ReadingFact full = readingOf(sample, 0, 24);
    full.phase = Phase::AsLeft;
    full.form = ReadingForm::Bracket;
    full.next = Typed<Length>{thou(12), LengthUnit::Thou, "12"};
    full.judgedBy = sample.spec;
    full.tool = sample.feelers;
    full.condition = EngineCondition::Hot;
    full.specLeaf = true;
    full.corrects = reading;
    ReadingFact byFeel = unmeasured(sample, 1, ReadingForm::ByFeel);
    byFeel.outOfPosition = true;
    const ReadingFact loose = unmeasured(sample, 2, ReadingForm::Loose);
    ReadingFact tight = readingOf(sample, 3, 20);
    tight.form = ReadingForm::Tight;

    CrankPlan typed = generatePlan(inLineFour(), PlanWay::EachOnCompression);
    typed.generated = false;
    typed.source = "M p. 7";
    const std::vector<ReadingFact> newer = newerReadings(sample);
    typed.unreached = {{Cylinder{2}, Side::Exhaust}, {Cylinder{0}, Side::Intake}};
    std::vector<Fact> facts = {full,
                               byFeel,
                               loose,
                               tight,
                               AllLeftFact{{readingOf(sample, 5, 25), readingOf(sample, 4, 30)}},
                               NutOpenFact{sample.points.at(6)},
                               CrankFact{sample.engine, Angle::ofSmallest(degrees(720).smallest() - 1), CrankHow::Turned},
                               CrankFact{sample.engine, std::nullopt, CrankHow::Confirmed},
                               PlanFact{sample.engine, generatePlan(inLineFour(), PlanWay::TwoPositions)},
                               PlanFact{sample.engine, typed},
                               StepDoneFact{sample.steps.at(0)},
                               KeepFact{reading, sample.points.at(0), "no more thread"},
                               CautionsFact{{Caution::Springs, Caution::StandsAndChocks}},
                               CautionsFact{{}},
                               CheckAgainFact{{sample.points.at(7), sample.points.at(0)}, "head re-torqued"},
                               newer.at(0),
                               newer.at(1),
                               AllLeftFact{newer},
                               PlanFact{sample.engine, motleyPlan(PlanWay::CompanionAtOverlap)},
                               PlanFact{sample.engine, motleyPlan(PlanWay::OpeningAndClosing)},
                               PlanFact{sample.engine, motleyPlan(PlanWay::Fewest)},
                               PlanFact{sample.engine, motleyPlan(PlanWay::RuleOfNine)},
                               CheckAgainFact{{sample.points.at(1)}, "", Disturbance::BridgeSet},
                               CheckAgainFact{{}, "cut", Disturbance::ValveOrSeatCut}};
    std::ranges::move(everyKindOfJointFact(sample.cover), std::back_inserter(facts));
    for (const Subject &subject : std::initializer_list<Subject>{sample.points.at(2), sample.steps.at(0), sample.engine, sample.vehicle})
        facts.emplace_back(FindingFact{subject, "worn"});
    return facts;
}

} // namespace asleft
