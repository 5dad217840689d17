// The valves of a cylinder as they are typed, and what else is set there.
#include "design_text.h"

#include "engine_words.h"

#include <engine/phase.h>

#include <charconv>

namespace asleft {

namespace {

struct ValveCounts {
    int intakes;
    int exhausts;
    bool operator==(const ValveCounts &) const = default;
};

/// A whole number up to `most`, and nothing else in the text; negative if it is none.
int wholeNumber(std::string_view text, int most)
{
    int number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    const bool read = error == std::errc() && end == text.data() + text.size() && isAsciiDigit(text.front());
    return read && number <= most ? number : -1;
}

/// What a number of valves alone means.
ValveCounts usualSplit(Cycle cycle, int valves)
{
    return cycle == Cycle::TwoStroke ? ValveCounts{0, valves} : ValveCounts{(valves + 1) / 2, valves / 2};
}

bool someEngineHas(Cycle cycle, ValveCounts counts)
{
    if (cycle == Cycle::TwoStroke)
        return counts.intakes == 0 && counts.exhausts >= 1 && counts.exhausts <= 4;
    return counts.intakes >= 1 && counts.intakes <= 3 && counts.exhausts >= 1 && counts.exhausts <= 4 &&
           counts.intakes + counts.exhausts <= 5;
}

Result<ValveCounts> readValves(std::string_view text, Cycle cycle)
{
    if (trimmed(text).empty())
        return usualSplit(cycle, 2);
    constexpr int most = 9;
    const auto pieces = piecesOf(text, '+');
    ValveCounts counts{-1, -1};
    if (pieces.size() == 2)
        counts = {wholeNumber(pieces[0], most), wholeNumber(pieces[1], most)};
    else if (const int alone = pieces.size() == 1 ? wholeNumber(pieces[0], most) : -1; alone >= 2)
        counts = usualSplit(cycle, alone);
    if (someEngineHas(cycle, counts))
        return counts;
    return fail(ErrorKind::ValvesACylinder, trimmed(text));
}

} // namespace

Done readTrain(const EngineText &text, EngineDesign &design)
{
    const auto counts = readValves(text.valves, text.cycle);
    if (!counts)
        return tl::unexpected(counts.error());
    ValveTrain &train = design.train;
    train.intakes = counts->intakes;
    train.exhausts = counts->exhausts;
    train.bridged = text.bridged;
    train.bridgeScrews = text.bridged && text.bridgeScrews;
    train.injectors = text.injectors;
    train.decompressors = text.decompressors;
    if (train.bridged && !train.isBridged(Side::Intake) && !train.isBridged(Side::Exhaust))
        return fail(ErrorKind::BridgeWithoutPair);
    return {};
}

Done readBarring(const EngineText &text, EngineDesign &design)
{
    if (trimmed(text.barring).empty())
        return {};
    constexpr int mostTeeth = 1000;
    const auto pieces = piecesOf(text.barring, '/');
    if (pieces.size() == 2) {
        const Barring barring{wholeNumber(pieces[0], mostTeeth), wholeNumber(pieces[1], mostTeeth)};
        if (barring.pinionTeeth >= 1 && barring.ringTeeth > barring.pinionTeeth) {
            design.barring = barring;
            return {};
        }
    }
    return fail(ErrorKind::BarringUnread, trimmed(text.barring));
}

std::string writeValves(const EngineDesign &design)
{
    const ValveCounts counts{design.train.intakes, design.train.exhausts};
    if (counts == usualSplit(design.cycle, 2))
        return {};
    const int valves = counts.intakes + counts.exhausts;
    if (valves >= 2 && counts == usualSplit(design.cycle, valves))
        return std::to_string(valves);
    return std::to_string(counts.intakes) + '+' + std::to_string(counts.exhausts);
}

std::string writeBarring(const EngineDesign &design)
{
    if (!design.barring)
        return {};
    return std::to_string(design.barring->ringTeeth) + '/' + std::to_string(design.barring->pinionTeeth);
}

} // namespace asleft
