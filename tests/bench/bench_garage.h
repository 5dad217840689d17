#pragma once

#include "bench_timing.h"

#include <work/job_book.h>
#include <work/vehicles.h>

#include <memory>
#include <string>

struct sqlite3;
struct sqlite3_stmt;

namespace asleft::bench {

/// A garage with one in-line twelve: 24 points, specs, a person, and a job of its own for whoever wants one.
struct BenchGarage {
    std::unique_ptr<Garage> garage;
    NewVehicle vehicle;
    PersonId person;
};
BenchGarage makeGarage(const std::string &path);
JobId openJob(const BenchGarage &made);

/// Readings, as found and as left, so many in a job, written in one go behind the program's back but through its own store.
void fillJob(const std::string &path, const BenchGarage &made, JobId job, int acts, int firstUid);

/// SQLite by itself, with the garage's own way of writing: write-ahead log, full sync, foreign keys.
class RawFile {
public:
    explicit RawFile(const std::string &path);
    ~RawFile();
    RawFile(const RawFile &) = delete;
    RawFile &operator=(const RawFile &) = delete;

    sqlite3_stmt *prepared(const char *sql);
    void run(sqlite3_stmt *statement);
    [[nodiscard]] sqlite3 *handle() const { return m_handle; }

private:
    sqlite3 *m_handle = nullptr;
    std::size_t m_lettersRead = 0; ///< so that no reading is left out
    std::vector<sqlite3_stmt *> m_statements;
};

} // namespace asleft::bench
