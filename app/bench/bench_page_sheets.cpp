// The ways of the Bench from one sheet to the next.
#include "bench/bench_page.h"

#include "bench/check_again_sheet.h"
#include "bench/crank_sheet.h"
#include "bench/loosen_sheet.h"
#include "bench/paper_sheet.h"
#include "bench/plan_sheet.h"
#include "bench/reading_edit.h"
#include "bench/sitting_sheet.h"
#include "bench/step_sheet.h"
#include "bench/steps_column.h"
#include "bench/tighten_sheet.h"
#include "bench/turn_sheet.h"
#include "bench/valve_sheet.h"
#include "parts/message_line.h"
#include "parts/ruled_list.h"
#include "sheet_saving.h"

#include <show/words.h>

#include <QApplication>
#include <QStackedWidget>

#include <algorithm>

namespace asleft {

void BenchPage::keepPlan()
{
    const JobState &state = m_book->state();
    const bool setsValves = std::ranges::any_of(state.frame->job.steps, [](const Step &step) { return step.kind == StepKind::ValveSet; });
    // The plan is stored with the job from its first sitting on, so that a newer program does not reshuffle half a job. If it cannot be
    // stored now, it is tried again the next time the head is shown, and the next act says what is wrong.
    if (setsValves && !state.plan && !readOnly())
        (void)m_book->choosePlan(m_book->proposedPlan());
}

void BenchPage::goOn()
{
    keepPlan();
    const JobState &state = m_book->state();
    const NextAct next = nextAct(state);
    if (next.step)
        viewStep(*next.step);
    else if (next.point)
        showHead();
    else if (!state.frame->job.steps.empty())
        viewStep(m_viewed.value_or(state.frame->job.steps.back().id));
}

void BenchPage::viewStep(StepId id)
{
    const Step *step = m_book ? m_book->state().frame->step(id) : nullptr;
    if (!step)
        return;
    if (middleSheet() == m_paper && !m_paper->mayLeave()) {
        showSteps();
        return;
    }
    m_viewed = id;
    if (!hasBegun()) {
        showSheet(m_sitting);
        return;
    }
    if (step->kind == StepKind::Note) {
        m_step->showStep(id);
        showSheet(m_step);
        return;
    }
    if (step->kind == StepKind::Tighten || step->kind == StepKind::Loosen)
        showJoint(*step);
    else
        showHead();
}

void BenchPage::showJoint(const Step &step)
{
    JointSheet *sheet = step.kind == StepKind::Tighten ? static_cast<JointSheet *>(m_tighten) : m_loosen;
    sheet->showStep(step.id);
    showSheet(sheet);
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
    auto *shown = qobject_cast<JointSheet *>(middleSheet());
    if (shown && fastener)
        shown->takeInHand(*fastener);
}

void BenchPage::showHead()
{
    keepPlan();
    // Whether a valve may be set hangs on where the crank stands: that is asked first, once a sitting.
    showSheet(m_book->sitting().crankConfirmed || readOnly() ? static_cast<MiddleSheet *>(m_valves) : m_crank);
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
    showSheet(m_again);
}

void BenchPage::typeSheet()
{
    if (!m_book || readOnly())
        return;
    if (!hasBegun()) {
        showSheet(m_sitting);
        return;
    }
    showSheet(m_paper);
}

void BenchPage::printSheet()
{
    if (m_book)
        m_saving->ask(m_desk.garage(), *job(), rememberedPaper());
}

void BenchPage::turnCrank()
{
    // What cannot be done yet is said where it is mended, at the head.
    if (const auto open = openNuts(m_book->state()); !open.empty()) {
        QStringList names;
        for (const PointId point : open)
            names.append(pointShort(*m_book->state().frame, point));
        showSheet(m_valves);
        m_valves->takeInHand(open.front());
        m_valves->bar()->refuse(sentence(Error{ErrorKind::NutStillOpen, {names.join(QStringLiteral(", ")).toStdString()}}));
        return;
    }
    if (!m_book->sitting().crankConfirmed) {
        showHead();
        return;
    }
    m_turn->propose();
    showSheet(m_turn);
}

bool BenchPage::showSheet(MiddleSheet *sheet)
{
    if (middleSheet() == m_paper && sheet != m_paper && !m_paper->mayLeave())
        return false;
    m_message->clear();
    const auto *joint = qobject_cast<JointSheet *>(sheet);
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

MiddleSheet *BenchPage::middleSheet() const
{
    return qobject_cast<MiddleSheet *>(m_middle->currentWidget());
}

void BenchPage::takeFocus()
{
    if (MiddleSheet *sheet = middleSheet())
        sheet->takeFocus();
    // A line that is done has nothing to press: the keyboard would wander off the page.
    const QWidget *now = QApplication::focusWidget();
    if (m_book && isVisible() && now && !isAncestorOf(now))
        steps()->setFocus(Qt::OtherFocusReason);
}

JointSheet *BenchPage::sheetToTakeBack(bool again)
{
    const JobState &state = m_book->state();
    auto seq = again ? redoable(state, m_desk.garage().seat()) : undoable(state, m_desk.garage().seat());
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
    return qobject_cast<JointSheet *>(middleSheet());
}

void BenchPage::takeBack(bool again)
{
    if (!m_book || !m_book->sitting().who || readOnly())
        return;
    // What is in sight takes it back; from elsewhere the sheet is shown where it was done.
    auto *joint = qobject_cast<JointSheet *>(middleSheet());
    if (!joint && sheet() != m_valves)
        joint = sheetToTakeBack(again);
    if (joint) {
        joint->takeBack(again);
        return;
    }
    if (sheet() != m_valves && !showSheet(m_valves))
        return;
    again ? m_valves->redo() : m_valves->undo();
}

} // namespace asleft
