#include "checksum.h"

#include "values.h"

#include <QCryptographicHash>
#include <QtEndian>

namespace asleft::store {
namespace {

/// Writes what an act says as one text in which nothing can be taken for something else: every value stands with its length.
class ChecksumText {
public:
    void say(std::string_view text) { add(storedText(text).toUtf8()); }
    void say(const std::string &text) { say(std::string_view(text)); }
    void say(std::int64_t number) { add(QByteArray::number(qlonglong{number})); }
    void say(int number) { say(std::int64_t{number}); }
    void say(std::size_t number) { say(static_cast<std::int64_t>(number)); }
    void say(bool flag) { say(std::int64_t{flag ? 1 : 0}); }
    void say(Moment moment) { say(moment.utcMilliseconds); }

    template <class Thing>
    void say(RowId<Thing> id)
    {
        say(id.key());
    }

    template <class Kind>
    void say(Quantity<Kind> quantity)
    {
        say(quantity.smallest());
    }

    template <class Enum>
    requires std::is_enum_v<Enum>
    void say(Enum value) { say(wordOf(value)); }

    template <class Q>
    void say(const Typed<Q> &typed)
    {
        sayAll(typed.value, typed.unit, typed.text);
    }

    void say(AdjusterRef adjuster) { sayAll(adjuster.cylinder.index, wordOf(adjuster)); }
    void say(const PlanPoint &point) { sayAll(point.adjuster, point.margin); }
    void say(const PlanPosition &position) { sayAll(position.place.cylinder.index, position.place.event, position.crank, position.points); }

    void say(const TypedTemperature &typed) { sayAll(typed.value, typed.unit, typed.text); }

    void say(const TickSlot &place) { sayAll(place.fastener, place.pass, place.round); }
    void say(const Tick &tick) { sayAll(tick.place, tick.moved); }
    void say(const FitUsed &used) { sayAll(used.adapter, used.fit.length, used.fit.angle); }

    template <class T>
    void say(const std::optional<T> &value)
    {
        if (value)
            say(*value);
        else
            m_text.append('-');
    }

    template <class T>
    void say(const std::vector<T> &list)
    {
        say(list.size());
        for (const T &one : list)
            say(one);
    }

    template <class... T>
    void sayAll(const T &...values)
    {
        (say(values), ...);
    }

    /// What older acts could not say is said behind a mark of its own, and only where it is set: an act without it keeps its number.
    template <class T>
    void sayIfAny(std::string_view mark, const std::optional<T> &value)
    {
        if (value)
            sayAll(mark, *value);
    }

    void say(const ReadingFact &fact)
    {
        sayAll(fact.point, fact.phase, fact.form, fact.value, fact.next, fact.judgedBy, fact.tool, fact.condition, fact.specLeaf,
               fact.outOfPosition, fact.corrects);
        // What comes behind it in a list begins with a number, so that a mark is never taken for it.
        sayIfAny("turned", fact.turned);
        sayIfAny("uncertainty", fact.uncertainty);
        sayIfAny("temperature", fact.temperature);
        sayIfAny("minutes since run", fact.minutesSinceRun);
    }
    void operator()(const ReadingFact &fact) { say(fact); }
    void operator()(const AllLeftFact &fact) { say(fact.readings); }
    void operator()(const NutOpenFact &fact) { say(fact.point); }
    void operator()(const CrankFact &fact) { sayAll(fact.engine, fact.crank, fact.how); }
    void operator()(const PlanFact &fact)
    {
        const CrankPlan &plan = fact.plan;
        sayAll(fact.engine, plan.generated, plan.way, plan.source, plan.positions, plan.unreached);
    }
    void operator()(const StepDoneFact &fact) { say(fact.step); }
    void operator()(const KeepFact &fact) { sayAll(fact.reading, fact.point, fact.reason); }
    void operator()(const CautionsFact &fact) { say(fact.cautions); }
    void operator()(const CheckAgainFact &fact)
    {
        sayAll(fact.points, fact.why);
        sayIfAny("cause", fact.cause != Disturbance::Other ? std::optional(fact.cause) : std::nullopt);
    }
    void operator()(const WithdrawFact &) {}
    void operator()(const LoosenedFact &fact)
    {
        sayAll(fact.joint, fact.revision, fact.fasteners, fact.how, fact.torque, fact.tool, fact.note);
    }
    void operator()(const TicksFact &fact)
    {
        sayAll(fact.joint, fact.revision, fact.ticks, fact.how, fact.tool, fact.setting, fact.reading, fact.fit, fact.lever,
               fact.uncertainty, fact.outOfRange, fact.calibrationOverdue, fact.reason);
    }
    void operator()(const UntickedFact &fact) { sayAll(fact.joint, fact.places); }
    void operator()(const JointBegunFact &fact) { sayAll(fact.joint, fact.revision); }
    void operator()(const FittedFact &fact) { sayAll(fact.joint, fact.fasteners, fact.fitted); }
    void operator()(const AcceptedFact &fact) { sayAll(fact.joint, fact.what, fact.fasteners, fact.reason); }
    void operator()(const FindingFact &fact) { sayAll(fact.joint, fact.fasteners, fact.text); }

    [[nodiscard]] const QByteArray &text() const { return m_text; }

private:
    void add(const QByteArray &bytes) { m_text.append(QByteArray::number(bytes.size())).append(':').append(bytes); }

    QByteArray m_text;
};

} // namespace

std::int64_t checksumOf(const NewAct &act)
{
    ChecksumText saying;
    saying.sayAll(kindOf(act.fact), act.uid, act.job, act.who, act.station, act.at, act.withdraws);
    std::visit(saying, act.fact);
    const QByteArray hash = QCryptographicHash::hash(saying.text(), QCryptographicHash::Sha256);
    return qFromBigEndian<qint64>(hash.constData());
}

} // namespace asleft::store
