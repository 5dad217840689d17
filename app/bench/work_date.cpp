#include <bench/work_date.h>

#include <QDateTime>
#include <QLocale>

namespace asleft {

namespace {

constexpr int noon = 12;

/// The short form of this locale, its year written whole.
QString localForm()
{
    QString form = QLocale().dateFormat(QLocale::ShortFormat);
    if (!form.contains(QLatin1String("yyyy")))
        form.replace(QLatin1String("yy"), QLatin1String("yyyy"));
    return form;
}

} // namespace

std::optional<QDate> readDay(const QString &text)
{
    const QString typed = text.simplified();
    QDate day = QDate::fromString(typed, Qt::ISODate);
    for (const QString &form : {QStringLiteral("d MMM yyyy"), QStringLiteral("d MMMM yyyy"), localForm()}) {
        if (!day.isValid())
            day = QLocale().toDate(typed, form);
        if (!day.isValid())
            day = QLocale::c().toDate(typed, form);
    }
    return day.isValid() ? std::optional(day) : std::nullopt;
}

Moment noonOf(QDate day)
{
    return {QDateTime(day, QTime(noon, 0)).toMSecsSinceEpoch()};
}

QDate dayOf(Moment moment)
{
    return QDateTime::fromMSecsSinceEpoch(moment.utcMilliseconds).date();
}

} // namespace asleft
