#pragma once

#include <shop/acts.h>

#include <cstdint>

namespace asleft::store {

/// A number over everything an act and its facts say. It must never come out differently for an act that was stored, so what it is
/// made of is added to for new facts, and never changed for old ones.
std::int64_t checksumOf(const NewAct &act);

} // namespace asleft::store
