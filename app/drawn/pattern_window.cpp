#include <drawn/pattern_window.h>

#include <drawn/pattern_board.h>
#include <drawn/pattern_dot.h>

#include <algorithm>

namespace asleft {

namespace {

constexpr QSize smallest(320, 300);
/// WCAG 2.2, 2.5.8: the least a target may measure, where a larger one has no room.
constexpr double leastDot = 24;
constexpr double mostEnlarging = 8;
constexpr int aroundInHand = 40;

} // namespace

PatternWindow::PatternWindow(PatternBoard *board, QWidget *parent) : QScrollArea(parent), m_board(board)
{
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setMinimumSize(smallest);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setWidget(board);
    board->setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
    connect(board, &PatternBoard::changed, this, &PatternWindow::measure);
    connect(board, &PatternBoard::taken, this, &PatternWindow::bringIntoSight);
}

void PatternWindow::setLarge(bool large)
{
    m_large = large && isCrowded();
    fit();
    bringIntoSight(m_board->inHand());
    Q_EMIT changed();
}

void PatternWindow::resizeEvent(QResizeEvent *event)
{
    QScrollArea::resizeEvent(event);
    measure();
}

void PatternWindow::measure()
{
    const bool crowded = isCrowded();
    const double dot = m_board->dotSideIn(maximumViewportSize().expandedTo(smallest));
    m_enlarging = dot > 0 ? std::clamp(leastDot / dot, 1.0, mostEnlarging) : 1;
    if (!isCrowded())
        m_large = false;
    fit();
    if (crowded != isCrowded())
        Q_EMIT changed();
}

void PatternWindow::fit()
{
    const QSize whole = maximumViewportSize();
    m_board->resize(m_large ? whole * m_enlarging : whole);
}

void PatternWindow::bringIntoSight(int dot)
{
    if (m_large && dot >= 0)
        ensureWidgetVisible(m_board->dot(dot), aroundInHand, aroundInHand);
}

} // namespace asleft
