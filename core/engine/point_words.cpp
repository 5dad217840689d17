#include "point_words.h"

#include "engine_words.h"

#include <algorithm>
#include <array>

namespace asleft {

namespace {

struct GroupWord {
    std::string_view word;
    PointGroup group;
};

constexpr PointGroup intakes{PointKind::Lash, Side::Intake};
constexpr PointGroup exhausts{PointKind::Lash, Side::Exhaust};
constexpr PointGroup decompressors{PointKind::Decompressor, Side::Exhaust};
constexpr PointGroup injectors{PointKind::Injector, Side::Intake};

/// Longest first, so that `EX1` is not the exhaust of a cylinder X1 where `EX` fits as well.
constexpr std::array groupWords{
    GroupWord{"DECOMPRESSORS", decompressors},
    GroupWord{"DECOMPRESSOR", decompressors},
    GroupWord{"INJECTORS", injectors},
    GroupWord{"INJECTOR", injectors},
    GroupWord{"EXHAUSTS", exhausts},
    GroupWord{"EXHAUST", exhausts},
    GroupWord{"INTAKES", intakes},
    GroupWord{"DECOMPS", decompressors},
    GroupWord{"INTAKE", intakes},
    GroupWord{"INLETS", intakes},
    GroupWord{"DECOMP", decompressors},
    GroupWord{"INLET", intakes},
    GroupWord{"EXH", exhausts},
    GroupWord{"INT", intakes},
    GroupWord{"INJ", injectors},
    GroupWord{"DEC", decompressors},
    GroupWord{"EX", exhausts},
    GroupWord{"IN", intakes},
    GroupWord{"BI", {PointKind::BridgeScrew, Side::Intake}},
    GroupWord{"BE", {PointKind::BridgeScrew, Side::Exhaust}},
    GroupWord{"E", exhausts},
    GroupWord{"I", intakes},
    GroupWord{"D", decompressors},
    GroupWord{"J", injectors},
};

/// The label without the letter that tells one of several, and that one's number; nothing if no letter from `a` on stands behind it.
struct OneOf {
    std::string_view label;
    int number;
};
std::optional<OneOf> oneOfSeveral(std::string_view word)
{
    constexpr int mostLashes = 4;
    if (word.size() < 2)
        return std::nullopt;
    const int number = inCapitals(word.back()) - 'A';
    if (number < 0 || number >= mostLashes)
        return std::nullopt;
    return OneOf{word.substr(0, word.size() - 1), number};
}

/// Whether the word is a cylinder's label, or would be without the letter behind it.
bool namesCylinder(const EngineDesign &design, std::string_view word)
{
    const auto one = oneOfSeveral(word);
    return design.named(word) || (one && design.named(one->label));
}

/// A label alone, without a number in it, might be any word.
bool isNumbered(std::string_view label)
{
    return looksLikeLabel(label) && std::any_of(label.begin(), label.end(), isAsciiDigit);
}

PointGroup groupOf(AdjusterRef adjuster)
{
    return {adjuster.kind, adjuster.side};
}

/// A short name stands for its group if there is nothing else in it: `I1 2 4`.
NamedPoints namedAlone(const EngineDesign &design, AdjusterRef adjuster)
{
    const PointGroup group = groupOf(adjuster);
    const bool whole = group.kind != PointKind::BridgeScrew && pointsOf(design, group, adjuster.cylinder).size() == 1;
    return {group, {adjuster}, whole};
}

} // namespace

std::vector<AdjusterRef> pointsOf(const EngineDesign &design, PointGroup group, Cylinder cylinder)
{
    const ValveTrain &train = design.train;
    const AdjusterRef first{cylinder, group.side, group.kind};
    if (group.kind == PointKind::Decompressor)
        return train.decompressors ? std::vector{first} : std::vector<AdjusterRef>();
    if (group.kind == PointKind::Injector)
        return train.injectors ? std::vector{first} : std::vector<AdjusterRef>();

    std::vector<AdjusterRef> points;
    for (int number = 0; number < train.lashes(group.side); ++number) {
        if (train.bridgeScrews && train.isBridged(group.side))
            points.push_back({cylinder, group.side, PointKind::BridgeScrew, number});
        if (group.kind == PointKind::Lash)
            points.push_back({cylinder, group.side, PointKind::Lash, number});
    }
    return points;
}

std::optional<PointGroup> groupNamed(std::string_view word)
{
    const auto found = std::ranges::find_if(groupWords, [&](const GroupWord &known) { return sameWord(word, known.word); });
    return found == groupWords.end() ? std::nullopt : std::optional(found->group);
}

bool isBridgeWord(std::string_view word)
{
    return sameWord(word, "BRIDGE") || sameWord(word, "BRIDGES");
}

std::optional<NamedPoints> pointsLabelled(const EngineDesign &design, PointGroup group, std::string_view label)
{
    if (const auto cylinder = design.named(label)) {
        auto points = pointsOf(design, group, *cylinder);
        return points.empty() ? std::nullopt : std::optional(NamedPoints{group, std::move(points), true});
    }
    const auto one = oneOfSeveral(label);
    const auto cylinder = one && design.train.lashes(group.side) > 1 ? design.named(one->label) : std::nullopt;
    if (!cylinder)
        return std::nullopt;
    auto points = pointsOf(design, group, *cylinder);
    std::erase_if(points, [&](AdjusterRef point) { return groupOf(point) != group || point.number != one->number; });
    return points.empty() ? std::nullopt : std::optional(NamedPoints{group, std::move(points), true});
}

std::optional<NamedPoints> pointsGlued(const EngineDesign &design, std::string_view word)
{
    for (const AdjusterRef adjuster : design.adjusters())
        if (sameWord(word, shortName(design, adjuster)))
            return namedAlone(design, adjuster);
    for (const GroupWord &known : groupWords) {
        if (!sameWord(word.substr(0, known.word.size()), known.word))
            continue;
        if (auto named = pointsLabelled(design, known.group, word.substr(known.word.size())))
            return named;
    }
    return std::nullopt;
}

std::optional<std::string_view> unknownCylinderIn(const EngineDesign &design, std::string_view word, bool labelMayStandAlone)
{
    for (const GroupWord &known : groupWords) {
        if (!sameWord(word.substr(0, known.word.size()), known.word))
            continue;
        const std::string_view label = word.substr(known.word.size());
        if (namesCylinder(design, label))
            return std::nullopt;
        if (isNumbered(label) && isAsciiDigit(label.front()))
            return label;
    }
    return labelMayStandAlone && isNumbered(word) && !namesCylinder(design, word) ? std::optional(word) : std::nullopt;
}

} // namespace asleft
