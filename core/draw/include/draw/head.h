#pragma once

#include <draw/fonts.h>
#include <draw/palette.h>
#include <draw/point_shape.h>

#include <engine/design.h>

#include <QLineF>
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

/// Where everything of an engine's heads is drawn. In rows the front is on the left, one casting a bank: in line and single one; V and W
/// the banks one above the other, or in two columns where they are many and short; flat on either side of the crankcase, facing away
/// from it; opposed rows as two flats. In two rows the exhausts stand outward and an injector between the rows; with one row the
/// valves stand in the maker's order. A radial engine is seen from the front, the first cylinder of each row at the top, the rows side by
/// side.
struct HeadPlan {
    QSizeF size;
    QList<QRectF> castings;         ///< one a bank; of a radial engine the box around a row
    QList<QPainterPath> heads;      ///< the castings as they are painted: one a bank, of a radial engine one a cylinder
    QList<QPainterPath> barrels;    ///< between heads and crankcases of flat, opposed and radial engines
    QList<QPainterPath> crankcases; ///< of flat, opposed and radial engines
    QList<QLineF> bridges;          ///< from valve to valve, the lash point of the pair at its middle
    QList<QPointF> points;          ///< middles, in the order of EngineDesign::adjusters()
    double pointDiameter = 0;       ///< side of the square of one point; squares never overlap
    QList<double> leaderX;          ///< for each point, where its leader line can go down clear of other points, if there is a way
    QList<PlacedText> pointLabels;  ///< "I1", in the order of the points; empty where a small panel leaves no room for it
    QList<PlacedText> numbers;      ///< of the cylinders, in the order of EngineDesign::labels
    QList<PlacedText> labels;       ///< "front", "exhaust", "bank A"

    [[nodiscard]] QRectF pointRect(qsizetype index) const;
};

/// The least room a head is planned for; a smaller one is planned as if it had this.
constexpr QSizeF smallestHead(320, 200);

/// Plans the head for a panel of this size. Points are at least 44 px where the size allows. A panel larger than what is seen of it may be
/// planned for to zoom in.
HeadPlan planHead(const EngineDesign &design, QSizeF size);

/// Paints castings, bridges, numbers and labels; the points are painted on top with paintPoint(). `looks`, in the order of the points, may
/// be empty; names of points that may be set here are set in strong type.
void paintHead(QPainter &painter, const HeadPlan &plan, const Ink &ink, const QList<PointLook> &looks = {});

/// From the ring around a point down to the reading bar: out of the ring, aside between the columns, and down to `foot`.
QPainterPath leaderLine(QPointF middle, double ring, QPointF foot);
/// The same for a point of a plan, down to y = `barTop`. Where crowded banks or the round of a radial engine leave no way between the
/// points it runs behind some of them, so it is painted before the points.
QPainterPath leaderLine(const HeadPlan &plan, qsizetype point, double barTop);
void paintLeaderLine(QPainter &painter, const QPainterPath &line, const Ink &ink);

} // namespace asleft
