// The ways of the Bench from one sheet to the next.
#include <bench/bench_page.h>

#include <bench/bench_sheet_pane.h>
#include <bench/check_again_pane.h>
#include <bench/crank_pane.h>
#include <bench/loosen_pane.h>
#include <bench/plan_pane.h>
#include <bench/session_pane.h>
#include <bench/step_pane.h>
#include <bench/steps_column.h>
#include <bench/tighten_pane.h>
#include <bench/turn_pane.h>
#include <bench/valve_pane.h>
#include <parts/bench_sheet_saving.h>
#include <parts/message_line.h>
#include <parts/reading_edit.h>
#include <parts/ruled_list.h>

#include <words/errors.h>
#include <words/points.h>

#include <QApplication>
#include <QStackedWidget>

#include <algorithm>

namespace asleft {

void BenchPage::keepPlan()
{
    const JobState &state = m_book->state();
    const bool setsValves = std::ranges::any_of(state.frame->job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    // The plan is stored with the job from its first session on, so that a newer program does not reshuffle half a job. If it cannot be
    // stored now, it is tried again the next time the head is shown, and the next act says what is wrong.
    if (setsValves && !state.plan && !readOnly())
        (void)m_book->choosePlan(m_book->proposedPlan());
}

void BenchPage::goOn()
{
    keepPlan();
    const JobState &state = m_book->state();
    if (std::holds_alternative<next::LockNut>(nextAct(state)))
        showHead();
    else if (const Step *step = firstUndone(state))
        viewStep(step->id);
    else if (!state.frame->job.steps.empty())
        viewStep(m_viewed.value_or(state.frame->job.steps.back().id));
}

void BenchPage::viewStep(StepId id)
{
    const Step *step = m_book ? m_book->state().frame->step(id) : nullptr;
    if (!step)
        return;
    if (currentPane() == m_paper && !m_paper->mayLeave()) {
        showSteps();
        return;
    }
    m_viewed = id;
    if (!hasBegun()) {
        showPane(m_session);
        return;
    }
    if (step->kind == StepKind::Note) {
        m_step->showStep(id);
        showPane(m_step);
        return;
    }
    if (step->kind == StepKind::Tighten || step->kind == StepKind::Loosen)
        showJoint(*step);
    else
        showHead();
}

void BenchPage::showJoint(const Step &step)
{
    JointPane *sheet = step.kind == StepKind::Tighten ? static_cast<JointPane *>(m_tighten) : m_loosen;
    sheet->showStep(step.id);
    showPane(sheet);
}

void BenchPage::openJoint(JointId joint, std::optional<int> fastener)
{
    if (!hasBegun())
        return;
    const auto &steps = m_book->state().frame->job.steps;
    const auto lineOf = [&](StepKind kind) {
        return std::ranges::find_if(steps, [&](const Step &step) { return step.kind == kind && step.joint == joint; });
    };
    auto line = lineOf(StepKind::Tighten);
    if (line == steps.end())
        line = lineOf(StepKind::Loosen);
    if (line == steps.end())
        return;
    viewStep(line->id);
    auto *shown = qobject_cast<JointPane *>(currentPane());
    if (shown && fastener)
        shown->takeInHand(*fastener);
}

void BenchPage::showHead()
{
    keepPlan();
    // Whether a valve may be set hangs on where the crank stands: that is asked first, once a session.
    showPane(m_book->session().crankConfirmed || readOnly() ? static_cast<Pane *>(m_valves) : m_crank);
}

void BenchPage::openPoint(PointId point)
{
    if (!hasBegun())
        return;
    showHead();
    if (sheet() == m_valves)
        m_valves->takeInHand(point);
}

void BenchPage::checkAgain(std::optional<PointId> point)
{
    m_again->ask(point);
    showPane(m_again);
}

void BenchPage::typeSheet()
{
    if (!m_book || readOnly())
        return;
    if (!hasBegun()) {
        showPane(m_session);
        return;
    }
    showPane(m_paper);
}

void BenchPage::printSheet()
{
    if (m_book)
        m_saving->ask(m_context.garage(), *job(), rememberedPaper());
}

void BenchPage::turnCrank()
{
    // What cannot be done yet is said where it is mended, at the head.
    if (const auto open = openNuts(m_book->state()); !open.empty()) {
        QStringList names;
        for (const PointId point : open)
            names.append(pointShort(*m_book->state().frame, point));
        showPane(m_valves);
        m_valves->takeInHand(open.front());
        m_valves->bar()->refuse(sentence(Error{ErrorKind::NutStillOpen, {names.join(QStringLiteral(", ")).toStdString()}}));
        return;
    }
    if (!m_book->session().crankConfirmed) {
        showHead();
        return;
    }
    m_turn->propose();
    showPane(m_turn);
}

bool BenchPage::showPane(Pane *sheet)
{
    if (currentPane() == m_paper && sheet != m_paper && !m_paper->mayLeave())
        return false;
    m_message->clear();
    const auto *joint = qobject_cast<JointPane *>(sheet);
    if (sheet != m_paper)
        m_steps->setKeypadTarget(joint ? joint->bar()->edit() : m_valves->bar()->edit());
    if (sheet == m_valves)
        showValves();
    else
        sheet->refresh();
    m_middle->setCurrentWidget(sheet);
    showSteps();
    takeFocus();
    return true;
}

void BenchPage::showValves()
{
    m_valves->bar()->quiet();
    const auto &steps = m_book->state().frame->job.steps;
    const auto valveStep = std::ranges::find(steps, StepKind::ValveSet, &Step::kind);
    if (valveStep != steps.end())
        m_viewed = valveStep->id;
    if (!m_valves->inHand() || here(m_book->state(), *m_valves->inHand()) != Here::InPlan)
        m_valves->goToNext();
    m_valves->refresh();
}

Pane *BenchPage::currentPane() const
{
    return qobject_cast<Pane *>(m_middle->currentWidget());
}

void BenchPage::takeFocus()
{
    if (Pane *sheet = currentPane())
        sheet->takeFocus();
    // A line that is done has nothing to press: the keyboard would wander off the page.
    const QWidget *now = QApplication::focusWidget();
    if (m_book && isVisible() && now && !isAncestorOf(now))
        steps()->setFocus(Qt::OtherFocusReason);
}

JointPane *BenchPage::paneToTakeBack(bool again)
{
    const JobState &state = m_book->state();
    auto seq = again ? redoable(state, m_context.garage().station()) : undoable(state, m_context.garage().station());
    const auto actAt = [&](std::optional<ActSeq> at) {
        return std::ranges::find(state.acts, at, [](const Act &act) { return std::optional(act.seq); });
    };
    auto act = actAt(seq);
    if (act != state.acts.end() && act->what.withdraws)
        act = actAt(act->what.withdraws);
    const auto joint = act == state.acts.end() ? std::nullopt : jointOf(act->what.fact);
    if (!joint)
        return nullptr;
    const bool loosened = std::holds_alternative<LoosenedFact>(act->what.fact);
    const auto &steps = state.frame->job.steps;
    const StepKind kind = loosened ? StepKind::Loosen : StepKind::Tighten;
    const auto line = std::ranges::find_if(steps, [&](const Step &step) { return step.kind == kind && step.joint == joint; });
    if (line == steps.end())
        return nullptr;
    viewStep(line->id);
    return qobject_cast<JointPane *>(currentPane());
}

void BenchPage::takeBack(bool again)
{
    if (!m_book || !m_book->session().who || readOnly())
        return;
    // What is in sight takes it back; from elsewhere the sheet is shown where it was done.
    auto *joint = qobject_cast<JointPane *>(currentPane());
    if (!joint && sheet() != m_valves)
        joint = paneToTakeBack(again);
    if (joint) {
        joint->takeBack(again);
        return;
    }
    if (sheet() != m_valves && !showPane(m_valves))
        return;
    again ? m_valves->redo() : m_valves->undo();
}

} // namespace asleft
