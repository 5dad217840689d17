#pragma once

#include <bench/entry_bar.h>
#include <bench/tighten_rig.h>

#include <work/entries.h>

#include <functional>

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

/// What a wrench that is read shows would be logged as, of the fastener in hand.
using WouldLogReading = std::function<Result<TicksAsLogged>(const Typed<Torque> &reading)>;

/// What the bar shows of it with this rig.
EntryView tightenView(const TightenNow &now, const Rig &rig, DecimalMark mark, const WouldLogReading &wouldLog);

/// Of the key: by the newer revision where there is one.
QString beginAnewWords(const TightenNow &now);

} // namespace asleft
