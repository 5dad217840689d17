#pragma once

#include "bench_driver.h"
#include "joint_hands.h"

#include <bench/bar_view.h>
#include <drawn/point_button.h>
#include <forms/new_job_form.h>
#include <pages/job_view.h>
#include <pages/jobs_page.h>
#include <pages/vehicles_page.h>
#include <parts/vehicles_model.h>
#include <window/window.h>

#include <measure/format.h>

#include <words/errors.h>

namespace asleft::testing {

/// How readings were taken over the whole run.
enum class Way { Exact, Bracket, Loose, Tight, ByFeel, Turned, SpecLeaf, AllHere, Sheet };

constexpr int mostActs = 1500; ///< no engine of a garage takes as many

/// One engine at the bench, with the window it is set on.
class Mechanic {
public:
    Mechanic(const QString &file, EngineId engine, QSet<int> &used) : m_engine(engine), m_used(used), m_clock(std::make_shared<HandClock>())
    {
        m_clock->forward(std::chrono::hours(24 * 300)); // after all that happened in the garage
        auto opened = Garage::open(file.toStdString(), {m_clock, std::make_shared<RandomUids>(), "bench"});
        if (!opened)
            qFatal("the garage did not open");
        m_garage = std::move(*opened);
        m_context = std::make_unique<AppContext>(*m_garage, Look::Light);
        m_window = std::make_unique<Window>(*m_context);
        present(*m_window);
    }

    [[nodiscard]] BenchPage &bench() const { return *m_window->benchPage(); }
    [[nodiscard]] const JobState &state() const { return bench().book()->state(); }

    /// The job that is open on this engine, or a new one.
    void openJob()
    {
        const auto unfinished = unfinishedJob();
        if (unfinished)
            openFromJobs(*unfinished);
        else
            beginNewJob();
        QCOMPARE(m_window->page(), Page::Bench);
        QCOMPARE(state().frame->engine.id, m_engine);
        QCOMPARE(bench().sheet(), bench().pane<SessionPane>());
        sit();
    }

    void workUntilNothingIsOpen(bool allHere, bool onPaper)
    {
        m_allHere = allHere;
        m_onPaper = onPaper;
        for (int act = 0; act < mostActs && !QTest::currentTestFailed(); ++act) {
            m_clock->forward(std::chrono::minutes(1));
            if (isDone())
                return;
            work();
        }
        QVERIFY2(QTest::currentTestFailed(),
                 qPrintable(QStringLiteral("it comes to no end: ") + readable(*bench().openColumn()) + whatIsOpen() + readable(bench())));
    }

    [[nodiscard]] bool isDone() const
    {
        const auto &steps = state().frame->job.steps;
        const StillOpen open = stillOpen(state(), m_garage->now());
        return std::ranges::all_of(steps, [&](const Step &step) { return stepDone(state(), step); }) && open.turning.empty() &&
               open.firstStart.empty() && open.handOver.empty();
    }

    [[nodiscard]] QString whatIsOpen() const
    {
        QStringList items;
        for (const Gate gate : {Gate::TurningTheCrank, Gate::FirstStart, Gate::HandOver})
            for (const RuledRow &row : bench().openColumn()->rows(gate)->rows())
                items.append(QStringLiteral("%1 (%2)").arg(row.title, row.note));
        return items.join(QStringLiteral("; "));
    }

private:
    std::optional<JobId> unfinishedJob() const
    {
        const auto known = jobs(*m_garage);
        for (const JobLine &line : *known) {
            const auto book = JobBook::open(*m_garage, line.id);
            if (book && (*book)->state().frame->engine.id == m_engine && nextAct((*book)->state()) != NextAct(next::NothingOpen{}))
                return line.id;
        }
        return std::nullopt;
    }

    void openFromJobs(JobId job) const
    {
        click(m_window->tabs()->tab(Page::Jobs));
        clickRow(m_window->jobsPage()->list(), job.key());
        click(m_window->jobsPage()->sheet()->benchKey());
    }

    void beginNewJob() const
    {
        click(m_window->tabs()->tab(Page::Vehicles));
        const VehicleRow *row = m_window->vehicles().withEngine(m_engine);
        QVERIFY(row);
        clickRow(m_window->vehiclesPage()->list(), idOf(*row));
        click(buttonNamed(*m_window->vehiclesPage(), QStringLiteral("New job")));
        click(buttonNamed(*m_window->jobsPage(), QStringLiteral("Open the job")));
        if (m_window->page() == Page::Jobs)
            click(m_window->jobsPage()->sheet()->benchKey());
    }

    /// Leaves in the system the manual prints.
    void sit() const
    {
        const JobFrame &frame = *state().frame;
        for (const Tool &tool : frame.tools) {
            const auto *bands = lashBandsOf(frame, frame.engine.points.front().id);
            const bool fits = bands && !tool.leaves.empty() && systemOf(tool.leaves.front().unit) == systemOf(bands->first.unit);
            if (!fits)
                continue;
            clickRow(bench().pane<SessionPane>()->tools(), tool.id.key());
            break;
        }
        click(bench().pane<SessionPane>()->beginKey());
        QVERIFY(bench().sheet() != bench().pane<SessionPane>());
    }

    void work()
    {
        QWidget *sheet = bench().sheet();
        if (sheet == bench().pane<StepPane>())
            doStep();
        else if (sheet == bench().pane<CrankPane>())
            confirmCrank();
        else if (sheet == bench().pane<TurnPane>())
            turn();
        else if (sheet == bench().pane<ValvePane>())
            setValves();
        else if (sheet == bench().pane<LoosenPane>())
            loosenOn(bench());
        else if (sheet == bench().pane<TightenPane>())
            tightenOn(bench());
        else
            QFAIL("no sheet to work on");
    }

    void doStep() const
    {
        if (nextAct(state()) == NextAct(next::NothingOpen{})) {
            measureWhatWasFelt();
            return;
        }
        const auto acts = state().acts.size();
        press(Qt::Key_Return);
        QVERIFY2(state().acts.size() == acts + 1, qPrintable(readable(*bench().pane<StepPane>())));
    }

    void confirmCrank() const
    {
        // Where nothing is proposed the first place is chosen.
        if (!bench().pane<CrankPane>()->standsKey()->isEnabled())
            press(Qt::Key_Return);
        press(Qt::Key_Return);
        QCOMPARE(bench().sheet(), bench().pane<ValvePane>());
    }

    void turn() const
    {
        const TurnPane *sheet = bench().pane<TurnPane>();
        if (sheet->readKey()->isVisible())
            click(sheet->readKey());
        click(sheet->turnedKey());
        if (bench().sheet() == sheet) {
            const Error waits{ErrorKind::StillBleedingDown, {std::to_string(bleedDownUntil(state()).value().utcMilliseconds)}};
            QVERIFY2(sheet->message()->sentence().contains(sentence(waits)), qPrintable(sheet->message()->sentence()));
            m_clock->forward(std::chrono::hours(1));
            click(sheet->turnedKey());
        }
        QCOMPARE(bench().sheet(), bench().pane<ValvePane>());
        QVERIFY(planPositionHere(state()));
    }

    void setValves()
    {
        if (m_onPaper) {
            typeSheet();
            return;
        }
        if (m_allHere && bench().pane<ValvePane>()->allHereKey()->isEnabled()) {
            m_allHere = false;
            click(bench().pane<ValvePane>()->allHereKey());
            click(bench().pane<ValvePane>()->allHereKey());
            m_used.insert(int(Way::AllHere));
            return;
        }
        if (!bench().pane<ValvePane>()->inHand() && nextAct(state()) == NextAct(next::NothingOpen{})) {
            measureWhatWasFelt();
            return;
        }
        if (!bench().pane<ValvePane>()->inHand()) {
            m_clock->forward(std::chrono::hours(1));
            press(Qt::Key_Return);
            return;
        }
        setPoint(*bench().pane<ValvePane>()->inHand());
    }

    /// One act at the point in hand, another way each time.
    void setPoint(PointId point)
    {
        const auto acts = state().acts.size();
        const bool turns = turnsOf(*state().frame, point) != nullptr;
        const PointState &now = state().point(point);
        if (turns)
            setTurns(now);
        else if (now.stage == PointStage::Untouched)
            feel(point);
        else
            leave(point, now);
        QVERIFY2(state().acts.size() > acts, qPrintable(bench().pane<ValvePane>()->bar()->message()->sentence()));
    }

    void setTurns(const PointState &now)
    {
        const SpecBand<Angle> &asked = *turnsOf(*state().frame, *bench().pane<ValvePane>()->inHand());
        if (now.stage != PointStage::NutOpen && m_count++ % 3 == 0) {
            press(Qt::Key_N);
            return;
        }
        if (m_count % 2 == 0) {
            press(Qt::Key_S);
            m_used.insert(int(Way::SpecLeaf));
            return;
        }
        // What the manual prints in the middle of its band, typed as it prints it.
        logTyped(QString::fromStdString(formatExact(specMiddle(asked.first), asked.first.unit)));
        m_used.insert(int(Way::Turned));
    }

    static Angle specMiddle(const Band<Angle> &band)
    {
        if (band.nominal)
            return *band.nominal;
        return Angle::ofSmallest((band.low.value_or(*band.high).smallest() + band.high.value_or(*band.low).smallest()) / 2);
    }

    void feel(PointId point)
    {
        switch (m_count++ % 5) {
        case 0:
            logTyped(digitsOf(point, 0));
            m_used.insert(int(Way::Exact));
            break;
        case 1:
            logTyped(QStringLiteral("%1-%2").arg(digitsOf(point, 0), digitsOf(point, 1)));
            m_used.insert(int(Way::Bracket));
            break;
        case 2:
            press(Qt::Key_L);
            m_used.insert(int(Way::Loose));
            break;
        case 3:
            press(Qt::Key_T);
            m_used.insert(int(Way::Tight));
            break;
        default: press(Qt::Key_F); m_used.insert(int(Way::ByFeel));
        }
    }

    void leave(PointId point, const PointState &now)
    {
        const bool nutOpen = now.stage == PointStage::NutOpen;
        switch (m_count++ % 4) {
        case 0:
            if (!nutOpen) {
                press(Qt::Key_N);
                break;
            }
            [[fallthrough]];
        case 1:
            press(Qt::Key_S);
            m_used.insert(int(Way::SpecLeaf));
            break;
        case 2:
            press(Qt::Key_F);
            m_used.insert(int(Way::ByFeel));
            break;
        default: logTyped(digitsOf(point, 0)); m_used.insert(int(Way::Exact));
        }
    }

    /// The leaf the spec asks for, so many steps more, in digits alone.
    [[nodiscard]] QString digitsOf(PointId point, int more) const
    {
        const auto *bands = lashBandsOf(*state().frame, point);
        if (!bands)
            return QStringLiteral("30"); // what that leaves open is told in the end
        const Typed<Length> leaf = *specLeaf(*bands, bench().book()->tool());
        const std::int64_t step = stepOf(leaf.unit).smallest();
        return QString::number(leaf.value.smallest() / step + more);
    }

    /// Every line is done and something is open still: the open column leads to what was left by feel, and that is measured now.
    void measureWhatWasFelt() const
    {
        auto byFeel = openRows<open::ByFeel>(bench(), m_clock->now());
        if (byFeel && byFeel->isEmpty())
            byFeel = openRows<open::FastenerByFeel>(bench(), m_clock->now());
        if (!byFeel || byFeel->isEmpty()) {
            m_clock->forward(std::chrono::hours(1));
            return;
        }
        clickRow(bench().openColumn()->list(byFeel->front().first), byFeel->front().second);
        if (bench().sheet() == bench().pane<TightenPane>()) {
            acceptFeel(bench());
            return;
        }
        const auto point = bench().pane<ValvePane>()->inHand();
        QVERIFY(point && state().point(*point).left->verdict == Verdict::ByFeel);
        const auto acts = state().acts.size();
        logTyped(digitsOf(*point, 0));
        // With the crank elsewhere by now it is asked about: it is turned back to where the plan sets it.
        if (state().acts.size() == acts)
            turnTo(state().frame->point(*point)->adjuster);
    }

    void turnTo(AdjusterRef adjuster) const
    {
        press(Qt::Key_A, Qt::ControlModifier);
        press(Qt::Key_Delete);
        bench().turnCrank();
        const auto &positions = state().plan->positions;
        const auto sets = [&](const PlanPosition &position) {
            return std::ranges::count(position.points, adjuster, &PlanPoint::adjuster) > 0;
        };
        const auto position = std::ranges::find_if(positions, sets);
        clickRow(bench().pane<TurnPane>()->positions(), position - positions.begin());
        turn();
    }

    /// What is written on paper, typed with digits, words and Enter; then the crank is confirmed where it says.
    void typeSheet()
    {
        m_onPaper = false;
        press(Qt::Key_B, Qt::ControlModifier);
        const BenchSheetPane *sheet = bench().pane<BenchSheetPane>();
        QCOMPARE(bench().sheet(), sheet);
        sheet->lines().front()->field(Phase::AsFound)->setFocus();
        for (PaperLine *line : sheet->lines()) {
            const bool turns = turnsOf(*state().frame, line->point()) != nullptr;
            QVERIFY(line->field(Phase::AsFound)->hasFocus());
            logTyped(turns ? QStringLiteral("f") : digitsOf(line->point(), 2));
            QVERIFY(line->field(Phase::AsLeft)->hasFocus());
            logTyped(turns ? QStringLiteral("s") : digitsOf(line->point(), 0));
        }
        QVERIFY(sheet->logKey()->hasFocus());
        const auto acts = state().acts.size();
        press(Qt::Key_Return);
        if (state().acts.size() == acts)
            press(Qt::Key_Return); // two steps off may be far off
        QVERIFY2(state().acts.size() > acts, qPrintable(sheet->message()->sentence()));
        m_used.insert(int(Way::Sheet));
    }

    EngineId m_engine;
    QSet<int> &m_used;
    std::shared_ptr<HandClock> m_clock;
    std::unique_ptr<Garage> m_garage;
    std::unique_ptr<AppContext> m_context;
    std::unique_ptr<Window> m_window;
    int m_count = 0;
    bool m_allHere = false;
    bool m_onPaper = false;
};

} // namespace asleft::testing
