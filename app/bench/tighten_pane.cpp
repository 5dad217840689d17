#include <bench/tighten_pane.h>

#include "tighten_now.h"
#include <bench/rig_pane.h>
#include <bench/tighten_view.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>

#include <words/errors.h>
#include <words/joints.h>

#include <QStackedWidget>

#include <algorithm>

namespace asleft {

TightenPane::TightenPane(AppContext &context, JobBook &book)
    : JointPane(context, book, tr("Torque read"), tightenKeys()), m_rigPane(new RigPane(context.mark()))
{
    stack()->addWidget(m_rigPane);
    for (const Key which : {Key::Done, Key::Moved, Key::ByFeel, Key::WholePass, Key::TakeBack, Key::Accept, Key::AllNew, Key::AllReused,
                            Key::ThisReused, Key::AcceptAsked, Key::Again, Key::BeginAnew})
        keepFromWriting(context.garage(), {key(which)});
    connect(m_rigPane, &RigPane::left, this, &TightenPane::leaveRig);
    connect(m_rigPane, &RigPane::chosen, this, [this](const RigChoice &chosen) {
        RigChoice &kept = m_choices[jointId()];
        // Of a pass by angle nothing is said of wrenches, and the other way round.
        if (rig().kind == Rig::Kind::Angle) {
            kept.byMark = chosen.byMark;
            kept.gauge = chosen.gauge;
        } else {
            kept.wrench = chosen.wrench;
            kept.fit = chosen.fit;
        }
        voidQuestion();
        bar()->quiet();
        leaveRig();
    });
}

TightenNow TightenPane::now() const
{
    return {state(), jointId(), inHand()};
}

std::optional<int> TightenPane::next() const
{
    return now().next();
}

qsizetype TightenPane::legsDone() const
{
    return now().legsDone();
}

void TightenPane::takeFocus()
{
    if (stack()->currentWidget() == m_rigPane)
        m_rigPane->takeFocus();
    else
        JointPane::takeFocus();
}

RigChoice TightenPane::choice() const
{
    const auto chosen = m_choices.find(jointId());
    return chosen == m_choices.end() ? RigChoice{} : chosen->second;
}

Rig TightenPane::rig() const
{
    return rigOf(*state().frame, joint(), now().passOrLast(), choice(), today());
}

EntryView TightenPane::barView() const
{
    const Rig with = rig();
    return tightenView(now(), with, context().mark(), [this, with](const Typed<Torque> &reading) -> Result<TicksAsLogged> {
        const auto place = now().placeInHand();
        if (!place)
            return fail(ErrorKind::NothingToLog);
        return book().wouldLog(entryOf({.places = {*place}, .reading = reading}, with));
    });
}

void TightenPane::press(int which)
{
    if (readOnly() && Key(which) != Key::Wrench)
        return;
    switch (Key(which)) {
    case Key::Done: enter(bar()->edit()->isVisibleTo(this) ? bar()->edit()->text().trimmed() : QString()); return;
    case Key::Moved: enterMoved(); return;
    case Key::ByFeel: byFeel(); return;
    case Key::WholePass: tickRest(); return;
    case Key::TakeBack:
        if (inHand())
            log([&] { return book().untick(jointId(), *inHand()); });
        return;
    case Key::Wrench: askRig(); return;
    case Key::Accept: askReason({ReasonFor::What::AcceptFeel}); return;
    case Key::AcceptAsked: askReason({ReasonFor::What::AcceptAsked}); return;
    case Key::AllNew: sayNew(); return;
    case Key::AllReused: log([&] { return book().sayFitted(jointId(), now().wants().fasteners, Fitted::Reused); }); return;
    case Key::ThisReused:
        if (inHand())
            log([&] { return book().sayFitted(jointId(), {*inHand()}, Fitted::Reused); });
        return;
    case Key::Again: tightenAgain(); return;
    case Key::BeginAnew: beginAnew(); return;
    }
}

void TightenPane::enter(const QString &text)
{
    if (text.isEmpty()) {
        // A wrench that is read wants its reading; one that is set has said enough by giving way.
        now().placeInHand() && !rig().isRead() ? tickInHand(false) : moveOn();
        return;
    }
    enterReading(text, false);
}

/// Of a wrench that is read, the reading goes with it.
void TightenPane::enterMoved()
{
    const QString text = bar()->edit()->text().trimmed();
    if (!rig().isRead())
        tickInHand(true);
    else if (text.isEmpty())
        bar()->refuse(tr("What the wrench showed is typed first. Nothing was logged."));
    else
        enterReading(text, true);
}

void TightenPane::enterReading(const QString &text, bool moved)
{
    const Rig with = rig();
    const auto reading = with.isRead() ? parse<Torque>(text.toStdString(), with.tool->torque->most.unit, context().mark())
                                       : Result<Typed<Torque>>(fail(ErrorKind::EmptyText));
    if (!reading)
        bar()->refuse(sentence(reading.error()));
    else
        tickInHand(moved, *reading);
}

/// Enter on nothing logs nothing: it goes to the fastener that is next, or on to the next line.
void TightenPane::moveOn()
{
    if (now().progress().finished()) {
        if (now().wants().kind == JointWants::Kind::Nothing)
            Q_EMIT finished();
        return;
    }
    if (const auto following = next(); following && following != inHand())
        takeInHand(*following);
}

void TightenPane::tickInHand(bool moved, const std::optional<Typed<Torque>> &reading)
{
    if (const auto place = now().placeInHand(); place && !readOnly())
        tick({{*place}, moved, false, reading});
    else
        moveOn();
}

void TightenPane::tickRest()
{
    if (const auto places = now().rest(); !places.empty())
        tick({places, false, true});
}

TickEntry TightenPane::entryOf(const PendingTick &pending, const Rig &with) const
{
    TickEntry entry{
        .joint = jointId(), .places = pending.places, .moved = pending.moved, .how = TickHow::ByHand, .revision = joint().revision};
    if (with.kind == Rig::Kind::Angle)
        entry.how = TickHow::ByAngle;
    else if (with.kind == Rig::Kind::Wrench)
        entry.how = with.isRead() ? TickHow::ReadTool : TickHow::SetTool;
    if (with.tool)
        entry.tool = with.tool->id;
    entry.fit = with.fit;
    entry.setting = with.setting;
    entry.reading = pending.reading;
    return entry;
}

void TightenPane::tick(const PendingTick &pending)
{
    const Rig with = rig();
    if (with.kind == Rig::Kind::NoneReaches) {
        tickByFeel(pending);
        return;
    }
    if (with.wrong) {
        bar()->refuse(sentence(*with.wrong));
        return;
    }
    const TickEntry entry = entryOf(pending, with);
    if (!mayGoOn(TickAsked{entry, pending.whole}, m_doubts.about(now(), pending, with)))
        return;
    m_doubts.agree(now(), pending, with);
    log([&] { return book().tick(entry); });
}

/// Whoever presses Enter from line to line has not looked yet whether they are new.
void TightenPane::sayNew()
{
    const auto fasteners = now().wants().fasteners;
    if (mayGoOn(FittedNew{fasteners}, {tr("%1: looked at, and new? The same again logs it.").arg(fastenersName(fasteners))}))
        log([&] { return book().sayFitted(jointId(), fasteners, Fitted::New); });
}

void TightenPane::byFeel()
{
    const auto place = now().placeInHand();
    if (place)
        tickByFeel({{*place}});
    else
        bar()->refuse(tr("This fastener has this pass already. Nothing was logged."));
}

void TightenPane::tickByFeel(const PendingTick &pending)
{
    Rig none;
    none.kind = Rig::Kind::NoneReaches;
    const ReasonFor what{ReasonFor::What::Feel, pending.places, pending.moved, joint().revision};
    if (!mayGoOn(TickAsked{feelEntry(jointId(), what, {}), pending.whole}, m_doubts.about(now(), pending, none)))
        return;
    m_doubts.agree(now(), pending, none);
    const auto reason = m_feelReasons.find(jointId());
    if (reason == m_feelReasons.end())
        askReason(what);
    else
        log([&] { return book().tick(feelEntry(jointId(), what, reason->second)); });
}

TickEntry TightenPane::feelEntry(JointId joint, const ReasonFor &what, const std::string &reason)
{
    return {
        .joint = joint, .places = what.places, .moved = what.moved, .how = TickHow::ByFeel, .reason = reason, .revision = what.revision};
}

void TightenPane::askReason(const ReasonFor &what)
{
    m_reasonFor = what;
    switch (what.what) {
    case ReasonFor::What::Feel: bar()->askReason(tr("Why by feel; asked once for this joint"), tr("tick it")); return;
    case ReasonFor::What::AcceptFeel: bar()->askReason(tr("Why it may stay as it is, by feel"), tr("accept it")); return;
    case ReasonFor::What::AcceptAsked: bar()->askReason(tr("Why it may stay as it is"), tr("accept it")); return;
    }
}

void TightenPane::takeReason(const QString &reason)
{
    if (!m_reasonFor)
        return;
    if (reason.isEmpty()) {
        bar()->refuse(sentence(Error{ErrorKind::ReasonMissing, {}}));
        return;
    }
    const ReasonFor what = *m_reasonFor;
    const std::string why = reason.toStdString();
    switch (what.what) {
    case ReasonFor::What::Feel: {
        const auto logged = doing([&] { return book().tick(feelEntry(jointId(), what, why)); });
        if (logged)
            m_feelReasons[jointId()] = why;
        after(logged);
        return;
    }
    case ReasonFor::What::AcceptFeel:
        if (inHand())
            log([&] { return book().acceptJoint(jointId(), AcceptedWhat::ByFeel, {*inHand()}, why); });
        return;
    case ReasonFor::What::AcceptAsked: acceptAsked(why); return;
    }
}

void TightenPane::acceptAsked(const std::string &why)
{
    const JointWants asked = now().wants();
    switch (asked.kind) {
    case JointWants::Kind::AcceptReuse:
        log([&] { return book().acceptJoint(jointId(), AcceptedWhat::Reused, asked.fasteners, why); });
        return;
    case JointWants::Kind::TorqueOutside:
        log([&] { return book().acceptJoint(jointId(), AcceptedWhat::Torque, asked.fasteners, why); });
        return;
    case JointWants::Kind::AcceptUnsettled: log([&] { return book().acceptJoint(jointId(), AcceptedWhat::Unsettled, {}, why); }); return;
    case JointWants::Kind::Nothing:
    case JointWants::Kind::SayFitted:
        // Another computer has answered meanwhile.
        bar()->clearValue();
        refresh();
        takeFocus();
        return;
    }
}

/// The tick that decides is taken back, with what came on top of it: of the one in hand, if it is one of those asked about.
void TightenPane::tightenAgain()
{
    const JointWants asked = now().wants();
    if (asked.fasteners.empty())
        return;
    const bool held = inHand() && std::ranges::count(asked.fasteners, *inHand()) > 0;
    log([&] { return book().untickTarget(jointId(), held ? *inHand() : asked.fasteners.front()); });
}

void TightenPane::beginAnew()
{
    const QString question = now().newerRevision()
                                 ? tr("Everything ticked by the old revision is to be done again by the new one. “%1” once more begins it.")
                                 : tr("Every fastener is to be tightened again from the first pass. “%1” once more begins it.");
    if (mayGoOn(BegunAnew{now().newerRevision() ? now().newerRevision()->revision : worked().revision},
                {question.arg(beginAnewWords(now()))}))
        log([&] { return book().beginJoint(jointId()); });
}

void TightenPane::askRig()
{
    m_rigPane->ask(state().frame, joint(), now().passOrLast(), choice(), today());
    stack()->setCurrentWidget(m_rigPane);
    m_rigPane->takeFocus();
}

void TightenPane::leaveRig()
{
    stack()->setCurrentIndex(0);
    refresh();
    takeFocus();
}

} // namespace asleft
