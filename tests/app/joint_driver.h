#pragma once

#include "bench_driver.h"
#include "joint_texts.h"
#include "typed.h"

#include <bench/loosen_pane.h>
#include <bench/rig_pane.h>
#include <bench/tighten_pane.h>
#include <bench/tighten_rig.h>
#include <drawn/fastener_button.h>
#include <drawn/joint_view.h>

#include <words/errors.h>
#include <words/fasteners.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/torque_tools.h>
#include <work/joints.h>

namespace asleft::testing {

/// What hangs on the wall of the shop.
enum class Wall { TwoSet, OneRead, Nothing };

/// A joint and its two lines in a job, open on the Bench at the tightening, with somebody at it.
struct JointBench {
    explicit JointBench(const JointText &text = coverText(), Wall wall = Wall::TwoSet) : made(addFour(*shop.garage))
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
            TorqueWrenchText text = wrenchText(name, least, most);
            text.kind = kind;
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
    /// The joint by the revision it is worked by.
    [[nodiscard]] const Joint &text() const { return jointInHand(state(), *joint); }
    /// How it is said what a wrench is set to or shows.
    [[nodiscard]] QString toBe(std::optional<ToolId> wrench, const char *torque) const
    {
        return settingSentence(*state().frame->tool(*wrench), typedTorque(torque));
    }
    /// The wrenches of the wall as the pass in hand asks for them, before any calibration is due.
    [[nodiscard]] Rig rigBy(const RigChoice &choice) const { return rigOf(*state().frame, text(), worked().progress.pass, choice, {}); }
    /// What is asked before something is logged all the same.
    [[nodiscard]] static QString asking(const QStringList &why)
    {
        return JointPane::tr("%1 Nothing is logged yet.").arg(why.join(QChar::Space));
    }
    [[nodiscard]] static QString leavesOrder(int next, int taken)
    {
        return asking({TightenPane::tr("Fastener %1 is next in the order. The same again ticks %2 before it.").arg(next).arg(taken)});
    }
    [[nodiscard]] QString wholePass(int left) const
    {
        return TightenPane::tr("Tick all %n left of %1? The same again does it.", nullptr, left)
            .arg(passPlace(text(), worked().progress.pass));
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

} // namespace asleft::testing
