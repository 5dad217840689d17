#include "bench_garage.h"

#include <store/journal.h>
#include <work/jobs.h>
#include <work/specs.h>
#include <work/vehicles.h>
#include <work/workshop.h>

#include <sqlite3.h>

namespace asleft::bench {

namespace {

void check(int code, sqlite3 *handle)
{
    if (code != SQLITE_OK && code != SQLITE_DONE && code != SQLITE_ROW)
        broken(std::string("SQLite: ") + sqlite3_errmsg(handle));
}

} // namespace

BenchGarage makeGarage(const std::string &path)
{
    auto garage = std::move(need(Garage::create(path, {std::make_shared<SystemClock>(), std::make_shared<RandomUids>(), "bench"}),
                                 "the garage could not be made")
                                .value());
    VehicleText text;
    text.name = "Twelve";
    text.engine.cylinders = 12;
    text.engine.firingOrder = "1-7-5-11-3-9-12-6-8-2-10-4";
    const NewVehicle vehicle = need(addVehicle(*garage, text), "the vehicle was refused").value();
    const PersonId person = need(addPerson(*garage, "B.N.", ""), "the person was refused").value();
    SpecText spec;
    spec.band = "0.20-0.30 mm";
    for (const SpecSubject subject : {SpecSubject::IntakeLash, SpecSubject::ExhaustLash})
        need(reviseSpec(*garage, vehicle.engine, subject, spec), "the spec was refused");
    return {std::move(garage), vehicle, person};
}

JobId openJob(const BenchGarage &made)
{
    return need(asleft::openJob(*made.garage, made.vehicle.vehicle, made.vehicle.engine, builtInSheets().front(), "Valves"),
                "the job was refused")
        .value();
}

void fillJob(const std::string &path, const BenchGarage &made, JobId job, int acts, int firstUid)
{
    const auto book = need(JobBook::open(*made.garage, job), "the job could not be opened");
    const auto &points = (*book)->state().frame->engine.points;
    const auto database = need(Database::open(path), "the garage could not be opened");
    auto transaction = need(Transaction::begin(**database), "nothing could be written");
    for (int act = 0; act < acts; ++act) {
        const int place = act % static_cast<int>(points.size() * 2);
        ReadingFact reading{.point = points.at(static_cast<std::size_t>(place) / 2).id,
                            .value = {},
                            .next = {},
                            .judgedBy = {},
                            .tool = {},
                            .corrects = {}};
        reading.phase = place % 2 == 0 ? Phase::AsFound : Phase::AsLeft;
        reading.value = Typed<Length>{micrometres(250), LengthUnit::Millimetre, "0.25"};
        NewAct line{"fill " + std::to_string(firstUid + act), job, made.person, "bench", Moment{act}, {}, reading};
        need(append(*transaction, line), "an act was refused");
    }
    need(transaction->commit(), "the acts were refused");
}

RawFile::RawFile(const std::string &path)
{
    check(sqlite3_open_v2(path.c_str(), &m_handle, SQLITE_OPEN_READWRITE, nullptr), m_handle);
    for (const char *pragma : {"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "PRAGMA foreign_keys = ON"})
        check(sqlite3_exec(m_handle, pragma, nullptr, nullptr, nullptr), m_handle);
}

RawFile::~RawFile()
{
    for (sqlite3_stmt *statement : m_statements)
        sqlite3_finalize(statement);
    sqlite3_close(m_handle);
}

sqlite3_stmt *RawFile::prepared(const char *sql)
{
    sqlite3_stmt *statement = nullptr;
    check(sqlite3_prepare_v2(m_handle, sql, -1, &statement, nullptr), m_handle);
    m_statements.push_back(statement);
    return statement;
}

void RawFile::run(sqlite3_stmt *statement)
{
    int code = SQLITE_ROW;
    while (code == SQLITE_ROW) {
        code = sqlite3_step(statement);
        // What is read is looked at: as a number or as a text, whichever it is.
        for (int column = 0; code == SQLITE_ROW && column < sqlite3_column_count(statement); ++column)
            if (sqlite3_column_type(statement, column) == SQLITE_TEXT)
                m_lettersRead += static_cast<std::size_t>(sqlite3_column_bytes(statement, column)) +
                                 (sqlite3_column_text(statement, column) != nullptr ? 1 : 0);
            else
                m_lettersRead += static_cast<std::size_t>(sqlite3_column_int64(statement, column) != 0 ? 1 : 0);
    }
    check(code, m_handle);
    sqlite3_reset(statement);
}

} // namespace asleft::bench
