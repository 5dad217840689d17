#pragma once

#include <work/workshop.h>

namespace asleft {

/// A length of a tool's card; nothing where none is given.
Result<std::optional<Typed<Length>>> cardLength(const std::string &text, LengthUnit unit, DecimalMark mark);

/// Stores a tool and tells of it.
Result<ToolId> storeTool(Garage &garage, const Tool &tool);

} // namespace asleft
