#pragma once

#include <base/clock.h>

#include <QDate>
#include <QString>

#include <optional>

namespace asleft {

/// A day as a person types it: `2026-05-14`, `14 May 2026`, or in the order this locale writes it, with a whole year. Nothing for what is
/// no date.
std::optional<QDate> readDay(const QString &text);

/// Noon of that day where this machine is.
Moment noonOf(QDate day);

/// The day a moment is on here.
QDate dayOf(Moment moment);

} // namespace asleft
