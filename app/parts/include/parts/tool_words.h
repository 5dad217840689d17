#pragma once

#include <shop/things.h>
#include <work/garage.h>

#include <QString>

#include <chrono>

namespace asleft {

/// What decides whether a calibration is overdue.
std::chrono::sys_days todayIn(const Garage &garage);

/// "20 leaves, 0.05 to 1.00 mm"
QString leavesWords(const std::vector<Typed<Length>> &leaves);
/// "readings are good to ± 0.012 mm"; what is missing where that cannot be told.
QString gaugeWords(const Tool &gauge);
/// "6 to 30 N·m, set, ± 4 %, calibration due 31 Mar 2027". \pre it is a torque wrench
QString wrenchWords(const Tool &wrench, std::chrono::sys_days today);
/// "calibration due 31 Mar 2027", "calibration overdue since 31 Mar 2020", "calibration not known".
QString calibrationWords(std::optional<std::chrono::sys_days> due, std::chrono::sys_days today);
/// What a wrench is good for: "tested from 40 N·m (a fifth of its range), ± 4 % by ISO 6789". \pre checkTorqueTool() lets it pass
QString worthWords(const TorqueTool &wrench);
/// "40 mm from drive to fastener, for 13 mm", "13 mm": of an adapter or a socket; empty where nothing is known of it.
QString fittingWords(const Tool &fitting);

} // namespace asleft
