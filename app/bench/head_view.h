#pragma once

#include "bench/head_window.h"

#include <show/head.h>

#include <QWidget>

#include <optional>

namespace asleft {

class HeadCanvas;
class KeyButton;
class PointButton;

/// The head, or all heads, drawn with its setting points, and the leader line from the point in hand down to the view's lower edge,
/// where the reading bar begins. One stop for Tab; arrows go from point to point. Where the points would be too small for a finger the
/// drawing is larger than the view: it follows the point in hand, is dragged and scrolled, and `+`, `-` and `0` (or the wheel with Ctrl)
/// enlarge it, shrink it, and show the whole; where values are typed, the same keys with Ctrl.
class HeadView : public QWidget {
    Q_OBJECT

public:
    explicit HeadView(QWidget *parent = nullptr);
    ~HeadView() override;

    void setDesign(const EngineDesign &design);
    /// Names and looks in the order of EngineDesign::adjusters(); the one in hand, if any, by its place there.
    void setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand);

    void zoomIn();
    void zoomOut();
    void showWhole();

    [[nodiscard]] PointButton *button(qsizetype index) const { return m_buttons.at(index); }
    [[nodiscard]] qsizetype points() const { return m_buttons.size(); }
    /// The point an arrow key leads to from `from`: the nearest one in that direction; nothing at the edge.
    [[nodiscard]] std::optional<qsizetype> neighbour(qsizetype from, Qt::Key arrow) const;
    [[nodiscard]] const HeadWindow &window() const { return m_window; }
    /// The side of a point's square as it is shown now.
    [[nodiscard]] double pointSide() const { return m_plan.pointDiameter; }
    [[nodiscard]] KeyButton *wholeKey() const { return m_whole; }
    [[nodiscard]] KeyButton *largerKey() const { return m_larger; }

    [[nodiscard]] QSize minimumSizeHint() const override { return {360, 140}; }

Q_SIGNALS:
    void pointChosen(qsizetype index);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void arrange();
    void place();
    void zoomTo(double factor, QPointF keep);
    void bringInHandIntoSight();
    [[nodiscard]] QPointF middle() const;
    /// How many times as large as the view the drawing has to be for a finger; 1 where it fits.
    [[nodiscard]] double fingerFactor(QSizeF view) const;
    void zoomByKey(int key);
    [[nodiscard]] bool pressKey(qsizetype from, int key);
    [[nodiscard]] bool drag(QObject *watched, QEvent *event);
    void moveTo(QPointF position);

    std::optional<EngineDesign> m_design;
    HeadPlan m_plan;
    HeadWindow m_window;
    bool m_zoomedByHand = false; ///< the person chose how large it is
    HeadCanvas *m_canvas;
    KeyButton *m_larger;
    KeyButton *m_smaller;
    KeyButton *m_whole;
    QList<PointButton *> m_buttons;
    std::optional<qsizetype> m_inHand;
    std::optional<QPointF> m_pressed; ///< where the drawing is held
    bool m_dragging = false;
};

} // namespace asleft
