#include "words.h"

#include <algorithm>

namespace asleft::store {
namespace {

/// Each adjuster a cylinder can have, seen from its cylinder 0.
constexpr auto adjusterWords = std::to_array<Word<AdjusterRef>>({
    {{{}, Side::Intake, PointKind::Lash, 0}, "intake"},
    {{{}, Side::Intake, PointKind::Lash, 1}, "intake_2"},
    {{{}, Side::Intake, PointKind::Lash, 2}, "intake_3"},
    {{{}, Side::Exhaust, PointKind::Lash, 0}, "exhaust"},
    {{{}, Side::Exhaust, PointKind::Lash, 1}, "exhaust_2"},
    {{{}, Side::Exhaust, PointKind::Lash, 2}, "exhaust_3"},
    {{{}, Side::Exhaust, PointKind::Lash, 3}, "exhaust_4"},
    {{{}, Side::Intake, PointKind::BridgeScrew, 0}, "intake_bridge"},
    {{{}, Side::Exhaust, PointKind::BridgeScrew, 0}, "exhaust_bridge"},
    {{{}, Side::Exhaust, PointKind::BridgeScrew, 1}, "exhaust_bridge_2"},
    {{{}, Side::Exhaust, PointKind::Decompressor, 0}, "decompressor"},
    {{{}, Side::Intake, PointKind::Injector, 0}, "injector"},
});

} // namespace

std::string_view wordOf(AdjusterRef adjuster)
{
    adjuster.cylinder = {};
    const auto *const entry = std::ranges::find(adjusterWords, adjuster, &Word<AdjusterRef>::value);
    return entry == adjusterWords.end() ? std::string_view() : entry->word;
}

std::optional<AdjusterRef> adjusterOf(Cylinder cylinder, std::string_view word)
{
    const auto *const entry = std::ranges::find(adjusterWords, word, &Word<AdjusterRef>::word);
    if (entry == adjusterWords.end())
        return std::nullopt;
    AdjusterRef adjuster = entry->value;
    adjuster.cylinder = cylinder;
    return adjuster;
}

} // namespace asleft::store
