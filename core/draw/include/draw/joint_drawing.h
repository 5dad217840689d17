#pragma once

#include <draw/head.h>

#include <shop/state.h>

#include <QPolygonF>

namespace asleft {

/// What the shape of a fastener tells; a hexagon, so that it is never taken for a setting point. Each state has a shape of its own:
///   untouched          outline
///   loose              outline broken at the top; found missing, broken or of the wrong length: a cross in it
///   partway            lower half filled
///   tight, inside      filled, with the stroke of paint from the middle across the rim
///     no verdict       the same
///     low, high        outline with a wedge below, above
///     unproved         double outline
///     by feel          outline with the stroke
///     accepted         a bar across the middle of any of these
/// Apart from the state: a disc behind a fastener that is still to be ticked in the pass in hand, a strong ring around the one in hand.
struct FastenerLook {
    FastenerStage stage = FastenerStage::Untouched;
    std::optional<Verdict> verdict = std::nullopt;
    bool byFeel = false;
    bool amiss = false; ///< found missing, broken or of the wrong length, and not tightened since
    bool accepted = false;
    bool toTick = false;
    bool inHand = false;
    bool enabled = true;
    bool operator==(const FastenerLook &) const = default;
};

FastenerLook lookOf(const JobState &state, JointId joint, int fastener, bool inHand);
/// Paints a fastener into the largest centred square of `area`; the hexagon takes about two thirds of it. Draws no ground.
void paintFastener(QPainter &painter, const QRectF &area, const FastenerLook &look, const Ink &ink);
/// The state in words, without the number: "loose", "tight, inside", "tight by feel, accepted".
QString lookWords(const FastenerLook &look);

struct FastenerLegendLine {
    FastenerLook look;
    QString words;
};
QList<FastenerLegendLine> fastenerLegend();

/// Where everything of a joint is drawn. The pattern keeps its proportions.
struct JointPlan {
    QSizeF size;
    QPainterPath outline;          ///< of the part: a cover or a flange around the places
    QList<QPointF> fasteners;      ///< middles, in the order of Pattern::places
    double diameter = 0;           ///< side of the square of one fastener; squares never overlap
    QList<PlacedText> numbers;     ///< as the manual numbers them, beside each, clear of the path where it can be; where there is no
                                   ///< room for all, every second, fifth or tenth … of them, and empty text else
    QList<PlacedText> differences; ///< thread or length, where a fastener has one of its own and there is room; empty text else
    QList<QPointF> path;           ///< the middles in the order of tightening
    QList<QPolygonF> legs;         ///< of the path, from rim to rim, around what lies between

    [[nodiscard]] QRectF fastenerRect(qsizetype index) const;
};

constexpr QSizeF smallestJoint(280, 160);

/// Plans a joint for a panel of this size; fasteners are at most 64 px, and at least 44 px where the size allows.
JointPlan planJoint(const Pattern &pattern, const TighteningOrder &order, QSizeF size);

/// Paints outline, path and numbers; the fasteners are painted on top. The path is drawn from fastener to fastener with a small head at
/// the end of each leg, its first `done` legs strong; none where `showPath` is false.
void paintJoint(QPainter &painter, const JointPlan &plan, const Ink &ink, bool showPath, qsizetype done = 0);

} // namespace asleft
