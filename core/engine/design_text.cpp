#include "design_text.h"

#include "engine_words.h"
#include "layouts.h"

#include <engine/phase.h>

#include <algorithm>

namespace asleft {

namespace {

tl::unexpected<Error> refuseCounts(ErrorKind kind, std::size_t typed, std::size_t expected)
{
    return fail(kind, std::to_string(typed), std::to_string(expected));
}

/// Gives the next cylinder of the bank its label.
Done addCylinder(std::string_view label, std::vector<Cylinder> &bank, EngineDesign &design)
{
    if (label.size() > longestLabel)
        return fail(ErrorKind::TextTooLong, std::to_string(label.size()), std::to_string(longestLabel));
    if (!looksLikeLabel(label))
        return fail(ErrorKind::TextLeftOver, label);
    if (design.named(label))
        return fail(ErrorKind::CylinderLabelTwice, label);
    bank.push_back({design.cylinders()});
    design.labels.emplace_back(label);
    return {};
}

/// The first minus sign: a hyphen straight before a number, with no number before it that it would part from this one.
std::optional<std::string_view> negativeNumber(std::string_view text)
{
    bool afterNumber = false;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] == '-' && !afterNumber && at + 1 < text.size() && isAsciiDigit(text[at + 1]))
            return text.substr(at, text.find_first_of(betweenWords, at + 1) - at);
        if (betweenWords.find(text[at]) == std::string_view::npos)
            afterNumber = true;
        else if (text[at] == '-' || text[at] == ',')
            afterNumber = false;
    }
    return std::nullopt;
}

/// Where a comma is the decimal mark it parts two gaps only with a blank behind it.
std::vector<std::string_view> gapWords(std::string_view text, DecimalMark mark)
{
    if (mark == DecimalMark::Point)
        return wordsOf(text, betweenWords);
    auto words = wordsOf(text, " -");
    for (std::string_view &word : words)
        if (word.back() == ',')
            word.remove_suffix(1);
    std::erase(words, "");
    return words;
}

Result<Angle> readGap(std::string_view word, DecimalMark mark)
{
    Result<Angle> gap = parseSignedAngle(word, mark);
    if (!gap)
        return fail(ErrorKind::GapNotAnAngle, word);
    if (*gap <= Angle{})
        return fail(ErrorKind::GapNotPositive, word);
    // writeGaps() writes decimal numbers: a fraction that is none, like 720/7, is refused rather than changed.
    if (parseSignedAngle(plainDegrees(*gap)) != gap)
        return fail(ErrorKind::GapNotAnAngle, word);
    return gap;
}

/// Exact for every number of cylinders there is: see Angle.
std::vector<Angle> evenGaps(const EngineDesign &design)
{
    const int cylinders = design.cylinders();
    return std::vector<Angle>(static_cast<std::size_t>(cylinders), Angle::ofSmallest(cycleOf(design).smallest() / cylinders));
}

/// Refuses a number of banks the layout cannot have, and banks the cylinders do not divide into.
Done checkBanks(const EngineText &text, std::size_t banks)
{
    std::string choices;
    bool fits = false;
    for (const int choice : bankChoices(text.layout)) {
        choices += (choices.empty() ? "" : ", ") + std::to_string(choice);
        fits = fits || static_cast<std::size_t>(choice) == banks;
    }
    if (!fits)
        return fail(ErrorKind::BanksForLayout, std::to_string(banks), choices);
    const auto cylinders = static_cast<std::size_t>(text.cylinders);
    if (cylinders % banks != 0)
        return refuseCounts(ErrorKind::RowsUneven, cylinders, banks);
    return {};
}

} // namespace

Done readNumbering(const EngineText &text, EngineDesign &design)
{
    const std::string usual = usualNumbering(text.layout, text.cylinders);
    const auto typedBanks = piecesOf(trimmed(text.numbering).empty() ? usual : text.numbering, '/');
    if (Done fits = checkBanks(text, typedBanks.size()); !fits)
        return fits;

    for (const std::string_view typed : typedBanks) {
        auto &bank = design.banks.emplace_back();
        for (const std::string_view label : wordsOf(typed, betweenWords))
            if (Done added = addCylinder(label, bank, design); !added)
                return added;
    }

    const auto cylinders = static_cast<std::size_t>(text.cylinders);
    if (design.labels.size() != cylinders)
        return refuseCounts(ErrorKind::CylinderLabelCount, design.labels.size(), cylinders);
    for (const auto &bank : design.banks)
        if (bank.size() != cylinders / design.banks.size())
            return refuseCounts(ErrorKind::CylinderLabelCount, bank.size(), cylinders / design.banks.size());
    return {};
}

Done readFiringOrder(const EngineText &text, EngineDesign &design)
{
    std::vector<bool> fires(design.labels.size(), false);
    for (const std::string_view label : wordsOf(text.firingOrder, betweenWords)) {
        const auto cylinder = design.named(label);
        if (!cylinder)
            return fail(ErrorKind::FiringOrderUnknown, label);
        if (fires[static_cast<std::size_t>(cylinder->index)])
            return fail(ErrorKind::FiringOrderTwice, design.label(*cylinder));
        fires[static_cast<std::size_t>(cylinder->index)] = true;
        design.firingOrder.push_back(*cylinder);
    }
    if (design.firingOrder.empty() && design.cylinders() == 1)
        design.firingOrder.push_back({0});
    else if (const auto silent = std::find(fires.begin(), fires.end(), false); silent != fires.end())
        return fail(ErrorKind::FiringOrderMissing, design.label({static_cast<int>(silent - fires.begin())}));
    return {};
}

Done readGaps(const EngineText &text, DecimalMark mark, EngineDesign &design)
{
    const auto cylinders = static_cast<std::size_t>(design.cylinders());
    if (trimmed(text.gaps).empty()) {
        design.gaps = evenGaps(design);
        return {};
    }
    if (const auto negative = negativeNumber(text.gaps))
        return fail(ErrorKind::GapNotPositive, *negative);

    std::vector<Angle> pattern;
    for (const std::string_view word : gapWords(text.gaps, mark)) {
        const auto gap = readGap(word, mark);
        if (!gap)
            return tl::unexpected(gap.error());
        pattern.push_back(*gap);
    }
    if (pattern.empty() || cylinders % pattern.size() != 0)
        return refuseCounts(ErrorKind::GapsCount, pattern.size(), cylinders);

    Angle sum;
    for (std::size_t i = 0; i < cylinders; ++i) {
        design.gaps.push_back(pattern[i % pattern.size()]);
        sum += design.gaps.back();
    }
    if (sum != cycleOf(design))
        return fail(ErrorKind::GapsSum, plainDegrees(sum));
    return {};
}

std::string writeNumbering(const EngineDesign &design)
{
    std::string text;
    for (const auto &bank : design.banks) {
        text += text.empty() ? "" : " /";
        for (const Cylinder cylinder : bank)
            text += (text.empty() ? "" : " ") + design.label(cylinder);
    }
    return text;
}

std::string writeFiringOrder(const EngineDesign &design)
{
    std::string text;
    for (const Cylinder cylinder : design.firingOrder)
        text += (text.empty() ? "" : "-") + design.label(cylinder);
    return text;
}

std::string writeGaps(const EngineDesign &design)
{
    if (design.gaps == evenGaps(design))
        return {};
    std::string text;
    for (const Angle gap : design.gaps) {
        std::string number = plainDegrees(gap);
        // With exactly three decimals a point could be taken for a thousands mark where the decimal mark is a comma.
        if (const std::size_t point = number.find('.'); point != std::string::npos && number.size() - point == 4)
            number += '0';
        text += (text.empty() ? "" : "-") + number;
    }
    return text;
}

} // namespace asleft
