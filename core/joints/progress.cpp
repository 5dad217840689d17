#include <joints/passes.h>

#include <algorithm>
#include <cassert>
#include <unordered_map>

namespace asleft {

namespace {

enum class Cell : unsigned char { Open, Done, Moved };

/// Every place there is, one behind the other, so that a tick finds its own in one step.
class Sheet {
public:
    explicit Sheet(const Tightening &tightening) : m_passes(tightening.passes), m_count(tightening.order.size())
    {
        for (std::size_t i = 0; i < m_count; ++i) {
            const bool once = m_column.emplace(tightening.order[i], i).second;
            assert(once); // an order names each fastener once
            static_cast<void>(once);
        }
        std::size_t rows = 0;
        for (const Pass &pass : m_passes) {
            m_firstRow.push_back(rows);
            rows += static_cast<std::size_t>(roundsOf(pass));
        }
        m_cells.resize(rows * m_count, Cell::Open);
    }

    void put(const Tick &tick)
    {
        const TickSlot &place = tick.place;
        if (place.pass < 0 || static_cast<std::size_t>(place.pass) >= m_passes.size())
            return;
        const auto pass = static_cast<std::size_t>(place.pass);
        const auto column = m_column.find(place.fastener);
        if (place.round < 1 || place.round > roundsOf(m_passes[pass]) || column == m_column.end())
            return;
        const bool moved = tick.moved && std::holds_alternative<Settle>(m_passes[pass]);
        m_cells[rowOf(pass, place.round) * m_count + column->second] = moved ? Cell::Moved : Cell::Done;
    }

    [[nodiscard]] std::span<const Cell> round(std::size_t pass, int round) const
    {
        return std::span(m_cells).subspan(rowOf(pass, round) * m_count, m_count);
    }

private:
    [[nodiscard]] std::size_t rowOf(std::size_t pass, int round) const { return m_firstRow[pass] + static_cast<std::size_t>(round - 1); }

    const std::vector<Pass> &m_passes;
    std::size_t m_count;
    std::unordered_map<int, std::size_t> m_column; ///< of a fastener number
    std::vector<std::size_t> m_firstRow;           ///< of a pass
    std::vector<Cell> m_cells;
};

/// Says what of this round is done; false where it is still in hand.
bool readRound(TighteningProgress &progress, const std::vector<int> &order, std::span<const Cell> cells)
{
    progress.doneInRound.clear();
    progress.movedInRound.clear();
    progress.next.reset();
    for (std::size_t i = 0; i < order.size(); ++i) {
        if (cells[i] == Cell::Open) {
            if (!progress.next)
                progress.next = TickSlot{order[i], progress.pass, progress.round};
            continue;
        }
        progress.doneInRound.push_back(order[i]);
        if (cells[i] == Cell::Moved)
            progress.movedInRound.push_back(order[i]);
    }
    return !progress.next;
}

} // namespace

TighteningProgress progressOf(const Tightening &tightening, std::span<const Tick> ticks)
{
    TighteningProgress progress;
    Sheet sheet(tightening);
    for (const Tick &tick : ticks)
        sheet.put(tick);
    for (std::size_t pass = 0; pass < tightening.passes.size(); ++pass) {
        progress.pass = static_cast<int>(pass);
        const int most = roundsOf(tightening.passes[pass]);
        for (progress.round = 1;; ++progress.round) {
            if (!readRound(progress, tightening.order, sheet.round(pass, progress.round)))
                return progress;
            const bool moved = !progress.movedInRound.empty();
            progress.unsettled = progress.unsettled || (moved && progress.round == most);
            if (!moved || progress.round == most)
                break;
        }
    }
    // What was done, and in which round, stays that of the last pass.
    progress.pass = static_cast<int>(tightening.passes.size());
    return progress;
}

std::vector<TickSlot> restOfPass(const Tightening &tightening, const TighteningProgress &progress)
{
    std::vector<TickSlot> rest;
    if (progress.finished())
        return rest;
    auto done = progress.doneInRound.begin();
    for (const int fastener : tightening.order) {
        if (done != progress.doneInRound.end() && *done == fastener)
            ++done;
        else
            rest.push_back({fastener, progress.pass, progress.round});
    }
    return rest;
}

} // namespace asleft
