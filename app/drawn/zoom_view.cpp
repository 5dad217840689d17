#include <drawn/zoom_view.h>

#include <parts/ink_of.h>
#include <parts/key_button.h>

#include <QAbstractButton>
#include <QApplication>
#include <QMouseEvent>
#include <QPainter>
#include <QShortcut>

#include <algorithm>
#include <cmath>
#include <utility>

namespace asleft {

namespace {

constexpr double factorStep = 0.25;
constexpr double aroundItem = 10;
/// What is nearer by no more than this is as far: the first of them is taken.
constexpr double asFar = 1e-6;
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

} // namespace

/// Paints what is in sight of the drawing.
class ZoomView::Ground : public QWidget {
public:
    explicit Ground(ZoomView *view) : QWidget(view), m_view(view) {}

protected:
    void paintEvent(QPaintEvent *event) override
    {
        if (!m_view->m_drawn)
            return;
        const QPointF corner = m_view->m_window.corner();
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.translate(-corner);
        m_view->paintDrawing(painter, QRectF(event->rect()).translated(corner), m_view->foot());
    }

private:
    ZoomView *m_view;
};

ZoomView::ZoomView(const Names &names, QWidget *parent)
    : QWidget(parent), m_ground(new Ground(this)), m_larger(new KeyButton(QStringLiteral("+"), this)),
      m_smaller(new KeyButton(QString(QChar(0x2212)), this)), m_whole(new KeyButton(QString(QChar(0x25A1)), this))
{
    m_ground->lower();
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(names.view);
    m_larger->setAccessibleName(names.larger);
    m_smaller->setAccessibleName(names.smaller);
    m_whole->setAccessibleName(names.whole);
    for (KeyButton *key : {m_larger, m_smaller, m_whole}) {
        key->setToolTip(key->accessibleName());
        key->setFocusPolicy(Qt::NoFocus);
        key->setVisible(false);
    }
    connect(m_larger, &KeyButton::clicked, this, &ZoomView::zoomIn);
    connect(m_smaller, &KeyButton::clicked, this, &ZoomView::zoomOut);
    connect(m_whole, &KeyButton::clicked, this, &ZoomView::showWhole);
}

ZoomView::~ZoomView() = default;

void ZoomView::setButtons(const QList<QAbstractButton *> &buttons)
{
    // What is told of while the old ones go is of no button any more.
    qDeleteAll(std::exchange(m_buttons, {}));
    m_buttons = buttons;
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        m_buttons[i]->installEventFilter(this);
        connect(m_buttons[i], &QAbstractButton::clicked, this, [this, i] { choose(i); });
        m_buttons[i]->show();
    }
    m_pressed.reset();
    m_dragging = false;
    m_zoomedByHand = false;
    m_drawn = true;
    arrange();
}

void ZoomView::setInHand(std::optional<qsizetype> index)
{
    if (m_inHand == index)
        return;
    m_inHand = index;
    bringInHandIntoSight();
    place();
}

std::optional<qsizetype> ZoomView::neighbour(qsizetype from, Qt::Key arrow) const
{
    const QPointF way = unitOf(arrow);
    const QPointF here = itemRect(from).center();
    std::optional<qsizetype> nearest;
    double least = 0;
    for (qsizetype i = 0; i < m_buttons.size(); ++i) {
        const QPointF step = itemRect(i).center() - here;
        const double along = QPointF::dotProduct(step, way);
        const double aside = std::abs(step.x() * way.y() - step.y() * way.x());
        if (along < side() / 4)
            continue;
        // Straight on counts for more than close by, or the arrows would drift from row to row.
        const double cost = along + 2 * aside;
        if (!nearest || cost < least - asFar) {
            nearest = i;
            least = cost;
        }
    }
    return nearest;
}

double ZoomView::knownSideAt(QSizeF drawing) const
{
    const auto [known, isNew] = m_sides.try_emplace({drawing.width(), drawing.height()}, 0);
    if (isNew)
        known->second = sideAt(drawing);
    return known->second;
}

bool ZoomView::isCrowded(QSizeF view) const
{
    return knownSideAt(view.expandedTo(leastDrawing())) < touchHeight;
}

double ZoomView::fingerFactor(QSizeF view) const
{
    const QSizeF base = view.expandedTo(leastDrawing());
    // Halved, not tried one after the other: planning two hundred takes its time.
    int tooSmall = -1;
    int enough = int(std::ceil((farthest() - 1) / factorStep));
    while (enough - tooSmall > 1) {
        const int tried = (tooSmall + enough) / 2;
        if (knownSideAt(base * (1 + tried * factorStep)) < touchHeight)
            tooSmall = tried;
        else
            enough = tried;
    }
    return 1 + enough * factorStep;
}

void ZoomView::resizeEvent(QResizeEvent *)
{
    fitIn();
}

void ZoomView::arrange()
{
    m_sides.clear();
    m_plannedFor.reset();
    fitIn();
}

void ZoomView::fitIn()
{
    if (!m_drawn)
        return;
    const bool crowded = isCrowded(size());
    const QRect canvas(0, 0, width() - (crowded ? keysWidth : 0), height());
    m_ground->setGeometry(canvas);
    int y = 0;
    for (KeyButton *key : {m_larger, m_smaller, m_whole}) {
        key->setGeometry(width() - touchHeight, y, touchHeight, touchHeight);
        key->setVisible(crowded);
        y += touchHeight + 4;
    }
    const double finger = crowded ? fingerFactor(canvas.size()) : 1;
    m_window.setSize(canvas.size(), leastDrawing());
    m_window.setLimit(std::max(ZoomWindow::most, finger));
    if (!m_zoomedByHand || !crowded)
        m_window.zoomTo(finger, middle());
    planFor(m_window.drawing());
    bringInHandIntoSight();
    place();
}

void ZoomView::planFor(QSizeF drawing)
{
    if (m_plannedFor == drawing)
        return;
    m_plannedFor = drawing;
    plan(drawing);
    m_shownAt.reset();
}

void ZoomView::repaintDrawing()
{
    m_ground->update();
}

void ZoomView::repaintPart(const QRectF &part)
{
    m_ground->update(part.translated(-m_window.corner()).toAlignedRect());
}

double ZoomView::foot() const
{
    return m_window.corner().y() + m_ground->height();
}

/// Puts the buttons where the window on the drawing has them.
void ZoomView::place()
{
    for (qsizetype i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setGeometry(itemRect(i).translated(-m_window.corner()).toAlignedRect());
    // From button to button most often nothing moves, and nothing has to be painted again.
    if (m_shownAt != m_window.corner())
        m_ground->update();
    m_shownAt = m_window.corner();
    m_whole->setEnabled(m_window.factor() > 1);
    m_smaller->setEnabled(m_window.factor() > 1);
    m_larger->setEnabled(m_window.factor() < m_window.limit());
}

void ZoomView::bringIntoSight(const QRectF &part)
{
    m_window.bringIntoSight(part.adjusted(-aroundItem, -aroundItem, aroundItem, aroundItem));
}

void ZoomView::bringInHandIntoSight()
{
    if (m_inHand && *m_inHand < m_buttons.size())
        bringIntoSight(partInHand(*m_inHand));
}

QPointF ZoomView::middle() const
{
    return {m_window.size().width() / 2, m_window.size().height() / 2};
}

void ZoomView::zoomTo(double factor, QPointF keep)
{
    if (!m_drawn)
        return;
    m_zoomedByHand = true;
    m_window.zoomTo(factor, keep);
    planFor(m_window.drawing());
    place();
}

void ZoomView::zoomIn()
{
    zoomTo(m_window.factor() * ZoomWindow::step, middle());
    bringInHandIntoSight();
    place();
}

void ZoomView::zoomOut()
{
    zoomTo(m_window.factor() / ZoomWindow::step, middle());
    bringInHandIntoSight();
    place();
}

void ZoomView::showWhole()
{
    zoomTo(1, middle());
}

void ZoomView::addShortcuts(QWidget *scope)
{
    for (const Qt::Key key : {Qt::Key_Plus, Qt::Key_Equal, Qt::Key_Minus, Qt::Key_0}) {
        auto *shortcut = new QShortcut(QKeySequence(Qt::CTRL | key), scope);
        shortcut->setContext(Qt::WidgetWithChildrenShortcut);
        connect(shortcut, &QShortcut::activated, this, [this, key] { zoomByKey(key); });
    }
}

void ZoomView::zoomByKey(int key)
{
    if (key == Qt::Key_Plus || key == Qt::Key_Equal)
        zoomIn();
    else if (key == Qt::Key_Minus)
        zoomOut();
    else
        showWhole();
}

void ZoomView::mousePressEvent(QMouseEvent *event)
{
    m_pressed = event->position();
}

void ZoomView::mouseMoveEvent(QMouseEvent *event)
{
    if (m_pressed)
        moveTo(event->position());
}

void ZoomView::mouseReleaseEvent(QMouseEvent *)
{
    m_pressed.reset();
}

void ZoomView::moveTo(QPointF position)
{
    m_window.moveBy(*m_pressed - position);
    m_pressed = position;
    place();
}

void ZoomView::wheelEvent(QWheelEvent *event)
{
    const QPoint turned = event->angleDelta();
    if (event->modifiers().testFlag(Qt::ControlModifier)) {
        const double factor = m_window.factor() * (turned.y() > 0 ? ZoomWindow::step : 1 / ZoomWindow::step);
        zoomTo(factor, event->position());
    } else {
        m_window.moveBy(-QPointF(turned) / 2);
        place();
    }
}

bool ZoomView::pressKey(qsizetype from, int key)
{
    if (isZoom(key)) {
        zoomByKey(key);
        return true;
    }
    if (!isArrow(key))
        return false;
    if (const auto next = neighbour(from, static_cast<Qt::Key>(key))) {
        m_buttons[*next]->setFocus();
        choose(*next);
    }
    return true;
}

/// Where the keyboard goes there is something to see, also where nothing is taken in hand. A click has seen what it hit.
void ZoomView::showFocused(qsizetype index, Qt::FocusReason reason)
{
    if (reason != Qt::TabFocusReason && reason != Qt::BacktabFocusReason && reason != Qt::OtherFocusReason)
        return;
    bringIntoSight(itemRect(index));
    place();
}

/// A button is pressed and let go where it is; whoever moves on with it held drags the drawing.
bool ZoomView::drag(QObject *watched, QEvent *event)
{
    const auto *mouse = static_cast<QMouseEvent *>(event);
    auto *button = static_cast<QAbstractButton *>(watched);
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

bool ZoomView::eventFilter(QObject *watched, QEvent *event)
{
    // Compared as what both are for certain: a button that is being destroyed is a button no more, and speaks up all the same.
    const auto isIt = [watched](const QObject *button) { return button == watched; };
    const auto index = std::find_if(m_buttons.cbegin(), m_buttons.cend(), isIt) - m_buttons.cbegin();
    if (index == m_buttons.size())
        return QWidget::eventFilter(watched, event);
    switch (event->type()) {
    case QEvent::KeyPress: return pressKey(index, static_cast<QKeyEvent *>(event)->key());
    case QEvent::FocusIn: showFocused(index, static_cast<QFocusEvent *>(event)->reason()); return false;
    case QEvent::MouseButtonPress:
    case QEvent::MouseMove:
    case QEvent::MouseButtonRelease: return drag(watched, event);
    default: return QWidget::eventFilter(watched, event);
    }
}

} // namespace asleft
