#include <words/numbers.h>
#include <words/readings.h>
#include <words/specs.h>

#include <measure/format.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class ReadingWords {
    Q_DECLARE_TR_FUNCTIONS(ReadingWords)
};

/// The first of two values without its unit where the second says the same one.
QString firstOfTwo(const Typed<Length> &first, const Typed<Length> &second)
{
    return first.unit == second.unit && formatTyped(first) != first.text ? QString::fromStdString(first.text) : typedText(first);
}

QString bracketText(const ReadingFact &reading)
{
    if (!reading.value || !reading.next)
        return reading.value ? typedText(*reading.value) : QString();
    return ReadingWords::tr("between %1 and %2").arg(firstOfTwo(*reading.value, *reading.next), typedText(*reading.next));
}

bool isEitherSide(const Interval<Length> &interval)
{
    return interval.low && interval.high && interval.lowOpen && interval.highOpen;
}

/// The value in the middle of its uncertainty, as it was read.
Interval<Length> asRead(const Interval<Length> &interval)
{
    if (!isEitherSide(interval))
        return interval;
    const std::int64_t low = interval.low->smallest();
    return Interval<Length>::point(Length::ofSmallest(low + (interval.high->smallest() - low) / 2));
}

/// How far the nearest end of what was learned lies beyond the limit it broke; nothing where it only touches it.
std::optional<Length> leastOutside(const Interval<Length> &interval, Verdict verdict, const Band<Length> &band)
{
    const bool high = verdict == Verdict::High;
    const std::optional<Length> end = high ? interval.low : interval.high;
    if (!end)
        return std::nullopt;
    const Length amount = outsideBy(*end, band);
    if (amount == Length())
        return std::nullopt;
    return high ? amount : -amount;
}

QString outsideText(const Interval<Length> &learned, Verdict verdict, const Band<Length> &band)
{
    const Interval<Length> interval = asRead(learned);
    const auto amount = leastOutside(interval, verdict, band);
    if (!amount)
        return verdictName(verdict);
    const bool exact = interval.low && interval.low == interval.high;
    return exact ? ReadingWords::tr("%1 by %2").arg(verdictName(verdict), amountText(*amount, band.unit))
                 : ReadingWords::tr("%1 by %2 or more").arg(verdictName(verdict), amountText(*amount, band.unit));
}

QString notComparableCondition(EngineCondition felt)
{
    return felt == EngineCondition::Hot ? ReadingWords::tr("not comparable: felt hot, the spec is for a cold engine")
                                        : ReadingWords::tr("not comparable: felt cold, the spec is for a hot engine");
}

/// Hot against cold, or turns against a clearance.
QString notComparableText(const ReadingFact &reading, const Spec *spec)
{
    const bool turned = reading.form == ReadingForm::Turned;
    if (!spec || spec->condition != reading.condition)
        return notComparableCondition(reading.condition);
    return turned ? ReadingWords::tr("not comparable: turned on, the spec is a clearance")
                  : ReadingWords::tr("not comparable: a clearance, the spec is turns from zero lash");
}

QString turnedReading(const ReadingFact &reading)
{
    return reading.turned ? ReadingWords::tr("%1 from zero lash").arg(typedText(*reading.turned))
                          : ReadingWords::tr("turned on from zero lash");
}

/// The probability of lying inside, of a value with its uncertainty either side; nothing for what leaves alone taught.
std::optional<double> likelihood(const Interval<Length> &interval, const Band<Length> &band)
{
    if (!isEitherSide(interval))
        return std::nullopt;
    const Length value = *asRead(interval).low;
    return conformanceProbability(value, *interval.high - value, band);
}

QString tooCloseText(const Interval<Length> &interval, const Band<Length> &band)
{
    const auto probability = likelihood(interval, band);
    return probability ? ReadingWords::tr("too close to call, %1", "how likely inside").arg(likelihoodText(*probability))
                       : ReadingWords::tr("too close to call against %1").arg(bandText(band));
}

QString turnsVerdict(const Typed<Angle> &turned, Verdict verdict, const Band<Angle> &band)
{
    if (verdict == Verdict::Low && band.low)
        return outsideText(verdict, turned.value, *band.low, band.unit);
    if (verdict == Verdict::High && band.high)
        return outsideText(verdict, turned.value, *band.high, band.unit);
    return verdictName(verdict);
}

} // namespace

QString conditionName(EngineCondition condition)
{
    return condition == EngineCondition::Cold ? ReadingWords::tr("cold") : ReadingWords::tr("hot");
}

QString subjectName(SpecSubject subject)
{
    switch (subject) {
    case SpecSubject::IntakeLash: return ReadingWords::tr("Intake lash");
    case SpecSubject::ExhaustLash: return ReadingWords::tr("Exhaust lash");
    case SpecSubject::LockNut: return ReadingWords::tr("Lock nut");
    case SpecSubject::BridgeScrew: return ReadingWords::tr("Bridge screw");
    case SpecSubject::Decompressor: return ReadingWords::tr("Decompressor");
    case SpecSubject::Injector: return ReadingWords::tr("Injector");
    }
    return {};
}

QString certaintyName(Certainty certainty)
{
    switch (certainty) {
    case Certainty::ReadInManual: return ReadingWords::tr("read in the manual");
    case Certainty::ToldByPerson: return ReadingWords::tr("told by a person");
    case Certainty::FromMemory: return ReadingWords::tr("from memory");
    case Certainty::Assumed: return ReadingWords::tr("assumed");
    }
    return {};
}

QString sourceText(const SpecSource &source)
{
    QString text = QString::fromStdString(source.manual);
    if (!source.page.empty()) {
        const QString page = ReadingWords::tr("p. %1").arg(QString::fromStdString(source.page));
        text = text.isEmpty() ? page : ReadingWords::tr("%1 %2", "manual, page").arg(text, page);
    }
    if (source.certainty == Certainty::ReadInManual)
        return text.isEmpty() ? certaintyName(source.certainty) : text;
    return text.isEmpty() ? certaintyName(source.certainty)
                          : ReadingWords::tr("%1, %2", "source, how sure").arg(text, certaintyName(source.certainty));
}

QString specLine(const Spec &spec)
{
    const QString band = std::visit([](const auto &bands) { return bandText(bands); }, spec.asked);
    const bool assumed = std::visit([](const auto &bands) { return bands.first.toleranceAssumed; }, spec.asked);
    const QString asked = assumed ? ReadingWords::tr("%1, tolerance assumed").arg(band) : band;
    if (spec.subject == SpecSubject::LockNut)
        return ReadingWords::tr("%1 · %2", "band, source").arg(asked, sourceText(spec.source));
    return ReadingWords::tr("%1 %2 · %3", "band, condition, source").arg(asked, conditionName(spec.condition), sourceText(spec.source));
}

QString phaseName(Phase phase)
{
    return phase == Phase::AsFound ? ReadingWords::tr("as found") : ReadingWords::tr("as left");
}

QString readingText(const ReadingFact &reading)
{
    switch (reading.form) {
    case ReadingForm::Exact: return reading.value ? typedText(*reading.value) : QString();
    case ReadingForm::Bracket: return bracketText(reading);
    case ReadingForm::Loose:
        return reading.value ? ReadingWords::tr("loose on %1").arg(typedText(*reading.value)) : ReadingWords::tr("loose");
    case ReadingForm::Tight:
        return reading.value ? ReadingWords::tr("tight on %1").arg(typedText(*reading.value)) : ReadingWords::tr("tight");
    case ReadingForm::ByFeel: return ReadingWords::tr("by feel");
    case ReadingForm::Turned: return turnedReading(reading);
    }
    return {};
}

QString verdictName(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Inside: return ReadingWords::tr("inside");
    case Verdict::Low: return ReadingWords::tr("below its band");
    case Verdict::High: return ReadingWords::tr("above its band");
    case Verdict::TooClose: return ReadingWords::tr("too close to call");
    case Verdict::ByFeel: return ReadingWords::tr("by feel");
    case Verdict::NotComparable: return ReadingWords::tr("not comparable");
    case Verdict::NoSpec: return ReadingWords::tr("no spec yet");
    }
    return {};
}

QString verdictText(const Interval<Length> &interval, Verdict verdict, const SpecBand<Length> &bands, LengthUnit unit)
{
    const Band<Length> &band = bands.printedFor(unit);
    if (verdict == Verdict::Low || verdict == Verdict::High)
        return outsideText(interval, verdict, band);
    if (verdict == Verdict::TooClose)
        return tooCloseText(interval, band);
    return verdictName(verdict);
}

QString outsideText(Verdict verdict, Angle turned, Angle limit, AngleUnit unit)
{
    const Angle apart = turned > limit ? turned - limit : limit - turned;
    return apart == Angle() ? verdictName(verdict) : ReadingWords::tr("%1 by %2").arg(verdictName(verdict), turnedText(apart, unit));
}

QString verdictText(const ReadingFact &reading, Verdict verdict, const Spec *spec)
{
    if (verdict == Verdict::NotComparable)
        return notComparableText(reading, spec);
    const auto *turns = spec ? std::get_if<SpecBand<Angle>>(&spec->asked) : nullptr;
    if (turns && reading.turned)
        return turnsVerdict(*reading.turned, verdict, turns->printedFor(reading.turned->unit));
    const auto *bands = spec ? std::get_if<SpecBand<Length>>(&spec->asked) : nullptr;
    const auto interval = intervalOf(reading);
    if (!bands || !interval || !reading.value)
        return verdictName(verdict);
    return verdictText(*interval, verdict, *bands, reading.value->unit);
}

} // namespace asleft
