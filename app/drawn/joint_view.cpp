#include <drawn/joint_view.h>

#include <drawn/fastener_button.h>
#include <drawn/joint_part.h>
#include <parts/ink_of.h>

#include <QPainter>

#include <algorithm>

namespace asleft {

namespace {

/// Two hundred in one row take about 9000 px at a finger's size, and a view may be 360 px wide.
constexpr double farthestForARow = 32;
/// Of a leg's head and a line's width.
constexpr double aroundLine = 12;

} // namespace

JointView::JointView(QWidget *parent)
    : ZoomView({tr("The joint and its fasteners"), tr("Enlarge the joint (+)"), tr("Shrink the joint (-)"), tr("Show the whole joint (0)")},
               parent)
{
}

JointView::~JointView() = default;

FastenerButton *JointView::button(qsizetype index) const
{
    return static_cast<FastenerButton *>(buttons().at(index));
}

qsizetype JointView::fasteners() const
{
    return buttons().size();
}

void JointView::setJoint(const Pattern &pattern, const TighteningOrder &order)
{
    if (m_pattern == pattern && m_order == order)
        return;
    const bool asMany = m_pattern && m_pattern->places.size() == pattern.places.size();
    m_pattern = pattern;
    m_order = order;
    // Places that are dragged and numbers that are changed leave the keyboard and the enlargement where they are.
    if (asMany) {
        arrange();
        return;
    }
    QList<QAbstractButton *> made;
    for (std::size_t i = 0; i < pattern.places.size(); ++i)
        made.append(new FastenerButton(ground()));
    setButtons(made);
    standInTurn();
    keepOneStop();
}

/// Made late, they would come after all that stands behind the view.
void JointView::standInTurn()
{
    // What never has the keyboard is not taken as a place in the order.
    ground()->setFocusPolicy(Qt::ClickFocus);
    QWidget *before = ground();
    for (QAbstractButton *button : buttons()) {
        setTabOrder(before, button);
        before = button;
    }
    ground()->setFocusPolicy(Qt::NoFocus);
}

void JointView::setFasteners(const QStringList &names, const QList<FastenerLook> &looks, std::optional<qsizetype> inHand, qsizetype done)
{
    const bool moves = this->inHand() != inHand || m_done != done;
    if (moves)
        repaintLeader();
    for (qsizetype i = std::min(done, m_done); i < std::min(std::max(done, m_done), m_plan.legs.size()); ++i)
        repaintLeg(m_plan.legs[i].boundingRect());
    m_done = done;
    for (qsizetype i = 0; i < fasteners(); ++i)
        button(i)->setFastener(names[i], looks[i]);
    setInHand(inHand);
    if (moves)
        repaintLeader();
    keepOneStop();
}

void JointView::repaintLeg(const QRectF &leg)
{
    repaintPart(leg.adjusted(-aroundLine, -aroundLine, aroundLine, aroundLine));
}

void JointView::repaintLeader()
{
    if (inHand() && *inHand() < m_plan.fasteners.size())
        repaintLeg(leaderLine(m_plan, *inHand(), foot()).boundingRect());
}

void JointView::setPathShown(bool shown)
{
    if (m_pathShown == shown)
        return;
    m_pathShown = shown;
    repaintDrawing();
}

/// Tab stops at the one in hand; where none is, at the first.
void JointView::keepOneStop()
{
    const qsizetype wanted = inHand().value_or(0);
    const qsizetype stop = wanted < fasteners() ? wanted : 0;
    for (qsizetype i = 0; i < fasteners(); ++i)
        button(i)->setFocusPolicy(i == stop ? Qt::StrongFocus : Qt::ClickFocus);
}

void JointView::plan(QSizeF drawing)
{
    m_plan = planJoint(*m_pattern, m_order, drawing);
}

double JointView::sideAt(QSizeF drawing) const
{
    // The order has no say in it, and its path is what takes long to lay.
    return planJoint(*m_pattern, {}, drawing).diameter;
}

/// With its number, which stands beside it.
QRectF JointView::partInHand(qsizetype index) const
{
    QRectF part = itemRect(index);
    for (const QList<PlacedText> *texts : {&m_plan.numbers, &m_plan.differences})
        if (index < texts->size() && !texts->at(index).text.isEmpty())
            part |= texts->at(index).box;
    return part;
}

double JointView::farthest() const
{
    return farthestForARow;
}

void JointView::paintDrawing(QPainter &painter, const QRectF &exposed, double foot) const
{
    if (m_plan.fasteners.isEmpty())
        return;
    const Ink &ink = inkOf(*this);
    const PartOfPlan part = partOfPlan(m_plan, exposed, m_done);
    paintJoint(painter, part.plan, ink, m_pathShown, part.done);
    if (!inHand() || *inHand() >= m_plan.fasteners.size())
        return;
    // The line passes behind the numbers.
    QRegion clear(exposed.toAlignedRect());
    for (const PlacedText &number : part.plan.numbers)
        clear -= number.box.toAlignedRect();
    painter.setClipRegion(clear, Qt::IntersectClip);
    paintLeaderLine(painter, leaderLine(m_plan, *inHand(), foot), ink);
}

} // namespace asleft
