#include "bridges.h"

#include <shop/outlook.h>

namespace asleft {

namespace {

/// The adjuster of one kind at the pair another is at: both are counted alike along their side of the cylinder.
const SettingPoint *ofSamePair(const JobFrame &frame, AdjusterRef adjuster, PointKind is, PointKind wanted)
{
    if (adjuster.kind != is)
        return nullptr;
    adjuster.kind = wanted;
    return frame.pointAt(adjuster);
}

} // namespace

const SettingPoint *bridgeOf(const JobFrame &frame, const SettingPoint &lash)
{
    return ofSamePair(frame, lash.adjuster, PointKind::Lash, PointKind::BridgeScrew);
}

const SettingPoint *lashOfBridge(const JobFrame &frame, const SettingPoint &bridge)
{
    return ofSamePair(frame, bridge.adjuster, PointKind::BridgeScrew, PointKind::Lash);
}

} // namespace asleft
