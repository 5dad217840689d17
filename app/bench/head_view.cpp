#include "bench/head_view.h"

#include "bench/point_button.h"
#include "parts/ink_of.h"

#include <QKeyEvent>
#include <QPainter>

#include <cmath>

namespace asleft {

namespace {

/// Room under the castings for the leader line to come clear of them.
constexpr double footRoom = 14;

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

} // namespace

HeadView::HeadView(QWidget *parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("The head and its setting points"));
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
        auto *button = new PointButton(this);
        button->installEventFilter(this);
        connect(button, &PointButton::clicked, this, [this, i] { Q_EMIT pointChosen(qsizetype(i)); });
        button->show();
        m_buttons.append(button);
    }
    arrange();
}

void HeadView::setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand)
{
    m_looks = looks;
    m_inHand = inHand;
    for (qsizetype i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setPoint(names[i], looks[i]);
    update();
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

std::optional<double> HeadView::footX() const
{
    if (!m_inHand)
        return std::nullopt;
    return m_plan.leaderX.value(*m_inHand);
}

void HeadView::resizeEvent(QResizeEvent *)
{
    arrange();
}

void HeadView::arrange()
{
    if (!m_design)
        return;
    m_plan = planHead(*m_design, QSizeF(width(), height() - footRoom));
    for (qsizetype i = 0; i < m_buttons.size(); ++i)
        m_buttons[i]->setGeometry(m_plan.pointRect(i).toAlignedRect());
    update();
}

void HeadView::paintEvent(QPaintEvent *)
{
    if (!m_design)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const Ink &ink = inkOf(*this);
    paintHead(painter, m_plan, ink, m_looks);
    if (m_inHand)
        paintLeaderLine(painter, leaderLine(m_plan, *m_inHand, height()), ink);
}

bool HeadView::eventFilter(QObject *watched, QEvent *event)
{
    const auto index = m_buttons.indexOf(static_cast<PointButton *>(watched));
    if (event->type() != QEvent::KeyPress || index < 0)
        return QWidget::eventFilter(watched, event);
    const auto *key = static_cast<QKeyEvent *>(event);
    if (!isArrow(key->key()))
        return QWidget::eventFilter(watched, event);
    if (const auto next = neighbour(index, static_cast<Qt::Key>(key->key()))) {
        m_buttons[*next]->setFocus();
        Q_EMIT pointChosen(*next);
    }
    return true;
}

} // namespace asleft
