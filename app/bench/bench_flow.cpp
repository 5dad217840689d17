#include <bench/bench_flow.h>

#include "keep_plan.h"
#include <bench/pane_registry.h>
#include <bench/session_pane.h>
#include <bench/valve_pane.h>

#include <QStackedWidget>

#include <algorithm>

namespace asleft {

namespace {

/// The line of this kind that works a joint; nullptr without.
const Step *jointStep(const JobState &state, JointId joint, StepKind kind)
{
    const auto &steps = state.frame->job.steps;
    const auto isFor = [&](const Step &step) { return step.kind == kind && step.joint == joint; };
    const auto found = std::ranges::find_if(steps, isFor);
    return found == steps.end() ? nullptr : &*found;
}

/// The line of the joint that the act which would be taken back is about; nullptr where it is about none.
const Step *stepToTakeBack(const JobState &state, std::optional<ActSeq> seq)
{
    const auto actAt = [&](std::optional<ActSeq> at) {
        return std::ranges::find(state.acts, at, [](const Act &act) { return std::optional(act.seq); });
    };
    auto act = actAt(seq);
    if (act != state.acts.end() && act->what.withdraws)
        act = actAt(act->what.withdraws);
    const auto joint = act == state.acts.end() ? std::nullopt : jointOf(act->what.fact);
    if (!joint)
        return nullptr;
    return jointStep(state, *joint, std::holds_alternative<LoosenedFact>(act->what.fact) ? StepKind::Loosen : StepKind::Tighten);
}

} // namespace

BenchFlow::BenchFlow(AppContext &context, JobBook &book, QStackedWidget *stack) : m_context(context), m_book(book), m_stack(stack) {}

BenchFlow::~BenchFlow()
{
    for (const auto &[maker, pane] : m_panes) {
        // What is told of while it goes is of no pane any more.
        pane->disconnect(this);
        delete pane;
    }
}

Pane *BenchFlow::current() const
{
    return qobject_cast<Pane *>(m_stack->currentWidget());
}

Pane *BenchFlow::pane(PaneMaker maker) const
{
    const auto known = m_panes.find(maker);
    return known == m_panes.end() ? nullptr : known->second;
}

Pane &BenchFlow::made(PaneMaker maker)
{
    if (Pane *known = pane(maker))
        return *known;
    Pane *fresh = maker(m_context, m_book);
    m_panes[maker] = fresh;
    m_stack->addWidget(fresh);
    connect(fresh, &Pane::wanted, this, &BenchFlow::show);
    connect(fresh, &Pane::keypadTargetChanged, this, &BenchFlow::keypadTargetChanged);
    connect(fresh, &Pane::finished, this, [this](const QString &said) {
        goOn();
        if (!said.isEmpty())
            Q_EMIT done(said);
    });
    return *fresh;
}

bool BenchFlow::hasBegun() const
{
    return m_book.session().who || m_context.garage().readOnly();
}

bool BenchFlow::bring(Pane &pane)
{
    if (current() && current() != &pane && !current()->mayLeave())
        return false;
    if (const auto own = pane.ownStep())
        m_viewed = own;
    pane.open();
    m_stack->setCurrentWidget(&pane);
    Q_EMIT shown();
    return true;
}

bool BenchFlow::show(const PaneWanted &wanted)
{
    const PaneMaker maker = hasBegun() ? wanted.pane : PaneMaker(makePane<SessionPane>);
    Pane &pane = made(maker);
    if (const auto first = pane.asksFirst())
        return show(*first);
    if (!bring(pane) || maker != wanted.pane)
        return false;
    if (wanted.about)
        pane.takeUp(*wanted.about);
    if (wanted.done)
        pane.tellDone(*wanted.done);
    if (!wanted.refused.isEmpty())
        pane.tellRefused(wanted.refused);
    return true;
}

void BenchFlow::viewStep(StepId id)
{
    const Step *step = m_book.state().frame->step(id);
    if (!step)
        return;
    if (current() && !current()->mayLeave()) {
        Q_EMIT stayed();
        return;
    }
    m_viewed = id;
    const PaneMaker maker = paneFor(step->kind);
    if (hasBegun())
        made(maker).showStep(id);
    show({maker});
}

void BenchFlow::goOn()
{
    keepPlan(m_book);
    const JobState &state = m_book.state();
    if (std::holds_alternative<next::LockNut>(nextAct(state)))
        show({paneFor(StepKind::ValveSet)});
    else if (const Step *step = firstUndone(state))
        viewStep(step->id);
    else if (!state.frame->job.steps.empty())
        viewStep(m_viewed.value_or(state.frame->job.steps.back().id));
}

void BenchFlow::openSubject(const Subject &about)
{
    if (!hasBegun())
        return;
    if (std::holds_alternative<PointId>(about)) {
        show({paneFor(StepKind::ValveSet), about});
    } else if (const auto *step = std::get_if<StepId>(&about)) {
        viewStep(*step);
    } else if (const auto *fasteners = std::get_if<FastenerSubject>(&about)) {
        const Step *line = jointStep(m_book.state(), fasteners->joint, StepKind::Tighten);
        if (!line)
            line = jointStep(m_book.state(), fasteners->joint, StepKind::Loosen);
        if (!line)
            return;
        viewStep(line->id);
        if (current() && current() == pane(paneFor(line->kind)))
            current()->takeUp(about);
    }
}

void BenchFlow::openSession()
{
    if (current() && !current()->mayLeave())
        return;
    Pane *old = pane(makePane<SessionPane>);
    if (old) {
        m_panes.erase(makePane<SessionPane>);
        old->disconnect(this);
    }
    bring(made(makePane<SessionPane>));
    // It may be its own key that is being pressed.
    if (old)
        old->deleteLater();
}

void BenchFlow::takeBack(bool again)
{
    if (!m_book.session().who || m_context.garage().readOnly())
        return;
    if (current() && current()->takeBack(again))
        return;
    const JobState &state = m_book.state();
    const std::string_view station = m_context.garage().station();
    const Step *line = stepToTakeBack(state, again ? redoable(state, station) : undoable(state, station));
    if (line)
        viewStep(line->id);
    else if (!bring(made(makePane<ValvePane>)))
        return;
    if (current())
        current()->takeBack(again);
}

bool BenchFlow::mayLoseJob()
{
    for (const auto &[maker, pane] : m_panes)
        if (!pane->mayLose()) {
            show({maker});
            return false;
        }
    return true;
}

} // namespace asleft
