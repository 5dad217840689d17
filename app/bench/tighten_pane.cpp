#include <bench/tighten_pane.h>

#include <bench/rig_pane.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/reading_edit.h>

#include <words/errors.h>
#include <words/joints.h>

#include <QStackedWidget>

#include <algorithm>

namespace asleft {

namespace {

QList<JointBarKey> tightenKeys()
{
    using Place = JointBarKey::Place;
    return {
        {TightenPane::tr("Done"), TightenPane::tr("This fastener is done: on to the next"), {}},
        {TightenPane::tr("moved"), TightenPane::tr("It moved before the wrench gave way"), u'm'},
        {TightenPane::tr("by feel"), TightenPane::tr("Done by feel, not measured"), u'f'},
        {TightenPane::tr("whole pass"), TightenPane::tr("Tick all that are left of this pass"), u'a'},
        {TightenPane::tr("take back"), TightenPane::tr("Take the last tick of this fastener back"), u't'},
        {TightenPane::tr("wrench"), TightenPane::tr("Choose the wrench and the adapter on it"), u'w', Place::Seldom},
        {TightenPane::tr("accept"), TightenPane::tr("Accept that it was done by feel, with a reason"), u'c'},
        {TightenPane::tr("all new"), TightenPane::tr("All of them are new"), u'n', Place::Answer},
        {TightenPane::tr("all reused"), TightenPane::tr("All of them were used before"), u'r', Place::Answer},
        {TightenPane::tr("this one reused"), TightenPane::tr("The one in hand was used before"), u'u', Place::Answer},
        {TightenPane::tr("accept"), TightenPane::tr("Accept what is asked about, with a reason"), u'c', Place::Answer},
        {TightenPane::tr("tighten again"), TightenPane::tr("Take the target back and tighten again"), u'g', Place::Answer},
        {TightenPane::tr("begin anew"), TightenPane::tr("Tighten from the beginning, by the newest revision"), u'b', Place::Answer},
    };
}

} // namespace

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
    return rigOf(*state().frame, joint(), std::min(pass(), joint().passes.size() - 1), choice(), today());
}

bool TightenPane::settles() const
{
    return !progress().finished() && std::holds_alternative<Settle>(joint().passes.at(pass()));
}

std::optional<int> TightenPane::next() const
{
    if (progress().next)
        return progress().next->fastener;
    const JointWants asked = wants();
    return asked.fasteners.empty() ? std::nullopt : std::optional(asked.fasteners.front());
}

std::vector<TickSlot> TightenPane::rest() const
{
    return restOfPass(joint().tightening(), progress());
}

std::optional<TickSlot> TightenPane::placeInHand() const
{
    const auto left = rest();
    const auto place = std::ranges::find(left, inHand(), [](const TickSlot &each) { return std::optional(each.fastener); });
    return place == left.end() ? std::nullopt : std::optional(*place);
}

const FastenerState *TightenPane::fastenerInHand() const
{
    const auto known = inHand() ? worked().fasteners.find(*inHand()) : worked().fasteners.end();
    return known == worked().fasteners.end() ? nullptr : &known->second;
}

qsizetype TightenPane::legsDone() const
{
    if (progress().finished())
        return qsizetype(joint().order.size());
    const auto &done = progress().doneInRound;
    const auto isDone = [&](int number) { return std::ranges::count(done, number) > 0; };
    return std::ranges::find_if_not(joint().order, isDone) - joint().order.begin();
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
    case Key::AllReused: log([&] { return book().sayFitted(jointId(), wants().fasteners, Fitted::Reused); }); return;
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
        placeInHand() && !rig().isRead() ? tickInHand(false) : moveOn();
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
    if (progress().finished()) {
        if (wants().kind == JointWants::Kind::Nothing)
            Q_EMIT finished();
        return;
    }
    if (const auto following = next(); following && following != inHand())
        takeInHand(*following);
}

void TightenPane::tickInHand(bool moved, const std::optional<Typed<Torque>> &reading)
{
    if (const auto place = placeInHand(); place && !readOnly())
        tick({{*place}, moved, false, reading});
    else
        moveOn();
}

void TightenPane::tickRest()
{
    if (const auto places = rest(); !places.empty())
        tick({places, false, true});
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
    if (!mayGoOn(aboutOf(pending), doubts(pending, with)))
        return;
    agree(pending, with);
    log([&] { return book().tick(entryOf(pending, with)); });
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

/// Whoever presses Enter from line to line has not looked yet whether they are new.
void TightenPane::sayNew()
{
    const auto fasteners = wants().fasteners;
    if (mayGoOn(QStringLiteral("new"), {tr("%1: looked at, and new? The same again logs it.").arg(fastenersName(fasteners))}))
        log([&] { return book().sayFitted(jointId(), fasteners, Fitted::New); });
}

void TightenPane::byFeel()
{
    const auto place = placeInHand();
    if (place)
        tickByFeel({{*place}});
    else
        bar()->refuse(tr("This fastener has this pass already. Nothing was logged."));
}

void TightenPane::tickByFeel(const PendingTick &pending)
{
    Rig none;
    none.kind = Rig::Kind::NoneReaches;
    if (!mayGoOn(aboutOf(pending) + QStringLiteral(" by feel"), doubts(pending, none)))
        return;
    agree(pending, none);
    const ReasonFor what{ReasonFor::What::Feel, pending.places, pending.moved, joint().revision};
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
    const JointWants asked = wants();
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
    const JointWants asked = wants();
    if (asked.fasteners.empty())
        return;
    const bool held = inHand() && std::ranges::count(asked.fasteners, *inHand()) > 0;
    log([&] { return book().untickTarget(jointId(), held ? *inHand() : asked.fasteners.front()); });
}

void TightenPane::beginAnew()
{
    const QString question = newerRevision()
                                 ? tr("Everything ticked by the old revision is to be done again by the new one. “%1” once more begins it.")
                                 : tr("Every fastener is to be tightened again from the first pass. “%1” once more begins it.");
    if (mayGoOn(QStringLiteral("begin anew"), {question.arg(beginAnewWords())}))
        log([&] { return book().beginJoint(jointId()); });
}

void TightenPane::askRig()
{
    m_rigPane->ask(state().frame, joint(), std::min(pass(), joint().passes.size() - 1), choice(), today());
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
