#pragma once

namespace asleft {

/// A list takes its rows' room before the empty foot of a pane takes any.
inline constexpr int listStretch = 100;

} // namespace asleft
