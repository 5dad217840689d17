#pragma once

#include "garage_fixture.h"
#include "work_texts.h"

#include <bench/bench_page.h>
#include <bench/bench_sheet_pane.h>
#include <bench/check_again_pane.h>
#include <bench/crank_pane.h>
#include <bench/entry_bar.h>
#include <bench/open_column.h>
#include <bench/paper_box.h>
#include <bench/paper_line.h>
#include <bench/paper_top.h>
#include <bench/plan_pane.h>
#include <bench/session_pane.h>
#include <bench/step_pane.h>
#include <bench/steps_column.h>
#include <bench/turn_pane.h>
#include <bench/valve_pane.h>
#include <drawn/head_view.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/reading_edit.h>
#include <parts/reason_line.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <shop/outlook.h>
#include <words/job.h>
#include <work/jobs.h>
#include <work/specs.h>
#include <work/workshop.h>

#include <QLabel>

namespace asleft::testing {

/// All words a person can read on a widget now.
inline QString readable(const QWidget &widget)
{
    QStringList words;
    for (const auto *label : widget.findChildren<QLabel *>())
        if (label->isVisible())
            words.append(label->text());
    for (const auto *button : widget.findChildren<QAbstractButton *>())
        if (button->isVisible())
            words.append(button->text());
    return words.join(QChar::LineFeed).remove(QChar(0x200B));
}

/// The point of this short name ("E3") in a job.
inline PointId pointNamed(const JobBook &book, const char *name)
{
    const JobFrame &frame = *book.state().frame;
    for (const SettingPoint &point : frame.engine.points)
        if (shortName(frame.engine.design, point.adjuster) == name)
            return point.id;
    qFatal("no point %s", name);
}

inline QString nameOf(const JobBook &book, std::optional<PointId> point)
{
    const JobFrame &frame = *book.state().frame;
    return point ? QString::fromStdString(shortName(frame.engine.design, frame.point(*point)->adjuster)) : QString();
}

/// Clicks the line of this id, as a person would who sees it.
inline void clickRow(RuledList *list, qint64 id)
{
    const QModelIndex index = static_cast<RuledRows *>(list->model())->indexOf(id);
    QVERIFY(index.isValid());
    list->scrollTo(index);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {}, list->visualRect(index).center());
}

/// Whatever takes the keyboard has a name and is large enough to be touched; `seen` counts them.
inline void expectNamesAndSizes(const BenchPage &page, int &seen)
{
    for (const auto *control : page.findChildren<QWidget *>()) {
        if (control->focusPolicy() == Qt::NoFocus || !control->isVisible() || qobject_cast<const QAbstractScrollArea *>(control))
            continue;
        const auto *button = qobject_cast<const QAbstractButton *>(control);
        const QString name = control->accessibleName().isEmpty() && button ? button->text() : control->accessibleName();
        QVERIFY2(!name.isEmpty(), control->metaObject()->className());
        QVERIFY2(control->height() >= 44, qPrintable(name));
        ++seen;
    }
}

/// Where nobody has said yet where the crank stands nothing is proposed: the first place is chosen and confirmed.
inline void confirmFirstPlace()
{
    press(Qt::Key_Return);
    press(Qt::Key_Return);
}

/// Types a reading and presses Enter, the keyboard being where the Bench left it.
inline void logTyped(const QString &text)
{
    type(text);
    press(Qt::Key_Return);
}

/// What is asked of a value as far from its band as a slip of the finger.
inline QString farOff(const char *value)
{
    return ValvePane::tr("%1 is far from what the manual asks. Nothing is logged yet.").arg(QString::fromUtf8(value));
}

/// The job of a bench, open at one line in the same garage, which may only be read now.
struct ReadOnlyBench {
    template <class OpenBench>
    ReadOnlyBench(OpenBench &bench, StepId line) : job(*bench.page->job()), shop((bench.page.reset(), bench.shop)), page(*shop.context)
    {
        page.openJob(job);
        present(page);
        page.takeFocus();
        press(Qt::Key_Return);
        page.viewStep(line);
    }

    JobId job;
    ReadOnlyShop shop;
    BenchPage page;
};

/// The rows of what is still open that say an item of this kind; nothing where the column shows anything but what is open.
template <class Kind>
std::optional<QList<std::pair<Gate, qint64>>> openRows(const BenchPage &page, Moment now)
{
    const JobState &state = page.book()->state();
    const StillOpen open = stillOpen(state, now);
    QList<std::pair<Gate, qint64>> found;
    for (const auto &[gate, items] : {std::pair(Gate::TurningTheCrank, open.turning), std::pair(Gate::FirstStart, open.firstStart),
                                      std::pair(Gate::HandOver, open.handOver)}) {
        const auto &rows = page.openColumn()->rows(gate)->rows();
        if (std::size_t(rows.size()) != items.size())
            return std::nullopt;
        for (qsizetype i = 0; i < rows.size(); ++i) {
            const OpenItem &item = items[std::size_t(i)];
            if (rows[i].title != openWords(item, state, now).title)
                return std::nullopt;
            if (std::holds_alternative<Kind>(item))
                found.append({gate, rows[i].id});
        }
    }
    return found;
}

/// How many there are; none can be counted in a column that shows something else.
template <class Kind, class OpenBench>
int openCount(const OpenBench &bench)
{
    const auto rows = openRows<Kind>(*bench.page, bench.shop.garage->now());
    return rows ? int(rows->size()) : -1;
}

template <class Kind, class OpenBench>
void clickOpen(const OpenBench &bench)
{
    const auto rows = openRows<Kind>(*bench.page, bench.shop.garage->now());
    QVERIFY(rows && !rows->isEmpty());
    clickRow(bench.page->openColumn()->list(rows->front().first), rows->front().second);
}

/// A clock that stands until it is set.
class HandClock final : public Clock {
public:
    [[nodiscard]] Moment now() const override { return m_now; }
    void forward(std::chrono::milliseconds by) { m_now.utcMilliseconds += by.count(); }

private:
    Moment m_now{1'763'000'000'000};
};

/// An engine as it is typed, with what its manual asks.
struct BenchEngine {
    EngineText engine;
    ScrewText screw;
    std::vector<std::pair<SpecSubject, std::string>> specs;
    std::vector<TableLine> table;
};

/// An even four in line: intakes 0.25 to 0.35 mm, exhausts 0.40 ± 0.05 mm.
inline BenchEngine four()
{
    BenchEngine engine;
    engine.engine = fourText();
    engine.specs = {{SpecSubject::IntakeLash, "0.25-0.35 mm"}, {SpecSubject::ExhaustLash, "0.40 ± 0.05 mm"}};
    return engine;
}

/// The same with hydraulic tappets, turned on from zero lash, and a wait of 15 minutes.
inline BenchEngine hydraulicFour()
{
    BenchEngine engine = four();
    engine.screw.kind = AdjusterKind::Hydraulic;
    engine.screw.bleedDown = "15 min";
    engine.specs = {{SpecSubject::IntakeLash, "3/4 ± 1/4 turn"}, {SpecSubject::ExhaustLash, "1 ± 1/4 turn"}};
    return engine;
}

/// An engine, its valve set open on the Bench, somebody at it, the crank confirmed at the first place.
struct Bench {
    explicit Bench(bool withSpecs = true)
        : Bench(withSpecs ? four() : BenchEngine{.engine = four().engine, .screw = {}, .specs = {}, .table = {}})
    {
    }

    explicit Bench(const BenchEngine &engine, std::shared_ptr<const Clock> clock = nullptr)
    {
        if (clock)
            keepTimeBy(std::move(clock));
        describe(engine);
        QVERIFY(addFeelerSet(*shop.garage, "bench set", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre));
        const auto job = openJob(*shop.garage, made->vehicle, made->engine, builtInSheets().front(), "Set the valves");
        page = std::make_unique<BenchPage>(*shop.context);
        page->openJob(*job);
        present(*page);
        page->takeFocus();
        type(QStringLiteral("MK"));
        press(Qt::Key_Return);
        page->viewStep(valveStep());
        confirmFirstPlace();
        QCoreApplication::processEvents(); // what was laid out anew stands in its place
    }

    /// Opens the garage of the shop once more, on another clock.
    void keepTimeBy(std::shared_ptr<const Clock> clock)
    {
        const std::string path = shop.garage->path();
        shop.context.reset();
        shop.garage.reset();
        shop.garage = std::move(*Garage::open(path, {std::move(clock), std::make_shared<RandomUids>(), "seat"}));
        shop.context = std::make_unique<AppContext>(*shop.garage, Look::Light);
    }

    void describe(const BenchEngine &engine)
    {
        VehicleText text;
        text.name = "Hollin 40 tractor";
        text.engine = engine.engine;
        text.screw = engine.screw;
        made = *addVehicle(*shop.garage, text);
        for (const auto &[subject, band] : engine.specs)
            QVERIFY(reviseSpec(*shop.garage, made->engine, subject, lashText(band)));
        if (!engine.table.empty())
            QVERIFY(reviseTable(*shop.garage, made->engine, engine.table, lashText({}).source));
    }

    [[nodiscard]] StepId valveStep() const
    {
        for (const Step &step : page->book()->state().frame->job.steps)
            if (step.kind == StepKind::ValveSet)
                return step.id;
        qFatal("no valve set");
    }

    [[nodiscard]] const JobState &state() const { return page->book()->state(); }
    [[nodiscard]] const PointState &point(const char *name) const { return state().point(pointNamed(*page->book(), name)); }
    [[nodiscard]] QString inHand() const { return nameOf(*page->book(), page->pane<ValvePane>()->inHand()); }
    [[nodiscard]] EntryBar *bar() const { return page->pane<ValvePane>()->bar(); }
    [[nodiscard]] QString said() const { return bar()->message()->sentence(); }
    void take(const char *name) const { page->pane<ValvePane>()->takeInHand(pointNamed(*page->book(), name)); }

    /// Another tool in hand, as it is chosen when somebody takes over.
    void measureWith(ToolId tool) const
    {
        click(page->stepsColumn()->sessionKey());
        clickRow(page->pane<SessionPane>()->tools(), tool.key());
        click(page->pane<SessionPane>()->beginKey());
        page->viewStep(valveStep());
    }

    Shop shop;
    std::optional<NewVehicle> made;
    std::unique_ptr<BenchPage> page;
};

/// A second computer at the garage of a bench, with the same job open.
struct OtherStation {
    template <class OpenBench>
    explicit OtherStation(const OpenBench &bench)
        : garage(std::move(
              *Garage::open(bench.shop.garage->path(), {std::make_shared<SteppingClock>(), std::make_shared<RandomUids>(), "other seat"}))),
          book(std::move(*JobBook::open(*garage, *bench.page->job())))
    {
        book->setWho(*addPerson(*garage, "TB", {}));
    }

    void left(const char *point, const char *value) const
    {
        QVERIFY(book->logReading(
            {.point = pointNamed(*book, point), .phase = Phase::AsLeft, .value = *parse<Length>(value, LengthUnit::Millimetre)}));
    }
    void tickNext(JointId joint, ToolId wrench) const
    {
        const TickSlot next = *book->state().joints.at(joint).progress.next;
        QVERIFY(book->tick({.joint = joint, .places = {next}, .how = TickHow::SetTool, .tool = wrench}));
    }

    std::unique_ptr<Garage> garage;
    std::unique_ptr<JobBook> book;
};

} // namespace asleft::testing
