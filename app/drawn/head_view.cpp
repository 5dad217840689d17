#include <drawn/head_view.h>

#include <drawn/point_button.h>
#include <parts/ink_of.h>

#include <QPainter>

namespace asleft {

namespace {

/// Room under the castings for the leader line to come clear of them.
constexpr double footRoom = 14;

/// The castings, with room under them.
QSizeF headRoom(QSizeF drawing)
{
    return {drawing.width(), drawing.height() - footRoom};
}

} // namespace

HeadView::HeadView(QWidget *parent)
    : ZoomView(
          {tr("The head and its setting points"), tr("Enlarge the head (+)"), tr("Shrink the head (-)"), tr("Show the whole head (0)")},
          parent)
{
}

HeadView::~HeadView() = default;

PointButton *HeadView::button(qsizetype index) const
{
    return static_cast<PointButton *>(buttons().at(index));
}

void HeadView::setDesign(const EngineDesign &design)
{
    if (m_design == design)
        return;
    m_design = design;
    QList<QAbstractButton *> made;
    for (std::size_t i = 0; i < design.adjusters().size(); ++i)
        made.append(new PointButton(ground()));
    setButtons(made);
}

void HeadView::setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand)
{
    m_looks = looks;
    repaintDrawing();
    for (qsizetype i = 0; i < points(); ++i)
        button(i)->setPoint(names[i], looks[i]);
    setInHand(inHand);
}

void HeadView::plan(QSizeF drawing)
{
    m_plan = planHead(*m_design, headRoom(drawing));
}

double HeadView::sideAt(QSizeF drawing) const
{
    return planHead(*m_design, headRoom(drawing)).pointDiameter;
}

QRectF HeadView::partInHand(qsizetype index) const
{
    QRectF part = itemRect(index);
    // The leader line goes down beside it.
    const double leader = m_plan.leaderX.value(index, part.center().x());
    part.setLeft(std::min(part.left(), leader));
    part.setRight(std::max(part.right(), leader));
    return part;
}

QSizeF HeadView::leastDrawing() const
{
    return smallestHead + QSizeF(0, footRoom);
}

void HeadView::paintDrawing(QPainter &painter, const QRectF &, double foot) const
{
    if (m_plan.points.isEmpty())
        return;
    const Ink &ink = inkOf(*this);
    paintHead(painter, m_plan, ink, m_looks);
    if (inHand() && *inHand() < m_plan.points.size())
        paintLeaderLine(painter, leaderLine(m_plan, *inHand(), foot), ink);
}

} // namespace asleft
