#pragma once

#include <base/result.h>

#include <QSqlError>

#include <string>

namespace asleft::store {

/// What an extended result code of SQLite means to a person. `path` is the garage's, `said` what the database said.
Error errorFrom(int code, const std::string &path, const std::string &said);
Error errorFrom(const QSqlError &error, const std::string &path);

/// What an errno means to a person.
Error errorFromSystem(int number, const std::string &path);

} // namespace asleft::store
