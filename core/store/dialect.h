#pragma once

#include <string>
#include <string_view>

/// The one place that knows how this database spells what databases spell differently.
namespace asleft::store {

/// The line that parts the statements of a schema step.
constexpr std::string_view statementMark = "--;;";

/// A schema text with its words in braces written out:
/// `{key}` a row's own key, `{int}` a whole number of 64 bits, `{strict}` columns hold their own type only,
/// `{append_only table}` statements after which the table's rows can be neither changed nor removed.
/// A word it does not know stays as it is, and the database refuses it.
std::string writtenOut(std::string_view text);

} // namespace asleft::store
