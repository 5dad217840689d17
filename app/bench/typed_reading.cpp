#include <bench/typed_reading.h>

#include <words/errors.h>
#include <words/numbers.h>
#include <words/readings.h>

#include <QCoreApplication>

namespace asleft {

namespace {

struct TypedWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::ValvePane)
};

Result<TypedReading> readLength(const std::string &text, const TypedAs &as)
{
    auto read = parseReading(text, as.unit, as.mark);
    if (!read)
        return tl::unexpected(std::move(read.error()));
    return TypedReading{.form = read->form, .value = std::move(read->value), .next = std::move(read->next)};
}

Result<TypedReading> readTurns(const std::string &text, const TypedAs &as)
{
    auto read = parseTurns(text, as.mark);
    if (!read)
        return tl::unexpected(std::move(read.error()));
    return TypedReading{.form = ReadingForm::Turned, .turned = std::move(*read)};
}

/// The digits in front of a unit.
std::string digitsOf(const Typed<Length> &typed)
{
    const auto end = typed.text.find_first_not_of("0123456789.,/ ");
    return typed.text.substr(0, end);
}

QString likelihoodOf(const ReadingFact &fact, Verdict verdict, const SpecBand<Length> *bands)
{
    const bool known = bands && fact.value && fact.uncertainty && fact.form == ReadingForm::Exact;
    if (!known || verdict != Verdict::TooClose)
        return {};
    const Band<Length> &band = bands->printedFor(fact.value->unit);
    return likelihoodText(conformanceProbability(fact.value->value, *fact.uncertainty, band));
}

Judgement judgementOfFact(const ReadingFact &fact, Verdict verdict, const Spec *spec)
{
    const auto *bands = spec ? std::get_if<SpecBand<Length>>(&spec->asked) : nullptr;
    Judgement judged{.verdict = verdict, .words = verdictText(fact, verdict, spec), .likelihood = likelihoodOf(fact, verdict, bands)};
    if (fact.value && fact.uncertainty)
        judged.uncertainty = uncertaintyText(*fact.uncertainty, fact.value->unit);
    if (const auto interval = intervalOf(fact))
        judged.onScale = ScaleValue{*interval, fact.value->unit, verdict};
    if (fact.turned)
        judged.turnsOnScale = ScaleTurns{fact.turned->value, fact.turned->unit, verdict};
    return judged;
}

} // namespace

Result<TypedReading> readTyped(const QString &text, const TypedAs &as)
{
    const std::string typed = text.toStdString();
    auto read = as.turns ? readTurns(typed, as) : readLength(typed, as);
    if (read || read.error().kind != ErrorKind::UnknownUnit)
        return read;
    if (auto other = as.turns ? readLength(typed, as) : readTurns(typed, as))
        return other;
    return read;
}

Result<TypedReading> inOtherUnit(const TypedReading &reading, LengthUnit unit, DecimalMark mark)
{
    const auto again = [&](std::optional<Typed<Length>> &typed) -> Done {
        if (!typed)
            return {};
        auto read = parse<Length>(digitsOf(*typed), unit, mark);
        if (!read)
            return tl::unexpected(std::move(read.error()));
        typed = std::move(*read);
        return {};
    };
    TypedReading other = reading;
    for (auto *typed : {&other.value, &other.next})
        if (const Done done = again(*typed); !done)
            return tl::unexpected(done.error());
    return other;
}

QString typedText(const TypedReading &reading)
{
    if (reading.turned)
        return typedText(*reading.turned);
    if (!reading.value)
        return {};
    const QString value = typedText(*reading.value);
    return reading.next ? TypedWords::tr("%1 goes, %2 does not").arg(value, typedText(*reading.next)) : value;
}

ReadingEntry entryOf(const TypedReading &reading, PointId point, Phase phase)
{
    return {.point = point,
            .phase = phase,
            .form = reading.form,
            .value = reading.value,
            .next = reading.next,
            .specLeaf = reading.specLeaf,
            .turned = reading.turned};
}

const SpecBand<Length> *lashBandsOf(const JobFrame &frame, PointId point)
{
    const SettingPoint *found = frame.point(point);
    return found ? frame.lashBandsNow(found->adjuster) : nullptr;
}

Judgement judgementOf(const JobBook &book, const ReadingEntry &entry, EngineCondition condition)
{
    const auto logged = book.wouldLog(entry, condition);
    if (!logged)
        return {.verdict = Verdict::NoSpec, .words = sentence(logged.error())};
    const auto &judgedBy = logged->fact.judgedBy;
    return judgementOfFact(logged->fact, logged->verdict, judgedBy ? book.state().frame->spec(*judgedBy) : nullptr);
}

Judgement judgementOf(const JobFrame &frame, const Judged &judged)
{
    const Spec *spec = judged.reading.judgedBy ? frame.spec(*judged.reading.judgedBy) : nullptr;
    return judgementOfFact(judged.reading, judged.verdict, spec);
}

} // namespace asleft
