#pragma once

#include "typed.h"
#include "work_texts.h"

#include <scripted.h>
#include <work/job_book.h>
#include <work/jobs.h>
#include <work/specs.h>
#include <work/vehicles.h>
#include <work/workshop.h>

#include <gtest/gtest.h>

#include <filesystem>
#include <stdexcept>

namespace asleft {

std::string saidOf(const Error &error);

/// What must have succeeded, or the end of the test.
template <class T>
T need(Result<T> result)
{
    if (!result)
        throw std::runtime_error(saidOf(result.error()));
    return *std::move(result);
}
inline void need(const Done &done)
{
    if (!done)
        throw std::runtime_error(saidOf(done.error()));
}

/// The kind of what must have been refused.
template <class T>
ErrorKind refusal(const Result<T> &result)
{
    if (result)
        throw std::runtime_error("was not refused");
    return result.error().kind;
}

VehicleText tractorText();
/// A single with hydraulic tappets that bleed down for 15 minutes.
VehicleText hydraulicText();

/// Moves this program to another zone of time, as POSIX writes it.
void liveIn(const char *zone);

/// Owns a folder with one garage file in it, whose clock and uids are the test's; fails on any warning Qt logs meanwhile.
class WorkTest : public testing::Test {
public:
    WorkTest();
    ~WorkTest() override;
    WorkTest(const WorkTest &) = delete;
    WorkTest &operator=(const WorkTest &) = delete;

protected:
    [[nodiscard]] std::string inFolder(const std::string &name) const { return (m_folder / name).string(); }
    /// The garage file, opened once more, by this computer.
    [[nodiscard]] std::unique_ptr<Garage> openedBy(const std::string &station) const;

private:
    std::filesystem::path m_folder; ///< stands before what is made in it

public:
    std::shared_ptr<ScriptedClock> clock = std::make_shared<ScriptedClock>();
    std::string path;
    std::unique_ptr<Garage> garage;
};

/// A garage with a tractor (in-line four 1-3-4-2, intakes 0.30 ± 0.05 mm, exhausts 0.40 ± 0.05 mm) whose valve job is open.
class BookTest : public WorkTest {
protected:
    BookTest() : BookTest(tractorText()) {}
    /// Of another vehicle than the tractor, with the same specs.
    explicit BookTest(const VehicleText &text);

    /// The engine's point of this short name; throws where it has none.
    [[nodiscard]] PointId at(std::string_view point) const;
    [[nodiscard]] const PointState &point(std::string_view name) const { return book->state().point(at(name)); }
    ReadingEntry reading(std::string_view point, Phase phase, std::string_view value) const;
    ActSeq found(std::string_view point, std::string_view value) { return need(book->logReading(reading(point, Phase::AsFound, value))); }
    ActSeq left(std::string_view point, std::string_view value) { return need(book->logReading(reading(point, Phase::AsLeft, value))); }
    /// Plan, cautions and crank, as before the first turn.
    void beginValveSet();
    /// A book of the same job by this garage.
    [[nodiscard]] std::unique_ptr<JobBook> bookOf(Garage &of) const;
    [[nodiscard]] std::size_t actsInFile() const;

    NewVehicle tractor;
    PersonId marta;
    PersonId tom;
    JobId job;
    std::unique_ptr<JobBook> book;
};

} // namespace asleft
