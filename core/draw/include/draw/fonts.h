#pragma once

#include <QFont>

namespace asleft {

/// The sizes text is set in. One family with tabular figures throughout, so that digits stand in columns.
enum class TextSize {
    Title,       ///< the vehicle at the head of the sheet
    Now,         ///< what to do now
    Body,        ///< lines of lists
    BodyStrong,  ///< the line in hand, headings of columns
    Small,       ///< the quiet line under a line
    SmallStrong, ///< gates, limits, names of points that may be set here
    Fine,        ///< names of points where they stand close together
    FineStrong,  ///< the same of those that may be set here
    Number,      ///< the cylinder's number on its head
    Value,       ///< the reading being typed
};

/// The family used everywhere.
QString textFamily();

/// The font of a size, in pixels of the device-independent kind.
QFont textFont(TextSize size);

} // namespace asleft
