#include "checksum.h"

#include "fact_rows.h"
#include "facts.h"

#include <QCryptographicHash>
#include <QtEndian>

#include <array>
#include <charconv>

namespace asleft::store {
namespace {

using namespace std::string_view_literals;

/// Writes what an act says as one text in which nothing can be taken for something else: every value stands with its length.
class ChecksumText {
public:
    void say(std::string_view text)
    {
        // Most is, and a job has thousands.
        if (isPlain(text))
            add(text);
        else
            add(storedText(text).toStdString());
    }
    void say(const std::string &text) { say(std::string_view(text)); }
    void say(std::int64_t number)
    {
        std::array<char, 24> digits;
        const auto end = std::to_chars(digits.begin(), digits.end(), number).ptr;
        add({digits.begin(), end});
    }
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

    void say(Cylinder cylinder) { say(cylinder.index); }
    void say(AdjusterRef adjuster) { sayAll(adjuster.cylinder, wordOf(adjuster)); }
    void say(const TypedTemperature &typed) { sayAll(typed.value, typed.unit, typed.text); }
    void say(const FitUsed &used) { sayAll(used.adapter, used.fit.length, used.fit.angle); }

    /// The findings of old are about joints, and begin with a number; of anything else a word says what it is.
    void say(const Subject &subject) { std::visit(SayingSubject{*this}, subject); }

    template <Described T>
    void say(const T &row)
    {
        eachPart<T>([&](const auto &part) { sayPart(row, part); });
    }

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

    [[nodiscard]] const QByteArray &text() const { return m_text; }

private:
    struct SayingSubject {
        ChecksumText &text;
        void operator()(const FastenerSubject &some) const { text.say(some.joint); }
        void operator()(PointId point) const { text.sayAll("point"sv, point); }
        void operator()(StepId step) const { text.sayAll("step"sv, step); }
        void operator()(EngineId engine) const { text.sayAll("engine"sv, engine); }
        void operator()(VehicleId vehicle) const { text.sayAll("vehicle"sv, vehicle); }
    };

    template <class Owner, class Member>
    void sayPart(const Owner &owner, const Column<Owner, Member> &column)
    {
        say(owner.*column.member);
    }
    template <class Owner, class Member>
    void sayPart(const Owner &owner, const LaterColumn<Owner, Member> &column)
    {
        if (owner.*column.member != Member{})
            sayAll(column.mark, owner.*column.member);
    }
    template <class Owner, class Member>
    void sayPart(const Owner &owner, const Part<Owner, Member> &part)
    {
        say(owner.*part.member);
    }
    template <class Owner, class Item, class At>
    void sayPart(const Owner &owner, const List<Owner, Item, At> &list)
    {
        const auto *items = itemsOf(list, owner);
        say(items ? *items : std::vector<Item>());
    }

    void add(std::string_view bytes)
    {
        std::array<char, 24> length;
        const auto end = std::to_chars(length.begin(), length.end(), bytes.size()).ptr;
        m_text.append(length.begin(), end - length.begin()).append(':').append(bytes.data(), static_cast<qsizetype>(bytes.size()));
    }

    QByteArray m_text;
};

} // namespace

std::int64_t checksumOf(const NewAct &act)
{
    ChecksumText saying;
    saying.sayAll(kindOf(act.fact), act.uid, act.job, act.who, act.station, act.at, act.withdraws);
    std::visit([&](const auto &said) { saying.say(said); }, act.fact);
    const QByteArray hash = QCryptographicHash::hash(saying.text(), QCryptographicHash::Sha256);
    return qFromBigEndian<qint64>(hash.constData());
}

} // namespace asleft::store
