// Set cover by branch and bound: exact, and quick because arcs of a circle leave little to branch on once columns that hold no more
// than another one are gone.
#include "cover.h"

#include <algorithm>
#include <cassert>

namespace asleft {

namespace {

struct Column {
    Reach reach;
    std::size_t place;
};

/// The columns that hold something of `wanted` and not merely a part of what another one does, largest first.
std::vector<Column> worthwhile(const std::vector<Column> &columns, Reach wanted)
{
    std::vector<Column> left;
    left.reserve(columns.size());
    for (const Column &column : columns)
        if (const Reach reach = column.reach & wanted; !reach.empty())
            left.push_back({reach, column.place});
    std::stable_sort(left.begin(), left.end(), [](const Column &a, const Column &b) { return a.reach.count() > b.reach.count(); });

    std::vector<Column> kept;
    kept.reserve(left.size());
    for (const Column &column : left)
        if (std::none_of(kept.begin(), kept.end(), [&](const Column &other) { return column.reach.within(other.reach); }))
            kept.push_back(column);
    return kept;
}

/// How many columns hold each thing, and what else those columns hold.
struct Choices {
    std::array<int, Reach::most> columns{};
    std::array<Reach, Reach::most> together{};

    explicit Choices(const std::vector<Column> &all)
    {
        for (const Column &column : all)
            column.reach.each([&](std::size_t thing) {
                ++columns[thing];
                together[thing] = together[thing] | column.reach;
            });
    }
};

/// Things of which no column holds two need a column each: as many columns at least are needed.
std::size_t atLeast(const Choices &choices, Reach wanted)
{
    std::vector<std::size_t> things;
    wanted.each([&](std::size_t thing) { things.push_back(thing); });
    std::stable_sort(things.begin(), things.end(),
                     [&](std::size_t a, std::size_t b) { return choices.together[a].count() < choices.together[b].count(); });
    std::size_t apart = 0;
    Reach reached;
    for (const std::size_t thing : things)
        if (!reached.has(thing)) {
            ++apart;
            reached = reached | choices.together[thing];
        }
    return apart;
}

/// One column that holds all of `wanted`, if it takes any.
bool searchOne(const std::vector<Column> &columns, Reach wanted, std::vector<std::size_t> &chosen)
{
    if (wanted.empty())
        return true;
    const auto all = std::find_if(columns.begin(), columns.end(), [&](const Column &column) { return wanted.within(column.reach); });
    if (all == columns.end())
        return false;
    chosen.push_back(all->place);
    return true;
}

/// Two columns: mostly the last there are to find, and quicker tried one after the other than sorted out. \pre wanted is not empty
bool searchTwo(const std::vector<Column> &columns, Reach wanted, std::vector<std::size_t> &chosen)
{
    const std::size_t first = wanted.lowest();
    for (const Column &column : columns) {
        if (!column.reach.has(first))
            continue;
        chosen.push_back(column.place);
        if (searchOne(columns, wanted.without(column.reach), chosen))
            return true;
        chosen.pop_back();
    }
    return false;
}

bool search(const std::vector<Column> &columns, Reach wanted, std::size_t most, std::vector<std::size_t> &chosen)
{
    if (wanted.empty())
        return true;
    if (most == 0)
        return false;
    if (most <= 2)
        return most == 1 ? searchOne(columns, wanted, chosen) : searchTwo(columns, wanted, chosen);

    const auto left = worthwhile(columns, wanted);
    const Choices choices(left);
    std::optional<std::size_t> narrowest;
    wanted.each([&](std::size_t thing) {
        if (!narrowest || choices.columns[thing] < choices.columns[*narrowest])
            narrowest = thing;
    });
    if (choices.columns[*narrowest] == 0 || atLeast(choices, wanted) > most)
        return false;
    for (const Column &column : left) {
        if (!column.reach.has(*narrowest))
            continue;
        chosen.push_back(column.place);
        if (search(left, wanted.without(column.reach), most - 1, chosen))
            return true;
        chosen.pop_back();
    }
    return false;
}

std::vector<Column> columnsFrom(std::span<const Reach> columns, std::size_t first)
{
    std::vector<Column> numbered;
    numbered.reserve(columns.size());
    for (std::size_t place = first; place < columns.size(); ++place)
        numbered.push_back({columns[place], place});
    return numbered;
}

} // namespace

std::optional<std::vector<std::size_t>> coverWithin(std::span<const Reach> columns, Reach wanted, std::size_t most)
{
    std::vector<std::size_t> chosen;
    if (!search(columnsFrom(columns, 0), wanted, most, chosen))
        return std::nullopt;
    return chosen;
}

std::vector<std::size_t> smallestCover(std::span<const Reach> columns, Reach wanted)
{
    const auto left = worthwhile(columnsFrom(columns, 0), wanted);
    std::vector<std::size_t> chosen;
    for (std::size_t most = atLeast(Choices(left), wanted); !search(left, wanted, most, chosen); ++most)
        assert(most < columns.size());
    return chosen;
}

std::vector<std::size_t> earliestCover(std::span<const Reach> columns, Reach wanted, std::size_t count)
{
    std::vector<std::size_t> chosen;
    std::size_t next = 0;
    while (chosen.size() < count) {
        // A cover that begins with an earlier column would have been found before, so the others are looked for behind this one.
        std::vector<std::size_t> others;
        while (!search(columnsFrom(columns, next + 1), wanted.without(columns[next]), count - chosen.size() - 1, others)) {
            ++next;
            assert(next < columns.size());
        }
        chosen.push_back(next);
        wanted = wanted.without(columns[next++]);
    }
    return chosen;
}

} // namespace asleft
