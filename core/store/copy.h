#pragma once

#include <base/result.h>

#include <string>

namespace asleft::store {

/// Copies everything committed to the garage into a new file that will survive a power cut. Who holds the write lock meanwhile knows
/// that nothing is committed after it.
Done copyGarage(const std::string &path, const std::string &target);

} // namespace asleft::store
