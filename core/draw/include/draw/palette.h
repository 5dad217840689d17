#pragma once

#include <QColor>
#include <QPalette>

namespace asleft {

enum class Look { Light, Dark };

/// The colours of a look by what they are for. Text and quiet text reach 4.5:1 on paper, casting, pad, field, key and chosen;
/// shapes reach 3:1 on the same grounds. `line` and `band` only rule and shade: nothing is told by them alone.
struct Ink {
    // grounds
    QColor paper;   ///< the sheet
    QColor casting; ///< heads, tabs, the line in hand
    QColor pad;     ///< the disc under a point that may be set here
    QColor field;   ///< where a value is typed
    QColor key;     ///< buttons
    QColor chosen;  ///< selected rows and text, under `onChosen`
    QColor band;    ///< inside of the band on the reading scale
    QColor track;   ///< the scale outside the band
    // lines
    QColor line;       ///< ruled lines between rows
    QColor edge;       ///< outlines of castings, pads and keys: 3:1
    QColor strongLine; ///< heavy rules, the leader line, the ring of the point in hand
    // text
    QColor text;
    QColor quietText;
    QColor accentText; ///< links and undo
    QColor wedgeText;  ///< what is outside its band, in words
    QColor onChosen;   ///< text on `chosen`
    // shapes
    QColor shape;     ///< outlines of points
    QColor fill;      ///< lower half of a point felt as found
    QColor accent;    ///< a point left inside
    QColor paint;     ///< the stroke of paint; never without `paintEdge`
    QColor paintEdge; ///< the dark edge of the stroke
    QColor wedge;     ///< low and high
    QColor faint;     ///< shapes that cannot be used now
};

const Ink &ink(Look look);

/// The palette of a look, disabled group and tooltips included.
QPalette palette(Look look);

} // namespace asleft
