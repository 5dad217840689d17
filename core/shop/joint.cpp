#include <shop/joint.h>

#include <measure/format.h>

#include <algorithm>
#include <cctype>
#include <cstdlib>
#include <utility>

namespace asleft {

namespace {

std::string trimmed(std::string_view text)
{
    const auto isSpace = [](char c) { return std::isspace(static_cast<unsigned char>(c)) != 0; };
    while (!text.empty() && isSpace(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isSpace(text.back()))
        text.remove_suffix(1);
    return std::string(text);
}

/// As typed, but for the blanks around it.
JointText trimmedTexts(JointText text)
{
    for (std::string *field : {&text.name, &text.thread, &text.strength, &text.order, &text.target, &text.otherTarget, &text.passes,
                               &text.driveSize, &text.engagement, &text.source.manual, &text.source.page, &text.answered})
        *field = trimmed(*field);
    for (FastenerPlace &place : text.pattern.places) {
        place.thread = trimmed(place.thread);
        place.length = trimmed(place.length);
    }
    return text;
}

/// Puts what was read where it belongs.
template <class Read, class Place>
Done keep(Result<Read> read, Place &place)
{
    if (!read)
        return tl::unexpected(std::move(read.error()));
    place = *std::move(read);
    return {};
}

Done readName(Joint &joint, DecimalMark /*mark*/)
{
    return joint.text.name.empty() ? fail(ErrorKind::NameMissing, "joint") : Done();
}

Done readThread(Joint &joint, DecimalMark /*mark*/)
{
    return joint.text.thread.empty() ? Done() : keep(parseThread(joint.text.thread), joint.thread);
}

Done readStrength(Joint &joint, DecimalMark /*mark*/)
{
    return joint.text.strength.empty() ? Done() : keep(parseStrength(joint.text.strength), joint.strength);
}

Done readPattern(Joint &joint, DecimalMark /*mark*/)
{
    if (Done kept = keep(checkedPattern(joint.text.pattern), joint.text.pattern); !kept)
        return kept;
    for (const FastenerPlace &place : joint.text.pattern.places) {
        if (place.thread.empty())
            continue;
        if (auto own = parseThread(place.thread); !own)
            return tl::unexpected(std::move(own.error()));
    }
    return {};
}

Done readOrder(Joint &joint, DecimalMark /*mark*/)
{
    joint.orderGenerated = joint.text.order.empty();
    if (!joint.orderGenerated)
        return keep(parseOrder(joint.text.order, joint.text.pattern), joint.order);
    joint.order = generateOrder(joint.text.pattern);
    return {};
}

Result<SpecBand<Torque>> bandsOf(const JointText &text, DecimalMark mark)
{
    // Typed into the second field alone it is still what the manual asks.
    auto first = parseBand<Torque>(text.target.empty() ? text.otherTarget : text.target, text.unit, mark);
    if (!first)
        return tl::unexpected(std::move(first.error()));
    if (text.target.empty() || text.otherTarget.empty())
        return pairBands<Torque>(*std::move(first), std::nullopt);
    auto second = parseBand<Torque>(text.otherTarget, text.unit, mark);
    if (!second)
        return tl::unexpected(std::move(second.error()));
    return pairBands<Torque>(*std::move(first), *std::move(second));
}

Done readTarget(Joint &joint, DecimalMark mark)
{
    const bool none = joint.text.target.empty() && joint.text.otherTarget.empty();
    return none ? Done() : keep(bandsOf(joint.text, mark), joint.target);
}

Done readPasses(Joint &joint, DecimalMark mark)
{
    if (Done kept = keep(parsePasses(joint.text.passes, joint.text.unit, mark), joint.passes); !kept)
        return kept;
    PassGround ground;
    ground.settleAllowed = joint.text.settle != SettleGround::No;
    if (const auto target = targetOf(joint))
        ground.target = target->value;
    return checkPasses(joint.passes, ground);
}

constexpr int mostWrittenDecimals = 10; // they tell any two torques apart in any unit

/// The shortest number that says the value, give or take `slack` of its smallest unit, and the value of that number.
Typed<Torque> writtenOut(Torque value, TorqueUnit unit, std::int64_t slack)
{
    for (int decimals = 0; decimals <= mostWrittenDecimals; ++decimals) {
        const auto written = parse<Torque>(formatNumber(value, unit, decimals), unit);
        if (written && std::abs(written->value.smallest() - value.smallest()) <= slack)
            return *written;
    }
    return {value, unit, formatExact(value, unit)};
}

/// Of a band with one limit, that.
Typed<Torque> middleOf(const Band<Torque> &band)
{
    if (!band.low || !band.high)
        return writtenOut(band.low ? *band.low : *band.high, band.unit, 0);
    const auto middle = Rational(Int128{band.low->smallest()} + band.high->smallest(), 2).rounded();
    // Either limit was rounded once already: between 20 and 25 lbf·ft lies 22.5, not a nanonewton-metre beside it.
    return writtenOut(Torque::ofSmallest(middle.value_or(band.low->smallest())), band.unit, 1);
}

bool turnsOn(const std::vector<Pass> &passes)
{
    return std::ranges::any_of(passes, [](const Pass &pass) { return std::holds_alternative<AngleOn>(pass); });
}

StrengthClass ordinaryStrength(const Thread &thread)
{
    return thread.system == UnitSystem::Metric ? StrengthClass::C8_8 : StrengthClass::Sae5;
}

} // namespace

Result<Joint> readJoint(const JointText &text, DecimalMark mark)
{
    Joint joint{.id = JointId(1), .engine = EngineId(1), .text = trimmedTexts(text)};
    for (const auto read : {readName, readThread, readStrength, readPattern, readOrder, readTarget, readPasses}) {
        if (Done done = read(joint, mark); !done)
            return tl::unexpected(std::move(done.error()));
    }
    return joint;
}

std::optional<Typed<Torque>> targetOf(const Joint &joint)
{
    if (!joint.target)
        return std::nullopt;
    const Band<Torque> &band = joint.target->first;
    if (!band.nominal)
        return band.low || band.high ? std::optional(middleOf(band)) : std::nullopt;
    if (band.form == BandForm::NominalOnly)
        return Typed<Torque>{*band.nominal, band.unit, band.text};
    return writtenOut(*band.nominal, band.unit, 0);
}

std::optional<Thread> threadOf(const Joint &joint, int fastener)
{
    const FastenerPlace *place = joint.text.pattern.place(fastener);
    if (!place)
        return std::nullopt;
    if (place->thread.empty())
        return joint.thread;
    const auto own = parseThread(place->thread);
    return own ? std::optional(*own) : std::nullopt;
}

std::optional<PreloadCheck> preloadCheck(const Joint &joint)
{
    const auto target = targetOf(joint);
    if (!target || !joint.thread)
        return std::nullopt;
    const Thread &thread = *joint.thread;
    PreloadCheck check;
    check.nutFactor = nutFactor(joint.text.condition.value_or(ThreadCondition::Dry), joint.text.finish);
    check.newtons = preloadNewtons(target->value, check.nutFactor, thread.diameter);
    if (joint.strength)
        check.shareOfProof = shareOfProof(target->value, thread, *joint.strength, check.nutFactor);
    // A snug torque before an angle may be as little as it likes.
    const bool floorCounts = !turnsOn(joint.passes);
    check.doubt = questionTorque(*target, thread, joint.strength.value_or(ordinaryStrength(thread)), check.nutFactor, floorCounts);
    return check;
}

} // namespace asleft
