#pragma once

#include <drawn/zoom_view.h>

#include <draw/joint_drawing.h>

namespace asleft {

class FastenerButton;

/// A joint, drawn with its fasteners, their numbers and the path of tightening. One stop for Tab; arrows go from fastener to fastener.
/// Enlarged, shrunk, dragged and scrolled as every drawing of the Bench is.
class JointView : public ZoomView {
    Q_OBJECT

public:
    explicit JointView(QWidget *parent = nullptr);
    ~JointView() override;

    /// Does nothing where it shows them already.
    void setJoint(const Pattern &pattern, const TighteningOrder &order);
    /// Names and looks in the order of Pattern::places; the one in hand, if any, by its place there. The first `done` legs of the path are
    /// strong.
    void setFasteners(const QStringList &names, const QList<FastenerLook> &looks, std::optional<qsizetype> inHand, qsizetype done = 0);
    void setPathShown(bool shown);

    [[nodiscard]] FastenerButton *button(qsizetype index) const;
    [[nodiscard]] qsizetype fasteners() const;

Q_SIGNALS:
    void fastenerChosen(qsizetype index);

protected:
    void plan(QSizeF drawing) override;
    [[nodiscard]] double sideAt(QSizeF drawing) const override;
    [[nodiscard]] double side() const override { return m_plan.diameter; }
    [[nodiscard]] QRectF itemRect(qsizetype index) const override { return m_plan.fastenerRect(index); }
    [[nodiscard]] QRectF partInHand(qsizetype index) const override;
    [[nodiscard]] QSizeF leastDrawing() const override { return smallestJoint; }
    [[nodiscard]] double farthest() const override;
    void paintDrawing(QPainter &painter, const QRectF &exposed, double foot) const override;
    void choose(qsizetype index) override { Q_EMIT fastenerChosen(index); }

private:
    void standInTurn();
    void repaintLeg(const QRectF &leg);
    void repaintLeader();
    void keepOneStop();

    std::optional<Pattern> m_pattern;
    TighteningOrder m_order;
    JointPlan m_plan;
    qsizetype m_done = 0; ///< of the legs
    bool m_pathShown = true;
};

} // namespace asleft
