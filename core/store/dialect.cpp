#include "dialect.h"

#include <measure/text.h>

#include <optional>

namespace asleft::store {
namespace {

constexpr std::string_view appendOnly = "append_only ";
constexpr std::string_view widening = "{widen ";
constexpr std::string_view becomes = "=>";

std::string refusal(const std::string &table, const std::string &name, const std::string &event)
{
    return "CREATE TRIGGER " + table + "_" + name + " BEFORE " + event + " ON " + table + " BEGIN SELECT RAISE(ABORT, '" + table +
           " is append-only'); END";
}

std::optional<std::string> meaningOf(std::string_view word)
{
    if (word == "key")
        return "INTEGER PRIMARY KEY";
    if (word == "int")
        return "INTEGER";
    if (word == "real")
        return "REAL";
    if (word == "strict")
        return "STRICT";
    if (word.starts_with(appendOnly)) {
        const std::string table(word.substr(appendOnly.size()));
        return refusal(table, "unchanged", "UPDATE") + "\n" + std::string(statementMark) + "\n" + refusal(table, "kept", "DELETE");
    }
    return std::nullopt;
}

/// A statement without the comments before it.
std::string_view uncommented(std::string_view statement)
{
    statement = trimmed(statement);
    while (statement.starts_with("--")) {
        const std::size_t end = statement.find('\n');
        statement = end == statement.npos ? std::string_view() : trimmed(statement.substr(end));
    }
    return statement;
}

} // namespace

std::string writtenOut(std::string_view text)
{
    std::string written;
    while (!text.empty()) {
        const std::size_t open = text.find('{');
        const std::size_t close = open == text.npos ? text.npos : text.find('}', open);
        if (close == text.npos)
            return written.append(text);
        const std::string_view word = text.substr(open + 1, close - open - 1);
        written.append(text.substr(0, open)).append(meaningOf(word).value_or("{" + std::string(word) + "}"));
        text.remove_prefix(close + 1);
    }
    return written;
}

std::string rowsOfListed(std::string_view table, std::string_view key)
{
    const std::string name(table);
    return "(SELECT value AS listed FROM json_each(?)) CROSS JOIN " + name + " ON " + name + "." + std::string(key) + " = listed";
}

QString listed(const std::vector<std::int64_t> &ids)
{
    QStringList numbers;
    for (const std::int64_t id : ids)
        numbers.append(QString::number(id));
    return QLatin1Char('[') + numbers.join(QLatin1Char(',')) + QLatin1Char(']');
}

std::optional<Widening> wideningIn(std::string_view statement)
{
    const std::string_view word = uncommented(statement);
    if (!word.starts_with(widening) || word.find('}') != word.size() - 1)
        return std::nullopt;
    const std::string_view said = trimmed(word.substr(widening.size(), word.size() - widening.size() - 1));
    const std::size_t blank = said.find(' ');
    const std::size_t arrow = said.find(becomes);
    if (blank == said.npos || arrow == said.npos || arrow < blank)
        return std::nullopt;
    return Widening{std::string(said.substr(0, blank)), std::string(trimmed(said.substr(blank, arrow - blank))),
                    std::string(trimmed(said.substr(arrow + becomes.size())))};
}

} // namespace asleft::store
