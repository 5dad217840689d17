#pragma once

#include <base/clock.h>
#include <base/uid.h>

namespace asleft {

/// A clock that stands until it is set.
class ScriptedClock final : public Clock {
public:
    [[nodiscard]] Moment now() const override { return m_now; }
    void set(Moment moment) { m_now = moment; }
    void forward(std::chrono::milliseconds by) { m_now.utcMilliseconds += by.count(); }

private:
    Moment m_now;
};

/// Counts: the same uids in the same order every time. `prefix` parts one source's from another's.
class ScriptedUids final : public UidSource {
public:
    explicit ScriptedUids(std::string prefix) : m_prefix(std::move(prefix)) {}
    Uid next() override { return m_prefix + "-" + std::to_string(++m_made); }

private:
    std::string m_prefix;
    int m_made = 0;
};

} // namespace asleft
