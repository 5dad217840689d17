#include <joints/passes.h>

#include <measure/format.h>
#include <measure/rational.h>
#include <measure/text.h>

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

// Twelve passes, each as long as one that can be read gets once its blanks are single, fit well.
constexpr std::size_t longestPassesText = 1000;

constexpr std::int64_t hundredPercent = 100;

bool separatesAt(std::string_view text, std::size_t at)
{
    if (text[at] != ',')
        return text[at] == ';';
    const bool decimal = at > 0 && isAsciiDigit(text[at - 1]) && at + 1 < text.size() && isAsciiDigit(text[at + 1]);
    return !decimal;
}

std::vector<std::string> partsOf(std::string_view text)
{
    std::vector<std::string> parts;
    std::size_t begin = 0;
    for (std::size_t at = 0; at <= text.size(); ++at) {
        if (at == text.size() || separatesAt(text, at)) {
            parts.push_back(inOneLine(text.substr(begin, at - begin)));
            begin = at + 1;
        }
    }
    return parts;
}

tl::unexpected<Error> unread(std::string_view part)
{
    return fail(ErrorKind::PassUnread, part);
}

/// What parse() says of a number it refuses is told; of what is no number at all, that it is no pass.
tl::unexpected<Error> refuse(std::string_view part, std::string_view value, const Error &why)
{
    const bool number = !value.empty() && (isAsciiDigit(value[0]) || value[0] == '.' || value[0] == ',' || value[0] == '-');
    return number ? tl::unexpected<Error>(why) : unread(part);
}

/// With its unit written out, so that it reads the same whatever the field's own unit is by then.
template <class Q>
Typed<Q> withUnit(Typed<Q> typed)
{
    typed.text = formatTyped(typed);
    return typed;
}

Result<Pass> readPercent(std::string_view part, DecimalMark mark)
{
    const std::string number = inOneLine(part.substr(0, part.size() - 1));
    const auto percent = parseNumber(number, mark);
    if (!percent)
        return refuse(part, number, percent.error());
    if (percent->numerator() > percent->denominator() * hundredPercent)
        return fail(ErrorKind::PassOverTarget, part);
    if (percent->denominator() != 1 || percent->numerator() < 1)
        return unread(part);
    if (percent->numerator() == hundredPercent)
        return AtTarget{};
    return PercentOfTarget{static_cast<int>(percent->numerator())};
}

Result<Pass> readAngle(std::string_view part, DecimalMark mark)
{
    const std::string value = inOneLine(part.substr(1));
    const auto angle = parse<Angle>(value, AngleUnit::Degree, mark);
    if (!angle)
        return refuse(part, value, angle.error());
    if (angle->value <= Angle())
        return unread(part);
    return AngleOn{withUnit(*angle)};
}

/// \pre `word` is "settle" and perhaps more
Result<Pass> readSettle(std::string_view part, std::string_view word)
{
    const std::string_view rounds = word.substr(std::string_view("settle").size());
    if (rounds.empty())
        return Settle{};
    const bool shaped = rounds[0] == ' ' && rounds.size() >= 2 && rounds.size() <= 3;
    if (!shaped || !std::all_of(rounds.begin() + 1, rounds.end(), isAsciiDigit))
        return unread(part);
    const int most = std::stoi(std::string(rounds.substr(1)));
    if (most < 1 || most > mostSettleRounds)
        return unread(part);
    return Settle{most};
}

Result<Pass> readTorque(std::string_view part, TorqueUnit fieldUnit, DecimalMark mark)
{
    const auto torque = parse<Torque>(part, fieldUnit, mark);
    if (!torque) {
        const bool angle = torque.error().kind == ErrorKind::UnknownUnit && parse<Angle>(part, AngleUnit::Degree, mark);
        return angle ? unread(part) : refuse(part, part, torque.error()); // 90° without its plus
    }
    if (torque->value <= Torque())
        return unread(part);
    return AtTorque{withUnit(*torque)};
}

bool isFingerWord(std::string_view word)
{
    return word == "finger" || word == "finger-tight" || word == "finger tight" || word == "hand" || word == "hand-tight" ||
           word == "hand tight";
}

Result<Pass> readPass(std::string_view part, TorqueUnit fieldUnit, DecimalMark mark)
{
    const std::string word = plainWords(part);
    if (isFingerWord(word))
        return FingerTight{};
    if (word == "target")
        return AtTarget{};
    if (word.starts_with("settle"))
        return readSettle(part, word);
    if (word.starts_with('+'))
        return readAngle(part, mark);
    if (word.ends_with('%'))
        return readPercent(part, mark);
    return readTorque(part, fieldUnit, mark);
}

struct PassWriter {
    std::string operator()(const FingerTight & /*pass*/) const { return "finger"; }
    std::string operator()(const PercentOfTarget &pass) const { return std::to_string(pass.percent) + " %"; }
    std::string operator()(const AtTarget & /*pass*/) const { return "target"; }
    std::string operator()(const AtTorque &pass) const { return formatTyped(pass.torque); }
    std::string operator()(const AngleOn &pass) const { return "+" + formatTyped(pass.angle); }
    std::string operator()(const Settle &pass) const { return "settle " + std::to_string(pass.mostRounds); }
};

std::string writePass(const Pass &pass)
{
    return std::visit(PassWriter{}, pass);
}

/// Walks along the passes and refuses the first that does not stand on those before it.
class PassChecker {
public:
    explicit PassChecker(const PassGround &ground) : m_ground(ground) {}

    Done check(const Pass &pass)
    {
        Done done = std::visit([&](const auto &kind) { return next(kind, pass); }, pass);
        m_first = false;
        return done;
    }

    /// \pre every pass was let by; `last` is the last of them
    [[nodiscard]] Done end(const Pass &last) const
    {
        const bool reached = m_angled || !m_ground.target || m_reached == hundredthsOf(*m_ground.target, hundredPercent);
        return reached ? Done() : fail(ErrorKind::PassesStopShort, writePass(last));
    }

private:
    [[nodiscard]] Done next(const FingerTight & /*kind*/, const Pass & /*pass*/) const
    {
        return m_first ? Done() : fail(ErrorKind::FingerNotFirst);
    }

    Done next(const PercentOfTarget &kind, const Pass &pass)
    {
        if (kind.percent > hundredPercent)
            return fail(ErrorKind::PassOverTarget, writePass(pass));
        return m_ground.target ? raise(*m_ground.target, kind.percent, pass) : fail(ErrorKind::TargetMissing, writePass(pass));
    }

    Done next(const AtTarget & /*kind*/, const Pass &pass)
    {
        return m_ground.target ? raise(*m_ground.target, hundredPercent, pass) : fail(ErrorKind::TargetMissing, writePass(pass));
    }

    Done next(const AtTorque &kind, const Pass &pass)
    {
        if (m_ground.target && kind.torque.value > *m_ground.target)
            return fail(ErrorKind::PassOverTarget, writePass(pass));
        return raise(kind.torque.value, hundredPercent, pass);
    }

    Done next(const AngleOn &kind, const Pass &pass)
    {
        if (m_reached == 0)
            return fail(ErrorKind::AngleWithoutSnug, writePass(pass));
        m_turned += kind.angle.value;
        if (m_turned > degrees(720))
            return fail(ErrorKind::AngleTooLarge, formatNumber(m_turned, AngleUnit::Degree, 0, DecimalMark::Point, Rounding::Up));
        m_angled = true;
        return {};
    }

    Done next(const Settle & /*kind*/, const Pass &pass)
    {
        if (!m_ground.settleAllowed)
            return fail(ErrorKind::SettleNotAllowed);
        if (m_angled)
            return fail(ErrorKind::SettleAfterAngle);
        if (!m_ground.target)
            return fail(ErrorKind::TargetMissing, writePass(pass));
        if (m_settled || m_reached < hundredthsOf(*m_ground.target, hundredPercent))
            return fail(ErrorKind::SettleMisplaced);
        m_settled = true;
        return {};
    }

    Done raise(Torque whole, std::int64_t percent, const Pass &pass)
    {
        if (m_angled)
            return fail(ErrorKind::TorqueAfterAngle, writePass(pass));
        const Int128 hundredths = hundredthsOf(whole, percent);
        if (hundredths <= m_reached)
            return fail(ErrorKind::PassesFall, writePass(pass));
        m_reached = hundredths;
        return {};
    }

    /// Percentages and torques are compared as these, so that no rounding decides.
    static Int128 hundredthsOf(Torque whole, std::int64_t percent) { return Int128(whole.smallest()) * percent; }

    const PassGround &m_ground;
    bool m_first = true;
    Int128 m_reached = 0;
    Angle m_turned;
    bool m_angled = false;
    bool m_settled = false;
};

} // namespace

Result<std::vector<Pass>> parsePasses(std::string_view text, TorqueUnit fieldUnit, DecimalMark mark)
{
    if (text.size() > longestPassesText)
        return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(longestPassesText));
    if (isBlank(text))
        return std::vector<Pass>{AtTarget{}};
    const std::vector<std::string> parts = partsOf(text);
    if (parts.size() > mostPasses)
        return fail(ErrorKind::PassesTooMany, std::to_string(parts.size()), std::to_string(mostPasses));
    std::vector<Pass> passes;
    for (const std::string &part : parts) {
        if (part.empty()) // two separators with nothing between, or one at an end
            return unread(inOneLine(text));
        auto pass = readPass(part, fieldUnit, mark);
        if (!pass)
            return tl::unexpected(std::move(pass.error()));
        passes.push_back(*std::move(pass));
    }
    return passes;
}

std::string writePasses(const std::vector<Pass> &passes)
{
    std::string text;
    for (const Pass &pass : passes)
        text.append(text.empty() ? "" : ", ").append(writePass(pass));
    return text;
}

Done checkPasses(const std::vector<Pass> &passes, const PassGround &ground)
{
    if (passes.empty())
        return fail(ErrorKind::PassesEmpty);
    PassChecker checker(ground);
    for (const Pass &pass : passes) {
        if (Done done = checker.check(pass); !done)
            return done;
    }
    return checker.end(passes.back());
}

int roundsOf(const Pass &pass)
{
    const auto *settle = std::get_if<Settle>(&pass);
    return settle ? std::clamp(settle->mostRounds, 1, mostSettleRounds) : 1;
}

bool anyAngle(std::span<const Pass> passes)
{
    return std::ranges::any_of(passes, [](const Pass &pass) { return std::holds_alternative<AngleOn>(pass); });
}

bool isLastTorque(std::span<const Pass> passes, std::size_t pass)
{
    const auto isTorque = [](const Pass &each) {
        return !std::holds_alternative<FingerTight>(each) && !std::holds_alternative<AngleOn>(each);
    };
    return isTorque(passes[pass]) && std::ranges::none_of(passes.subspan(pass + 1), isTorque);
}

std::optional<Torque> torqueOfPass(const Pass &pass, std::optional<Torque> target)
{
    if (const auto *own = std::get_if<AtTorque>(&pass))
        return own->torque.value;
    if (std::holds_alternative<AtTarget>(pass) || std::holds_alternative<Settle>(pass))
        return target;
    const auto *share = std::get_if<PercentOfTarget>(&pass);
    if (!share || !target)
        return std::nullopt;
    const auto part = Rational(Int128(target->smallest()) * share->percent, hundredPercent).rounded();
    return part ? std::optional(Torque::ofSmallest(*part)) : std::nullopt;
}

Angle totalAngle(std::span<const Pass> passes, std::size_t upTo)
{
    Angle total;
    for (std::size_t i = 0; i < passes.size() && i <= upTo; ++i) {
        if (const auto *turned = std::get_if<AngleOn>(&passes[i]))
            total += turned->angle.value;
    }
    return total;
}

} // namespace asleft
