#include "bench/tighten_sheet.h"

#include "bench/reading_edit.h"
#include "bench/tighten_rig_sheet.h"
#include "parts/key_button.h"
#include "read_only.h"

#include <show/joint_words.h>
#include <show/words.h>

#include <QStackedWidget>

#include <algorithm>

namespace asleft {

namespace {

QList<JointBarKey> tightenKeys()
{
    using Place = JointBarKey::Place;
    return {
        {TightenSheet::tr("Done"), TightenSheet::tr("This fastener is done: on to the next"), {}},
        {TightenSheet::tr("moved"), TightenSheet::tr("It moved before the wrench gave way"), u'm'},
        {TightenSheet::tr("by feel"), TightenSheet::tr("Done by feel, not measured"), u'f'},
        {TightenSheet::tr("whole pass"), TightenSheet::tr("Tick all that are left of this pass"), u'a'},
        {TightenSheet::tr("take back"), TightenSheet::tr("Take the last tick of this fastener back"), u't'},
        {TightenSheet::tr("wrench"), TightenSheet::tr("Choose the wrench and the adapter on it"), u'w', Place::Seldom},
        {TightenSheet::tr("accept"), TightenSheet::tr("Accept that it was done by feel, with a reason"), u'c'},
        {TightenSheet::tr("all new"), TightenSheet::tr("All of them are new"), u'n', Place::Answer},
        {TightenSheet::tr("all reused"), TightenSheet::tr("All of them were used before"), u'r', Place::Answer},
        {TightenSheet::tr("this one reused"), TightenSheet::tr("The one in hand was used before"), u'u', Place::Answer},
        {TightenSheet::tr("accept"), TightenSheet::tr("Accept what is asked about, with a reason"), u'c', Place::Answer},
        {TightenSheet::tr("tighten again"), TightenSheet::tr("Take the target back and tighten again"), u'g', Place::Answer},
        {TightenSheet::tr("begin anew"), TightenSheet::tr("Tighten from the beginning, by the newest revision"), u'b', Place::Answer},
    };
}

} // namespace

TightenSheet::TightenSheet(Desk &desk, JobBook &book)
    : JointSheet(desk, book, tr("Torque read"), tightenKeys()), m_rigSheet(new TightenRigSheet(desk.mark()))
{
    stack()->addWidget(m_rigSheet);
    for (const Key which : {Key::Done, Key::Moved, Key::ByFeel, Key::WholePass, Key::TakeBack, Key::Accept, Key::AllNew, Key::AllReused,
                            Key::ThisReused, Key::AcceptAsked, Key::Again, Key::BeginAnew})
        keepFromWriting(desk.garage(), {key(which)});
    connect(m_rigSheet, &TightenRigSheet::left, this, &TightenSheet::leaveRig);
    connect(m_rigSheet, &TightenRigSheet::chosen, this, [this](const RigChoice &chosen) {
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

void TightenSheet::takeFocus()
{
    if (stack()->currentWidget() == m_rigSheet)
        m_rigSheet->takeFocus();
    else
        JointSheet::takeFocus();
}

RigChoice TightenSheet::choice() const
{
    const auto chosen = m_choices.find(jointId());
    return chosen == m_choices.end() ? RigChoice{} : chosen->second;
}

Rig TightenSheet::rig() const
{
    return rigOf(*state().frame, joint(), std::min(pass(), joint().passes.size() - 1), choice(), today());
}

bool TightenSheet::settles() const
{
    return !progress().finished() && std::holds_alternative<Settle>(joint().passes.at(pass()));
}

std::optional<int> TightenSheet::next() const
{
    if (progress().next)
        return progress().next->fastener;
    const JointWants asked = wants();
    return asked.fasteners.empty() ? std::nullopt : std::optional(asked.fasteners.front());
}

std::vector<TickPlace> TightenSheet::rest() const
{
    return restOfPass(joint().tightening(), progress());
}

std::optional<TickPlace> TightenSheet::placeInHand() const
{
    const auto left = rest();
    const auto place = std::ranges::find(left, inHand(), [](const TickPlace &each) { return std::optional(each.fastener); });
    return place == left.end() ? std::nullopt : std::optional(*place);
}

const FastenerState *TightenSheet::fastenerInHand() const
{
    const auto known = inHand() ? worked().fasteners.find(*inHand()) : worked().fasteners.end();
    return known == worked().fasteners.end() ? nullptr : &known->second;
}

qsizetype TightenSheet::legsDone() const
{
    if (progress().finished())
        return qsizetype(joint().order.size());
    const auto &done = progress().doneInRound;
    const auto isDone = [&](int number) { return std::ranges::count(done, number) > 0; };
    return std::ranges::find_if_not(joint().order, isDone) - joint().order.begin();
}

void TightenSheet::press(int which)
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
            after(book().untick(jointId(), *inHand()));
        return;
    case Key::Wrench: askRig(); return;
    case Key::Accept: askReason({ReasonFor::What::AcceptFeel}); return;
    case Key::AcceptAsked: askReason({ReasonFor::What::AcceptAsked}); return;
    case Key::AllNew: sayNew(); return;
    case Key::AllReused: after(book().sayFitted(jointId(), wants().fasteners, Fitted::Reused)); return;
    case Key::ThisReused:
        if (inHand())
            after(book().sayFitted(jointId(), {*inHand()}, Fitted::Reused));
        return;
    case Key::Again: tightenAgain(); return;
    case Key::BeginAnew: beginAnew(); return;
    }
}

void TightenSheet::enter(const QString &text)
{
    if (text.isEmpty()) {
        // A wrench that is read wants its reading; one that is set has said enough by giving way.
        placeInHand() && !rig().isRead() ? tickInHand(false) : moveOn();
        return;
    }
    enterReading(text, false);
}

/// Of a wrench that is read, the reading goes with it.
void TightenSheet::enterMoved()
{
    const QString text = bar()->edit()->text().trimmed();
    if (!rig().isRead())
        tickInHand(true);
    else if (text.isEmpty())
        bar()->refuse(tr("What the wrench showed is typed first. Nothing was logged."));
    else
        enterReading(text, true);
}

void TightenSheet::enterReading(const QString &text, bool moved)
{
    const Rig with = rig();
    const auto reading = with.isRead() ? parse<Torque>(text.toStdString(), with.tool->torque->most.unit, desk().mark())
                                       : Result<Typed<Torque>>(fail(ErrorKind::EmptyText));
    if (!reading)
        bar()->refuse(sentence(reading.error()));
    else
        tickInHand(moved, *reading);
}

/// Enter on nothing logs nothing: it goes to the fastener that is next, or on to the next line.
void TightenSheet::moveOn()
{
    if (progress().finished()) {
        if (wants().kind == JointWants::Kind::Nothing)
            Q_EMIT finished();
        return;
    }
    if (const auto following = next(); following && following != inHand())
        takeInHand(*following);
}

void TightenSheet::tickInHand(bool moved, const std::optional<Typed<Torque>> &reading)
{
    if (const auto place = placeInHand(); place && !readOnly())
        tick({{*place}, moved, false, reading});
    else
        moveOn();
}

void TightenSheet::tickRest()
{
    if (const auto places = rest(); !places.empty())
        tick({places, false, true});
}

void TightenSheet::tick(const Deed &deed)
{
    const Rig with = rig();
    if (with.kind == Rig::Kind::NoneReaches) {
        tickByFeel(deed);
        return;
    }
    if (with.wrong) {
        bar()->refuse(sentence(*with.wrong));
        return;
    }
    if (!mayGoOn(aboutOf(deed), doubts(deed, with)))
        return;
    TickEntry entry{.joint = jointId(), .places = deed.places, .moved = deed.moved, .how = TickHow::ByHand, .revision = joint().revision};
    if (with.kind == Rig::Kind::Angle)
        entry.how = TickHow::ByAngle;
    else if (with.kind == Rig::Kind::Wrench)
        entry.how = with.isRead() ? TickHow::ReadTool : TickHow::SetTool;
    if (with.tool)
        entry.tool = with.tool->id;
    entry.fit = with.fit;
    entry.setting = with.setting;
    entry.reading = deed.reading;
    agree(deed, with);
    after(book().tick(entry));
}

/// Whoever presses Enter from line to line has not looked yet whether they are new.
void TightenSheet::sayNew()
{
    const auto fasteners = wants().fasteners;
    if (mayGoOn(QStringLiteral("new"), {tr("%1: looked at, and new? The same again logs it.").arg(fastenersName(fasteners))}))
        after(book().sayFitted(jointId(), fasteners, Fitted::New));
}

void TightenSheet::byFeel()
{
    const auto place = placeInHand();
    if (place)
        tickByFeel({{*place}});
    else
        bar()->refuse(tr("This fastener has this pass already. Nothing was logged."));
}

void TightenSheet::tickByFeel(const Deed &deed)
{
    Rig none;
    none.kind = Rig::Kind::NoneReaches;
    if (!mayGoOn(aboutOf(deed) + QStringLiteral(" by feel"), doubts(deed, none)))
        return;
    agree(deed, none);
    const ReasonFor what{ReasonFor::What::Feel, deed.places, deed.moved, joint().revision};
    const auto reason = m_feelReasons.find(jointId());
    if (reason == m_feelReasons.end())
        askReason(what);
    else
        after(book().tick(feelEntry(jointId(), what, reason->second)));
}

TickEntry TightenSheet::feelEntry(JointId joint, const ReasonFor &what, const std::string &reason)
{
    return {
        .joint = joint, .places = what.places, .moved = what.moved, .how = TickHow::ByFeel, .reason = reason, .revision = what.revision};
}

void TightenSheet::askReason(const ReasonFor &what)
{
    m_reasonFor = what;
    switch (what.what) {
    case ReasonFor::What::Feel: bar()->askReason(tr("Why by feel; asked once for this joint"), tr("tick it")); return;
    case ReasonFor::What::AcceptFeel: bar()->askReason(tr("Why it may stay as it is, by feel"), tr("accept it")); return;
    case ReasonFor::What::AcceptAsked: bar()->askReason(tr("Why it may stay as it is"), tr("accept it")); return;
    }
}

void TightenSheet::takeReason(const QString &reason)
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
        const auto logged = book().tick(feelEntry(jointId(), what, why));
        if (logged)
            m_feelReasons[jointId()] = why;
        after(logged);
        return;
    }
    case ReasonFor::What::AcceptFeel:
        if (inHand())
            after(book().acceptJoint(jointId(), AcceptedWhat::ByFeel, {*inHand()}, why));
        return;
    case ReasonFor::What::AcceptAsked: acceptAsked(why); return;
    }
}

void TightenSheet::acceptAsked(const std::string &why)
{
    const JointWants asked = wants();
    switch (asked.kind) {
    case JointWants::Kind::AcceptReuse: after(book().acceptJoint(jointId(), AcceptedWhat::Reused, asked.fasteners, why)); return;
    case JointWants::Kind::TorqueOutside: after(book().acceptJoint(jointId(), AcceptedWhat::Torque, asked.fasteners, why)); return;
    case JointWants::Kind::AcceptUnsettled: after(book().acceptJoint(jointId(), AcceptedWhat::Unsettled, {}, why)); return;
    case JointWants::Kind::Nothing:
    case JointWants::Kind::SayFitted:
        // Another seat has answered meanwhile.
        bar()->clearValue();
        refresh();
        takeFocus();
        return;
    }
}

/// The tick that decides is taken back, with what came on top of it: of the one in hand, if it is one of those asked about.
void TightenSheet::tightenAgain()
{
    const JointWants asked = wants();
    if (asked.fasteners.empty())
        return;
    const bool held = inHand() && std::ranges::count(asked.fasteners, *inHand()) > 0;
    after(book().untickTarget(jointId(), held ? *inHand() : asked.fasteners.front()));
}

void TightenSheet::beginAnew()
{
    const QString question = newerRevision()
                                 ? tr("Everything ticked by the old revision is to be done again by the new one. “%1” once more begins it.")
                                 : tr("Every fastener is to be tightened again from the first pass. “%1” once more begins it.");
    if (mayGoOn(QStringLiteral("begin anew"), {question.arg(beginAnewWords())}))
        after(book().beginJoint(jointId()));
}

void TightenSheet::askRig()
{
    m_rigSheet->ask(state().frame, joint(), std::min(pass(), joint().passes.size() - 1), choice(), today());
    stack()->setCurrentWidget(m_rigSheet);
    m_rigSheet->takeFocus();
}

void TightenSheet::leaveRig()
{
    stack()->setCurrentIndex(0);
    refresh();
    takeFocus();
}

} // namespace asleft
