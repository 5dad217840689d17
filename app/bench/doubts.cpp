#include <bench/doubts.h>

#include <words/numbers.h>
#include <words/points.h>
#include <words/readings.h>

#include <QCoreApplication>

namespace asleft {

namespace {

struct DoubtWords {
    Q_DECLARE_TR_FUNCTIONS(asleft::ValvePane)
};

} // namespace

QString placeDoubt(const JobState &state, PointId point)
{
    switch (here(state, point)) {
    case Here::NotHere:
        return DoubtWords::tr(
                   "%1 may be off its seat with the crank here. Nothing is logged yet; the same again logs it, with that remark.")
            .arg(pointName(*state.frame, point));
    case Here::Unknown:
        return DoubtWords::tr("Nobody knows where the crank stands. Nothing is logged yet; the same again logs it, with that remark.");
    case Here::InPlan:
    case Here::Possible: break;
    }
    return {};
}

ValueDoubt valueDoubt(const JobFrame &frame, PointId point, const TypedReading &reading, DecimalMark mark)
{
    const auto *bands = lashBandsOf(frame, point);
    if (!bands || !reading.value)
        return {};
    const ReadingText text{reading.form, *reading.value, reading.next};
    if (!farOff(text, bands->printedFor(text.value.unit)))
        return {};
    if (const auto meant = unitMeant(text, *bands))
        if (auto instead = inOtherUnit(reading, *meant, mark))
            return {wrongUnitQuestion(text, *meant, *bands), std::move(*instead)};
    return {DoubtWords::tr("%1 is far from what the manual asks. Nothing is logged yet.").arg(typedText(text.value))};
}

} // namespace asleft
