#include <show/words.h>

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

QString outsideText(const Interval<Length> &interval, Verdict verdict, const Band<Length> &band)
{
    const auto amount = leastOutside(interval, verdict, band);
    if (!amount)
        return verdictName(verdict);
    const bool exact = interval.low && interval.low == interval.high;
    return exact ? ReadingWords::tr("%1 by %2").arg(verdictName(verdict), amountText(*amount, band.unit))
                 : ReadingWords::tr("%1 by %2 or more").arg(verdictName(verdict), amountText(*amount, band.unit));
}

QString notComparableText(EngineCondition felt)
{
    return felt == EngineCondition::Hot ? ReadingWords::tr("not comparable: felt hot, the spec is for a cold engine")
                                        : ReadingWords::tr("not comparable: felt cold, the spec is for a hot engine");
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
        return ReadingWords::tr("too close to call against %1").arg(bandText(band));
    return verdictName(verdict);
}

QString verdictText(const ReadingFact &reading, Verdict verdict, const Spec *spec)
{
    if (verdict == Verdict::NotComparable)
        return notComparableText(reading.condition);
    const auto *bands = spec ? std::get_if<SpecBand<Length>>(&spec->asked) : nullptr;
    const auto interval = intervalOf(reading);
    if (!bands || !interval || !reading.value)
        return verdictName(verdict);
    return verdictText(*interval, verdict, *bands, reading.value->unit);
}

} // namespace asleft
