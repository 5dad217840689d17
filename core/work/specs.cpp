#include <work/specs.h>

#include "internals.h"

#include <measure/text.h>
#include <store/things.h>

namespace asleft {

namespace {

template <class Q>
Result<SpecBand<Q>> bandsIn(const SpecText &text, Unit<Q> unit, DecimalMark mark)
{
    auto first = parseBand<Q>(text.band, unit, mark);
    if (!first)
        return tl::unexpected(first.error());
    if (isBlank(text.otherBand))
        return pairBands<Q>(std::move(*first), std::nullopt);
    auto second = parseBand<Q>(text.otherBand, unit, mark);
    if (!second)
        return tl::unexpected(second.error());
    return pairBands<Q>(std::move(*first), std::move(*second));
}

using Asked = std::variant<SpecBand<Length>, SpecBand<Torque>, SpecBand<Angle>>;

template <class Q>
Result<Asked> asAsked(Result<SpecBand<Q>> bands)
{
    return std::move(bands).map([](SpecBand<Q> read) { return Asked(std::move(read)); });
}

/// Turns from zero lash, where the text names turns or degrees itself: then it says the same whatever a bare number would count in.
std::optional<SpecBand<Angle>> turnsIn(const SpecText &text, DecimalMark mark)
{
    const auto turns = bandsIn<Angle>(text, AngleUnit::Turn, mark);
    const auto degrees = bandsIn<Angle>(text, AngleUnit::Degree, mark);
    return turns && degrees && *turns == *degrees ? std::optional(*turns) : std::nullopt;
}

Result<Asked> askedIn(SpecSubject subject, const SpecText &text, DecimalMark mark)
{
    if (subject == SpecSubject::LockNut)
        return asAsked(bandsIn<Torque>(text, text.torqueUnit, mark));
    auto length = bandsIn<Length>(text, text.lengthUnit, mark);
    if (length)
        return asAsked(std::move(length));
    if (auto turns = turnsIn(text, mark))
        return Asked(std::move(*turns));
    return tl::unexpected(length.error());
}

SpecSource keptSource(const SpecSource &source)
{
    return {inOneLine(source.manual), inOneLine(source.page), source.certainty};
}

std::vector<TableLine> keptLines(std::vector<TableLine> lines)
{
    for (TableLine &line : lines) {
        line.cylinder = inOneLine(line.cylinder);
        line.points = inOneLine(line.points);
    }
    return lines;
}

/// The present revision, if it already says all of this.
std::optional<SpecId> sameAlready(const std::vector<Spec> &known, const NewSpec &wanted)
{
    for (auto spec = known.rbegin(); spec != known.rend(); ++spec) {
        if (spec->subject != wanted.subject)
            continue;
        const bool same = spec->condition == wanted.condition && spec->source == wanted.source && spec->asked == wanted.asked;
        return same ? std::optional(spec->id) : std::nullopt;
    }
    return std::nullopt;
}

} // namespace

Result<SpecId> reviseSpec(Garage &garage, EngineId engine, SpecSubject subject, const SpecText &text, DecimalMark mark)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    auto asked = askedIn(subject, text, mark);
    if (!asked)
        return tl::unexpected(asked.error());
    const NewSpec wanted{engine, subject, text.condition, keptSource(text.source), std::move(*asked)};
    const auto known = specs(garage, engine);
    if (!known)
        return tl::unexpected(known.error());
    if (const auto same = sameAlready(*known, wanted))
        return *same;
    auto revised = inTransaction(garage, [&](Transaction &transaction) { return insertSpec(transaction, wanted); });
    if (revised)
        Q_EMIT garage.changed({Change::What::Specs, engine});
    return revised;
}

Result<std::vector<Spec>> specs(Garage &garage, EngineId engine)
{
    return specs(*garage.internals().database, engine);
}

Done reviseTable(Garage &garage, EngineId engineId, const std::vector<TableLine> &lines, const SpecSource &source)
{
    if (Done may = writable(garage); !may)
        return may;
    auto revised = inTransaction(garage, [&](Transaction &transaction) -> Result<int> {
        const auto known = engine(transaction.database(), engineId);
        if (!known)
            return tl::unexpected(known.error());
        const auto plan = planFromTable(known->design, lines, source.manual);
        if (!plan)
            return tl::unexpected(plan.error());
        return insertTable(transaction, engineId, keptSource(source), keptLines(lines));
    });
    if (!revised)
        return tl::unexpected(revised.error());
    Q_EMIT garage.changed({Change::What::Specs, engineId});
    return {};
}

Result<std::optional<TurningTable>> turningTable(Garage &garage, EngineId engine)
{
    return table(*garage.internals().database, engine);
}

} // namespace asleft
