#pragma once

#include <drawn/zoom_view.h>

#include <draw/head.h>

namespace asleft {

class PointButton;

/// The head, or all heads, drawn with its setting points, and the leader line from the point in hand down to the view's lower edge,
/// where the reading bar begins. Where values are typed, the keys that enlarge and shrink it are the same with Ctrl.
class HeadView : public ZoomView {
    Q_OBJECT

public:
    explicit HeadView(QWidget *parent = nullptr);
    ~HeadView() override;

    void setDesign(const EngineDesign &design);
    /// Names and looks in the order of EngineDesign::adjusters(); the one in hand, if any, by its place there.
    void setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand);

    [[nodiscard]] PointButton *button(qsizetype index) const;
    [[nodiscard]] qsizetype points() const { return buttons().size(); }
    /// The side of a point's square as it is shown now.
    [[nodiscard]] double pointSide() const { return m_plan.pointDiameter; }

Q_SIGNALS:
    void pointChosen(qsizetype index);

protected:
    void plan(QSizeF drawing) override;
    [[nodiscard]] double sideAt(QSizeF drawing) const override;
    [[nodiscard]] double side() const override { return pointSide(); }
    [[nodiscard]] QRectF itemRect(qsizetype index) const override { return m_plan.pointRect(index); }
    [[nodiscard]] QRectF partInHand(qsizetype index) const override;
    [[nodiscard]] QSizeF leastDrawing() const override;
    void paintDrawing(QPainter &painter, const QRectF &exposed, double foot) const override;
    void choose(qsizetype index) override { Q_EMIT pointChosen(index); }

private:
    std::optional<EngineDesign> m_design;
    HeadPlan m_plan;
    QList<PointLook> m_looks;
};

} // namespace asleft
