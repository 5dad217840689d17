#include "bench_screens.h"

#include <bench/bench_page.h>
#include <bench/bench_sheet_pane.h>
#include <bench/check_again_pane.h>
#include <bench/paper_line.h>
#include <bench/plan_pane.h>
#include <bench/session_pane.h>
#include <bench/tighten_pane.h>
#include <bench/turn_pane.h>
#include <bench/valve_pane.h>
#include <drawn/head_view.h>
#include <parts/choice_keys.h>
#include <parts/jobs_model.h>
#include <parts/key_button.h>
#include <parts/reading_edit.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>
#include <parts/vehicles_model.h>
#include <window/window.h>

#include <work/jobs.h>
#include <work/specs.h>
#include <work/workshop.h>

#include <algorithm>

namespace asleft {

namespace {

// Names of the invented garage, as far as they tell which job is meant; empty: the one worked on last.
const QString anyJob;
const QString vEight = QStringLiteral("Aldermoor");
const QString sixInLine = QStringLiteral("Corrow");
const QString bridgedThree = QStringLiteral("Brindle");
const QString vTwin = QStringLiteral("Dunnock");
const QString flatFour = QStringLiteral("Sorrel");
const QString radialNine = QStringLiteral("Wrenfield"); ///< described here

using Prepare = std::function<void(Window &)>;

/// Opens the job of a vehicle; false where the garage has none.
bool openJobOf(Window &window, const QString &vehicle)
{
    if (vehicle.isEmpty()) {
        window.begin();
        return window.benchPage()->book() != nullptr;
    }
    const auto &jobs = window.jobs().jobs();
    const auto job =
        std::ranges::find_if(jobs, [&](const JobLine &line) { return QString::fromStdString(line.vehicleName).startsWith(vehicle); });
    if (job == jobs.end())
        return false;
    window.openOnBench(job->id);
    return true;
}

/// A job with somebody at the Bench; false without one.
bool sit(Window &window, const QString &vehicle)
{
    if (!openJobOf(window, vehicle))
        return false;
    JobBook *book = window.benchPage()->book();
    if (!book || book->state().frame->people.empty())
        return false;
    const JobFrame &frame = *book->state().frame;
    if (!frame.tools.empty())
        book->setTool(frame.tools.front().id);
    book->setWho(frame.people.front().id);
    return true;
}

StepId stepOfKind(const JobBook &book, StepKind kind)
{
    const auto &steps = book.state().frame->job.steps;
    const auto found = std::ranges::find(steps, kind, &Step::kind);
    return found == steps.end() ? steps.front().id : found->id;
}

/// At the head, the crank confirmed where it was left.
bool goToHead(Window &window, const QString &vehicle = anyJob)
{
    if (!sit(window, vehicle))
        return false;
    JobBook &book = *window.benchPage()->book();
    const auto crank = book.state().crank ? book.state().crank->crank : std::nullopt;
    (void)book.confirmCrank(crank.value_or(Angle{}));
    window.benchPage()->viewStep(stepOfKind(book, StepKind::ValveSet));
    return true;
}

Prepare headOf(const QString &vehicle)
{
    return [vehicle](Window &window) { goToHead(window, vehicle); };
}

void askForCrank(Window &window)
{
    if (sit(window, anyJob))
        window.benchPage()->viewStep(stepOfKind(*window.benchPage()->book(), StepKind::ValveSet));
}

/// At the first line of the job that tightens, or loosens, a joint; false where it has none.
bool goToJoint(Window &window, StepKind kind, std::string_view joint)
{
    if (!sit(window, anyJob))
        return false;
    BenchPage &bench = *window.benchPage();
    const JobFrame &frame = *bench.book()->state().frame;
    for (const Step &step : frame.job.steps) {
        const Joint *worked = step.joint ? frame.jointNow(*step.joint) : nullptr;
        if (step.kind == kind && worked && worked->text.name == joint) {
            bench.viewStep(step.id);
            return true;
        }
    }
    return false;
}

void chooseWrench(Window &window)
{
    if (goToJoint(window, StepKind::Tighten, "Water outlet flange"))
        window.benchPage()->pane<TightenPane>()->key(TightenPane::Key::Wrench)->click();
}

void openLine(Window &window)
{
    if (sit(window, anyJob))
        window.benchPage()->viewStep(stepOfKind(*window.benchPage()->book(), StepKind::Note));
}

/// Types into the reading bar and presses Enter where `enters`.
Prepare typing(const QString &vehicle, const QString &text, bool enters)
{
    return [=](Window &window) {
        if (!goToHead(window, vehicle))
            return;
        ReadingEdit *edit = window.benchPage()->pane<ValvePane>()->bar()->edit();
        edit->setText(text);
        if (enters)
            Q_EMIT edit->entered();
    };
}

/// A gauge in hand whose uncertainty decides.
void typeTooClose(Window &window)
{
    Garage &garage = window.vehicles().garage();
    (void)setDecisionRule(garage, DecisionRule::WithUncertainty);
    if (!goToHead(window, sixInLine))
        return;
    JobBook &book = *window.benchPage()->book();
    const auto &tools = book.state().frame->tools;
    const auto gauge = std::ranges::find(tools, ToolKind::DialGauge, &Tool::kind);
    if (gauge != tools.end())
        book.setTool(gauge->id);
    window.benchPage()->pane<ValvePane>()->bar()->edit()->setText(QStringLiteral("0.46 mm"));
}

Prepare plansOf(const QString &vehicle, PlanWay way)
{
    return [=](Window &window) {
        if (!goToHead(window, vehicle))
            return;
        window.benchPage()->pane<ValvePane>()->planKey()->click();
        window.benchPage()->pane<PlanPane>()->choose(way);
    };
}

void openKeypad(Window &window)
{
    if (goToHead(window))
        window.benchPage()->keypadKey()->click();
}

/// Every open nut locked first, so that the crank may be turned.
bool goToTurning(Window &window, const QString &vehicle)
{
    if (!goToHead(window, vehicle))
        return false;
    JobBook &book = *window.benchPage()->book();
    for (const PointId point : openNuts(book.state()))
        (void)book.logReading({.point = point, .phase = Phase::AsLeft, .specLeaf = true});
    window.benchPage()->turnCrank();
    return true;
}

/// Hydraulic tappets were set a moment ago, and turning was refused once.
void turnWhileTheyBleedDown(Window &window)
{
    if (!goToHead(window, vTwin))
        return;
    BenchPage &bench = *window.benchPage();
    const auto points = bench.book()->state().frame->engine.points;
    for (const SettingPoint &point : points)
        if (here(bench.book()->state(), point.id) == Here::InPlan && !bench.book()->state().point(point.id).settled())
            (void)bench.book()->logReading({.point = point.id, .phase = Phase::AsLeft, .specLeaf = true});
    bench.turnCrank();
    bench.pane<TurnPane>()->readKey()->click();
    bench.pane<TurnPane>()->turnedKey()->click();
}

void leaveOutside(Window &window)
{
    if (!goToHead(window))
        return;
    JobBook &book = *window.benchPage()->book();
    const auto point = window.benchPage()->pane<ValvePane>()->inHand();
    const auto value = parse<Length>("0.55", LengthUnit::Millimetre);
    if (point && value)
        (void)book.logReading({.point = *point, .phase = Phase::AsLeft, .value = *value});
    window.benchPage()->pane<ValvePane>()->refresh();
}

void askForReason(Window &window)
{
    leaveOutside(window);
    if (window.benchPage()->pane<ValvePane>())
        window.benchPage()->pane<ValvePane>()->key(ValvePane::Key::Keep)->click();
}

void askWhatMoved(Window &window)
{
    if (goToHead(window))
        Q_EMIT window.benchPage()->pane<ValvePane>()->wanted(
            {makePane<CheckAgainPane>, window.benchPage()->book()->state().frame->engine.points.front().id});
}

void typeSheet(Window &window)
{
    if (goToHead(window, sixInLine))
        window.benchPage()->typeSheet();
}

/// The sheet half typed in, with one box that cannot be read.
void typeSheetHalf(Window &window)
{
    typeSheet(window);
    const BenchSheetPane *sheet = window.benchPage()->pane<BenchSheetPane>();
    if (!sheet || sheet->lines().size() < 4)
        return;
    const QStringList found{QStringLiteral("28"), QStringLiteral("0.30-0.35"), QStringLiteral("61"), QStringLiteral("1,250")};
    for (qsizetype i = 0; i < found.size(); ++i)
        sheet->lines()[i]->field(Phase::AsFound)->setText(found[i]);
    for (qsizetype i = 0; i + 1 < found.size(); ++i)
        sheet->lines()[i]->field(Phase::AsLeft)->write(PaperBox::Word::Leaf);
    sheet->lines()[3]->check(Phase::AsFound);
}

/// A radial of nine, described here: the head of an engine that is no row.
void openRadial(Window &window)
{
    Garage &garage = window.vehicles().garage();
    VehicleText text;
    text.name = "Wrenfield 9 trainer";
    text.engineName = "Wrenfield nine-cylinder radial";
    text.engine.layout = Layout::Radial;
    text.engine.cylinders = 9;
    text.engine.firingOrder = "1-3-5-7-9-2-4-6-8";
    text.engine.cam.assumed = false;
    const auto added = addVehicle(garage, text);
    if (!added)
        return;
    for (const SpecSubject subject : {SpecSubject::IntakeLash, SpecSubject::ExhaustLash})
        (void)reviseSpec(garage, added->engine, subject,
                         {.band = "0.25 ± 0.05 mm", .otherBand = {}, .source = {"Wrenfield manual", "9", {}}});
    const auto job = openJob(garage, added->vehicle, added->engine, builtInSheets().front(), "Set the valves");
    if (job)
        goToHead(window, radialNine);
}

/// A V of twenty-four with two lashes a side: more points than a finger has room for.
void openCrowded(Window &window)
{
    Garage &garage = window.vehicles().garage();
    VehicleText text;
    text.name = "Tarn launch";
    text.engineName = "Tarn V24";
    text.engine.layout = Layout::Vee;
    text.engine.cylinders = 24;
    text.engine.valves = "2+2";
    text.engine.firingOrder = "1-24-9-16-5-20-11-14-3-22-7-18-23-2-15-10-19-6-13-12-21-4-17-8";
    const auto added = addVehicle(garage, text);
    if (added && openJob(garage, added->vehicle, added->engine, builtInSheets().front(), "Set the valves"))
        goToHead(window, QStringLiteral("Tarn"));
}

void doubtTheEngine(Window &window)
{
    if (!openJobOf(window, anyJob))
        return;
    SessionPane *sheet = window.benchPage()->pane<SessionPane>();
    if (!sheet->temperature())
        return;
    sheet->temperature()->setText(QStringLiteral("82"));
    sheet->sinceRun()->setText(QStringLiteral("0.5"));
    sheet->beginKey()->click();
}

} // namespace

std::vector<Screen> benchScreens()
{
    const auto on = [](const char *name, Prepare prepare) { return Screen{name, Page::Bench, std::move(prepare)}; };
    return {
        on("bench", headOf(anyJob)),
        on("bench-opened", [](Window &window) { window.begin(); }),
        on("bench-doubted", doubtTheEngine),
        on("bench-line", openLine),
        on("bench-crank", askForCrank),
        on("bench-outside", typing(anyJob, QStringLiteral("0.55 mm"), false)),
        on("bench-wrong-unit", typing(anyJob, QStringLiteral("0.012 mm"), true)),
        on("bench-too-close", typeTooClose),
        on("bench-left-outside", leaveOutside),
        on("bench-reason", askForReason),
        on("bench-again", askWhatMoved),
        on("bench-keypad", openKeypad),
        on("bench-plan", plansOf(anyJob, PlanWay::CompanionAtOverlap)),
        on("bench-plan-refused", plansOf(sixInLine, PlanWay::Fewest)),
        on("bench-plan-fewest",
           [](Window &window) {
               openRadial(window);
               plansOf(radialNine, PlanWay::Fewest)(window);
           }),
        on("bench-plan-v8", plansOf(vEight, PlanWay::OpeningAndClosing)),
        on("bench-turn", [](Window &window) { goToTurning(window, anyJob); }),
        on("bench-turn-pinion", [](Window &window) { goToTurning(window, sixInLine); }),
        on("bench-turn-waits", turnWhileTheyBleedDown),
        on("bench-sheet", typeSheet),
        on("bench-sheet-typed", typeSheetHalf),
        on("bench-tighten", [](Window &window) { goToJoint(window, StepKind::Tighten, "Water outlet flange"); }),
        on("bench-tighten-feel", [](Window &window) { goToJoint(window, StepKind::Tighten, "Oil pressure sender clamp"); }),
        on("bench-loosen", [](Window &window) { goToJoint(window, StepKind::Loosen, "Rocker cover"); }),
        on("bench-wrench", chooseWrench),
        on("bench-v8", headOf(vEight)),
        on("bench-six", headOf(sixInLine)),
        on("bench-flat", headOf(flatFour)),
        on("bench-v-twin", headOf(vTwin)),
        on("bench-bridged", headOf(bridgedThree)),
        on("bench-radial", openRadial),
        on("bench-crowded", openCrowded),
        on("bench-crowded-whole",
           [](Window &window) {
               openCrowded(window);
               if (window.benchPage()->pane<ValvePane>())
                   window.benchPage()->pane<ValvePane>()->head()->showWhole();
           }),
    };
}

} // namespace asleft
