#include <engine/plan.h>

#include "words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace asleft {

using namespace words;

namespace {

struct SideWord {
    std::string_view word;
    Side side;
};

/// Longest first, so that `EX1` is not the exhaust of a cylinder X1 where `EX` fits as well.
constexpr std::array sideWords{
    SideWord{"EXHAUSTS", Side::Exhaust}, SideWord{"EXHAUST", Side::Exhaust}, SideWord{"INTAKES", Side::Intake},
    SideWord{"INTAKE", Side::Intake},    SideWord{"INLETS", Side::Intake},   SideWord{"INLET", Side::Intake},
    SideWord{"EXH", Side::Exhaust},      SideWord{"INT", Side::Intake},      SideWord{"EX", Side::Exhaust},
    SideWord{"IN", Side::Intake},        SideWord{"E", Side::Exhaust},       SideWord{"I", Side::Intake},
};

std::optional<Side> sideNamed(std::string_view word)
{
    for (const SideWord &known : sideWords)
        if (sameWord(word, known.word))
            return known.side;
    return std::nullopt;
}

/// `I1`, `IA1`, `EX3`: a side word with a cylinder's label straight behind it.
std::optional<AdjusterRef> gluedValve(const EngineDesign &design, std::string_view word)
{
    for (const SideWord &known : sideWords) {
        if (!sameWord(word.substr(0, known.word.size()), known.word))
            continue;
        if (const auto cylinder = design.named(word.substr(known.word.size())))
            return AdjusterRef{*cylinder, known.side};
    }
    return std::nullopt;
}

/// The cylinder in a word like `E9` that the engine does not have; nothing if the word is not made that way.
std::optional<std::string_view> unknownCylinderIn(const EngineDesign &design, std::string_view word, bool sideKnown)
{
    const auto numbered = [](std::string_view label) { return looksLikeLabel(label) && std::any_of(label.begin(), label.end(), isDigit); };
    for (const SideWord &known : sideWords) {
        if (!sameWord(word.substr(0, known.word.size()), known.word))
            continue;
        const std::string_view label = word.substr(known.word.size());
        if (design.named(label))
            return std::nullopt;
        if (numbered(label) && isDigit(label.front()))
            return label;
    }
    return sideKnown && numbered(word) ? std::optional(word) : std::nullopt;
}

/// The valves of one line as far as they are read. A side holds for the labels behind it until another is named, apart or glued.
struct Reading {
    std::vector<AdjusterRef> valves;
    std::optional<Side> side;
    std::string_view sideAlone; ///< a side word no valve has followed yet

    [[nodiscard]] std::optional<AdjusterRef> valveNamed(const EngineDesign &design, std::string_view word) const
    {
        if (const auto cylinder = side ? design.named(word) : std::nullopt)
            return AdjusterRef{*cylinder, *side};
        const auto glued = gluedValve(design, word);
        const bool contradicts = glued && !sideAlone.empty() && glued->side != side; // `IN E1`
        return contradicts ? std::nullopt : glued;
    }
};

Result<std::vector<AdjusterRef>> readPoints(const EngineDesign &design, std::string_view text)
{
    if (const Done fits = notTooLong(text); !fits)
        return tl::unexpected(fits.error());
    Reading reading;
    for (const std::string_view word : wordsOf(text, " \t\r\n,;:")) {
        if (const auto named = sideNamed(word)) {
            if (!reading.sideAlone.empty())
                break;
            reading.side = named;
            reading.sideAlone = word;
        } else if (const auto valve = reading.valveNamed(design, word)) {
            reading.valves.push_back(*valve);
            reading.side = valve->side;
            reading.sideAlone = {};
        } else if (const auto label = unknownCylinderIn(design, word, reading.side.has_value()))
            return fail(ErrorKind::TableCylinder, *label);
        else
            return fail(ErrorKind::TablePointUnread, word);
    }
    if (!reading.sideAlone.empty())
        return fail(ErrorKind::TablePointUnread, reading.sideAlone);
    if (reading.valves.empty())
        return fail(ErrorKind::EmptyText);
    return reading.valves;
}

Result<CrankPlace> readPlace(const EngineDesign &design, const TableLine &line)
{
    if (const Done fits = notTooLong(line.cylinder); !fits)
        return tl::unexpected(fits.error());
    const std::string_view label = trimmed(line.cylinder);
    if (const auto cylinder = design.named(label))
        return CrankPlace{*cylinder, line.event};
    return fail(looksLikeLabel(label) ? ErrorKind::TableCylinder : ErrorKind::TablePositionUnread, label);
}

} // namespace

Result<CrankPlan> planFromTable(const EngineDesign &design, const std::vector<TableLine> &lines, std::string source)
{
    CrankPlan plan;
    plan.source = std::move(source);
    plan.unreached = design.adjusters();
    const std::vector<AdjusterRef> inOrder = plan.unreached;
    for (const TableLine &line : lines) {
        if (trimmed(line.cylinder).empty() && trimmed(line.points).empty())
            continue;
        const auto place = readPlace(design, line);
        if (!place)
            return tl::unexpected(place.error());
        const auto typed = readPoints(design, line.points);
        if (!typed)
            return tl::unexpected(typed.error());
        for (const AdjusterRef valve : *typed)
            if (std::erase(plan.unreached, valve) == 0)
                return fail(ErrorKind::TablePointTwice, shortName(design, valve));

        PlanPosition position{*place, crankAt(design, *place), {}};
        for (const AdjusterRef valve : inOrder)
            if (std::find(typed->begin(), typed->end(), valve) != typed->end())
                position.points.push_back({valve, margin(design, valve, position.crank)});
        plan.positions.push_back(std::move(position));
    }
    if (plan.positions.empty())
        return fail(ErrorKind::TableEmpty);
    return plan;
}

} // namespace asleft
