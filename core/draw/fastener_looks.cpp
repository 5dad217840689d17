#include <draw/joint_drawing.h>

#include <QCoreApplication>

#include <algorithm>

namespace asleft {

namespace {

class FastenerLooks {
    Q_DECLARE_TR_FUNCTIONS(FastenerLooks)
};

bool isAmiss(const FastenerState &fastener)
{
    return fastener.amiss && fastener.ticks.empty();
}

/// Of the torque where that is outside or not proved, since it is what is shown; of the feeling else.
bool isAccepted(const FastenerState &fastener)
{
    if (fastener.stage != FastenerStage::Tight)
        return false;
    return fastener.outside() ? fastener.torqueAccepted.has_value() : fastener.byFeel() && fastener.feelAccepted;
}

/// It has no tick yet in the round in hand.
bool isToTick(const TighteningProgress &progress, int fastener)
{
    const std::vector<int> &done = progress.doneInRound;
    return !progress.finished() && std::find(done.begin(), done.end(), fastener) == done.end();
}

QString tightWords(const FastenerLook &look)
{
    if (look.verdict == Verdict::Low)
        return FastenerLooks::tr("tight, below its band");
    if (look.verdict == Verdict::High)
        return FastenerLooks::tr("tight, above its band");
    if (look.verdict == Verdict::TooClose)
        return FastenerLooks::tr("tight, not proved to be inside");
    if (look.byFeel || look.verdict == Verdict::ByFeel)
        return FastenerLooks::tr("tight by feel");
    return look.verdict == Verdict::Inside ? FastenerLooks::tr("tight, inside") : FastenerLooks::tr("tight");
}

QString stageWords(const FastenerLook &look)
{
    switch (look.stage) {
    case FastenerStage::Untouched: return FastenerLooks::tr("untouched");
    case FastenerStage::Loose: return FastenerLooks::tr("loose");
    case FastenerStage::Partway: return FastenerLooks::tr("partway");
    case FastenerStage::Tight: return tightWords(look);
    }
    return {};
}

} // namespace

FastenerLook lookOf(const JobState &state, JointId joint, int fastener, bool inHand)
{
    const JointState &now = state.joints.at(joint);
    const FastenerState &it = now.fasteners.at(fastener);
    FastenerLook look;
    look.stage = it.stage;
    if (it.stage == FastenerStage::Tight)
        look.verdict = it.verdict();
    look.byFeel = it.byFeel();
    look.amiss = isAmiss(it);
    look.accepted = isAccepted(it);
    look.toTick = isToTick(now.progress, fastener);
    look.inHand = inHand;
    return look;
}

QString lookWords(const FastenerLook &look)
{
    QString words = stageWords(look);
    if (look.amiss)
        words = FastenerLooks::tr("%1, found missing, broken or of the wrong length").arg(words);
    return look.accepted ? FastenerLooks::tr("%1, accepted").arg(words) : words;
}

QList<FastenerLegendLine> fastenerLegend()
{
    QList<FastenerLegendLine> lines;
    const auto add = [&lines](const FastenerLook &look) { lines.append({look, lookWords(look)}); };
    using Stage = FastenerStage;
    add({});
    add({.stage = Stage::Loose});
    add({.stage = Stage::Loose, .amiss = true});
    add({.stage = Stage::Partway});
    for (const Verdict verdict : {Verdict::Inside, Verdict::Low, Verdict::High, Verdict::TooClose})
        add({.stage = Stage::Tight, .verdict = verdict});
    add({.stage = Stage::Tight, .verdict = Verdict::ByFeel, .byFeel = true});
    for (const Verdict verdict : {Verdict::Low, Verdict::High, Verdict::TooClose})
        add({.stage = Stage::Tight, .verdict = verdict, .accepted = true});
    add({.stage = Stage::Tight, .verdict = Verdict::ByFeel, .byFeel = true, .accepted = true});
    lines.append({FastenerLook{.toTick = true}, FastenerLooks::tr("still to be ticked in this pass")});
    lines.append({FastenerLook{.inHand = true}, FastenerLooks::tr("in hand")});
    return lines;
}

} // namespace asleft
