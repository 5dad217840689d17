#pragma once

#include "bench_driver.h"

#include <bench/loosen_pane.h>
#include <bench/tighten_pane.h>
#include <drawn/joint_view.h>

namespace asleft::testing {

/// One thing done to a joint that comes loose: what is left of it is out, or on to the next line.
inline void loosenOn(const BenchPage &bench)
{
    const LoosenPane &sheet = *bench.pane<LoosenPane>();
    const auto acts = bench.book()->state().acts.size();
    const auto step = sheet.step();
    const auto isHere = [&] { return bench.sheet() == &sheet && sheet.step() == step; };
    const JobState &state = bench.book()->state();
    const auto &fasteners = state.joints.at(*state.frame->step(*step)->joint).fasteners;
    const auto left = std::ranges::count_if(fasteners, [](const auto &each) { return !each.second.found; });
    if (left == 0) {
        press(Qt::Key_Return);
        QVERIFY2(!isHere(), qPrintable(readable(sheet)));
        return;
    }
    KeyButton *out = sheet.key(left > 1 ? LoosenPane::Key::RestOut : LoosenPane::Key::Out);
    for (int asked = 0; asked < 2 && bench.book()->state().acts.size() == acts; ++asked)
        click(out);
    QVERIFY2(bench.book()->state().acts.size() == acts + 1, qPrintable(readable(sheet)));
}

/// One thing done to a joint that is tightened: the fastener in hand is ticked, by feel where no wrench reaches.
inline void tightenOn(const BenchPage &bench)
{
    const TightenPane &sheet = *bench.pane<TightenPane>();
    const auto acts = bench.book()->state().acts.size();
    const auto step = sheet.step();
    const auto isHere = [&] { return bench.sheet() == &sheet && sheet.step() == step; };
    for (int asked = 0; asked < 3 && isHere() && bench.book()->state().acts.size() == acts; ++asked) {
        if (sheet.bar()->asksReason())
            type(QStringLiteral("no wrench here reaches it"));
        press(Qt::Key_Return);
    }
    QVERIFY2(!isHere() || bench.book()->state().acts.size() > acts, qPrintable(readable(sheet)));
}

/// What was tightened by feel may stay so, for a reason.
inline void acceptFeel(const BenchPage &bench)
{
    const TightenPane &sheet = *bench.pane<TightenPane>();
    const auto acts = bench.book()->state().acts.size();
    click(sheet.key(TightenPane::Key::Accept));
    type(QStringLiteral("it sits in a plastic clamp"));
    press(Qt::Key_Return);
    QVERIFY2(bench.book()->state().acts.size() == acts + 1, qPrintable(readable(sheet)));
}

} // namespace asleft::testing
