#pragma once

#include <base/result.h>
#include <measure/quantity.h>
#include <measure/unit.h>

#include <span>
#include <string>
#include <string_view>

namespace asleft {

/// A screw thread as manuals name it: metric (ISO 261) or unified (ASME B1.1).
struct Thread {
    std::string name; ///< the way it is written here: "M8", "M8x1", "3/8-24 UNF", "#10-32 UNF"
    UnitSystem system = UnitSystem::Metric;
    Length diameter; ///< nominal
    Length pitch;
    bool coarse = true; ///< the pitch meant where none is said; of a unified thread UNC
    bool operator==(const Thread &) const = default;
};

/// Every thread of the tables resources/threads/metric.csv and unified.csv, smallest first, coarse before fine.
std::span<const Thread> knownThreads();

/// Reads `M8`, `m8x1`, `M8 × 1.25`, `M10*1,25`, `3/8-24`, `1/4-20 UNC`, `5/16 UNF`, `1 1/8-7`, `#10-32`, `10-24`; case and blanks do not
/// count, a comma is a decimal mark. Refuses with ThreadUnread what is no thread at all, with ThreadUnknown a diameter or pitch the tables
/// do not have, a UNC or UNF that is not what the count says, and a size that leaves open which thread (`3/8`, `1 UNC`), with TextTooLong
/// what no field hands on.
Result<Thread> parseThread(std::string_view text);

/// Tensile stress area in mm²: π/4·(d − 0.938 2·P)² of a metric thread (ISO 898-1), π/4·(d − 0.974 3·P)² of a unified one (ASME B1.1).
double stressAreaSquareMillimetres(const Thread &thread);

} // namespace asleft
