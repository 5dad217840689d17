// What the bar says of a joint being tightened, and what it asks before something is ticked.
#include <bench/tighten_pane.h>

#include <words/errors.h>
#include <words/fasteners.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/readings.h>
#include <words/torque_tools.h>

#include <algorithm>

namespace asleft {

namespace {

/// A reading under half of what is wanted, or above twice, is more likely a slip of the finger.
bool farOff(Torque reading, Torque wanted)
{
    return reading * 2 < wanted || reading > wanted * 2;
}

/// A wrench's words for its adapter: another setting is another question.
QString settingKey(const Rig &rig)
{
    return QStringLiteral("%1 at %2").arg(rig.tool ? rig.tool->id.key() : 0).arg(rig.setting ? rig.setting->value.smallest() : 0);
}

} // namespace

QString TightenPane::roundKey() const
{
    return QStringLiteral("%1/%2/%3").arg(jointId().key()).arg(progress().pass).arg(progress().round);
}

QString TightenPane::aboutOf(const PendingTick &pending) const
{
    QStringList places;
    for (const TickSlot &place : pending.places)
        places.append(QString::number(place.fastener));
    return QStringLiteral("%1 %2 %3 %4 %5")
        .arg(roundKey(), places.join(QChar(u',')), pending.moved ? QStringLiteral("moved") : QString(),
             pending.whole ? QStringLiteral("whole") : QString(), pending.reading ? typedText(*pending.reading) : QString());
}

QString TightenPane::settingDoubt(const Rig &rig) const
{
    const bool outside = rig.kind == Rig::Kind::Wrench && !rig.isRead() && rig.reach && !rig.reach->reaches;
    if (!outside || m_agreed.contains(roundKey().section(QChar(u'/'), 0, 0) + QChar(u' ') + settingKey(rig)))
        return {};
    return tr("%1: %2. The same again ticks it with this wrench all the same.")
        .arg(QString::fromStdString(rig.tool->name), reachSentence(*rig.reach, *rig.tool));
}

QStringList TightenPane::doubts(const PendingTick &pending, const Rig &rig) const
{
    QStringList why{settingDoubt(rig)};
    if (pending.whole)
        why.append(
            tr("Tick all %n left of %1? The same again does it.", nullptr, int(pending.places.size())).arg(passPlace(joint(), pass())));
    for (const TickSlot &place : pending.places) {
        const FastenerState &fastener = worked().fasteners.at(place.fastener);
        if (fastener.amiss && fastener.found)
            why.append(tr("Fastener %1 was found so: %2. Say first what went in instead; the same again ticks it all the same.")
                           .arg(place.fastener)
                           .arg(foundText(*fastener.found)));
    }
    const auto &following = progress().next;
    const bool outOfOrder = !pending.whole && following && following->fastener != pending.places.front().fastener;
    if (outOfOrder && !m_agreed.contains(roundKey()))
        why.append(tr("Fastener %1 is next in the order. The same again ticks %2 before it.")
                       .arg(following->fastener)
                       .arg(pending.places.front().fastener));
    if (pending.reading && rig.setting && farOff(pending.reading->value, rig.setting->value))
        why.append(
            tr("%1 is far from the %2 asked for. Enter again logs it as typed.").arg(typedText(*pending.reading), typedText(*rig.setting)));
    why.removeAll(QString());
    return why;
}

void TightenPane::agree(const PendingTick &pending, const Rig &rig)
{
    const auto &following = progress().next;
    if (!pending.whole && following && following->fastener != pending.places.front().fastener)
        m_agreed.insert(roundKey());
    if (rig.reach && !rig.reach->reaches)
        m_agreed.insert(roundKey().section(QChar(u'/'), 0, 0) + QChar(u' ') + settingKey(rig));
}

QString TightenPane::nowWords() const
{
    if (progress().finished())
        return wants().kind == JointWants::Kind::Nothing ? tr("Every fastener is done. Enter goes on to the next line.")
                                                         : tr("Every fastener is ticked. Before this line is done:");
    const QString pending =
        tr("%1 · %2", "what the pass asks, pass 2 of 3").arg(passName(joint(), pass(), progress().round), passPlace(joint(), pass()));
    if (!inHand())
        return pending;
    if (placeInHand())
        return tr("Fastener %1 · %2", "number, what the pass asks").arg(*inHand()).arg(pending);
    return tr("Fastener %1 has this pass. Enter goes to fastener %2 · %3")
        .arg(*inHand())
        .arg(progress().next->fastener)
        .arg(passPlace(joint(), pass()));
}

/// What a typed reading amounts to at the fastener, with its verdict where the pass is judged.
QString TightenPane::judgementOf(const QString &text, const Rig &with) const
{
    const auto place = placeInHand();
    const auto reading = parse<Torque>(text.toStdString(), with.tool->torque->most.unit, context().mark());
    if (!reading || !place)
        return {};
    const auto logged = book().wouldLog(entryOf({.places = {*place}, .reading = *reading}, with));
    if (!logged)
        return sentence(logged.error());
    const TickMade &made = logged->made.front();
    QStringList words{typedText(*reading)};
    if (made.torque && with.fit)
        words.append(tr("%1 at the fastener").arg(torqueText(*made.torque, with.unit)));
    if (made.verdict)
        words.append(verdictName(*made.verdict));
    return words.join(QStringLiteral(", "));
}

JointBarView TightenPane::barView() const
{
    JointBarView view;
    view.readOnly = readOnly();
    view.keys = QList<KeyShown>(int(Key::BeginAnew) + 1, KeyShown::Hidden);
    view.words = QStringList(int(Key::BeginAnew) + 1, QString());
    view.now = nowWords();
    showWork(view);
    showAsked(view);
    return view;
}

void TightenPane::showWork(JointBarView &view) const
{
    const auto shown = [&view](Key key) -> KeyShown & { return view.keys[int(key)]; };
    const FastenerState *held = fastenerInHand();
    shown(Key::TakeBack) = held && !held->ticks.empty() ? KeyShown::On : KeyShown::Off;
    if (held && held->byFeel() && !held->feelAccepted)
        shown(Key::Accept) = KeyShown::On;
    const QString known = inHand() ? fastenerLines(state(), jointId(), *inHand()).join(QStringLiteral(" · ")) : QString();
    if (progress().finished()) {
        view.small = known;
        const bool settled = wants().kind == JointWants::Kind::Nothing;
        shown(Key::Done) = settled ? KeyShown::Strong : KeyShown::Hidden;
        view.words[int(Key::Done)] = tr("Go on");
        return;
    }
    const Rig with = rig();
    const bool ticks = placeInHand().has_value();
    const bool none = with.kind == Rig::Kind::NoneReaches;
    view.large = rigLarge(with, joint(), pass());
    view.small = rigSmall(with, joint(), pass());
    view.words[int(Key::Done)] = !ticks ? tr("Next") : settles() ? tr("did not move") : tr("Done");
    shown(Key::Done) = none && ticks ? KeyShown::Hidden : KeyShown::Strong;
    shown(Key::ByFeel) = with.kind == Rig::Kind::Hand ? KeyShown::Hidden : !ticks ? KeyShown::Off : none ? KeyShown::Strong : KeyShown::On;
    if (settles())
        shown(Key::Moved) = ticks && !none ? KeyShown::On : KeyShown::Off;
    shown(Key::WholePass) = rest().size() > 1 && !with.isRead() ? KeyShown::On : KeyShown::Off;
    shown(Key::Wrench) = with.kind == Rig::Kind::Hand ? KeyShown::Hidden : KeyShown::On;
    view.types = with.isRead() && ticks && with.setting;
    if (!view.types)
        return;
    if (with.band)
        view.small = tr("%1\n%2", "band, how the tool stands").arg(torqueBandText(*joint().target), view.small);
    view.echo = unitText(with.tool->torque->most.unit);
    view.worth = [this, with](const QString &text) { return judgementOf(text, with); };
}

void TightenPane::showAsked(JointBarView &view) const
{
    const auto shown = [&view](Key key) -> KeyShown & { return view.keys[int(key)]; };
    const JointWants asked = wants();
    view.asked = jointWantsSentence(asked, joint());
    switch (asked.kind) {
    case JointWants::Kind::Nothing: break;
    case JointWants::Kind::SayFitted:
        // One strong key at a time.
        for (const Key work : {Key::Done, Key::ByFeel})
            shown(work) = shown(work) == KeyShown::Strong ? KeyShown::On : shown(work);
        shown(Key::AllNew) = KeyShown::Strong;
        shown(Key::AllReused) = KeyShown::On;
        if (inHand() && asked.fasteners.size() > 1 && std::ranges::count(asked.fasteners, *inHand()) > 0)
            shown(Key::ThisReused) = KeyShown::On;
        break;
    case JointWants::Kind::AcceptReuse:
        shown(Key::AcceptAsked) = KeyShown::Strong;
        shown(Key::AllNew) = KeyShown::On;
        break;
    case JointWants::Kind::TorqueOutside:
        // What was taken to its yield point is never tightened once more.
        shown(joint().text.singleUse == SingleUse::TorqueToYield ? Key::BeginAnew : Key::Again) = KeyShown::Strong;
        shown(Key::AcceptAsked) = KeyShown::On;
        break;
    case JointWants::Kind::AcceptUnsettled: shown(Key::AcceptAsked) = KeyShown::Strong; break;
    }
    const bool anew = asked.kind == JointWants::Kind::TorqueOutside || asked.kind == JointWants::Kind::AcceptUnsettled;
    const Joint *newer = newerRevision();
    view.words[int(Key::BeginAnew)] = beginAnewWords();
    if ((anew || newer) && shown(Key::BeginAnew) == KeyShown::Hidden)
        shown(Key::BeginAnew) = KeyShown::On;
    if (!newer)
        return;
    const QString said = tr("There is a newer revision of this joint: %1").arg(jointSpecLine(*newer));
    view.asked = view.asked.isEmpty() ? said : tr("%1 %2", "two sentences").arg(view.asked, said);
}

const Joint *TightenPane::newerRevision() const
{
    const Joint *newest = state().frame->jointNow(jointId());
    return newest && newest->revision > worked().revision ? newest : nullptr;
}

QString TightenPane::beginAnewWords() const
{
    return newerRevision() ? tr("begin anew by it") : tr("begin anew");
}

} // namespace asleft
