#include "errors.h"

#include <sqlite3.h>

#include <cerrno>
#include <system_error>

namespace asleft::store {
namespace {

constexpr int primaryOf(int code)
{
    return code & 0xff;
}

} // namespace

Error errorFrom(int code, const std::string &path, const std::string &said)
{
    if (code == SQLITE_READONLY_DBMOVED)
        return {ErrorKind::GarageMoved, {path}};
    // The write-ahead log's shared memory could not grow: the disk is full, although SQLite calls it an I/O error.
    if (code == SQLITE_IOERR_SHMSIZE)
        return {ErrorKind::NoRoom, {path}};
    switch (primaryOf(code)) {
    case SQLITE_FULL: return {ErrorKind::NoRoom, {path}};
    case SQLITE_READONLY: return {ErrorKind::GarageReadOnly, {path}};
    case SQLITE_BUSY:
    case SQLITE_LOCKED: return {ErrorKind::GarageBusy, {path}};
    case SQLITE_NOTADB: return {ErrorKind::NotAGarage, {path}};
    case SQLITE_CORRUPT: return {ErrorKind::Damaged, {path, said}};
    case SQLITE_IOERR:
    case SQLITE_CANTOPEN: return {ErrorKind::DiskFault, {path, said}};
    default: return {ErrorKind::Database, {said}};
    }
}

Error errorFrom(const QSqlError &error, const std::string &path)
{
    return errorFrom(error.nativeErrorCode().toInt(), path, error.databaseText().toStdString());
}

Error errorFromSystem(int number, const std::string &path)
{
    switch (number) {
    case EEXIST: return {ErrorKind::FileExists, {path}};
    case ENOENT:
    case ENOTDIR: return {ErrorKind::FileMissing, {path}};
    case EROFS: return {ErrorKind::GarageReadOnly, {path}};
    case ENOSPC:
    case EDQUOT: return {ErrorKind::NoRoom, {path}};
    default: return {ErrorKind::DiskFault, {path, std::generic_category().message(number)}};
    }
}

} // namespace asleft::store
