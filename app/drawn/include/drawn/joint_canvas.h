#pragma once

#include <draw/joint_drawing.h>

#include <QWidget>

#include <optional>

namespace asleft {

/// As much of a plan as is painted where `exposed` is.
struct PartOfPlan {
    JointPlan plan;
    qsizetype done = 0; ///< of its legs
};
/// Texts and legs elsewhere are left out; of the legs that stay, as many are done as were among the first `done`.
PartOfPlan partOfPlan(const JointPlan &plan, const QRectF &exposed, qsizetype done);

/// From the fastener down to y = `foot`, on the nearest way between those below it; where there is none it runs behind some.
QPainterPath leaderLine(const JointPlan &plan, qsizetype fastener, double foot);

/// The ground the fasteners stand on: the part, the path, the numbers, and the leader line from the one in hand down to the view's lower
/// edge. Paints only what is exposed.
class JointCanvas : public QWidget {
    Q_OBJECT

public:
    explicit JointCanvas(QWidget *parent) : QWidget(parent) {}

    /// `corner` is the place of the plan that lies in the upper left.
    void setPlan(const JointPlan &plan, QPointF corner);
    void setState(std::optional<qsizetype> inHand, qsizetype done);
    void setPathShown(bool shown);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    void updatePart(const QRectF &part);
    void updateLeader();

    JointPlan m_plan;
    QPointF m_corner;
    std::optional<qsizetype> m_inHand;
    qsizetype m_done = 0;
    bool m_pathShown = true;
};

} // namespace asleft
