#include <shop/joint.h>

#include <measure/text.h>

#include <utility>

namespace asleft {

namespace {

/// As it is kept.
JointText keptTexts(JointText text)
{
    for (std::string *field : {&text.name, &text.thread, &text.strength, &text.order, &text.target, &text.otherTarget, &text.passes,
                               &text.driveSize, &text.engagement, &text.source.manual, &text.source.page, &text.answered})
        *field = inOneLine(*field);
    for (FastenerPosition &place : text.pattern.places) {
        place.thread = inOneLine(place.thread);
        place.length = inOneLine(place.length);
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
    return joint.text.name.empty() ? fail(ErrorKind::NameMissing, Noun::Joint) : Done();
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
    for (const FastenerPosition &place : joint.text.pattern.places) {
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

} // namespace

Result<Joint> readJoint(const JointText &text, DecimalMark mark)
{
    Joint joint{.id = JointId(1), .engine = EngineId(1), .text = keptTexts(text)};
    for (const auto read : {readName, readThread, readStrength, readPattern, readOrder, readTarget, readPasses}) {
        if (Done done = read(joint, mark); !done)
            return tl::unexpected(std::move(done.error()));
    }
    return joint;
}

} // namespace asleft
