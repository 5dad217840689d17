#pragma once

#include <base/error.h>

#include <QString>

namespace asleft {

// What went wrong, and what could not be done.

/// What is wrong, what was kept, what to do.
QString sentence(const Error &error);
/// That this garage may only be read, why that may be, and what to do.
QString readOnlySentence();

} // namespace asleft
