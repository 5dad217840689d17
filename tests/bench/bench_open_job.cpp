// A job of 24 points with 650 acts: in a garage of 100 000 acts as in one that holds nothing else, and against SQLite reading the same
// rows.
#include "bench_garage.h"

#include <sqlite3.h>

namespace asleft::bench {

namespace {

constexpr int actsOfJob = 650;

struct Filled {
    BenchGarage made;
    JobId job;
};

Filled filled(const std::string &path, int acts)
{
    BenchGarage made = makeGarage(path);
    int written = 0;
    for (; written + actsOfJob < acts; written += actsOfJob)
        fillJob(path, made, openJob(made), actsOfJob, written);
    const JobId job = openJob(made);
    fillJob(path, made, job, actsOfJob, written);
    return {std::move(made), job};
}

void open(const Filled &garage)
{
    const auto book = need(JobBook::open(*garage.made.garage, garage.job), "the job could not be opened");
    if ((*book)->state().acts.size() != actsOfJob || (*book)->state().points.size() != 24)
        broken("the job opened with something else in it");
}

} // namespace

void benchOpenJob(const std::string &folder, Rounds rounds)
{
    const std::string fullPath = folder + "/open-full.asleft";
    const Filled full = filled(fullPath, rounds.isShort ? 3 * actsOfJob : 100'000);
    const Filled alone = filled(folder + "/open-alone.asleft", actsOfJob);
    compare(
        "open a job of 650 acts: garage of 100 000 acts / nothing else", rounds.of(51), [&] { open(full); }, [&] { open(alone); });

    RawFile raw(fullPath);
    sqlite3_stmt *rows =
        raw.prepared("SELECT act.seq, act.uid, act.job, act.who, act.seat, act.at_ms, act.withdraws, act.kind, act.checksum, "
                     "r.point, r.phase, r.form, r.value_nm, r.value_unit, r.value_text, r.next_nm, r.next_unit, r.next_text, "
                     "r.judged_by, r.tool, r.condition, r.spec_leaf, r.out_of_place, r.corrects "
                     "FROM act JOIN fact_reading AS r ON r.act = act.seq WHERE act.job = ? ORDER BY act.seq");
    sqlite3_bind_int64(rows, 1, full.job.key());
    compare(
        "open a job of 650 acts, folded / SQLite alone reading its rows", rounds.of(51), [&] { open(full); }, [&] { raw.run(rows); });
}

} // namespace asleft::bench
