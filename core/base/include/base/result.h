#pragma once

#include <base/error.h>

#include <tl/expected.hpp>

namespace asleft {

/// A value, or the Error that kept it from being made.
template <class T>
using Result = tl::expected<T, Error>;

/// Success without a value.
using Done = Result<void>;

template <class... Arguments>
tl::unexpected<Error> fail(ErrorKind kind, Arguments &&...arguments)
{
    return tl::unexpected<Error>(Error{kind, {std::string(std::forward<Arguments>(arguments))...}});
}

template <class... Arguments>
tl::unexpected<Error> fail(ErrorKind kind, Noun noun, Arguments &&...arguments)
{
    return tl::unexpected<Error>(Error{kind, {std::string(std::forward<Arguments>(arguments))...}, noun});
}

} // namespace asleft
