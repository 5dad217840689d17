#include "values.h"

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

AdjusterRef Row::adjuster()
{
    const Cylinder cylinder{small()};
    const auto adjuster = adjusterOf(cylinder, text());
    m_unread |= !adjuster;
    return adjuster.value_or(AdjusterRef{cylinder});
}

std::optional<std::int64_t> Row::numberIfAny()
{
    const QVariant value = column(m_column++);
    if (value.isNull())
        return std::nullopt;
    m_unread |= value.typeId() != QMetaType::LongLong;
    return value.toLongLong();
}

std::optional<std::string> Row::textIfAny()
{
    const QVariant value = column(m_column++);
    if (value.isNull())
        return std::nullopt;
    m_unread |= value.typeId() != QMetaType::QString;
    return value.toString().toStdString();
}

} // namespace asleft::store
