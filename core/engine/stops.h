#pragma once

#include "cover.h"
#include "margins.h"

#include <engine/plan.h>

#include <memory>

namespace asleft {

/// What is free or loaded as one: all that one loader of one cylinder presses on.
struct Thing {
    Cylinder cylinder;
    Loader loader;
};

/// Every thing of the engine, by its number in a Reach.
std::vector<Thing> thingsOf(const EngineDesign &design);

/// Crank angles worth stopping at, ascending, and what may be set at each.
struct Stops {
    std::vector<Angle> cranks;
    std::vector<Reach> reaches;
};

/// Where the crank can be stopped.
class Ground {
public:
    virtual ~Ground() = default;
    Ground(const Ground &) = delete;
    Ground &operator=(const Ground &) = delete;

    /// The greatest margin each thing has anywhere.
    [[nodiscard]] virtual std::vector<Angle> greatest() const = 0;
    /// Stops at which things are free by `least`, enough of them for a smallest cover and for the earliest one.
    [[nodiscard]] virtual Stops at(Angle least) const = 0;
    /// A least margin that is surely reached with as many stops as were chosen of at(), not below the one they were made for.
    [[nodiscard]] virtual Angle marginOf(const Stops &stops, const std::vector<std::size_t> &chosen) const = 0;

protected:
    Ground() = default;
};

/// The dead centres that are marked, or any angle.
std::unique_ptr<Ground> groundOf(const EngineDesign &design, CrankMarks marks);

} // namespace asleft
