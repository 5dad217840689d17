#pragma once

#include "bench_driver.h"

#include <bench/loosen_pane.h>
#include <bench/rig_pane.h>
#include <bench/tighten_pane.h>
#include <drawn/fastener_button.h>
#include <drawn/joint_view.h>

#include <words/errors.h>
#include <work/joints.h>

namespace asleft::testing {

/// A cover of twelve at 32 ± 4 N·m: half of it, the target, then until none moves.
inline JointText cover()
{
    JointText text;
    text.name = "Valve cover";
    text.thread = "M8";
    text.strength = "8.8";
    text.pattern = *coverPattern(12);
    text.target = "32 ± 4 N·m";
    text.passes = "50 %, target, settle 3";
    text.settle = SettleGround::Limiters;
    text.condition = ThreadCondition::Dry;
    text.drive = DriveKind::Socket;
    text.driveSize = "13 mm";
    text.source = {"Hollin workshop manual", "41", Certainty::ReadInManual};
    return text;
}

/// A row of four tightened straight to its target.
inline JointText row(const char *target = "32 ± 4 N·m")
{
    JointText text = cover();
    text.name = "Thermostat housing";
    text.pattern = *rowPattern(4);
    text.target = target;
    text.passes = {};
    text.settle = SettleGround::No;
    return text;
}

/// A small screw that no wrench of the rack reaches.
inline JointText sensor()
{
    JointText text = row("3 ± 0.5 N·m");
    text.name = "Sensor";
    text.thread = "M5";
    text.pattern = *rowPattern(1);
    return text;
}

/// What hangs on the wall of the shop.
enum class Wall { TwoSet, OneRead, Nothing };

/// A joint and its two lines in a job, open on the Bench at the tightening, with somebody at it.
struct JointBench {
    explicit JointBench(const JointText &text = cover(), Wall wall = Wall::TwoSet) : made(addFour(*shop.garage))
    {
        hang(wall);
        joint = *addJoint(*shop.garage, made.engine, text);
        const auto all = *joints(*shop.garage, made.engine);
        const auto job = openJob(*shop.garage, made.vehicle, made.engine, withJoints({"Cover off and on", {}}, newestOf(all)), "Cover");
        open(*job);
        page->viewStep(line(StepKind::Tighten));
        QCoreApplication::processEvents(); // what was laid out anew stands in its place
    }

    void hang(Wall wall)
    {
        const auto add = [this](ToolKind kind, const char *name, const char *least, const char *most, const char *lever) {
            TorqueWrenchText text;
            text.kind = kind;
            text.name = name;
            text.least = least;
            text.most = most;
            text.calibrationDue = "2027-03-31";
            text.lever = lever;
            return *addTorqueWrench(*shop.garage, text);
        };
        if (wall == Wall::Nothing)
            return;
        if (wall == Wall::OneRead) {
            large = add(ToolKind::TorqueRead, "dial wrench", "10", "100", "400 mm");
            return;
        }
        small = add(ToolKind::TorqueSet, "small wrench", "6", "30", "");
        large = add(ToolKind::TorqueSet, "large wrench", "20", "200", "400 mm");
        foot = *addFitting(*shop.garage, {.kind = ToolKind::Adapter, .name = "crow-foot 13", .size = "13 mm", .length = "100 mm"});
    }

    void open(JobId job)
    {
        page = std::make_unique<BenchPage>(*shop.context);
        page->openJob(job);
        present(*page);
        page->takeFocus();
        type(QStringLiteral("MK"));
        press(Qt::Key_Return);
    }

    [[nodiscard]] StepId line(StepKind kind) const
    {
        for (const Step &step : page->book()->state().frame->job.steps)
            if (step.kind == kind)
                return step.id;
        qFatal("no line of that kind");
    }

    void goLoosen() const
    {
        page->viewStep(line(StepKind::Loosen));
        QCoreApplication::processEvents();
    }

    /// Chooses a wrench, and nothing else, as a person does.
    void choose(ToolId wrench) const
    {
        click(sheet().key(TightenPane::Key::Wrench));
        clickRow(rig().tools(), wrench.key());
        click(rig().useKey());
    }

    void tickTimes(int times) const
    {
        for (int i = 0; i < times; ++i)
            press(Qt::Key_Return);
    }

    [[nodiscard]] const JobState &state() const { return page->book()->state(); }
    [[nodiscard]] const JointState &worked() const { return state().joints.at(*joint); }
    [[nodiscard]] const FastenerState &fastener(int number) const { return worked().fasteners.at(number); }
    [[nodiscard]] std::size_t acts() const { return state().acts.size(); }
    [[nodiscard]] TightenPane &sheet() const { return *page->pane<TightenPane>(); }
    [[nodiscard]] LoosenPane &loosening() const { return *page->pane<LoosenPane>(); }
    [[nodiscard]] RigPane &rig() const { return *sheet().rigPane(); }
    [[nodiscard]] KeyButton *key(TightenPane::Key which) const { return sheet().key(which); }
    [[nodiscard]] KeyButton *key(LoosenPane::Key which) const { return loosening().key(which); }
    [[nodiscard]] int inHand() const { return sheet().inHand().value_or(0); }
    [[nodiscard]] QString said() const { return sheet().bar()->message()->sentence(); }
    [[nodiscard]] QString now() const { return sheet().bar()->now()->text(); }
    [[nodiscard]] QString large_() const { return sheet().bar()->large()->text(); }
    [[nodiscard]] QString small_() const { return sheet().bar()->small()->text(); }
    /// How many lines of what is still open say this; the first of them is clicked where `clicks`.
    [[nodiscard]] int openItems(const QString &words, bool clicks = false) const
    {
        int count = 0;
        const OpenColumn *open = page->openColumn();
        for (const Gate gate : {Gate::TurningTheCrank, Gate::FirstStart, Gate::HandOver})
            for (const RuledRow &row : open->rows(gate)->rows()) {
                if (!row.title.contains(words) && !row.note.contains(words))
                    continue;
                if (clicks && count == 0)
                    clickRow(open->list(gate), row.id);
                ++count;
            }
        return count;
    }
    /// Somebody at the keyboard could go on at once.
    [[nodiscard]] bool keyboardIsOn(const QWidget &widget) const
    {
        const QWidget *focus = QApplication::focusWidget();
        return focus && focus->isVisible() && focus->isEnabled() && widget.isAncestorOf(focus);
    }

    Shop shop;
    NewVehicle made;
    std::optional<ToolId> small;
    std::optional<ToolId> large;
    std::optional<ToolId> foot;
    std::optional<JointId> joint;
    std::unique_ptr<BenchPage> page;
};

/// A second computer at the same job.
struct OtherFitter {
    explicit OtherFitter(const JointBench &bench)
        : garage(std::move(
              *Garage::open(bench.shop.garage->path(), {std::make_shared<SteppingClock>(), std::make_shared<RandomUids>(), "other seat"}))),
          book(std::move(*JobBook::open(*garage, *bench.page->job())))
    {
        book->setWho(*addPerson(*garage, "TB", {}));
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
