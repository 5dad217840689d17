#include "tighten_now.h"

#include <algorithm>

namespace asleft {

std::size_t TightenNow::passOrLast() const
{
    return std::min(pass(), joint().passes.size() - 1);
}

bool TightenNow::settles() const
{
    return !progress().finished() && std::holds_alternative<Settle>(joint().passes.at(pass()));
}

const Joint *TightenNow::newerRevision() const
{
    const Joint *newest = state.frame->jointNow(id);
    return newest && newest->revision > worked().revision ? newest : nullptr;
}

std::optional<int> TightenNow::next() const
{
    if (progress().next)
        return progress().next->fastener;
    const JointWants asked = wants();
    return asked.fasteners.empty() ? std::nullopt : std::optional(asked.fasteners.front());
}

std::vector<TickSlot> TightenNow::rest() const
{
    return restOfPass(joint().tightening(), progress());
}

std::optional<TickSlot> TightenNow::placeInHand() const
{
    const auto left = rest();
    const auto place = std::ranges::find(left, inHand, [](const TickSlot &each) { return std::optional(each.fastener); });
    return place == left.end() ? std::nullopt : std::optional(*place);
}

const FastenerState *TightenNow::fastenerInHand() const
{
    const auto known = inHand ? worked().fasteners.find(*inHand) : worked().fasteners.end();
    return known == worked().fasteners.end() ? nullptr : &known->second;
}

qsizetype TightenNow::legsDone() const
{
    if (progress().finished())
        return qsizetype(joint().order.size());
    const auto &done = progress().doneInRound;
    const auto isDone = [&](int number) { return std::ranges::count(done, number) > 0; };
    return std::ranges::find_if_not(joint().order, isDone) - joint().order.begin();
}

} // namespace asleft
