#include "dialect.h"

#include <optional>

namespace asleft::store {
namespace {

constexpr std::string_view appendOnly = "append_only ";

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
    if (word == "strict")
        return "STRICT";
    if (word.starts_with(appendOnly)) {
        const std::string table(word.substr(appendOnly.size()));
        return refusal(table, "unchanged", "UPDATE") + "\n" + std::string(statementMark) + "\n" + refusal(table, "kept", "DELETE");
    }
    return std::nullopt;
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

} // namespace asleft::store
