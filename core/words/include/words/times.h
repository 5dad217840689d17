#pragma once

#include <base/clock.h>

#include <QString>

#include <chrono>

namespace asleft {

// Moments and days.

/// "16:12" on the same day, "14 Nov" in the same year, else "14 Nov 2019"; in local time.
QString momentText(Moment at, Moment now);
/// The whole date and time.
QString momentText(Moment at);
/// "31 Mar 2027".
QString dateText(std::chrono::sys_days day);

} // namespace asleft
