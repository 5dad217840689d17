#pragma once

#include <concepts>

namespace asleft {

/// Several lambdas as one visitor.
template <class... Visitors>
struct Overloaded : Visitors... {
    using Visitors::operator()...;
};
template <class... Visitors>
Overloaded(Visitors...) -> Overloaded<Visitors...>;

/// A kind among those that a visitor treats alike. It names them, where `const auto &` would take in a new kind without a word.
template <class T, class... Kinds>
concept OneOf = (std::same_as<T, Kinds> || ...);

} // namespace asleft
