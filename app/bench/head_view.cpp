#include "bench/head_view.h"

#include "bench/head_canvas.h"
#include "bench/point_button.h"
#include "parts/ink_of.h"
#include "parts/key_button.h"

#include <QApplication>
#include <QMouseEvent>

#include <cmath>

namespace asleft {

namespace {

/// Room under the castings for the leader line to come clear of them.
constexpr double footRoom = 14;
constexpr double factorStep = 0.25;
constexpr QSizeF leastDrawing(smallestHead.width(), smallestHead.height() + footRoom);
constexpr double aroundPoint = 10;
constexpr int keysWidth = touchHeight + 6;

QPointF unitOf(Qt::Key arrow)
{
    switch (arrow) {
    case Qt::Key_Left: return {-1, 0};
    case Qt::Key_Right: return {1, 0};
    case Qt::Key_Up: return {0, -1};
    default: return {0, 1};
    }
}

bool isArrow(int key)
{
    return key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
}

bool isZoom(int key)
{
    return key == Qt::Key_Plus || key == Qt::Key_Equal || key == Qt::Key_Minus || key == Qt::Key_0;
}

/// The castings, with room under them.
QSizeF headRoom(QSizeF drawing)
{
    return {drawing.width(), drawing.height() - footRoom};
}

} // namespace

HeadView::HeadView(QWidget *parent)
    : QWidget(parent), m_canvas(new HeadCanvas(this)), m_larger(new KeyButton(QStringLiteral("+"), this)),
      m_smaller(new KeyButton(QString(QChar(0x2212)), this)), m_whole(new KeyButton(QString(QChar(0x25A1)), this))
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("The head and its setting points"));
    m_larger->setAccessibleName(tr("Enlarge the head (+)"));
    m_smaller->setAccessibleName(tr("Shrink the head (-)"));
    m_whole->setAccessibleName(tr("Show the whole head (0)"));
    for (KeyButton *key : {m_larger, m_smaller, m_whole}) {
        key->setToolTip(key->accessibleName());
        key->setFocusPolicy(Qt::NoFocus);
        key->setVisible(false);
    }
    connect(m_larger, &KeyButton::clicked, this, &HeadView::zoomIn);
    connect(m_smaller, &KeyButton::clicked, this, &HeadView::zoomOut);
    connect(m_whole, &KeyButton::clicked, this, &HeadView::showWhole);
}

HeadView::~HeadView() = default;

void HeadView::setDesign(const EngineDesign &design)
{
    if (m_design == design)
        return;
    m_design = design;
    qDeleteAll(m_buttons);
    m_buttons.clear();
    for (std::size_t i = 0; i < design.adjusters().size(); ++i) {
        auto *button = new PointButton(m_canvas);
        button->installEventFilter(this);
        connect(button, &PointButton::clicked, this, [this, i] { Q_EMIT pointChosen(qsizetype(i)); });
        button->show();
        m_buttons.append(button);
    }
    m_zoomedByHand = false;
    arrange();
}

void HeadView::setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand)
{
    const bool another = m_inHand != inHand;
    m_inHand = inHand;
    m_canvas->setLooks(looks, inHand);
    for (qsizetype i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setPoint(names[i], looks[i]);
    if (another) {
        bringInHandIntoSight();
        place();
    }
}

std::optional<qsizetype> HeadView::neighbour(qsizetype from, Qt::Key arrow) const
{
    const QPointF way = unitOf(arrow);
    std::optional<qsizetype> nearest;
    double least = 0;
    for (qsizetype i = 0; i < m_plan.points.size(); ++i) {
        const QPointF step = m_plan.points[i] - m_plan.points[from];
        const double along = QPointF::dotProduct(step, way);
        const double aside = std::abs(step.x() * way.y() - step.y() * way.x());
        if (along < m_plan.pointDiameter / 4)
            continue;
        // Straight on counts for more than close by, or the arrows would drift from row to row.
        const double cost = along + 2 * aside;
        if (!nearest || cost < least) {
            nearest = i;
            least = cost;
        }
    }
    return nearest;
}

double HeadView::fingerFactor(QSizeF view) const
{
    double factor = 1;
    const QSizeF base = view.expandedTo(leastDrawing);
    while (factor < HeadWindow::most && planHead(*m_design, headRoom(base * factor)).pointDiameter < touchHeight)
        factor += factorStep;
    return factor;
}

void HeadView::resizeEvent(QResizeEvent *)
{
    arrange();
}

void HeadView::arrange()
{
    if (!m_design)
        return;
    const bool crowded = fingerFactor(size()) > 1;
    const QRect canvas(0, 0, width() - (crowded ? keysWidth : 0), height());
    m_canvas->setGeometry(canvas);
    int y = 0;
    for (KeyButton *key : {m_larger, m_smaller, m_whole}) {
        key->setGeometry(width() - touchHeight, y, touchHeight, touchHeight);
        key->setVisible(crowded);
        y += touchHeight + 4;
    }
    m_window.setSize(canvas.size(), leastDrawing);
    if (!m_zoomedByHand || !crowded)
        m_window.zoomTo(crowded ? fingerFactor(canvas.size()) : 1, middle());
    m_plan = planHead(*m_design, headRoom(m_window.drawing()));
    bringInHandIntoSight();
    place();
}

/// Puts the points where the window on the drawing has them.
void HeadView::place()
{
    for (qsizetype i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setGeometry(m_plan.pointRect(i).translated(-m_window.corner()).toAlignedRect());
    m_canvas->setPlan(m_plan, m_window.corner());
    m_whole->setEnabled(m_window.factor() > 1);
    m_smaller->setEnabled(m_window.factor() > 1);
    m_larger->setEnabled(m_window.factor() < HeadWindow::most);
}

void HeadView::bringInHandIntoSight()
{
    if (!m_inHand || *m_inHand >= m_plan.points.size())
        return;
    QRectF part = m_plan.pointRect(*m_inHand);
    // The leader line goes down beside it.
    const double leader = m_plan.leaderX.value(*m_inHand, part.center().x());
    part.setLeft(std::min(part.left(), leader));
    part.setRight(std::max(part.right(), leader));
    m_window.bringIntoSight(part.adjusted(-aroundPoint, -aroundPoint, aroundPoint, aroundPoint));
}

QPointF HeadView::middle() const
{
    return {m_window.size().width() / 2, m_window.size().height() / 2};
}

void HeadView::zoomTo(double factor, QPointF keep)
{
    if (!m_design)
        return;
    m_zoomedByHand = true;
    m_window.zoomTo(factor, keep);
    m_plan = planHead(*m_design, headRoom(m_window.drawing()));
    place();
}

void HeadView::zoomIn()
{
    zoomTo(m_window.factor() * HeadWindow::step, middle());
    bringInHandIntoSight();
    place();
}

void HeadView::zoomOut()
{
    zoomTo(m_window.factor() / HeadWindow::step, middle());
    bringInHandIntoSight();
    place();
}

void HeadView::showWhole()
{
    zoomTo(1, middle());
}

void HeadView::zoomByKey(int key)
{
    if (key == Qt::Key_Plus || key == Qt::Key_Equal)
        zoomIn();
    else if (key == Qt::Key_Minus)
        zoomOut();
    else
        showWhole();
}

void HeadView::mousePressEvent(QMouseEvent *event)
{
    m_pressed = event->position();
}

void HeadView::mouseMoveEvent(QMouseEvent *event)
{
    if (m_pressed)
        moveTo(event->position());
}

void HeadView::mouseReleaseEvent(QMouseEvent *)
{
    m_pressed.reset();
}

void HeadView::moveTo(QPointF position)
{
    m_window.moveBy(*m_pressed - position);
    m_pressed = position;
    place();
}

void HeadView::wheelEvent(QWheelEvent *event)
{
    const QPoint turned = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        const double factor = m_window.factor() * (turned.y() > 0 ? HeadWindow::step : 1 / HeadWindow::step);
        zoomTo(factor, event->position());
    } else {
        m_window.moveBy(-QPointF(turned) / 2);
        place();
    }
}

bool HeadView::pressKey(qsizetype from, int key)
{
    if (isZoom(key)) {
        zoomByKey(key);
        return true;
    }
    if (!isArrow(key))
        return false;
    if (const auto next = neighbour(from, static_cast<Qt::Key>(key))) {
        m_buttons[*next]->setFocus();
        Q_EMIT pointChosen(*next);
    }
    return true;
}

/// A point is pressed and let go where it is; whoever moves on with it held drags the drawing.
bool HeadView::drag(QObject *watched, QEvent *event)
{
    const auto *mouse = static_cast<QMouseEvent *>(event);
    auto *button = static_cast<PointButton *>(watched);
    const QPointF position = button->mapTo(this, mouse->position());
    if (event->type() == QEvent::MouseButtonPress) {
        m_pressed = position;
        m_dragging = false;
        return false;
    }
    if (event->type() == QEvent::MouseButtonRelease) {
        m_pressed.reset();
        const bool dragged = m_dragging;
        m_dragging = false;
        if (dragged)
            button->setDown(false);
        return dragged;
    }
    const bool far = m_pressed && (position - *m_pressed).manhattanLength() >= QApplication::startDragDistance();
    if (!m_dragging && !(far && m_window.isLarger()))
        return false;
    m_dragging = true;
    button->setDown(false);
    moveTo(position);
    return true;
}

bool HeadView::eventFilter(QObject *watched, QEvent *event)
{
    const auto index = m_buttons.indexOf(static_cast<PointButton *>(watched));
    if (index < 0)
        return QWidget::eventFilter(watched, event);
    switch (event->type()) {
    case QEvent::KeyPress: return pressKey(index, static_cast<QKeyEvent *>(event)->key());
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::MouseButtonRelease: return drag(watched, event);
    default: return QWidget::eventFilter(watched, event);
    }
}

} // namespace asleft
