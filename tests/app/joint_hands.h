#pragma once

#include "bench_driver.h"

#include "bench/joint_sheet_reason.h"
#include "bench/joint_view.h"
#include "bench/loosen_sheet.h"
#include "bench/tighten_sheet.h"

namespace asleft::testing {

/// One thing done to a joint that comes loose: what is left of it is out.
inline void loosenOn(const BenchPage &bench)
{
    const LoosenSheet &sheet = *bench.loosenSheet();
    const auto acts = bench.book()->state().acts.size();
    if (sheet.key(LoosenSheet::Key::RestOut)->isVisible() && sheet.key(LoosenSheet::Key::RestOut)->isEnabled()) {
        click(sheet.key(LoosenSheet::Key::RestOut));
        if (bench.book()->state().acts.size() == acts)
            click(sheet.key(LoosenSheet::Key::RestOut)); // it is asked about once
        QVERIFY2(bench.book()->state().acts.size() == acts + 1, qPrintable(readable(sheet)));
        return;
    }
    press(Qt::Key_Return);
    QVERIFY2(bench.sheet() != &sheet || bench.book()->state().acts.size() > acts, qPrintable(readable(sheet)));
}

/// One thing done to a joint that is tightened: the fastener in hand is ticked, by feel where no wrench reaches.
inline void tightenOn(const BenchPage &bench)
{
    const TightenSheet &sheet = *bench.tightenSheet();
    const auto acts = bench.book()->state().acts.size();
    for (int asked = 0; asked < 3 && bench.sheet() == &sheet && bench.book()->state().acts.size() == acts; ++asked) {
        if (sheet.bar()->asksReason())
            type(QStringLiteral("no wrench here reaches it"));
        press(Qt::Key_Return);
    }
    QVERIFY2(bench.sheet() != &sheet || bench.book()->state().acts.size() > acts, qPrintable(readable(sheet)));
}

/// What was tightened by feel may stay so, for a reason.
inline void acceptFeel(const BenchPage &bench)
{
    const TightenSheet &sheet = *bench.tightenSheet();
    const auto acts = bench.book()->state().acts.size();
    click(sheet.key(TightenSheet::Key::Accept));
    type(QStringLiteral("it sits in a plastic clamp"));
    press(Qt::Key_Return);
    QVERIFY2(bench.book()->state().acts.size() == acts + 1, qPrintable(readable(sheet)));
}

} // namespace asleft::testing
