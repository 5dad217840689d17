#pragma once

#include "support.h"

#include <demo_garage.h>
#include <work/joints.h>

#include <algorithm>

namespace asleft {

/// The invented garage, made anew, and read by a computer that was not there.
class DemoTest : public WorkTest {
protected:
    std::unique_ptr<Garage> made(const std::string &name)
    {
        need(makeDemoGarage(inFolder(name)));
        return need(Garage::open(inFolder(name), {clock, std::make_shared<ScriptedUids>("reader"), "reader"}));
    }
    std::unique_ptr<Garage> demo = made("demo.asleft");

    /// The jobs of a vehicle, the one worked on last first.
    std::vector<std::unique_ptr<JobBook>> booksFor(std::string_view vehicle)
    {
        std::vector<std::unique_ptr<JobBook>> books;
        for (const JobLine &line : need(jobs(*demo))) {
            if (line.vehicleName == vehicle)
                books.push_back(need(JobBook::open(*demo, line.id)));
        }
        return books;
    }
    std::unique_ptr<JobBook> bookFor(std::string_view vehicle)
    {
        auto books = booksFor(vehicle);
        if (books.empty())
            throw std::runtime_error("no job of that vehicle");
        return std::move(books.front());
    }
    VehicleRow rowOf(std::string_view vehicle)
    {
        const auto rows = need(vehicles(*demo));
        const auto found = std::ranges::find(rows, vehicle, [](const VehicleRow &row) { return row.vehicle.name; });
        if (found == rows.end())
            throw std::runtime_error("no such vehicle");
        return *found;
    }
};

inline PointId pointOf(const JobBook &book, std::string_view name)
{
    const Engine &engine = book.state().frame->engine;
    const auto named = [&](const SettingPoint &known) { return shortName(engine.design, known.adjuster) == name; };
    const auto found = std::ranges::find_if(engine.points, named);
    if (found == engine.points.end())
        throw std::runtime_error("no point " + std::string(name));
    return found->id;
}

} // namespace asleft
