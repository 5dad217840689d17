#pragma once

#include "value.h"

#include <measure/band.h>

#include <vector>

namespace asleft {

/// A band as it stands in the text. Range: low, high. PlusMinus: nominal, upper tolerance, lower tolerance. Else the one value.
template <class Q>
struct ReadBand {
    BandForm form;
    std::vector<ReadValue<Q>> values;
};

/// Reads the whole of a trimmed text as a band, without computing anything.
template <class Q>
Result<ReadBand<Q>> readBand(std::string_view text, DecimalMark mark);

} // namespace asleft
