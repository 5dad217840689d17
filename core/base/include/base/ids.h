#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace asleft {

/// The key of one row. Ids of different things are different types, so that a VehicleId is never taken for a JobId.
/// A missing id is an empty std::optional, never 0.
template <class Thing>
class RowId {
public:
    explicit constexpr RowId(std::int64_t key) : m_key(key) {}
    [[nodiscard]] constexpr std::int64_t key() const { return m_key; }
    constexpr auto operator<=>(const RowId &) const = default;

private:
    std::int64_t m_key;
};

using VehicleId = RowId<struct VehicleTag>;
using EngineId = RowId<struct EngineTag>;
using PointId = RowId<struct PointTag>;
using SpecId = RowId<struct SpecTag>; ///< one revision of a spec
using PersonId = RowId<struct PersonTag>;
using ToolId = RowId<struct ToolTag>;
using JointId = RowId<struct JointTag>;
using JobId = RowId<struct JobTag>;
using StepId = RowId<struct StepTag>;
using MeterReadingId = RowId<struct MeterReadingTag>;
using ActSeq = RowId<struct ActTag>; ///< place of an act in the journal

} // namespace asleft

template <class Thing>
struct std::hash<asleft::RowId<Thing>> {
    std::size_t operator()(const asleft::RowId<Thing> &id) const noexcept { return std::hash<std::int64_t>{}(id.key()); }
};
