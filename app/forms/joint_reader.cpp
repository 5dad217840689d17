#include <forms/joint_reader.h>

#include <forms/spec_reader.h>

#include <words/errors.h>
#include <words/joint_names.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <measure/format.h>
#include <shop/entry.h>

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>
#include <string_view>

namespace asleft {

namespace {

using Field = JointField;

class JointReader {
    Q_DECLARE_TR_FUNCTIONS(JointReader)
};

/// Reads the form into `reading`, one field after the other.
class Reader {
public:
    Reader(const JointTyped &typed, DecimalMark mark) : m_typed(typed), m_mark(mark) {}

    JointReading read()
    {
        takeTexts();
        readPlaces();
        readThreads();
        readTarget();
        readOrder();
        readPasses();
        readLengths();
        m_reading.joint = sketch();
        tellPasses();
        if (!refused(Field::Order) && !refused(Field::Places))
            m_reading.echoes[Field::Order] = orderTold();
        judge();
        return std::move(m_reading);
    }

private:
    [[nodiscard]] bool refused(Field field) const { return m_reading.refusals.contains(field); }
    void refuse(Field field, const Error &error) { m_reading.refusals.emplace(field, error); }

    void takeTexts()
    {
        JointText &text = m_reading.text;
        text.name = m_typed.plain(Field::Name);
        text.thread = m_typed.plain(Field::Thread);
        text.strength = m_typed.plain(Field::Strength);
        text.pattern = m_typed.pattern;
        text.order = m_typed.plain(Field::Order);
        text.target = m_typed.plain(Field::Target);
        text.otherTarget = m_typed.plain(Field::OtherTarget);
        text.unit = torqueChoices.at(std::size_t(m_typed.unit));
        text.passes = m_typed.plain(Field::Passes);
        text.settle = m_typed.settle;
        text.condition = m_typed.condition;
        text.finish = m_typed.finish;
        text.drive = m_typed.drive;
        text.driveSize = m_typed.plain(Field::DriveSize);
        text.female = m_typed.female;
        text.engagement = m_typed.plain(Field::Engagement);
        text.blindHole = m_typed.blindHole;
        text.singleUse = m_typed.singleUse;
        text.source = {m_typed.plain(Field::Manual), m_typed.plain(Field::Page), m_typed.certainty};
        if (text.name.empty())
            refuse(Field::Name, {ErrorKind::NameMissing, {}, Noun::Joint});
    }

    void readPlaces()
    {
        const std::string typed = m_typed.plain(Field::Places);
        // What was laid out by hand is no longer what a word or two could make.
        if (m_typed.pattern.places.empty() || typed != writePattern(m_typed.pattern)) {
            if (typed.empty())
                refuse(Field::Places, {ErrorKind::EmptyText, {}});
            else if (const auto made = parsePattern(typed); !made)
                refuse(Field::Places, made.error());
        }
        if (const auto checked = checkedPattern(m_typed.pattern); !checked)
            refuse(Field::Places, checked.error());
    }

    void readThreads()
    {
        const JointText &text = m_reading.text;
        if (const auto thread = parseThread(text.thread); !text.thread.empty() && !thread)
            refuse(Field::Thread, thread.error());
        else if (thread)
            m_reading.echoes[Field::Thread] =
                JointReader::tr("%1, stress area %2 mm²")
                    .arg(QString::fromStdString(thread->name), QLocale().toString(stressAreaSquareMillimetres(*thread), 'f', 1));
        if (const auto strength = parseStrength(text.strength); !text.strength.empty() && !strength)
            refuse(Field::Strength, strength.error());
        else if (strength)
            m_reading.echoes[Field::Strength] = strengthName(*strength);
        for (const FastenerPosition &place : text.pattern.places) {
            if (QString::fromStdString(place.thread).trimmed().isEmpty() || m_reading.ownThreadOf)
                continue;
            if (const auto own = parseThread(place.thread); !own) {
                refuse(Field::OwnThread, own.error());
                m_reading.ownThreadOf = place.number;
            }
        }
    }

    std::optional<Band<Torque>> readBand(Field field, const std::string &text)
    {
        if (text.empty())
            return std::nullopt;
        const auto band = parseBand<Torque>(text, m_reading.text.unit, m_mark);
        if (!band) {
            refuse(field, band.error());
            return std::nullopt;
        }
        m_reading.echoes[field] = torqueEcho(*band);
        return *band;
    }

    void readTarget()
    {
        const auto first = readBand(Field::Target, m_reading.text.target);
        const auto second = readBand(Field::OtherTarget, m_reading.text.otherTarget);
        if (!first || !second)
            return;
        if (const auto paired = pairBands<Torque>(*first, *second); !paired)
            refuse(Field::OtherTarget, paired.error());
    }

    void readPasses()
    {
        const auto passes = parsePasses(m_reading.text.passes, m_reading.text.unit, m_mark);
        if (!passes) {
            refuse(Field::Passes, passes.error());
            return;
        }
        const auto target = targetOf(sketch());
        const PassGround ground{target ? std::optional(target->value) : std::nullopt, m_typed.settle != SettleGround::No};
        const Done checked = checkPasses(*passes, ground);
        if (checked)
            return;
        // Without a target the passes are right, and something else is missing.
        if (checked.error().kind != ErrorKind::TargetMissing)
            refuse(Field::Passes, checked.error());
        else if (!refused(Field::Target) && !refused(Field::OtherTarget))
            refuse(Field::Target, checked.error());
    }

    void readOrder()
    {
        if (m_reading.text.order.empty() || refused(Field::Places))
            return;
        if (const auto order = parseOrder(m_reading.text.order, m_typed.pattern); !order)
            refuse(Field::Order, order.error());
    }

    void readLengths()
    {
        for (const Field field : {Field::Name, Field::Engagement, Field::DriveSize, Field::Manual, Field::Page}) {
            const std::size_t length = m_typed.plain(field).size();
            if (length > longestName)
                refuse(field, {ErrorKind::TextTooLong, {std::to_string(length), std::to_string(longestName)}});
        }
    }

    /// The joint with what was refused left out.
    [[nodiscard]] Joint sketch() const
    {
        JointText text = m_reading.text;
        if (text.name.empty())
            text.name.assign(1, '-'); // gcc 12 takes = "-" for an overflow, once it optimises
        if (text.pattern.places.empty() || refused(Field::Places))
            text.pattern = rowPattern(1).value();
        for (FastenerPosition &place : text.pattern.places)
            if (m_reading.ownThreadOf)
                place.thread.clear();
        const auto leaveOut = [this](Field field, std::string &what) {
            if (refused(field))
                what.clear();
        };
        leaveOut(Field::Thread, text.thread);
        leaveOut(Field::Strength, text.strength);
        leaveOut(Field::Target, text.target);
        leaveOut(Field::OtherTarget, text.otherTarget);
        leaveOut(Field::Passes, text.passes);
        if (refused(Field::Order) || refused(Field::Places))
            text.order.clear();
        if (auto whole = readJoint(text, m_mark))
            return *std::move(whole);
        // Passes that do not fit together, or none because there is no target.
        for (const std::string_view passes : {"target", "finger"}) {
            text.passes = passes;
            if (auto most = readJoint(text, m_mark))
                return *std::move(most);
        }
        return Joint{.id = JointId(1), .engine = EngineId(1), .text = std::move(text)};
    }

    /// Rounds are counted when they are made; here it is told how many there may be.
    [[nodiscard]] QString passTold(std::size_t pass) const
    {
        const auto *settle = std::get_if<Settle>(&m_reading.joint.passes[pass]);
        if (!settle)
            return passName(m_reading.joint, pass);
        return JointReader::tr("until none moves, at most %n round(s)", nullptr, settle->mostRounds);
    }

    /// A long order breaks between its numbers, not within one.
    [[nodiscard]] QString orderTold() const
    {
        constexpr std::size_t longOrder = 24;
        QString told = orderLine(m_reading.joint);
        if (m_reading.joint.order.size() <= longOrder)
            return told;
        const QString order = QString::fromStdString(writeOrder(m_reading.joint.order));
        return told.replace(order, QString(order).replace(QLatin1Char('-'), QStringLiteral(" - ")));
    }

    void tellPasses()
    {
        if (refused(Field::Passes) || refused(Field::Target) || refused(Field::OtherTarget))
            return;
        QStringList lines;
        for (std::size_t pass = 0; pass < m_reading.joint.passes.size(); ++pass)
            lines.append(QStringLiteral("%1. %2").arg(QString::number(pass + 1), passTold(pass)));
        m_reading.echoes[Field::Passes] = lines.join(QLatin1Char('\n'));
    }

    void judge()
    {
        m_reading.check = preloadCheck(m_reading.joint);
        const bool doubted = m_reading.check && m_reading.check->doubt;
        const bool answered = !m_typed.answered.trimmed().isEmpty() && m_typed.answeredAbout == questionedWith(m_typed);
        m_reading.text.answered = doubted && answered ? m_typed.answered.trimmed().toStdString() : std::string();
        m_reading.asks = doubted && !answered;
    }

    const JointTyped &m_typed;
    DecimalMark m_mark;
    JointReading m_reading{.text = {},
                           .refusals = {},
                           .echoes = {},
                           .ownThreadOf = {},
                           .joint = {.id = JointId(1), .engine = EngineId(1), .text = {}},
                           .check = {}};
};

/// A band as typed with another unit behind its digits; nothing where that is not what is meant.
std::optional<QString> withUnit(const QString &text, TorqueUnit unit, Torque wanted, DecimalMark mark)
{
    // Everything that is a letter is a unit here, but the words of a band.
    static const QRegularExpression units(
        QStringLiteral("(?!to\\b|at\\b|least\\b|most\\b)[A-Za-z][A-Za-z]*([·⋅.*\\-/ ]?(?!to\\b)[A-Za-z]+)?"));
    QString digits = text;
    digits.remove(units);
    const QString typed = digits.simplified() + QLatin1Char(' ') + unitText(unit);
    const auto band = parseBand<Torque>(typed.toStdString(), unit, mark);
    if (!band)
        return std::nullopt;
    Joint joint{.id = JointId(1), .engine = EngineId(1), .text = {}};
    joint.target = SpecBand<Torque>{*band, std::nullopt};
    const auto target = targetOf(joint);
    return target && target->value == wanted ? std::optional(typed) : std::nullopt;
}

} // namespace

QString JointTyped::text(JointField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? QString() : found->second;
}

JointReading readJointForm(const JointTyped &typed, DecimalMark mark)
{
    return Reader(typed, mark).read();
}

QString refusalSentence(JointField field, const Error &error)
{
    if (field == JointField::Places && error.kind == ErrorKind::EmptyText)
        return JointReader::tr("Nothing says where the fasteners sit. Type it as 12 around a circle, or click them on a photo.");
    return sentence(error);
}

std::optional<JointField> fieldOf(const Error &error)
{
    switch (error.kind) {
    case ErrorKind::JointTaken:
    case ErrorKind::NameMissing: return JointField::Name;
    case ErrorKind::JointInUse: return JointField::Places;
    case ErrorKind::PassesStopShort: return JointField::Passes;
    default: return std::nullopt;
    }
}

QString questionedWith(const JointTyped &typed)
{
    QStringList parts;
    for (const JointField field : {JointField::Target, JointField::OtherTarget, JointField::Thread, JointField::Strength})
        parts.append(typed.text(field).simplified());
    // Without a target it is the passes that are judged.
    if (typed.plain(JointField::Target).empty() && typed.plain(JointField::OtherTarget).empty())
        parts.append(typed.text(JointField::Passes).simplified());
    for (const FastenerPosition &place : typed.pattern.places)
        if (!place.thread.empty())
            parts.append(QString::fromStdString(place.thread).simplified());
    parts.append(QString::number(typed.unit));
    parts.append(typed.condition ? QString::number(int(*typed.condition)) : QString());
    parts.append(QString::number(int(typed.finish)));
    return parts.join(QLatin1Char('\n'));
}

JointTyped inUnitMeant(JointTyped typed, const JointReading &reading, DecimalMark mark)
{
    if (!reading.check || !reading.check->doubt || !reading.check->doubt->meant || !reading.check->doubt->meantValue)
        return typed;
    const TorqueUnit meant = *reading.check->doubt->meant;
    const Torque value = *reading.check->doubt->meantValue;
    // Bare numbers among the passes count in the unit of their keys.
    if (typed.plain(JointField::Target).empty() && typed.plain(JointField::OtherTarget).empty()) {
        typed.unit = int(std::ranges::find(torqueChoices, meant) - torqueChoices.begin());
        return typed;
    }
    const JointField field = typed.plain(JointField::Target).empty() ? JointField::OtherTarget : JointField::Target;
    const auto bare = parseBand<Torque>(typed.plain(field), meant, mark);
    if (bare && bare->unit == meant) {
        typed.unit = int(std::ranges::find(torqueChoices, meant) - torqueChoices.begin());
        return typed;
    }
    const QString plain = QString::fromStdString(formatExact(value, meant, mark));
    typed.texts[field] = withUnit(typed.text(field), meant, value, mark).value_or(plain);
    return typed;
}

JointTyped typedOf(const Joint &joint)
{
    const JointText &text = joint.text;
    JointTyped typed;
    const auto put = [&typed](JointField field, const std::string &what) { typed.texts[field] = QString::fromStdString(what); };
    put(JointField::Name, text.name);
    put(JointField::Places, writePattern(text.pattern));
    put(JointField::Thread, text.thread);
    put(JointField::Strength, text.strength);
    put(JointField::Engagement, text.engagement);
    put(JointField::Target, text.target);
    put(JointField::OtherTarget, text.otherTarget);
    put(JointField::Passes, text.passes);
    put(JointField::Order, text.order);
    put(JointField::DriveSize, text.driveSize);
    put(JointField::Manual, text.source.manual);
    put(JointField::Page, text.source.page);
    typed.pattern = text.pattern;
    typed.unit = int(std::ranges::find(torqueChoices, text.unit) - torqueChoices.begin());
    typed.settle = text.settle;
    typed.condition = text.condition;
    typed.finish = text.finish;
    typed.drive = text.drive;
    typed.female = text.female;
    typed.blindHole = text.blindHole;
    typed.singleUse = text.singleUse;
    typed.certainty = text.source.certainty;
    typed.answered = QString::fromStdString(text.answered);
    typed.answeredAbout = questionedWith(typed);
    return typed;
}

Pattern withOwnOf(Pattern made, const Pattern &before)
{
    for (FastenerPosition &place : made.places)
        if (const FastenerPosition *old = before.place(place.number)) {
            place.thread = old->thread;
            place.length = old->length;
        }
    return made;
}

} // namespace asleft
