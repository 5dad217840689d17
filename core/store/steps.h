#pragma once

#include <base/result.h>

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace asleft::store {

class Connection;

/// One step of the schema. Steps are only ever added at the end; a garage's version is how many it has taken.
struct SchemaStep {
    std::string_view name;
    std::string_view text;
};

/// Those of resources/schema, in order.
std::span<const SchemaStep> builtInSteps();

/// The statements of a step, written out for the database at hand. They are parted by a line of their own that says only `--;;`:
/// a semicolon also stands inside triggers and texts.
std::vector<std::string> statementsOf(std::string_view step);

/// Takes one step, inside a transaction, and writes down the new version.
Done takeStep(Connection &connection, std::span<const SchemaStep> steps, std::size_t index);

} // namespace asleft::store
