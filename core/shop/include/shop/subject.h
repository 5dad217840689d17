#pragma once

#include <base/ids.h>

#include <variant>
#include <vector>

namespace asleft {

/// Fasteners of a joint, or the joint as a whole.
struct FastenerSubject {
    JointId joint;
    std::vector<int> fasteners = {}; ///< their numbers; empty: the joint as a whole
    bool operator==(const FastenerSubject &) const = default;
};

/// What a finding, an open item or a next act is about. Further kinds of things (a part, a tag) get an alternative of their own here, and
/// every visitor names each of them, so that the compiler lists the places that have to know.
using Subject = std::variant<PointId, FastenerSubject, StepId, EngineId, VehicleId>;

} // namespace asleft
