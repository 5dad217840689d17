#include <shop/joint_entry.h>

#include "taken.h"

#include <measure/format.h>
#include <measure/text.h>

#include <algorithm>
#include <array>
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

JointReading unreadJoint(JointText text)
{
    JointReading reading{.text = keptTexts(std::move(text)),
                         .refusals = {},
                         .bands = {},
                         .ownThreadOf = {},
                         .joint = {.id = JointId(1), .engine = EngineId(1), .text = {}},
                         .check = {}};
    reading.joint.text = reading.text;
    return reading;
}

/// Reads a joint field by field, whatever is wrong with the others.
class JointEntryReader {
public:
    JointEntryReader(JointText text, DecimalMark mark) : m_mark(mark), m_reading(unreadJoint(std::move(text))) {}

    void refuse(JointField field, const Error &error) { m_reading.refusals.emplace(field, error); }

    JointReading read()
    {
        readLines();
        readThreads();
        readPlaces();
        readOrder();
        readTarget();
        readPasses();
        return std::move(m_reading);
    }

private:
    [[nodiscard]] bool refused(JointField field) const { return m_reading.refusals.contains(field); }

    template <class Read>
    std::optional<Read> taken(JointField field, Result<Read> read)
    {
        return asleft::taken(m_reading.refusals, field, std::move(read));
    }

    void readLines()
    {
        const JointText &text = m_reading.text;
        taken(JointField::Name, checkedName(text.name, Noun::Joint));
        taken(JointField::Engagement, checkedLine(text.engagement));
        taken(JointField::DriveSize, checkedLine(text.driveSize));
        taken(JointField::Manual, checkedLine(text.source.manual));
        taken(JointField::Page, checkedLine(text.source.page));
    }

    void readThreads()
    {
        Joint &joint = m_reading.joint;
        if (!joint.text.thread.empty())
            joint.thread = taken(JointField::Thread, parseThread(joint.text.thread));
        if (!joint.text.strength.empty())
            joint.strength = taken(JointField::Strength, parseStrength(joint.text.strength));
        for (FastenerPosition &place : joint.text.pattern.places) {
            if (place.thread.empty() || taken(JointField::OwnThread, parseThread(place.thread)))
                continue;
            if (!m_reading.ownThreadOf)
                m_reading.ownThreadOf = place.number;
            place.thread.clear();
        }
    }

    void readPlaces()
    {
        Pattern &pattern = m_reading.joint.text.pattern;
        auto checked = taken(JointField::Places, checkedPattern(pattern));
        // Thread and torque are judged all the same.
        pattern = checked && !refused(JointField::Places) ? *std::move(checked) : rowPattern(1).value();
    }

    void readOrder()
    {
        Joint &joint = m_reading.joint;
        if (!joint.text.order.empty() && !refused(JointField::Places))
            joint.order = taken(JointField::Order, parseOrder(joint.text.order, joint.text.pattern)).value_or(TighteningOrder{});
        joint.orderGenerated = joint.order.empty();
        if (joint.orderGenerated)
            joint.order = generateOrder(joint.text.pattern);
    }

    std::optional<Band<Torque>> readBand(JointField field, const std::string &text)
    {
        if (text.empty())
            return std::nullopt;
        auto band = taken(field, parseBand<Torque>(text, m_reading.text.unit, m_mark));
        if (band)
            m_reading.bands.emplace(field, *band);
        return band;
    }

    void readTarget()
    {
        const auto first = readBand(JointField::Target, m_reading.text.target);
        const auto second = readBand(JointField::OtherTarget, m_reading.text.otherTarget);
        if (first && second)
            m_reading.joint.target = taken(JointField::OtherTarget, pairBands<Torque>(*first, second));
        // Typed into the second field alone it is still what the manual asks.
        if (const auto &alone = first ? first : second; alone && !m_reading.joint.target)
            m_reading.joint.target = SpecBand<Torque>{*alone, std::nullopt};
    }

    void readPasses()
    {
        Joint &joint = m_reading.joint;
        auto passes = taken(JointField::Passes, parsePasses(joint.text.passes, joint.text.unit, m_mark));
        if (!passes)
            return;
        const auto target = targetOf(joint);
        const PassGround ground{target ? std::optional(target->value) : std::nullopt, joint.text.settle != SettleGround::No};
        const Done checked = checkPasses(*passes, ground);
        if (checked)
            joint.passes = *std::move(passes);
        // Without a target the passes are right, and something else is missing.
        else if (checked.error().kind != ErrorKind::TargetMissing)
            refuse(JointField::Passes, checked.error());
        else if (!refused(JointField::Target) && !refused(JointField::OtherTarget))
            refuse(JointField::Target, checked.error());
    }

    DecimalMark m_mark;
    JointReading m_reading;
};

JointText textOf(const JointTyped &typed)
{
    JointText text;
    text.name = typed.text(JointField::Name);
    text.thread = typed.text(JointField::Thread);
    text.strength = typed.text(JointField::Strength);
    text.pattern = typed.pattern;
    text.order = typed.text(JointField::Order);
    text.target = typed.text(JointField::Target);
    text.otherTarget = typed.text(JointField::OtherTarget);
    text.unit = typed.unit;
    text.passes = typed.text(JointField::Passes);
    text.settle = typed.settle;
    text.condition = typed.condition;
    text.finish = typed.finish;
    text.drive = typed.drive;
    text.driveSize = typed.text(JointField::DriveSize);
    text.female = typed.female;
    text.engagement = typed.text(JointField::Engagement);
    text.blindHole = typed.blindHole;
    text.singleUse = typed.singleUse;
    text.source = {typed.text(JointField::Manual), typed.text(JointField::Page), typed.certainty};
    return text;
}

/// What is wrong with the words that say where the fasteners sit. Places laid out by hand are no longer what a word or two could make.
Done placesSaid(const JointTyped &typed)
{
    const std::string words = inOneLine(typed.text(JointField::Places));
    if (!typed.pattern.places.empty() && words == writePattern(typed.pattern))
        return {};
    if (words.empty())
        return fail(ErrorKind::EmptyText);
    const auto made = parsePattern(words);
    return made ? Done() : tl::unexpected(made.error());
}

bool withoutTarget(const JointTyped &typed)
{
    return isBlank(typed.text(JointField::Target)) && isBlank(typed.text(JointField::OtherTarget));
}

bool takeWordOfBand(Scanner &in)
{
    constexpr std::array<std::string_view, 6> words{"to", "at", "least", "most", "min", "max"};
    return std::ranges::any_of(words, [&in](std::string_view word) { return in.takeWord(word); });
}

void skipLetters(Scanner &in)
{
    while (isLetter(in.peek()))
        in.advance();
}

/// "lbf·ft", "ft-lb", "N m".
void skipUnit(Scanner &in)
{
    skipLetters(in);
    const std::size_t end = in.position();
    constexpr std::u32string_view within = U"·.*-/ ";
    if (within.find(in.peek()) == std::u32string_view::npos)
        return;
    in.advance();
    const std::size_t next = in.position();
    const bool another = isLetter(in.peek()) && !takeWordOfBand(in);
    in.moveTo(another ? next : end);
    skipLetters(in);
}

/// Everything that is a letter is a unit here, but the words of a band.
std::string withoutUnits(std::string_view band)
{
    Scanner in(band);
    std::string kept;
    while (!in.atEnd()) {
        const std::size_t begin = in.position();
        if (isLetter(in.peek()) && !takeWordOfBand(in)) {
            skipUnit(in);
            continue;
        }
        if (in.position() == begin)
            in.advance();
        kept.append(in.since(begin));
    }
    return inOneLine(kept);
}

/// A band as typed with another unit behind its digits; nothing where that is not what is meant.
std::optional<std::string> withTorqueUnit(std::string_view text, TorqueUnit unit, Torque wanted, DecimalMark mark)
{
    const std::string typed = withoutUnits(text).append(" ").append(symbol(unit));
    const auto band = parseBand<Torque>(typed, unit, mark);
    if (!band)
        return std::nullopt;
    Joint joint{.id = JointId(1), .engine = EngineId(1), .text = {}};
    joint.target = SpecBand<Torque>{*band, std::nullopt};
    const auto target = targetOf(joint);
    return target && target->value == wanted ? std::optional(typed) : std::nullopt;
}

} // namespace

Result<Joint> readJoint(const JointText &text, DecimalMark mark)
{
    JointReading reading = JointEntryReader(text, mark).read();
    if (!reading.refusals.empty())
        return tl::unexpected(reading.refusals.begin()->second);
    return std::move(reading.joint);
}

std::string JointTyped::text(JointField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? std::string() : found->second;
}

JointReading readJoint(const JointTyped &typed, DecimalMark mark)
{
    JointEntryReader reader(textOf(typed), mark);
    if (const Done said = placesSaid(typed); !said)
        reader.refuse(JointField::Places, said.error());
    JointReading reading = reader.read();
    reading.check = preloadCheck(reading.joint);
    const bool doubted = reading.check && reading.check->doubt;
    const bool answered = !isBlank(typed.answered) && typed.answeredAbout == questionedWith(typed);
    reading.text.answered = doubted && answered ? inOneLine(typed.answered) : std::string();
    reading.asks = doubted && !answered;
    return reading;
}

std::string questionedWith(const JointTyped &typed)
{
    std::string all;
    const auto add = [&all](std::string_view part) { all.append(part).append("\n"); };
    for (const JointField field : {JointField::Target, JointField::OtherTarget, JointField::Thread, JointField::Strength})
        add(inOneLine(typed.text(field)));
    // Without a target it is the passes that are judged.
    if (withoutTarget(typed))
        add(inOneLine(typed.text(JointField::Passes)));
    for (const FastenerPosition &place : typed.pattern.places) {
        if (!isBlank(place.thread))
            add(inOneLine(place.thread));
    }
    add(storedName(typed.unit));
    add(typed.condition ? std::to_string(static_cast<int>(*typed.condition)) : std::string());
    add(std::to_string(static_cast<int>(typed.finish)));
    return all;
}

JointTyped inUnitMeant(JointTyped typed, const JointReading &reading, DecimalMark mark)
{
    if (!reading.check || !reading.check->doubt || !reading.check->doubt->meant || !reading.check->doubt->meantValue)
        return typed;
    const TorqueUnit meant = *reading.check->doubt->meant;
    const Torque value = *reading.check->doubt->meantValue;
    const JointField field = isBlank(typed.text(JointField::Target)) ? JointField::OtherTarget : JointField::Target;
    const auto band = parseBand<Torque>(typed.text(field), meant, mark);
    // Bare numbers count in the unit of their keys, those among the passes too.
    if (withoutTarget(typed) || (band && band->unit == meant))
        typed.unit = meant;
    else
        typed.texts[field] = withTorqueUnit(typed.text(field), meant, value, mark).value_or(formatExact(value, meant, mark));
    return typed;
}

JointTyped typedOf(const Joint &joint)
{
    const JointText &text = joint.text;
    JointTyped typed;
    typed.texts = {
        {JointField::Name, text.name},
        {JointField::Places, writePattern(text.pattern)},
        {JointField::Thread, text.thread},
        {JointField::Strength, text.strength},
        {JointField::Engagement, text.engagement},
        {JointField::Target, text.target},
        {JointField::OtherTarget, text.otherTarget},
        {JointField::Passes, text.passes},
        {JointField::Order, text.order},
        {JointField::DriveSize, text.driveSize},
        {JointField::Manual, text.source.manual},
        {JointField::Page, text.source.page},
    };
    typed.pattern = text.pattern;
    typed.unit = text.unit;
    typed.settle = text.settle;
    typed.condition = text.condition;
    typed.finish = text.finish;
    typed.drive = text.drive;
    typed.female = text.female;
    typed.blindHole = text.blindHole;
    typed.singleUse = text.singleUse;
    typed.certainty = text.source.certainty;
    typed.answered = text.answered;
    typed.answeredAbout = questionedWith(typed);
    return typed;
}

Pattern withOwnOf(Pattern made, const Pattern &before)
{
    for (FastenerPosition &place : made.places) {
        if (const FastenerPosition *old = before.place(place.number)) {
            place.thread = old->thread;
            place.length = old->length;
        }
    }
    return made;
}

} // namespace asleft
