#include <bench/tighten_view.h>

#include "tighten_now.h"

#include <words/errors.h>
#include <words/fasteners.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/torque_tools.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

struct TightenWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::TightenPane)
};

QString nowWords(const TightenNow &now)
{
    if (now.progress().finished())
        return now.wants().kind == JointWants::Kind::Nothing ? TightenWords::tr("Every fastener is done. Enter goes on to the next line.")
                                                             : TightenWords::tr("Every fastener is ticked. Before this line is done:");
    const QString pending = TightenWords::tr("%1 · %2", "what the pass asks, pass 2 of 3")
                                .arg(passName(now.joint(), now.pass(), now.progress().round), passPlace(now.joint(), now.pass()));
    if (!now.inHand)
        return pending;
    if (now.placeInHand())
        return TightenWords::tr("Fastener %1 · %2", "number, what the pass asks").arg(*now.inHand).arg(pending);
    return TightenWords::tr("Fastener %1 has this pass. Enter goes to fastener %2 · %3")
        .arg(*now.inHand)
        .arg(now.progress().next->fastener)
        .arg(passPlace(now.joint(), now.pass()));
}

/// What a typed reading amounts to at the fastener, with its verdict where the pass is judged.
QString readAtFastener(const QString &text, const Rig &with, DecimalMark mark, const WouldLogReading &wouldLog)
{
    const auto reading = parse<Torque>(text.toStdString(), with.tool->torque->most.unit, mark);
    if (!reading)
        return {};
    const auto logged = wouldLog(*reading);
    if (!logged)
        return sentence(logged.error());
    const TickMade &made = logged->made.front();
    QStringList words{typedText(*reading)};
    if (made.torque && with.fit)
        words.append(TightenWords::tr("%1 at the fastener").arg(torqueText(*made.torque, with.unit)));
    if (made.verdict)
        words.append(verdictName(*made.verdict));
    return words.join(QStringLiteral(", "));
}

void showWork(EntryView &view, const TightenNow &now, const Rig &with, DecimalMark mark, const WouldLogReading &wouldLog)
{
    const auto shown = [&view](TightenKey key) -> KeyShown & { return view.shown(int(key)); };
    const FastenerState *held = now.fastenerInHand();
    shown(TightenKey::TakeBack) = held && !held->ticks.empty() ? KeyShown::On : KeyShown::Off;
    if (held && held->byFeel() && !held->feelAccepted)
        shown(TightenKey::Accept) = KeyShown::On;
    const QString known = now.inHand ? fastenerLines(now.state, now.id, *now.inHand).join(QStringLiteral(" · ")) : QString();
    if (now.progress().finished()) {
        view.small = known;
        const bool settled = now.wants().kind == JointWants::Kind::Nothing;
        shown(TightenKey::Done) = settled ? KeyShown::Strong : KeyShown::Hidden;
        view.keys[int(TightenKey::Done)].words = TightenWords::tr("Go on");
        return;
    }
    const bool ticks = now.placeInHand().has_value();
    const bool none = with.kind == Rig::Kind::NoneReaches;
    view.large = rigLarge(with, now.joint(), now.pass());
    view.small = rigSmall(with, now.joint(), now.pass());
    view.keys[int(TightenKey::Done)].words = !ticks          ? TightenWords::tr("Next")
                                             : now.settles() ? TightenWords::tr("did not move")
                                                             : TightenWords::tr("Done");
    shown(TightenKey::Done) = none && ticks ? KeyShown::Hidden : KeyShown::Strong;
    shown(TightenKey::ByFeel) = with.kind == Rig::Kind::Hand ? KeyShown::Hidden
                                : !ticks                     ? KeyShown::Off
                                : none                       ? KeyShown::Strong
                                                             : KeyShown::On;
    if (now.settles())
        shown(TightenKey::Moved) = ticks && !none ? KeyShown::On : KeyShown::Off;
    shown(TightenKey::WholePass) = now.rest().size() > 1 && !with.isRead() ? KeyShown::On : KeyShown::Off;
    shown(TightenKey::Wrench) = with.kind == Rig::Kind::Hand ? KeyShown::Hidden : KeyShown::On;
    if (!with.isRead() || !ticks || !with.setting)
        return;
    view.field = EntryView::Field::On;
    if (with.band)
        view.small = TightenWords::tr("%1\n%2", "band, how the tool stands").arg(torqueBandText(*now.joint().target), view.small);
    view.echo = unitText(with.tool->torque->most.unit);
    view.preview = [with, mark, wouldLog](const QString &text) {
        return Preview{.words = text.isEmpty() ? QString() : readAtFastener(text, with, mark, wouldLog)};
    };
}

void showAsked(EntryView &view, const TightenNow &now)
{
    const auto shown = [&view](TightenKey key) -> KeyShown & { return view.shown(int(key)); };
    const JointWants asked = now.wants();
    view.asked = jointWantsSentence(asked, now.joint());
    switch (asked.kind) {
    case JointWants::Kind::Nothing: break;
    case JointWants::Kind::SayFitted:
        // One strong key at a time.
        for (const TightenKey work : {TightenKey::Done, TightenKey::ByFeel})
            shown(work) = shown(work) == KeyShown::Strong ? KeyShown::On : shown(work);
        shown(TightenKey::AllNew) = KeyShown::Strong;
        shown(TightenKey::AllReused) = KeyShown::On;
        if (now.inHand && asked.fasteners.size() > 1 && std::ranges::count(asked.fasteners, *now.inHand) > 0)
            shown(TightenKey::ThisReused) = KeyShown::On;
        break;
    case JointWants::Kind::AcceptReuse:
        shown(TightenKey::AcceptAsked) = KeyShown::Strong;
        shown(TightenKey::AllNew) = KeyShown::On;
        break;
    case JointWants::Kind::TorqueOutside:
        // What was taken to its yield point is never tightened once more.
        shown(now.joint().text.singleUse == SingleUse::TorqueToYield ? TightenKey::BeginAnew : TightenKey::Again) = KeyShown::Strong;
        shown(TightenKey::AcceptAsked) = KeyShown::On;
        break;
    case JointWants::Kind::AcceptUnsettled: shown(TightenKey::AcceptAsked) = KeyShown::Strong; break;
    }
    const bool anew = asked.kind == JointWants::Kind::TorqueOutside || asked.kind == JointWants::Kind::AcceptUnsettled;
    const Joint *newer = now.newerRevision();
    view.keys[int(TightenKey::BeginAnew)].words = beginAnewWords(now);
    if ((anew || newer) && shown(TightenKey::BeginAnew) == KeyShown::Hidden)
        shown(TightenKey::BeginAnew) = KeyShown::On;
    if (!newer)
        return;
    const QString said = TightenWords::tr("There is a newer revision of this joint: %1").arg(jointSpecLine(*newer));
    view.asked = view.asked.isEmpty() ? said : TightenWords::tr("%1 %2", "two sentences").arg(view.asked, said);
}

} // namespace

QList<BarKey> tightenKeys()
{
    using Place = BarKey::Place;
    return {
        {int(TightenKey::Done), TightenWords::tr("Done"), TightenWords::tr("This fastener is done: on to the next"), {}},
        {int(TightenKey::Moved), TightenWords::tr("moved"), TightenWords::tr("It moved before the wrench gave way"), u'm'},
        {int(TightenKey::ByFeel), TightenWords::tr("by feel"), TightenWords::tr("Done by feel, not measured"), u'f'},
        {int(TightenKey::WholePass), TightenWords::tr("whole pass"), TightenWords::tr("Tick all that are left of this pass"), u'a'},
        {int(TightenKey::TakeBack), TightenWords::tr("take back"), TightenWords::tr("Take the last tick of this fastener back"), u't'},
        {int(TightenKey::Wrench), TightenWords::tr("wrench"), TightenWords::tr("Choose the wrench and the adapter on it"), u'w',
         Place::Seldom, true},
        {int(TightenKey::Accept), TightenWords::tr("accept"), TightenWords::tr("Accept that it was done by feel, with a reason"), u'c'},
        {int(TightenKey::AllNew), TightenWords::tr("all new"), TightenWords::tr("All of them are new"), u'n', Place::Answer},
        {int(TightenKey::AllReused), TightenWords::tr("all reused"), TightenWords::tr("All of them were used before"), u'r', Place::Answer},
        {int(TightenKey::ThisReused), TightenWords::tr("this one reused"), TightenWords::tr("The one in hand was used before"), u'u',
         Place::Answer},
        {int(TightenKey::AcceptAsked), TightenWords::tr("accept"), TightenWords::tr("Accept what is asked about, with a reason"), u'c',
         Place::Answer},
        {int(TightenKey::Again), TightenWords::tr("tighten again"), TightenWords::tr("Take the target back and tighten again"), u'g',
         Place::Answer},
        {int(TightenKey::BeginAnew), TightenWords::tr("begin anew"), TightenWords::tr("Tighten from the beginning, by the newest revision"),
         u'b', Place::Answer},
    };
}

QString beginAnewWords(const TightenNow &now)
{
    return now.newerRevision() ? TightenWords::tr("begin anew by it") : TightenWords::tr("begin anew");
}

EntryView tightenView(const TightenNow &now, const Rig &rig, DecimalMark mark, const WouldLogReading &wouldLog)
{
    EntryView view;
    view.now = nowWords(now);
    showWork(view, now, rig, mark, wouldLog);
    showAsked(view, now);
    return view;
}

} // namespace asleft
