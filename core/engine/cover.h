#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace asleft {

/// A set of small whole numbers: which of an engine's at most 72 separately loaded things (24 cylinders with intakes, exhausts and an
/// injector) are free somewhere.
class Reach {
public:
    static constexpr std::size_t most = 128;

    constexpr void add(std::size_t thing) { word(thing) |= bit(thing); }
    constexpr void remove(std::size_t thing) { word(thing) &= ~bit(thing); }
    [[nodiscard]] constexpr bool has(std::size_t thing) const { return (m_words[thing / 64] & bit(thing)) != 0; }
    [[nodiscard]] constexpr bool empty() const { return (m_words[0] | m_words[1]) == 0; }
    [[nodiscard]] constexpr int count() const { return std::popcount(m_words[0]) + std::popcount(m_words[1]); }
    /// \pre not empty
    [[nodiscard]] constexpr std::size_t lowest() const
    {
        const std::size_t half = m_words[0] != 0 ? 0 : 1;
        return half * 64 + static_cast<std::size_t>(std::countr_zero(m_words[half]));
    }
    /// Whether everything here is in `other` too.
    [[nodiscard]] constexpr bool within(const Reach &other) const { return without(other).empty(); }
    [[nodiscard]] constexpr Reach without(const Reach &other) const
    {
        return Reach(m_words[0] & ~other.m_words[0], m_words[1] & ~other.m_words[1]);
    }
    constexpr Reach operator&(const Reach &other) const { return Reach(m_words[0] & other.m_words[0], m_words[1] & other.m_words[1]); }
    constexpr Reach operator|(const Reach &other) const { return Reach(m_words[0] | other.m_words[0], m_words[1] | other.m_words[1]); }
    constexpr bool operator==(const Reach &) const = default;

    /// Calls visit(thing) for each, ascending.
    template <class Visit>
    constexpr void each(Visit visit) const
    {
        for (std::size_t half = 0; half < 2; ++half)
            for (std::uint64_t rest = m_words[half]; rest != 0; rest &= rest - 1)
                visit(half * 64 + static_cast<std::size_t>(std::countr_zero(rest)));
    }

    constexpr Reach() = default;

private:
    constexpr Reach(std::uint64_t low, std::uint64_t high) : m_words{low, high} {}
    static constexpr std::uint64_t bit(std::size_t thing) { return std::uint64_t{1} << (thing % 64); }
    constexpr std::uint64_t &word(std::size_t thing) { return m_words[thing / 64]; }

    std::array<std::uint64_t, 2> m_words{};
};

/// At most `most` of the columns that together hold all of `wanted`, as their places in `columns`; nothing if there are none.
std::optional<std::vector<std::size_t>> coverWithin(std::span<const Reach> columns, Reach wanted, std::size_t most);

/// As few columns as can hold all of `wanted`. \pre all columns together do
std::vector<std::size_t> smallestCover(std::span<const Reach> columns, Reach wanted);

/// Of all covers by `count` columns, the one whose places, ascending, come first. \pre there is one, and none with fewer
std::vector<std::size_t> earliestCover(std::span<const Reach> columns, Reach wanted, std::size_t count);

} // namespace asleft
