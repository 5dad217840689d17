#pragma once

#include <QString>

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// The one place that knows how this database spells what databases spell differently.
namespace asleft::store {

/// The line that parts the statements of a schema step.
constexpr std::string_view statementMark = "--;;";

/// A schema text with its words in braces written out:
/// `{key}` a row's own key, `{int}` a whole number of 64 bits, `{strict}` columns hold their own type only,
/// `{append_only table}` statements after which the table's rows can be neither changed nor removed.
/// `{widen …}` stays: see wideningIn(). A word it does not know stays as well, and the database refuses it.
std::string writtenOut(std::string_view text);

/// The rows of a table whose key is among ids that are bound as one value, listed(). Each is looked up by the key's index: a table of a
/// million rows is not walked through.
std::string rowsOfListed(std::string_view table, std::string_view key);
QString listed(const std::vector<std::int64_t> &ids);

/// A rule of a table, as its CREATE TABLE spells it, and what takes its place.
struct Widening {
    std::string table;
    std::string rule;
    std::string wider; ///< one rule or several, parted by commas; every row of the table must obey them already
    bool operator==(const Widening &) const = default;
};

/// What a statement widens that says `{widen table OLD => NEW}`, both sides being whole rules: CHECK, NOT NULL and
/// REFERENCES; and nothing else beside comments.
/// Another database writes the same out as ALTER TABLE … DROP CONSTRAINT and ADD CONSTRAINT.
std::optional<Widening> wideningIn(std::string_view statement);

} // namespace asleft::store
