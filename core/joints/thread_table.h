#pragma once

#include <measure/unit.h>

#include <span>
#include <string_view>

namespace asleft {

/// One line of the tables in resources/threads, as it is written there.
struct ThreadLine {
    UnitSystem system;
    std::string_view size;  ///< metric in mm: "8"; unified in inches or as a number size: "1 1/8", "no.10"
    std::string_view pitch; ///< metric in mm, unified in threads an inch
    bool coarse;
};

std::span<const ThreadLine> threadTable();

} // namespace asleft
