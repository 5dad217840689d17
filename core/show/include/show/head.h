#pragma once

#include <show/fonts.h>
#include <show/palette.h>
#include <show/point_shape.h>

#include <engine/design.h>

#include <QList>
#include <QPainterPath>
#include <QPointF>
#include <QRectF>
#include <QString>

class QPainter;

namespace asleft {

/// A short text with its place.
struct PlacedText {
    QString text;
    QRectF box; ///< the text is centred in it unless `alignment` says otherwise
    TextSize size = TextSize::Small;
    Qt::Alignment alignment = Qt::AlignCenter;
};

/// Where everything of a head, or of both heads of a V or flat engine, is drawn. The front is on the left. In line: one casting.
/// V: the first bank above the second. Flat: the same, on either side of the crankcase, facing away from it. Exhausts are outward in
/// two rows; with one row the valves stand in the maker's order.
struct HeadPlan {
    QSizeF size;
    QList<QRectF> castings;        ///< one a bank
    QRectF crankcase;              ///< between the heads of a flat engine, else empty
    QList<QPointF> points;         ///< middles, in the order of EngineDesign::adjusters()
    double pointDiameter = 0;      ///< side of the square of one point; squares never overlap
    QList<double> leaderX;         ///< for each point, where its leader line can go down clear of other points
    QList<PlacedText> pointLabels; ///< "I1", in the order of the points
    QList<PlacedText> numbers;     ///< of the cylinders, in the order of EngineDesign::labels
    QList<PlacedText> labels;      ///< "front", "exhaust", "intake"

    [[nodiscard]] QRectF pointRect(qsizetype index) const;
};

/// The least room a head is planned for; a smaller one is planned as if it had this.
constexpr QSizeF smallestHead(320, 200);

/// Plans the head for a panel of this size. Points are at least 44 px where the size allows.
HeadPlan planHead(const EngineDesign &design, QSizeF size);

/// Paints castings, numbers and labels; the points are painted on top with paintPoint(). `looks`, in the order of the points, may be
/// empty; names of points that may be set here are set in strong type.
void paintHead(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks = {});

/// From the ring around a point down to the reading bar: out of the ring, aside between the columns, and down to `foot`.
QPainterPath leaderLine(QPointF middle, double ring, QPointF foot);
/// The same for a point of a plan, down to y = `barTop`. Where two crowded banks leave no way between their points it runs behind some
/// of the second bank, so it is painted before the points.
QPainterPath leaderLine(const HeadPlan &plan, qsizetype point, double barTop);
void paintLeaderLine(QPainter &painter, const QPainterPath &line, const Ink &ink);

} // namespace asleft
