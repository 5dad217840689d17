#include "values.h"

#include <QDate>

#include <algorithm>

namespace asleft::store {
namespace {

constexpr char16_t byteOrderMark = 0xFEFF;
constexpr char16_t swappedByteOrderMark = 0xFFFE;

} // namespace

QString storedText(std::string_view text)
{
    QString stored = QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
    while (stored.startsWith(QChar(byteOrderMark)) || stored.startsWith(QChar(swappedByteOrderMark)))
        stored.remove(0, 1);
    return stored;
}

bool isPlain(std::string_view text)
{
    return std::ranges::all_of(text, [](char letter) { return static_cast<unsigned char>(letter) < 0x80; });
}

QVariant bound(std::chrono::sys_days day)
{
    const std::chrono::year_month_day date(day);
    const QString text =
        QDate(int{date.year()}, static_cast<int>(unsigned{date.month()}), static_cast<int>(unsigned{date.day()})).toString(Qt::ISODate);
    // Nothing stands for a year of more than four digits; it must not be taken for no day at all.
    return text.isNull() ? QString(QLatin1String("")) : text;
}

std::int64_t Row::number()
{
    const auto value = numberIfAny();
    m_unread |= !value;
    return value.value_or(0);
}

std::string Row::text()
{
    auto value = textIfAny();
    m_unread |= !value;
    return value ? *std::move(value) : std::string();
}

double Row::real()
{
    const auto column = next(Holds::Real);
    m_unread |= !column;
    return column ? realIn(*column) : 0;
}

std::optional<std::chrono::sys_days> Row::dayIfAny()
{
    const auto stored = textIfAny();
    if (!stored)
        return std::nullopt;
    const QDate date = QDate::fromString(QString::fromStdString(*stored), Qt::ISODate);
    m_unread |= !date.isValid();
    if (!date.isValid())
        return std::nullopt;
    return std::chrono::sys_days(std::chrono::year(date.year()) / date.month() / date.day());
}

AdjusterRef Row::adjuster()
{
    const Cylinder cylinder{small()};
    const auto adjuster = adjusterOf(cylinder, text());
    m_unread |= !adjuster;
    return adjuster.value_or(AdjusterRef{cylinder});
}

std::optional<int> Row::next(Holds wanted)
{
    const int column = m_column++;
    const Holds there = holds(column);
    m_unread |= there != wanted && there != Holds::Nothing;
    return there == wanted ? std::optional(column) : std::nullopt;
}

std::optional<std::int64_t> Row::numberIfAny()
{
    const auto column = next(Holds::Number);
    return column ? std::optional(numberIn(*column)) : std::nullopt;
}

std::optional<std::string> Row::textIfAny()
{
    const auto column = next(Holds::Text);
    return column ? std::optional(textIn(*column)) : std::nullopt;
}

} // namespace asleft::store
