#pragma once

#include <chrono>
#include <cstdint>

namespace asleft {

/// A moment, in milliseconds since 1970-01-01 UTC.
struct Moment {
    std::int64_t utcMilliseconds = 0;
    auto operator<=>(const Moment &) const = default;
};

/// Where the time comes from; injected, so that tests and the demo garage own their clock.
class Clock {
public:
    virtual ~Clock() = default;
    [[nodiscard]] virtual Moment now() const = 0;
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] Moment now() const override
    {
        using namespace std::chrono;
        return {duration_cast<milliseconds>(system_clock::now().time_since_epoch()).count()};
    }
};

} // namespace asleft
