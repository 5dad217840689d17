// What must not grow with the garage: the same done in one of ten thousand acts and in one of a million, and with an engine
// of few jobs and of two thousand. Written in one go behind the program's back, but through its own store.
#include "bench_garage.h"

#include <store/journal.h>
#include <store/things.h>
#include <work/jobs.h>

#include <algorithm>

namespace asleft::bench {

namespace {

constexpr int actsOfGrownJob = 51;
constexpr int jobsOfGrownEngine = 40;

struct Size {
    int acts;
    int jobsOfOne; ///< how many jobs one of its engines has
};

/// A garage of that size, with a vehicle whose engine has many jobs.
class Grown {
public:
    Grown(const std::string &path, Size size) : m_made(makeGarage(path))
    {
        const int jobs = size.acts / actsOfGrownJob;
        std::vector<NewVehicle> vehicles;
        while (static_cast<int>(vehicles.size()) * jobsOfGrownEngine < jobs)
            vehicles.push_back(addOne("Six " + std::to_string(vehicles.size())));
        const auto database = need(Database::open(path), "the garage could not be opened");
        fillAll(**database, jobs,
                [&](int job) -> const NewVehicle & { return vehicles[static_cast<std::size_t>(job / jobsOfGrownEngine)]; });
        fillAll(**database, size.jobsOfOne, [&](int) -> const NewVehicle & { return m_made.vehicle; });
    }

    [[nodiscard]] Garage &garage() const { return *m_made.garage; }

    void listJobs() const
    {
        if (need(jobs(garage()), "the jobs could not be read")->size() != std::size_t(jobsAtOnce))
            broken("fewer jobs than there are");
    }

    void openFirstJob() const
    {
        const auto first = need(jobs(garage(), 1), "the jobs could not be read");
        need(JobBook::open(garage(), first->front().id), "the job could not be opened");
    }

    void addVehicle() { addOne("Another " + std::to_string(++m_added)); }
    void listVehicles() const { need(vehicles(garage()), "the vehicles could not be read"); }

    /// Of the engine with many jobs.
    [[nodiscard]] std::unique_ptr<JobBook> open() const
    {
        auto book = std::move(need(JobBook::open(garage(), *m_last), "the job could not be opened").value());
        book->setWho(m_made.person);
        need(book->confirmCrank(degrees(0)), "the crank was refused");
        need(book->readTurningCautions(), "the cautions were refused");
        return book;
    }
    void openOnly() const { need(JobBook::open(garage(), *m_last), "the job could not be opened"); }

private:
    NewVehicle addOne(const std::string &name)
    {
        VehicleText text;
        text.name = name;
        text.engine.cylinders = 6;
        text.engine.firingOrder = "1-5-3-6-2-4";
        return need(asleft::addVehicle(garage(), text), "the vehicle was refused").value();
    }

    /// Some at a time: a log that holds a million acts is searched ever more slowly.
    template <class Of>
    void fillAll(Database &database, int jobs, Of of)
    {
        constexpr int atOnce = 200;
        for (int job = 0; job < jobs;) {
            auto transaction = need(Transaction::begin(database), "nothing could be written");
            for (int last = std::min(jobs, job + atOnce); job < last; ++job)
                m_last = fill(*transaction, of(job));
            need(transaction->commit(), "the acts were refused");
        }
    }

    JobId fill(Transaction &transaction, const NewVehicle &of)
    {
        const JobId job =
            need(insertJob(transaction, {of.vehicle, of.engine, "Valves", Moment{m_uids}, {}}), "the job was refused").value();
        const auto worked = need(engine(transaction.database(), of.engine), "the engine could not be read");
        const auto log = [&](Fact fact) {
            const NewAct act{"grown " + std::to_string(++m_uids), job, m_made.person, "bench", Moment{m_uids}, {}, std::move(fact)};
            need(append(transaction, act), "an act was refused");
        };
        log(CrankFact{of.engine, degrees(0), CrankHow::Confirmed});
        for (int act = 1; act < actsOfGrownJob; ++act) {
            const PointId point = worked->points[static_cast<std::size_t>(act / 3) % worked->points.size()].id;
            if (act % 3 == 1) {
                log(NutOpenFact{point});
                continue;
            }
            ReadingFact reading{.point = point, .value = {}, .next = {}, .judgedBy = {}, .tool = {}, .corrects = {}};
            reading.phase = act % 3 == 0 ? Phase::AsFound : Phase::AsLeft;
            reading.value = Typed<Length>{micrometres(250), LengthUnit::Millimetre, "0.25"};
            log(reading);
        }
        return job;
    }

    BenchGarage m_made;
    std::optional<JobId> m_last;
    std::int64_t m_uids = 0;
    int m_added = 0;
};

} // namespace

void benchGrowth(const std::string &folder, Rounds rounds)
{
    Grown large(folder + "/large.asleft", rounds.isShort ? Size{6'000, 60} : Size{1'000'000, 2000});
    Grown small(folder + "/small.asleft", rounds.isShort ? Size{6'000, 60} : Size{10'000, 42});
    const auto grows = [&](const char *what, int times, auto work) {
        compare(
            std::string(what) + ": 1 M acts / 10 k", rounds.of(times), [&] { work(large); }, [&] { work(small); });
    };
    grows("first hundred jobs", 51, [](Grown &grown) { grown.listJobs(); });
    grows("first job opened", 51, [](Grown &grown) { grown.openFirstJob(); });
    grows("a vehicle added", 25, [](Grown &grown) { grown.addVehicle(); });
    grows("every vehicle read", 25, [](Grown &grown) { grown.listVehicles(); });
    const auto ofMany = [&](const char *what, const std::function<void()> &many, const std::function<void()> &few) {
        compare(std::string(what) + ": engine of 2000 jobs / of 42", rounds.of(51), many, few);
    };
    ofMany(
        "a job opened", [&] { large.openOnly(); }, [&] { small.openOnly(); });
    const auto many = large.open();
    const auto few = small.open();
    int to = 0;
    const auto turn = [&to](JobBook &book) { need(book.turnCrank(degrees(++to % 720)), "the crank was not turned"); };
    ofMany(
        "the crank turned", [&] { turn(*many); }, [&] { turn(*few); });
}

} // namespace asleft::bench
