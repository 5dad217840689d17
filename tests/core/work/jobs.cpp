// Job sheets, and jobs opened from them.
#include "support.h"

#include <algorithm>

namespace asleft {
namespace jobs_tests {

TEST(Sheets, EveryBuiltInOneIsReadable)
{
    const auto sheets = builtInSheets();
    ASSERT_FALSE(sheets.empty());
    for (const JobSheet &sheet : sheets) {
        EXPECT_FALSE(sheet.title.empty());
        ASSERT_FALSE(sheet.lines.empty()) << sheet.title;
        for (const SheetLine &line : sheet.lines)
            EXPECT_FALSE(line.title.empty()) << sheet.title;
    }
}

TEST(Sheets, TheValvesHaveOneValveSetBetweenTheirLines)
{
    const JobSheet valves = builtInSheets().front();
    EXPECT_EQ(valves.title, "Set the valves");
    EXPECT_EQ(std::ranges::count(valves.lines, StepKind::ValveSet, &SheetLine::kind), 1);
    const SheetLine &chocks = valves.lines.front();
    EXPECT_EQ(chocks.before, Gate::TurningTheCrank);
    EXPECT_EQ(chocks.cautions, (std::vector{Caution::StandsAndChocks, Caution::Neutral, Caution::BatteryOff}));
    EXPECT_EQ(valves.lines.back().before, Gate::HandOver);
    const auto start = std::ranges::find(valves.lines, "First start", &SheetLine::title);
    ASSERT_NE(start, valves.lines.end());
    EXPECT_EQ(start->cautions, (std::vector{Caution::FluidsFilled, Caution::MeansToStop, Caution::FluidAndFire}));
}

class Jobs : public WorkTest {
protected:
    NewVehicle tractor = need(addVehicle(*garage, tractorText()));
    Result<JobId> openOne(std::string_view title)
    {
        return openJob(*garage, tractor.vehicle, tractor.engine, builtInSheets().front(), title);
    }
};

TEST_F(Jobs, AreOpenedWithTheLinesOfTheirSheet)
{
    int told = 0;
    QObject::connect(garage.get(), &Garage::changed, [&](const Change &change) { told += change.what == Change::What::Jobs ? 1 : 100; });
    EXPECT_EQ(refusal(openOne("  ")), ErrorKind::NameMissing);
    EXPECT_EQ(refusal(openOne(std::string(201, 'x'))), ErrorKind::TextTooLong);
    EXPECT_EQ(told, 0);
    const JobId id = need(openOne(" Valves "));
    EXPECT_EQ(told, 1);

    const auto book = need(JobBook::open(*garage, id));
    const Job &job = book->state().frame->job;
    EXPECT_EQ(job.title, "Valves");
    EXPECT_EQ(job.opened, Moment{1'000'000});
    const JobSheet sheet = builtInSheets().front();
    ASSERT_EQ(job.steps.size(), sheet.lines.size());
    for (std::size_t i = 0; i < sheet.lines.size(); ++i) {
        EXPECT_EQ(job.steps[i].kind, sheet.lines[i].kind);
        EXPECT_EQ(job.steps[i].title, sheet.lines[i].title);
        EXPECT_EQ(job.steps[i].detail, sheet.lines[i].detail);
        EXPECT_EQ(job.steps[i].before, sheet.lines[i].before);
        EXPECT_EQ(job.steps[i].cautions, sheet.lines[i].cautions);
    }
    EXPECT_EQ(book->state().frame->vehicle.name, "Tractor");
    EXPECT_EQ(book->state().frame->meter->thousandths, 3'812'000);
}

TEST_F(Jobs, TheOneWorkedOnLastComesFirst)
{
    const PersonId marta = need(addPerson(*garage, "M.K.", ""));
    clock->set({1000});
    const JobId first = need(openOne("First"));
    clock->set({2000});
    const JobId second = need(openOne("Second"));
    EXPECT_EQ(need(jobs(*garage)).at(0).id, second);

    clock->set({3000});
    const auto book = need(JobBook::open(*garage, first));
    book->setWho(marta);
    need(book->confirmCrank(degrees(0)));
    const auto lines = need(jobs(*garage));
    ASSERT_EQ(lines.size(), 2U);
    EXPECT_EQ(lines[0].id, first);
    EXPECT_EQ(lines[0].lastAct, Moment{3000});
    EXPECT_EQ(lines[0].vehicleName, "Tractor");
    EXPECT_EQ(lines[1].id, second);
    EXPECT_FALSE(lines[1].lastAct);
}

TEST_F(Jobs, AJobThatIsNotThere)
{
    EXPECT_EQ(refusal(JobBook::open(*garage, JobId(99))), ErrorKind::NotFound);
    EXPECT_EQ(refusal(openJob(*garage, VehicleId(99), tractor.engine, builtInSheets().front(), "Valves")), ErrorKind::NotFound);
    EXPECT_EQ(refusal(openJob(*garage, tractor.vehicle, EngineId(99), builtInSheets().front(), "Valves")), ErrorKind::NotFound);
    const NewVehicle other = need(addVehicle(*garage, tractorText()));
    EXPECT_EQ(refusal(openJob(*garage, other.vehicle, tractor.engine, builtInSheets().front(), "Valves")), ErrorKind::NotFound);
    EXPECT_TRUE(need(jobs(*garage)).empty());
}

} // namespace jobs_tests
} // namespace asleft
