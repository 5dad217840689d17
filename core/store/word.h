#pragma once

#include <array>
#include <string_view>

namespace asleft::store {

template <class Enum>
struct Word {
    Enum value;
    std::string_view word;
};

/// The words an enum is kept as in files: `list` has one for each of its values, in their order. A word never changes once a garage was
/// made with it.
template <class Enum>
struct Words;

} // namespace asleft::store
