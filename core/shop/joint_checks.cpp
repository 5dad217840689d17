#include <shop/joint.h>

#include <algorithm>
#include <cmath>

namespace asleft {

namespace {

bool sameBand(const Band<Torque> &a, const Band<Torque> &b)
{
    return a.low == b.low && a.high == b.high && a.nominal == b.nominal && a.unit == b.unit;
}

bool sameTarget(const Joint &a, const Joint &b)
{
    if (a.target.has_value() != b.target.has_value())
        return false;
    if (!a.target)
        return true;
    const auto &second = a.target->second;
    const auto &other = b.target->second;
    const bool sameSecond = second && other ? sameBand(*second, *other) : second.has_value() == other.has_value();
    return sameSecond && sameBand(a.target->first, b.target->first);
}

bool samePass(const Pass &a, const Pass &b)
{
    const auto *torque = std::get_if<AtTorque>(&a);
    const auto *otherTorque = std::get_if<AtTorque>(&b);
    if (torque && otherTorque)
        return torque->torque.value == otherTorque->torque.value;
    const auto *angle = std::get_if<AngleOn>(&a);
    const auto *otherAngle = std::get_if<AngleOn>(&b);
    return angle && otherAngle ? angle->angle.value == otherAngle->angle.value : a == b;
}

bool sameThreads(const Joint &a, const Joint &b)
{
    return std::ranges::all_of(a.order, [&](int fastener) { return threadOf(a, fastener) == threadOf(b, fastener); });
}

/// The target, else the highest torque of the passes.
std::optional<Typed<Torque>> highestTorque(const Joint &joint)
{
    auto highest = targetOf(joint);
    for (const Pass &pass : joint.passes) {
        const auto *own = std::get_if<AtTorque>(&pass);
        if (own && (!highest || own->torque.value > highest->value))
            highest = own->torque;
    }
    return highest;
}

/// Each thread once, the joint's own first.
std::vector<Thread> threadsOf(const Joint &joint)
{
    std::vector<Thread> threads;
    const auto take = [&](const std::optional<Thread> &thread) {
        if (thread && std::ranges::find(threads, *thread) == threads.end())
            threads.push_back(*thread);
    };
    // Not a thread that every fastener has another in place of.
    if (std::ranges::any_of(joint.text.pattern.places, [](const FastenerPosition &place) { return place.thread.empty(); }))
        take(joint.thread);
    for (const FastenerPosition &place : joint.text.pattern.places) {
        if (!place.thread.empty())
            take(threadOf(joint, place.number));
    }
    return threads;
}

StrengthClass ordinaryStrength(const Thread &thread)
{
    return thread.system == UnitSystem::Metric ? StrengthClass::C8_8 : StrengthClass::Sae5;
}

PreloadCheck checkOf(const Joint &joint, const Typed<Torque> &torque, const Thread &thread)
{
    PreloadCheck check;
    check.thread = thread;
    check.torque = torque;
    check.nutFactor = nutFactor(joint.text.condition.value_or(ThreadCondition::Dry), joint.text.finish);
    check.newtons = preloadNewtons(torque.value, check.nutFactor, thread.diameter);
    if (joint.strength)
        check.shareOfProof = shareOfProof(torque.value, thread, *joint.strength, check.nutFactor);
    // A snug torque before an angle may be as little as it likes.
    const bool floorCounts = !anyAngle(joint.passes);
    check.doubt = questionTorque(torque, thread, joint.strength.value_or(ordinaryStrength(thread)), check.nutFactor, floorCounts);
    return check;
}

/// How much there is to ask, then how near to its limit.
std::pair<double, double> badnessOf(const PreloadCheck &check)
{
    return {check.doubt ? std::abs(std::log(check.doubt->times)) : -1, check.shareOfProof.value_or(0)};
}

} // namespace

bool asksTheSame(const Joint &a, const Joint &b)
{
    return sameTarget(a, b) && std::ranges::equal(a.passes, b.passes, samePass) && a.order == b.order && sameThreads(a, b) &&
           a.strength == b.strength && a.text.condition == b.text.condition;
}

std::optional<Thread> threadOf(const Joint &joint, int fastener)
{
    const FastenerPosition *place = joint.text.pattern.place(fastener);
    if (!place)
        return std::nullopt;
    if (place->thread.empty())
        return joint.thread;
    const auto own = parseThread(place->thread);
    return own ? std::optional(*own) : std::nullopt;
}

std::optional<PreloadCheck> preloadCheck(const Joint &joint)
{
    const auto torque = highestTorque(joint);
    std::optional<PreloadCheck> worst;
    for (const Thread &thread : torque ? threadsOf(joint) : std::vector<Thread>()) {
        const PreloadCheck check = checkOf(joint, *torque, thread);
        if (!worst || badnessOf(check) > badnessOf(*worst))
            worst = check;
    }
    return worst;
}

} // namespace asleft
