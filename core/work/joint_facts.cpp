// How what a person says of fasteners becomes a fact: the part that knows wrenches, adapters and passes.
#include "joint_facts.h"

#include "internals.h"

#include <measure/instrument.h>

#include <algorithm>

namespace asleft {

namespace {

/// Refuses where another computer has made another revision of what was shown.
Done asShown(std::optional<int> revision, const Joint &joint)
{
    return revision && *revision != joint.revision ? Done(fail(ErrorKind::JointChanged, joint.text.name)) : Done{};
}

/// The pass of all these places. Refuses none, a fastener the joint does not have, and places of several passes or rounds or of one twice.
Result<const Pass *> passOf(const std::vector<TickSlot> &places, const Joint &joint)
{
    if (places.empty())
        return fail(ErrorKind::NothingToLog);
    const TickSlot &first = places.front();
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

Result<const Tool *> knownTool(const JobFrame &frame, const std::optional<ToolId> &id, Noun what)
{
    const Tool *tool = id ? frame.tool(*id) : nullptr;
    if (!tool)
        return fail(ErrorKind::NotFound, what);
    return tool;
}

/// A tool of the rack, where one is named, that `fits` what it is used for.
template <class Fits>
Done rightTool(const JobFrame &frame, const std::optional<ToolId> &id, Noun what, Fits fits)
{
    if (!id)
        return {};
    return knownTool(frame, id, what).and_then([&](const Tool *tool) {
        return fits(*tool) ? Done{} : Done(fail(ErrorKind::ToolNotThat, tool->name));
    });
}

/// The adapter on the wrench, as it is kept: one that sits across changes nothing, and is a fact all the same.
Result<std::optional<FitUsed>> fitOf(const TickEntry &entry, const JobFrame &frame)
{
    if (!entry.fit)
        return std::optional<FitUsed>{};
    const Done right = rightTool(frame, entry.fit->adapter, Noun::Adapter, [&](const Tool &tool) {
        return tool.kind == ToolKind::Adapter && tool.length && tool.length->value == entry.fit->fit.length;
    });
    if (!right)
        return tl::unexpected(right.error());
    return entry.fit;
}

/// What the wrench is worth at what it is set to or shows, that day.
void noteToolLimits(TicksFact &ticks, const TorqueTool &wrench, Torque shown, std::chrono::sys_days today)
{
    ticks.outOfRange = shown < wrench.least.value || shown > wrench.most.value;
    ticks.calibrationOverdue = isOverdue(wrench, today);
}

/// Expanded, at the fastener.
Result<Torque> uncertaintyThere(const TicksFact &ticks, const TorqueTool &wrench)
{
    const Torque shown = torqueToolUncertainty(ticks.reading->value, deviationOf(wrench));
    const bool changes = ticks.fit && !changesNothing(ticks.fit->fit);
    return changes ? torqueAtFastener(shown, *ticks.lever, ticks.fit->fit) : Result<Torque>(shown);
}

Done fillReading(TicksFact &ticks, const TickEntry &entry, const TorqueTool &wrench, DecisionRule rule)
{
    if (!entry.reading)
        return fail(ErrorKind::EmptyText);
    ticks.reading = entry.reading;
    if (rule != DecisionRule::WithUncertainty)
        return {};
    const auto uncertainty = uncertaintyThere(ticks, wrench);
    if (!uncertainty)
        return tl::unexpected(uncertainty.error());
    ticks.uncertainty = *uncertainty;
    return {};
}

/// What a pass sets a wrench to; of one that is read too: it refuses what is no wrench, and a lever that is wanted and unknown.
Result<Typed<Torque>> settingThere(const Tool &tool, const Joint &joint, std::size_t pass, const std::optional<FitUsed> &fit)
{
    if (!tool.torque)
        return fail(ErrorKind::ToolNotForTorque, tool.name);
    const TorqueUnit unit = tool.torque->most.unit;
    const auto wanted = wantedInPass(joint, pass, unit);
    Q_ASSERT(wanted); // the passes of a joint that was read ask for no torque there is none of
    return settingOn(tool, *wanted, fit ? std::optional(fit->fit) : std::nullopt, bandOfPass(joint, pass, unit));
}

/// Refuses where the wrench was to be set to something else by what was shown.
Done settingAsShown(const std::optional<Typed<Torque>> &shown, const Typed<Torque> &setting, const Joint &joint)
{
    const bool same = !shown || (shown->value == setting.value && shown->unit == setting.unit);
    return same ? Done{} : Done(fail(ErrorKind::JointChanged, joint.text.name));
}

Done fillWrench(TicksFact &ticks, const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today)
{
    const auto tool = knownTool(frame, entry.tool, Noun::TorqueWrench);
    if (!tool)
        return tl::unexpected(tool.error());
    const auto fit = fitOf(entry, frame);
    if (!fit)
        return tl::unexpected(fit.error());
    const auto setting = settingThere(**tool, joint, static_cast<std::size_t>(entry.places.front().pass), *fit);
    if (!setting)
        return tl::unexpected(setting.error());
    if (Done same = settingAsShown(entry.setting, *setting, joint); !same)
        return same;
    const TorqueTool &wrench = *(*tool)->torque;
    ticks.tool = entry.tool;
    ticks.fit = *fit;
    if (ticks.fit)
        ticks.lever = wrench.lever;
    if (ticks.how == TickHow::SetTool)
        ticks.setting = *setting;
    else if (Done read = fillReading(ticks, entry, wrench, frame.rule); !read)
        return read;
    noteToolLimits(ticks, wrench, (ticks.setting ? ticks.setting : ticks.reading)->value, today);
    return {};
}

Done fillReason(TicksFact &ticks, const TickEntry &entry)
{
    return checkedReason(entry.reason).map([&](std::string &&reason) { ticks.reason = std::move(reason); });
}

/// By a gauge, or by a mark where none is said.
Done fillGauge(TicksFact &ticks, const TickEntry &entry, const JobFrame &frame)
{
    ticks.tool = entry.tool;
    return rightTool(frame, entry.tool, Noun::AngleGauge, [](const Tool &tool) { return tool.kind == ToolKind::AngleGauge; });
}

Done fill(TicksFact &ticks, const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today)
{
    switch (ticks.how) {
    case TickHow::ByHand: return {};
    case TickHow::ByFeel: return fillReason(ticks, entry);
    case TickHow::ByAngle: return fillGauge(ticks, entry, frame);
    case TickHow::SetTool:
    case TickHow::ReadTool: return fillWrench(ticks, entry, joint, frame, today);
    }
    return {};
}

/// Whether there is something of this kind at a fastener that nobody has accepted. \pre not Unsettled
bool canAccept(AcceptedWhat what, const FastenerState &fastener)
{
    switch (what) {
    case AcceptedWhat::ByFeel: return fastener.byFeel() && !fastener.feelAccepted;
    case AcceptedWhat::Torque: return fastener.outside() && !fastener.torqueAccepted;
    case AcceptedWhat::Reused: return fastener.reused();
    case AcceptedWhat::Unsettled: break;
    }
    return false;
}

/// Those of a joint's fasteners where there is something to accept.
Result<std::vector<int>> acceptable(const Joint &joint, const JointState &state, AcceptedWhat what, const std::vector<int> &fasteners)
{
    if (what == AcceptedWhat::Unsettled) {
        if (!state.progress.unsettled || state.unsettledAccepted)
            return fail(ErrorKind::NothingToAccept);
        return std::vector<int>{};
    }
    const auto asked = fastenersIn(joint, fasteners);
    if (!asked)
        return tl::unexpected(asked.error());
    std::vector<int> having;
    std::ranges::copy_if(*asked, std::back_inserter(having), [&](int number) {
        const auto known = state.fasteners.find(number);
        return known != state.fasteners.end() && canAccept(what, known->second);
    });
    if (having.empty())
        return fail(ErrorKind::NothingToAccept);
    return having;
}

/// A subject as it is noted; refuses one the job is not about.
struct OfThisJob {
    const JobState &state;

    Result<Subject> operator()(PointId point) const { return known(frame().point(point) != nullptr, point, Noun::Point); }
    Result<Subject> operator()(StepId step) const { return known(frame().step(step) != nullptr, step, Noun::Step); }
    Result<Subject> operator()(EngineId engine) const { return known(frame().engine.id == engine, engine, Noun::Engine); }
    Result<Subject> operator()(VehicleId vehicle) const { return known(frame().vehicle.id == vehicle, vehicle, Noun::Vehicle); }
    Result<Subject> operator()(const FastenerSubject &some) const
    {
        if (!frame().jointNow(some.joint))
            return fail(ErrorKind::WrongJob, Noun::Joint);
        if (some.fasteners.empty())
            return some;
        return fastenersIn(jointInHand(state, some.joint), some.fasteners).map([&](std::vector<int> &&numbers) {
            return Subject(FastenerSubject{some.joint, std::move(numbers)});
        });
    }

private:
    [[nodiscard]] const JobFrame &frame() const { return *state.frame; }
    static Result<Subject> known(bool isKnown, Subject subject, Noun what)
    {
        if (!isKnown)
            return fail(ErrorKind::WrongJob, what);
        return subject;
    }
};

} // namespace

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
    if (const Done same = asShown(entry.revision, joint); !same)
        return tl::unexpected(same.error());
    const auto pass = passOf(entry.places, joint);
    if (!pass)
        return tl::unexpected(pass.error());
    if (!fits(entry.how, **pass))
        return fail(ErrorKind::TickOutOfTurn, std::to_string(entry.places.front().fastener));
    TicksFact ticks{.joint = joint.id, .revision = joint.revision, .ticks = {}, .how = entry.how};
    const bool moved = entry.moved && std::holds_alternative<Settle>(**pass);
    for (const TickSlot &place : entry.places)
        ticks.ticks.push_back({place, moved});
    if (const Done filled = fill(ticks, entry, joint, frame, today); !filled)
        return tl::unexpected(filled.error());
    return ticks;
}

Result<TicksAsLogged> ticksAsLogged(const TickEntry &entry, const Joint &joint, const JobFrame &frame, std::chrono::sys_days today)
{
    auto fact = ticksFrom(entry, joint, frame, today);
    if (!fact)
        return tl::unexpected(fact.error());
    TicksAsLogged logged{std::move(*fact), {}};
    for (const Tick &tick : logged.fact.ticks)
        logged.made.push_back(tickMade(logged.fact, tick, joint));
    return logged;
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

Result<Fact> loosenedFrom(const LoosenEntry &entry, const Joint &joint, const JobFrame &frame)
{
    if (const Done same = asShown(entry.revision, joint); !same)
        return tl::unexpected(same.error());
    auto fasteners = fastenersIn(joint, entry.fasteners);
    if (!fasteners)
        return tl::unexpected(fasteners.error());
    auto note = checkedNote(entry.note);
    if (!note)
        return tl::unexpected(note.error());
    LoosenedFact loosened{
        .joint = joint.id, .revision = joint.revision, .fasteners = std::move(*fasteners), .how = entry.how, .note = std::move(*note)};
    if (entry.how != FoundHow::Measured)
        return loosened;
    if (!entry.torque)
        return fail(ErrorKind::EmptyText);
    const Done right = rightTool(frame, entry.tool, Noun::TorqueWrench, [](const Tool &tool) { return tool.torque.has_value(); });
    if (!right)
        return tl::unexpected(right.error());
    loosened.torque = entry.torque;
    loosened.tool = entry.tool;
    return loosened;
}

Result<Fact> fittedFrom(const Joint &joint, const std::vector<int> &fasteners, Fitted fitted)
{
    return fastenersIn(joint, fasteners).map([&](std::vector<int> &&numbers) {
        return Fact(FittedFact{joint.id, std::move(numbers), fitted});
    });
}

bool saidFitted(const Fact &fact, const JointState &state)
{
    const auto &said = std::get<FittedFact>(fact);
    return std::ranges::all_of(said.fasteners, [&](int number) {
        const auto fastener = state.fasteners.find(number);
        return fastener != state.fasteners.end() && fastener->second.fitted == said.fitted;
    });
}

Result<Fact> acceptedFrom(const Joint &joint, const JointState &state, AcceptedWhat what, const std::vector<int> &fasteners,
                          std::string_view reason)
{
    auto why = checkedReason(reason);
    if (!why)
        return tl::unexpected(why.error());
    return acceptable(joint, state, what, fasteners).map([&](std::vector<int> &&numbers) {
        return Fact(AcceptedFact{joint.id, what, std::move(numbers), std::move(*why)});
    });
}

Result<Fact> findingFrom(const Subject &subject, std::string_view text, const JobState &state)
{
    auto about = std::visit(OfThisJob{state}, subject);
    if (!about)
        return tl::unexpected(about.error());
    auto note = checkedNote(text);
    if (!note)
        return tl::unexpected(note.error());
    if (note->empty())
        return fail(ErrorKind::EmptyText);
    return FindingFact{*std::move(about), *std::move(note)};
}

std::optional<UntickedFact> untickedFrom(const JobState &state, JointId joint, int fastener, TickOf first)
{
    const auto worked = state.joints.find(joint);
    if (worked == state.joints.end())
        return std::nullopt;
    const auto known = worked->second.fasteners.find(fastener);
    const TickMade *from = known == worked->second.fasteners.end() ? nullptr : first(known->second);
    if (!from)
        return std::nullopt;
    UntickedFact unticked{joint, {}};
    for (const TickMade *made = from; made <= &known->second.ticks.back(); ++made)
        unticked.places.push_back(made->tick.place);
    return unticked;
}

const Act *lastOn(const JobState &state, JointId joint)
{
    const auto last = std::find_if(state.acts.rbegin(), state.acts.rend(),
                                   [&](const Act &act) { return state.inForce(act) && jointOf(act.what.fact) == joint; });
    return last == state.acts.rend() ? nullptr : &*last;
}

} // namespace asleft
