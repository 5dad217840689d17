#pragma once

#include "garage_fixture.h"

#include "bench/bench_page.h"
#include "bench/crank_sheet.h"
#include "bench/head_view.h"
#include "bench/open_column.h"
#include "bench/plan_sheet.h"
#include "bench/reading_bar.h"
#include "bench/reading_edit.h"
#include "bench/sitting_sheet.h"
#include "bench/step_sheet.h"
#include "bench/turn_sheet.h"
#include "bench/valve_sheet.h"
#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/ruled_list.h"
#include "parts/value_field.h"

#include <shop/outlook.h>
#include <work/jobs.h>
#include <work/specs.h>

#include <QLabel>

namespace asleft::testing {

/// All words a person can read on a widget now.
inline QString readable(const QWidget &widget)
{
    QStringList words;
    for (const auto *label : widget.findChildren<QLabel *>())
        if (label->isVisible())
            words.append(label->text());
    for (const auto *button : widget.findChildren<QAbstractButton *>())
        if (button->isVisible())
            words.append(button->text());
    return words.join(QChar::LineFeed).remove(QChar(0x200B));
}

/// The point of this short name ("E3") in a job.
inline PointId pointNamed(const JobBook &book, const char *name)
{
    const JobFrame &frame = *book.state().frame;
    for (const SettingPoint &point : frame.engine.points)
        if (shortName(frame.engine.design, point.adjuster) == name)
            return point.id;
    qFatal("no point %s", name);
}

inline QString nameOf(const JobBook &book, std::optional<PointId> point)
{
    const JobFrame &frame = *book.state().frame;
    return point ? QString::fromStdString(shortName(frame.engine.design, frame.point(*point)->adjuster)) : QString();
}

/// Where nobody has said yet where the crank stands nothing is proposed: the first place is chosen and confirmed.
inline void confirmFirstPlace()
{
    press(Qt::Key_Return);
    press(Qt::Key_Return);
}

/// Types a reading and presses Enter, the keyboard being where the Bench left it.
inline void logTyped(const QString &text)
{
    type(text);
    press(Qt::Key_Return);
}

/// A four in line with lash specs, its valve set open on the Bench, somebody at it, the crank confirmed at no. 1 on compression.
struct Bench {
    explicit Bench(bool withSpecs = true)
    {
        made = addFour(*shop.garage);
        if (withSpecs)
            addSpecs();
        addLeaves();
        const auto job = openJob(*shop.garage, made->vehicle, made->engine, builtInSheets().front(), "Set the valves");
        page = std::make_unique<BenchPage>(*shop.desk);
        page->openJob(*job);
        present(*page);
        page->takeFocus();
        type(QStringLiteral("MK"));
        press(Qt::Key_Return);
        page->viewStep(valveStep());
        confirmFirstPlace();
    }

    void addSpecs()
    {
        SpecText text;
        text.source = {"Hollin workshop manual", "41", Certainty::ReadInManual};
        text.band = "0.25-0.35 mm";
        QVERIFY(reviseSpec(*shop.garage, made->engine, SpecSubject::IntakeLash, text));
        text.band = "0.40 ± 0.05 mm";
        QVERIFY(reviseSpec(*shop.garage, made->engine, SpecSubject::ExhaustLash, text));
    }

    void addLeaves() { QVERIFY(addFeelerSet(*shop.garage, "bench set", "0.05-1.00 by 0.05 mm", LengthUnit::Millimetre)); }

    [[nodiscard]] StepId valveStep() const
    {
        for (const Step &step : page->book()->state().frame->job.steps)
            if (step.kind == StepKind::ValveSet)
                return step.id;
        qFatal("no valve set");
    }

    [[nodiscard]] const JobState &state() const { return page->book()->state(); }
    [[nodiscard]] const PointState &point(const char *name) const { return state().point(pointNamed(*page->book(), name)); }
    [[nodiscard]] QString inHand() const { return nameOf(*page->book(), page->valveSheet()->inHand()); }
    [[nodiscard]] ReadingBar *bar() const { return page->valveSheet()->bar(); }
    [[nodiscard]] QString said() const { return bar()->message()->sentence(); }
    void take(const char *name) const { page->valveSheet()->takeInHand(pointNamed(*page->book(), name)); }

    Shop shop;
    std::optional<NewVehicle> made;
    std::unique_ptr<BenchPage> page;
};

} // namespace asleft::testing
