// A reading logged on the Bench, from the act to the signal that it is stored, against the same rows written by SQLite alone.
#include "bench_garage.h"

#include <QObject>
#include <sqlite3.h>

namespace asleft::bench {

namespace {

class RawLog {
public:
    RawLog(const std::string &path, const BenchGarage &made, JobId job, PointId point)
        : m_file(path), m_begin(m_file.prepared("BEGIN IMMEDIATE")), m_commit(m_file.prepared("COMMIT")),
          m_act(m_file.prepared("INSERT INTO act (uid, job, who, seat, at_ms, kind, withdraws, checksum) "
                                "VALUES (?, ?, ?, 'bench', ?, 'reading', NULL, ?)")),
          m_reading(
              m_file.prepared("INSERT INTO fact_reading (act, place, point, phase, form, value_nm, value_unit, value_text, condition, "
                              "spec_leaf, out_of_place) VALUES (?, 0, ?, 'as_left', 'exact', 250000, 'mm', '0.25', 'cold', 0, 0)"))
    {
        sqlite3_bind_int64(m_act, 2, job.key());
        sqlite3_bind_int64(m_act, 3, made.person.key());
        sqlite3_bind_int64(m_reading, 2, point.key());
    }

    void log()
    {
        const std::string uid = "raw " + std::to_string(++m_count);
        m_file.run(m_begin);
        sqlite3_bind_text(m_act, 1, uid.c_str(), -1, SQLITE_TRANSIENT);
        sqlite3_bind_int64(m_act, 4, m_count);
        sqlite3_bind_int64(m_act, 5, m_count);
        m_file.run(m_act);
        sqlite3_bind_int64(m_reading, 1, sqlite3_last_insert_rowid(m_file.handle()));
        m_file.run(m_reading);
        m_file.run(m_commit);
    }

private:
    RawFile m_file;
    sqlite3_stmt *m_begin;
    sqlite3_stmt *m_commit;
    sqlite3_stmt *m_act;
    sqlite3_stmt *m_reading;
    int m_count = 0;
};

} // namespace

void benchLog(const std::string &folder, Rounds rounds)
{
    const BenchGarage ours = makeGarage(folder + "/log-ours.asleft");
    const JobId job = openJob(ours);
    const auto book = std::move(need(JobBook::open(*ours.garage, job), "the job could not be opened").value());
    book->setWho(ours.person);
    const PointId point = book->state().frame->engine.points.front().id;

    const std::string rawPath = folder + "/log-raw.asleft";
    BenchGarage raw = makeGarage(rawPath);
    const JobId rawJob = openJob(raw);
    raw.garage.reset();
    RawLog bare(rawPath, raw, rawJob, point);

    bool told = false;
    QObject::connect(book.get(), &JobBook::changed, [&told] { told = true; });
    const Typed<Length> value{micrometres(250), LengthUnit::Millimetre, "0.25"};
    const auto log = [&] {
        told = false;
        need(book->logReading({.point = point, .phase = Phase::AsLeft, .value = value}), "the reading was refused");
        if (!told)
            broken("a stored reading was not told of");
    };
    compare("log a reading, stored and told / the same rows by SQLite alone", rounds.of(300), log, [&] { bare.log(); });
}

} // namespace asleft::bench
