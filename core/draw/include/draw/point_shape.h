#pragma once

#include <draw/palette.h>

#include <shop/outlook.h>

#include <QList>
#include <QRectF>
#include <QString>

#include <optional>

class QPainter;

namespace asleft {

/// What the shape of a setting point tells. Each state has a shape of its own; colour only repeats it:
///   untouched            outline
///   felt as found        lower half filled; by feel: lower half only ruled off
///     low, high          the same with a wedge below, above
///     too close          the same with a second outline
///     no spec yet        the same with a dotted ring; not comparable: with two half rings
///   nut open             outline broken at the top; lower half filled where it was felt before
///   left inside          filled, the stroke of paint from the middle across the rim
///     low, high          outline with a wedge below, above
///     too close          double outline
///     by feel            outline with the stroke
///     no spec yet        outline with the stroke and a dotted ring; not comparable: with the stroke and two half rings
///     kept               a bar across the middle of any of these
///   check again          filled, the stroke broken
/// Apart from the state: a disc with a thin rim behind the point (the plan sets it here), a rim in four pieces without a disc (it
/// could be set here, the plan does so elsewhere), and a strong ring around the point in hand.
struct PointLook {
    PointStage stage = PointStage::Untouched;
    std::optional<Verdict> verdict = std::nullopt; ///< of the reading shown: as left, else as found
    bool kept = false;
    Here here = Here::Unknown;
    bool inHand = false;
    bool enabled = true;

    bool operator==(const PointLook &) const = default;
};

PointLook lookOf(const JobState &state, PointId point, bool inHand);

/// Paints a point into the largest centred square of `area`; the circle itself takes about two thirds of it, the rest is for stroke,
/// wedge, pad and ring. Draws no ground.
void paintPoint(QPainter &painter, const QRectF &area, const PointLook &look, const Ink &ink);

/// The radius of the ring around the point in hand, where the leader line starts, for a square of this side.
double ringRadius(double side);

/// The state in words, without the point's name: "nut open", "as left, above its band, kept".
QString lookWords(const PointLook &look);

/// Whether it may be set here, in words; empty where nobody knows where the crank stands.
QString hereWords(Here here);

/// Every shape with what it means, in the order it is learned.
struct LegendLine {
    PointLook look;
    QString words;
};
QList<LegendLine> legend();

/// One line of the steps list.
enum class StepLook {
    ToDo,   ///< outline
    InHand, ///< outline with a dot: the first undone line
    Begun,  ///< lower half filled: some points of a valve set are left
    Done,   ///< filled, with the stroke
};
StepLook stepLookOf(const JobState &state, const Step &step);
void paintStep(QPainter &painter, const QRectF &area, StepLook look, const Ink &ink);

/// "to do", "to do now", "begun", "done".
QString stepWords(StepLook look);

} // namespace asleft
