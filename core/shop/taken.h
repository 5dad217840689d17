#pragma once

#include <base/result.h>

#include <map>
#include <optional>
#include <utility>

namespace asleft {

/// What was read into a field. Where it is refused, nothing, and the first refusal stands at the field.
template <class Field, class Read>
std::optional<Read> taken(std::map<Field, Error> &refusals, Field field, Result<Read> read)
{
    if (read)
        return *std::move(read);
    refusals.emplace(field, std::move(read.error()));
    return std::nullopt;
}

} // namespace asleft
