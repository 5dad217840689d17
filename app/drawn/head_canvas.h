#pragma once

#include <draw/head.h>

#include <QWidget>

#include <optional>

namespace asleft {

/// The ground the points stand on: castings, numbers and the leader line, as much of them as is in sight.
class HeadCanvas : public QWidget {
    Q_OBJECT

public:
    explicit HeadCanvas(QWidget *parent) : QWidget(parent) {}

    /// `corner` is the place of the plan that lies in the upper left.
    void setPlan(const HeadPlan &plan, QPointF corner);
    void setLooks(const QList<PointLook> &looks, std::optional<qsizetype> inHand);

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    HeadPlan m_plan;
    QPointF m_corner;
    QList<PointLook> m_looks;
    std::optional<qsizetype> m_inHand;
};

} // namespace asleft
