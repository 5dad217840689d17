#pragma once

#include "words.h"

#include <base/clock.h>
#include <base/ids.h>
#include <measure/quantity.h>

#include <QVariant>

#include <chrono>
#include <concepts>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>

/// How values of the house are bound to a statement and taken from a row again. Only 64-bit numbers, doubles, text and NULL go down.
namespace asleft::store {

/// A text as the database keeps it. Bytes that are not UTF-8 become U+FFFD; byte-order marks at the front are dropped, because both
/// Qt and SQLite would drop or obey them and what is read would not be what was stored.
QString storedText(std::string_view text);
/// Whether all of it is ASCII, and so is stored and read as it is.
bool isPlain(std::string_view text);

inline QVariant bound(std::same_as<std::int64_t> auto number)
{
    return QVariant::fromValue<qlonglong>(number);
}
inline QVariant bound(std::same_as<int> auto number)
{
    return QVariant::fromValue<qlonglong>(number);
}
inline QVariant bound(std::same_as<std::size_t> auto number)
{
    return QVariant::fromValue(static_cast<qlonglong>(number));
}
inline QVariant bound(std::same_as<bool> auto flag)
{
    return QVariant::fromValue<qlonglong>(flag ? 1 : 0);
}
inline QVariant bound(std::same_as<double> auto number)
{
    return QVariant(number);
}
inline QVariant bound(const std::string &text)
{
    return storedText(text);
}
inline QVariant bound(std::same_as<std::string_view> auto text)
{
    return storedText(text);
}
inline QVariant bound(Moment moment)
{
    return bound(moment.utcMilliseconds);
}
/// YYYY-MM-DD; "", which no column of days takes, outside the years 0 to 9999.
QVariant bound(std::chrono::sys_days day);

template <class Thing>
QVariant bound(RowId<Thing> id)
{
    return bound(id.key());
}

template <class Kind>
QVariant bound(Quantity<Kind> quantity)
{
    return bound(quantity.smallest());
}

template <class Enum>
requires std::is_enum_v<Enum> QVariant bound(Enum value)
{
    return storedText(wordOf(value));
}

template <class T>
QVariant bound(const std::optional<T> &value)
{
    return value ? bound(*value) : QVariant();
}

template <class... T>
QVariantList values(const T &...value)
{
    return {bound(value)...};
}

/// One row of a result, its columns taken one after the other. A column that does not hold what was asked for makes the row unread.
class Row {
public:
    virtual ~Row() = default;

    std::int64_t number();
    int small() { return static_cast<int>(number()); }
    bool flag() { return number() != 0; }
    std::string text();
    double real();
    Moment moment() { return {number()}; }
    std::optional<std::chrono::sys_days> dayIfAny();
    void skip(int columns) { m_column += columns; }
    std::optional<std::int64_t> numberIfAny();
    std::optional<std::string> textIfAny();

    template <class Id>
    Id id()
    {
        return Id(number());
    }

    template <class Id>
    std::optional<Id> idIfAny()
    {
        const auto key = numberIfAny();
        return key ? std::optional<Id>(Id(*key)) : std::nullopt;
    }

    template <class Q>
    Q quantity()
    {
        return Q::ofSmallest(number());
    }

    template <class Q>
    std::optional<Q> quantityIfAny()
    {
        const auto count = numberIfAny();
        return count ? std::optional<Q>(Q::ofSmallest(*count)) : std::nullopt;
    }

    template <class Enum>
    std::optional<Enum> wordIfAny()
    {
        const auto stored = textIfAny();
        if (!stored)
            return std::nullopt;
        const auto value = valueOf<Enum>(*stored);
        m_unread |= !value;
        return value;
    }

    template <class Enum>
    Enum word()
    {
        const auto value = valueOf<Enum>(text());
        m_unread |= !value;
        return value.value_or(Words<Enum>::list.front().value);
    }

    /// A Typed or a TypedTemperature from its three columns: amount, unit, text.
    template <class T>
    std::optional<T> typedIfAny()
    {
        const auto amount = quantityIfAny<decltype(T::value)>();
        if (!amount) {
            skip(2);
            return std::nullopt;
        }
        const auto unit = word<decltype(T::unit)>();
        return T{*amount, unit, text()};
    }

    /// A cylinder and the word of its adjuster.
    AdjusterRef adjuster();

    /// For what the columns hold each by itself but cannot hold together.
    void refuse() { m_unread = true; }
    [[nodiscard]] bool unread() const { return m_unread; }

protected:
    enum class Holds { Nothing, Number, Real, Text, Other };

    void startAgain()
    {
        m_column = 0;
        m_unread = false;
    }

private:
    [[nodiscard]] virtual Holds holds(int column) const = 0;
    // Asked only of a column that holds it.
    [[nodiscard]] virtual std::int64_t numberIn(int column) const = 0;
    [[nodiscard]] virtual double realIn(int column) const = 0;
    /// What is no UTF-8 is replaced.
    [[nodiscard]] virtual std::string textIn(int column) const = 0;

    /// Goes on to the next column and gives it, where it holds this; unread where it holds anything else but nothing.
    std::optional<int> next(Holds wanted);

    int m_column = 0;
    bool m_unread = false;
};

/// How a value lies in its columns: of most there is one.
template <class T>
struct Cells {
    static void put(QVariantList &row, const T &value) { row.append(bound(value)); }
    static T take(Row &row)
    {
        if constexpr (std::is_enum_v<T>)
            return row.word<T>();
        else if constexpr (requires(T value) { value.key(); })
            return row.id<T>();
        else if constexpr (requires(T value) { value.smallest(); })
            return row.quantity<T>();
        else if constexpr (std::is_same_v<T, bool>)
            return row.flag();
        else if constexpr (std::is_same_v<T, int>)
            return row.small();
        else if constexpr (std::is_same_v<T, double>)
            return row.real();
        else if constexpr (std::is_same_v<T, Moment>)
            return row.moment();
        else if constexpr (std::is_same_v<T, std::string>)
            return row.text();
        else
            return static_cast<T>(row.number());
    }
};

template <class T>
struct Cells<std::optional<T>> {
    static void put(QVariantList &row, const std::optional<T> &value) { row.append(bound(value)); }
    static std::optional<T> take(Row &row)
    {
        if constexpr (std::is_enum_v<T>)
            return row.wordIfAny<T>();
        else if constexpr (requires(T value) { value.key(); })
            return row.idIfAny<T>();
        else if constexpr (requires(T value) { value.smallest(); })
            return row.quantityIfAny<T>();
        else if constexpr (std::is_same_v<T, std::string>)
            return row.textIfAny();
        else if constexpr (std::is_same_v<T, std::chrono::sys_days>)
            return row.dayIfAny();
        else
            return row.numberIfAny();
    }
};

/// A typed value: amount, unit and text.
template <class T>
requires requires(T typed)
{
    typed.value;
    typed.unit;
    typed.text;
}
struct Cells<T> {
    static void put(QVariantList &row, const T &typed) { row += values(typed.value, typed.unit, typed.text); }
    static T take(Row &row)
    {
        using Amount = decltype(T::value);
        using UnitOfIt = decltype(T::unit);
        return T{row.quantity<Amount>(), row.word<UnitOfIt>(), row.text()};
    }
};
template <class T>
requires requires(T typed)
{
    typed.value;
    typed.unit;
    typed.text;
}
struct Cells<std::optional<T>> {
    static void put(QVariantList &row, const std::optional<T> &typed)
    {
        if (typed)
            Cells<T>::put(row, *typed);
        else
            row += {QVariant(), QVariant(), QVariant()};
    }
    static std::optional<T> take(Row &row) { return row.typedIfAny<T>(); }
};

template <>
struct Cells<Cylinder> {
    static void put(QVariantList &row, Cylinder cylinder) { row.append(bound(cylinder.index)); }
    static Cylinder take(Row &row) { return {row.small()}; }
};

/// A cylinder and the word of its adjuster.
template <>
struct Cells<AdjusterRef> {
    static void put(QVariantList &row, AdjusterRef adjuster) { row += values(adjuster.cylinder.index, wordOf(adjuster)); }
    static AdjusterRef take(Row &row) { return row.adjuster(); }
};

} // namespace asleft::store
