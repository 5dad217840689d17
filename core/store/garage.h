#pragma once

#include "connection.h"
#include "steps.h"

#include <span>

/// Making, opening and upgrading a garage file with a given list of schema steps.
namespace asleft::store {

/// "Aslf": stands in the header of every garage file.
constexpr std::int64_t garageApplicationId = 0x41736c66;

Result<std::unique_ptr<Connection>> createGarage(const std::string &path, std::span<const SchemaStep> steps);
Result<std::unique_ptr<Connection>> openGarage(const std::string &path, std::span<const SchemaStep> steps);
/// What openGarage() does with a garage that may not be written: GarageReadOnly for one that has steps to take.
Result<std::unique_ptr<Connection>> openGarageForReading(const std::string &path, std::span<const SchemaStep> steps);

} // namespace asleft::store
