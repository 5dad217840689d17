// How what a person says of fasteners becomes a fact: the part that knows wrenches, adapters and passes.
#include "joint_entries.h"

#include "inside.h"

#include <measure/instrument.h>

#include <algorithm>

namespace asleft {

namespace {

/// The pass of all these places. Refuses none, a fastener the joint does not have, and places of several passes or rounds or of one twice.
Result<const Pass *> passOf(const std::vector<TickPlace> &places, const Joint &joint)
{
    if (places.empty())
        return fail(ErrorKind::NothingToLog);
    const TickPlace &first = places.front();
    for (auto place = places.begin(); place != places.end(); ++place) {
        if (!joint.text.pattern.place(place->fastener))
            return fail(ErrorKind::FastenerUnknown, std::to_string(place->fastener));
        const bool together = place->pass == first.pass && place->round == first.round;
        if (!together || std::find(places.begin(), place, *place) != place)
            return fail(ErrorKind::TickOutOfTurn, std::to_string(place->fastener));
    }
    if (first.pass < 0 || static_cast<std::size_t>(first.pass) >= joint.passes.size())
        return fail(ErrorKind::TickOutOfTurn, std::to_string(first.fastener));
    return &joint.passes[static_cast<std::size_t>(first.pass)];
}

/// A torque is reached with a wrench, an angle by turning on, finger-tight by hand; anything may be done by feel.
bool fits(TickHow how, const Pass &pass)
{
    switch (how) {
    case TickHow::ByFeel: return true;
    case TickHow::ByHand: return std::holds_alternative<FingerTight>(pass);
    case TickHow::ByAngle: return std::holds_alternative<AngleOn>(pass);
    case TickHow::SetTool:
    case TickHow::ReadTool: return !std::holds_alternative<FingerTight>(pass) && !std::holds_alternative<AngleOn>(pass);
    }
    return false;
}

Result<const Tool *> knownTool(const JobFrame &frame, const std::optional<ToolId> &id, const char *what)
{
    const Tool *tool = id ? frame.tool(*id) : nullptr;
    if (!tool)
        return fail(ErrorKind::NotFound, what);
    return tool;
}

/// An adapter that changes what the fastener gets; others are not kept.
Result<std::optional<FitUsed>> fitOf(const TickEntry &entry, const JobFrame &frame)
{
    if (!entry.fit || changesNothing(entry.fit->fit))
        return std::optional<FitUsed>{};
    if (entry.fit->adapter && !frame.tool(*entry.fit->adapter))
        return fail(ErrorKind::NotFound, "adapter");
    return entry.fit;
}

bool outside(const TorqueTool &wrench, Torque shown)
{
    return shown < wrench.least.value || shown > wrench.most.value;
}

/// Expanded, at the fastener.
Result<Torque> uncertaintyThere(const TicksFact &ticks, const TorqueTool &wrench)
{
    const Torque shown = torqueToolUncertainty(ticks.reading->value, deviationOf(wrench));
    return ticks.fit ? torqueAtFastener(shown, *ticks.lever, ticks.fit->fit) : Result<Torque>(shown);
}

Done fillReading(TicksFact &ticks, const TickEntry &entry, const TorqueTool &wrench, DecisionRule rule)
{
    if (!entry.reading)
        return fail(ErrorKind::EmptyText);
    ticks.reading = entry.reading;
    ticks.outOfRange = outside(wrench, entry.reading->value);
    if (rule != DecisionRule::WithUncertainty)
        return {};
    const auto uncertainty = uncertaintyThere(ticks, wrench);
    if (!uncertainty)
        return tl::unexpected(uncertainty.error());
    ticks.uncertainty = *uncertainty;
    return {};
}

Done fillWrench(TicksFact &ticks, const TickEntry &entry, Torque wanted, const JobFrame &frame, std::chrono::sys_days today)
{
    const auto tool = knownTool(frame, entry.tool, "torque wrench");
    if (!tool)
        return tl::unexpected(tool.error());
    const auto fit = fitOf(entry, frame);
    if (!fit)
        return tl::unexpected(fit.error());
    // Of a wrench that is read too: it refuses what is no wrench, and a lever that is wanted and unknown.
    const auto setting = settingOn(**tool, wanted, *fit ? std::optional((*fit)->fit) : std::nullopt);
    if (!setting)
        return tl::unexpected(setting.error());
    const TorqueTool &wrench = *(*tool)->torque;
    ticks.tool = entry.tool;
    ticks.fit = *fit;
    if (ticks.fit)
        ticks.lever = wrench.lever;
    ticks.calibrationOverdue = wrench.calibrationDue && *wrench.calibrationDue < today;
    if (ticks.how == TickHow::ReadTool)
        return fillReading(ticks, entry, wrench, frame.rule);
    ticks.setting = *setting;
    ticks.outOfRange = outside(wrench, setting->value);
    return {};
}

Done fillReason(TicksFact &ticks, const TickEntry &entry)
{
    ticks.reason = trimmedText(entry.reason);
    return ticks.reason.empty() ? Done(fail(ErrorKind::ReasonMissing)) : Done{};
}

/// By a gauge, or by a mark where none is said.
Done fillGauge(TicksFact &ticks, const TickEntry &entry, const JobFrame &frame)
{
    ticks.tool = entry.tool;
    return !entry.tool || frame.tool(*entry.tool) ? Done{} : Done(fail(ErrorKind::NotFound, "angle gauge"));
}

Done fill(TicksFact &ticks, const TickEntry &entry, const Pass &pass, const Joint &joint, const JobFrame &frame,
          std::chrono::sys_days today)
{
    if (ticks.how == TickHow::ByHand)
        return {};
    if (ticks.how == TickHow::ByFeel)
        return fillReason(ticks, entry);
    if (ticks.how == TickHow::ByAngle)
        return fillGauge(ticks, entry, frame);
    const auto target = targetOf(joint);
    const auto wanted = torqueOfPass(pass, target ? std::optional(target->value) : std::nullopt);
    Q_ASSERT(wanted); // the passes of a joint that was read ask for no torque there is none of
    return fillWrench(ticks, entry, *wanted, frame, today);
}

/// By the tick that decides; a tool out of its range proves nothing.
bool outsideOrUnproved(const FastenerState &fastener)
{
    const auto verdict = fastener.verdict();
    return verdict == Verdict::Low || verdict == Verdict::High || verdict == Verdict::TooClose;
}

} // namespace

std::chrono::sys_days calendarDay(Moment moment)
{
    using namespace std::chrono;
    return floor<days>(sys_time<milliseconds>(milliseconds(moment.utcMilliseconds)));
}

Result<std::vector<int>> fastenersIn(const Joint &joint, const std::vector<int> &fasteners)
{
    std::vector<int> once;
    for (const int number : fasteners) {
        if (!joint.text.pattern.place(number))
            return fail(ErrorKind::FastenerUnknown, std::to_string(number));
        if (std::ranges::find(once, number) == once.end())
            once.push_back(number);
    }
    if (once.empty())
        return fail(ErrorKind::NothingToLog);
    return once;
}

Result<TicksFact> ticksFrom(const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today)
{
    const auto pass = passOf(entry.places, joint);
    if (!pass)
        return tl::unexpected(pass.error());
    if (!fits(entry.how, **pass))
        return fail(ErrorKind::TickOutOfTurn, std::to_string(entry.places.front().fastener));
    TicksFact ticks{.joint = joint.id, .revision = joint.revision, .ticks = {}, .how = entry.how};
    const bool moved = entry.moved && std::holds_alternative<Settle>(**pass);
    for (const TickPlace &place : entry.places)
        ticks.ticks.push_back({place, moved});
    if (const Done filled = fill(ticks, entry, **pass, joint, frame, today); !filled)
        return tl::unexpected(filled.error());
    return ticks;
}

Done inTurn(const TicksFact &ticks, const Joint &joint, const TighteningProgress &progress)
{
    const auto rest = restOfPass(joint.tightening(), progress);
    for (const Tick &tick : ticks.ticks) {
        if (std::ranges::find(rest, tick.place) == rest.end())
            return fail(ErrorKind::TickOutOfTurn, std::to_string(tick.place.fastener));
    }
    return {};
}

Result<LoosenedFact> loosenedFrom(const LoosenEntry &entry, const Joint &joint, const JobFrame &frame)
{
    auto fasteners = fastenersIn(joint, entry.fasteners);
    if (!fasteners)
        return tl::unexpected(fasteners.error());
    LoosenedFact loosened{.joint = joint.id,
                          .revision = joint.revision,
                          .fasteners = std::move(*fasteners),
                          .how = entry.how,
                          .note = trimmedText(entry.note)};
    if (entry.how != FoundHow::Measured)
        return loosened;
    if (!entry.torque)
        return fail(ErrorKind::EmptyText);
    if (entry.tool && !frame.tool(*entry.tool))
        return fail(ErrorKind::NotFound, "torque wrench");
    loosened.torque = entry.torque;
    loosened.tool = entry.tool;
    return loosened;
}

bool canAccept(AcceptedWhat what, const FastenerState &fastener)
{
    switch (what) {
    case AcceptedWhat::ByFeel: return fastener.byFeel() && !fastener.feelAccepted;
    case AcceptedWhat::Torque: return outsideOrUnproved(fastener) && !fastener.torqueAccepted;
    case AcceptedWhat::Reused: return fastener.fitted == Fitted::Reused && !fastener.reuseAccepted;
    case AcceptedWhat::Unsettled: break;
    }
    return false;
}

} // namespace asleft
