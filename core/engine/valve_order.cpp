// The order of the lashes along each bank, in letters.
#include "design_text.h"

#include "engine_words.h"

#include <algorithm>

namespace asleft {

namespace {

/// How many of each side are meant.
struct SideCounts {
    std::size_t intakes;
    std::size_t exhausts;

    [[nodiscard]] std::size_t both() const { return intakes + exhausts; }
    [[nodiscard]] SideCounts times(std::size_t cylinders) const { return {intakes * cylinders, exhausts * cylinders}; }
};

SideCounts lashesOfCylinder(const ValveTrain &train)
{
    return {static_cast<std::size_t>(train.lashes(Side::Intake)), static_cast<std::size_t>(train.lashes(Side::Exhaust))};
}

/// The bank's letters, blanks and commas left out.
Result<std::vector<Side>> readLetters(std::string_view text)
{
    std::vector<Side> sides;
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (betweenWords.find(text[at]) != std::string_view::npos)
            continue;
        const char letter = inCapitals(text[at]);
        if (letter != 'E' && letter != 'I') {
            std::size_t end = at + 1; // a letter of another alphabet is several bytes: name it whole
            while (end < text.size() && (static_cast<unsigned char>(text[end]) & 0xC0U) == 0x80U)
                ++end;
            return fail(ErrorKind::ValveOrderLetter, text.substr(at, end - at));
        }
        sides.push_back(letter == 'E' ? Side::Exhaust : Side::Intake);
    }
    return sides;
}

/// Refuses lashes from `first` on that are not as many of each side as expected.
Done checkSides(const std::vector<Side> &sides, std::size_t first, SideCounts expected)
{
    const auto begin = sides.begin() + static_cast<std::ptrdiff_t>(first);
    const auto end = begin + static_cast<std::ptrdiff_t>(expected.both());
    const auto intakes = static_cast<std::size_t>(std::count(begin, end, Side::Intake));
    if (intakes == expected.intakes)
        return {};
    const std::string each = expected.intakes == expected.exhausts
                                 ? std::to_string(expected.intakes)
                                 : std::to_string(expected.intakes) + '+' + std::to_string(expected.exhausts);
    return fail(ErrorKind::ValveOrderCount, std::to_string(intakes), std::to_string(expected.both() - intakes), each);
}

Result<std::vector<Side>> readBank(std::string_view text, SideCounts ofCylinder, std::size_t cylinders)
{
    auto sides = readLetters(text);
    if (!sides)
        return sides;
    const SideCounts ofBank = ofCylinder.times(cylinders);
    if (sides->size() != ofBank.both())
        return fail(ErrorKind::ValveOrderLength, std::to_string(sides->size()), std::to_string(ofBank.both()));
    if (const Done whole = checkSides(*sides, 0, ofBank); !whole)
        return tl::unexpected(whole.error());
    // A lash belongs to a cylinder by its place, so each cylinder's stretch must have its own.
    for (std::size_t first = 0; first < sides->size(); first += ofCylinder.both())
        if (const Done own = checkSides(*sides, first, ofCylinder); !own)
            return tl::unexpected(own.error());
    return sides;
}

std::vector<Side> intakesFirst(SideCounts ofCylinder, std::size_t cylinders)
{
    std::vector<Side> bank;
    for (std::size_t i = 0; i < cylinders; ++i) {
        bank.insert(bank.end(), ofCylinder.intakes, Side::Intake);
        bank.insert(bank.end(), ofCylinder.exhausts, Side::Exhaust);
    }
    return bank;
}

} // namespace

Done readValveOrder(const EngineText &text, EngineDesign &design)
{
    const std::size_t banks = design.banks.size();
    const std::size_t cylinders = design.banks.front().size();
    const SideCounts ofCylinder = lashesOfCylinder(design.train);
    if (trimmed(text.valveOrder).empty()) {
        design.valveRows = ValveRows::Two;
        design.valveOrder.assign(banks, intakesFirst(ofCylinder, cylinders));
        return {};
    }

    design.valveRows = ValveRows::One;
    const auto typed = piecesOf(text.valveOrder, '/');
    if (typed.size() != 1 && typed.size() != banks)
        return fail(ErrorKind::BanksForLayout, std::to_string(typed.size()), std::to_string(banks));
    for (std::size_t bank = 0; bank < banks; ++bank) {
        auto sides = readBank(typed[bank % typed.size()], ofCylinder, cylinders);
        if (!sides)
            return tl::unexpected(sides.error());
        design.valveOrder.push_back(*std::move(sides));
    }
    return {};
}

std::string writeValveOrder(const EngineDesign &design)
{
    if (design.valveRows == ValveRows::Two)
        return {};
    std::string text;
    for (const auto &bank : design.valveOrder) {
        text += text.empty() ? "" : " /";
        for (const Side side : bank)
            text += (text.empty() ? "" : " ") + std::string(side == Side::Intake ? "I" : "E");
    }
    return text;
}

} // namespace asleft
