#include <bench/tick_doubts.h>

#include "tighten_now.h"

#include <words/fasteners.h>
#include <words/joints.h>
#include <words/numbers.h>
#include <words/torque_tools.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

struct TickWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::TightenPane)
};

/// A reading under half of what is wanted, or above twice, is more likely a slip of the finger.
bool farOff(Torque reading, Torque wanted)
{
    return reading * 2 < wanted || reading > wanted * 2;
}

/// Another fastener is next in the order.
bool leavesOrder(const TightenNow &now, const PendingTick &pending)
{
    const auto &following = now.progress().next;
    return !pending.whole && following && following->fastener != pending.places.front().fastener;
}

} // namespace

TickDoubts::Doubt TickDoubts::outOfOrder(const TightenNow &now)
{
    return OutOfOrder{now.id, now.progress().pass, now.progress().round};
}

TickDoubts::Doubt TickDoubts::outOfReach(const TightenNow &now, const Rig &rig)
{
    return OutOfReach{now.id, rig.tool ? std::optional(rig.tool->id) : std::nullopt,
                      rig.setting ? std::optional(rig.setting->value) : std::nullopt};
}

bool TickDoubts::isAgreed(const Doubt &doubt) const
{
    return std::ranges::find(m_agreed, doubt) != m_agreed.end();
}

void TickDoubts::agree(const Doubt &doubt)
{
    if (!isAgreed(doubt))
        m_agreed.push_back(doubt);
}

void TickDoubts::agree(const TightenNow &now, const PendingTick &pending, const Rig &rig)
{
    if (leavesOrder(now, pending))
        agree(outOfOrder(now));
    if (rig.reach && !rig.reach->reaches)
        agree(outOfReach(now, rig));
}

QStringList TickDoubts::about(const TightenNow &now, const PendingTick &pending, const Rig &rig) const
{
    QStringList why;
    const bool outside = rig.kind == Rig::Kind::Wrench && !rig.isRead() && rig.reach && !rig.reach->reaches;
    if (outside && !isAgreed(outOfReach(now, rig)))
        why.append(TickWords::tr("%1: %2. The same again ticks it with this wrench all the same.")
                       .arg(QString::fromStdString(rig.tool->name), reachSentence(*rig.reach, *rig.tool)));
    if (pending.whole)
        why.append(TickWords::tr("Tick all %n left of %1? The same again does it.", nullptr, int(pending.places.size()))
                       .arg(passPlace(now.joint(), now.pass())));
    for (const TickSlot &place : pending.places) {
        const FastenerState &fastener = now.worked().fasteners.at(place.fastener);
        if (fastener.amiss && fastener.found)
            why.append(TickWords::tr("Fastener %1 was found so: %2. Say first what went in instead; the same again ticks it all the same.")
                           .arg(place.fastener)
                           .arg(foundText(*fastener.found)));
    }
    if (leavesOrder(now, pending) && !isAgreed(outOfOrder(now)))
        why.append(TickWords::tr("Fastener %1 is next in the order. The same again ticks %2 before it.")
                       .arg(now.progress().next->fastener)
                       .arg(pending.places.front().fastener));
    if (pending.reading && rig.setting && farOff(pending.reading->value, rig.setting->value))
        why.append(TickWords::tr("%1 is far from the %2 asked for. Enter again logs it as typed.")
                       .arg(typedText(*pending.reading), typedText(*rig.setting)));
    return why;
}

} // namespace asleft
