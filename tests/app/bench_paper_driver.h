#pragma once

#include "bench_driver.h"

namespace asleft::testing {

/// A twelve in V: 24 points.
inline BenchEngine twelve()
{
    BenchEngine engine = four();
    engine.engine.layout = Layout::Vee;
    engine.engine.cylinders = 12;
    engine.engine.firingOrder = "1-12-5-8-3-10-6-7-2-11-4-9";
    return engine;
}

inline BenchEngine bridged()
{
    BenchEngine engine = four();
    engine.engine.valves = "4";
    engine.engine.bridged = true;
    engine.engine.bridgeScrews = true;
    engine.engine.injectors = true;
    engine.specs.push_back({SpecSubject::BridgeScrew, "1/8 turn"});
    engine.specs.push_back({SpecSubject::Injector, "0.50 ± 0.05 mm"});
    return engine;
}

/// The bench with the sheet in front of it.
struct Paper : Bench {
    explicit Paper(const BenchEngine &engine = four(), std::shared_ptr<const Clock> clock = nullptr) : Bench(engine, std::move(clock))
    {
        click(page->pane<ValvePane>()->sheetKey());
        sheet = page->pane<BenchSheetPane>();
    }

    [[nodiscard]] PaperLine *line(const char *point) const
    {
        for (PaperLine *each : sheet->lines())
            if (each->point() == pointNamed(*page->book(), point))
                return each;
        qFatal("no line of %s", point);
    }

    [[nodiscard]] PaperBox *box(const char *point, Phase phase) const { return line(point)->field(phase); }

    void typeAt(const char *point, Phase phase, const QString &text) const
    {
        box(point, phase)->setFocus();
        type(text);
    }

    [[nodiscard]] QStringList order() const
    {
        QStringList names;
        for (const PaperLine *each : sheet->lines())
            names.append(nameOf(*page->book(), each->point()));
        return names;
    }

    BenchSheetPane *sheet = nullptr;
};

} // namespace asleft::testing
