#pragma once

#include <base/result.h>
#include <measure/quantity.h>

namespace asleft {

/// The longest lever of a torque wrench that is believed.
inline constexpr Length longestLever = micrometres(3'000'000);

/// The longest adapter that is believed.
inline constexpr Length longestAdapterLength = micrometres(2'000'000);

/// A crow-foot or an offset wrench on the drive of a torque wrench.
struct AdapterFit {
    Length length; ///< E: from the middle of the wrench's drive to the middle of the fastener; 0 for a straight extension
    Angle angle;   ///< to the wrench's own line: 0 straight out, 90° across, 180° back along the handle
    bool operator==(const AdapterFit &) const = default;
};

/// Whether every wrench, however long, is set to the torque itself: no length, or exactly across.
bool changesNothing(const AdapterFit &fit);

/// What the wrench is set to so that the fastener gets `wanted`: T·L/(L + E·cos a), rounded to the smallest unit; L is from the drive to
/// the grip mark, the hand on that mark. (FAA AC 43.13-1B ch. 7; TM 9-254.) Refuses with AdapterOutOfRange a lever that is not above 0 or
/// is above longestLever, or an adapter of less than nothing or above longestAdapterLength, and with AdapterReversed where L + E·cos a is
/// not above a tenth of L. With E = 0 or at 90° the result is exactly `wanted`.
Result<Torque> wrenchSetting(Torque wanted, Length lever, const AdapterFit &fit);
/// What the fastener gets from a wrench that is set to, or shows, `setting`; refuses as wrenchSetting(). Either also refuses, with
/// AdapterOutOfRange, where the result is past what a Torque holds: a lever of next to nothing.
Result<Torque> torqueAtFastener(Torque setting, Length lever, const AdapterFit &fit);

} // namespace asleft
