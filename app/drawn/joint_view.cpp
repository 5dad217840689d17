#include <drawn/joint_view.h>

#include <drawn/fastener_button.h>
#include <drawn/joint_canvas.h>

namespace asleft {

namespace {

/// Two hundred in one row take about 9000 px at a finger's size, and a view may be 360 px wide.
constexpr double farthestForARow = 32;

} // namespace

JointView::JointView(QWidget *parent)
    : DrawnView(
          new JointCanvas(nullptr),
          {tr("The joint and its fasteners"), tr("Enlarge the joint (+)"), tr("Shrink the joint (-)"), tr("Show the whole joint (0)")},
          parent),
      m_canvas(static_cast<JointCanvas *>(canvas()))
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
        made.append(new FastenerButton(m_canvas));
    setButtons(made);
    standInTurn();
    keepOneStop();
}

/// Made late, they would come after all that stands behind the view.
void JointView::standInTurn()
{
    // What never has the keyboard is not taken as a place in the order.
    m_canvas->setFocusPolicy(Qt::ClickFocus);
    QWidget *before = m_canvas;
    for (QAbstractButton *button : buttons()) {
        setTabOrder(before, button);
        before = button;
    }
    m_canvas->setFocusPolicy(Qt::NoFocus);
}

void JointView::setFasteners(const QStringList &names, const QList<FastenerLook> &looks, std::optional<qsizetype> inHand, qsizetype done)
{
    m_canvas->setState(inHand, done);
    for (qsizetype i = 0; i < fasteners(); ++i)
        button(i)->setFastener(names[i], looks[i]);
    setInHand(inHand);
    keepOneStop();
}

void JointView::setPathShown(bool shown)
{
    m_canvas->setPathShown(shown);
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
    m_shownAt.reset();
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

void JointView::showPlan(QPointF corner)
{
    // From fastener to fastener most often nothing moves, and nothing has to be painted again.
    if (m_shownAt == corner)
        return;
    m_shownAt = corner;
    m_canvas->setPlan(m_plan, corner);
}

} // namespace asleft
