#pragma once

#include <bench/entry_bar.h>
#include <bench/tighten_rig.h>

namespace asleft {

struct TightenNow;

/// What is done to a joint that is tightened.
enum class TightenKey {
    Done,
    Moved,
    ByFeel,
    WholePass,
    TakeBack,
    Wrench,
    Accept,
    AllNew,
    AllReused,
    ThisReused,
    AcceptAsked,
    Again,
    BeginAnew
};
QList<BarKey> tightenKeys();

/// What the bar shows of it with this rig.
EntryView tightenView(const TightenNow &now, const Rig &rig, DecimalMark mark);

/// Of the key: by the newer revision where there is one.
QString beginAnewWords(const TightenNow &now);

} // namespace asleft
