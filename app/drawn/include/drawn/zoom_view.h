#pragma once

#include <drawn/zoom_window.h>

#include <QWidget>

#include <map>
#include <optional>

class QAbstractButton;
class QPainter;

namespace asleft {

class KeyButton;

/// A drawing with buttons on it. One stop for Tab; arrows go from button to button. Where the buttons would be too small for a finger the
/// drawing is larger than the view: it follows what is in hand, is dragged and scrolled, and `+`, `-` and `0` (or the wheel with Ctrl)
/// enlarge it, shrink it, and show the whole. What is drawn, and where the buttons stand on it, is told by who derives from it.
class ZoomView : public QWidget {
    Q_OBJECT

public:
    ~ZoomView() override;

    void zoomIn();
    void zoomOut();
    void showWhole();
    /// Lets Ctrl with `+`, `-` and `0` do so anywhere in `scope`: where values are typed the keys alone are digits and signs.
    void addShortcuts(QWidget *scope);

    /// The button an arrow key leads to from `from`: the nearest one in that direction; nothing at the edge.
    [[nodiscard]] std::optional<qsizetype> neighbour(qsizetype from, Qt::Key arrow) const;
    [[nodiscard]] const ZoomWindow &window() const { return m_window; }
    /// What the buttons stand on.
    [[nodiscard]] QWidget *ground() const { return m_ground; }
    [[nodiscard]] KeyButton *wholeKey() const { return m_whole; }
    [[nodiscard]] KeyButton *largerKey() const { return m_larger; }

    [[nodiscard]] QSize minimumSizeHint() const override { return {360, 140}; }

protected:
    /// What a screen reader calls it, and the keys that enlarge, shrink and show the whole of it.
    struct Names {
        QString view;
        QString larger;
        QString smaller;
        QString whole;
    };

    ZoomView(const Names &names, QWidget *parent);

    /// Plans the drawing for this size, from now on.
    virtual void plan(QSizeF drawing) = 0;
    /// The side of a button if it were planned for this size; never less in a larger drawing of the same proportions.
    [[nodiscard]] virtual double sideAt(QSizeF drawing) const = 0;
    /// The side of a button as it is planned.
    [[nodiscard]] virtual double side() const = 0;
    /// Where a button stands in the drawing as it is planned.
    [[nodiscard]] virtual QRectF itemRect(qsizetype index) const = 0;
    /// What is to be in sight while this one is in hand: itself, unless more belongs to it.
    [[nodiscard]] virtual QRectF partInHand(qsizetype index) const { return itemRect(index); }
    /// How small the drawing may be.
    [[nodiscard]] virtual QSizeF leastDrawing() const = 0;
    /// How many times as large as the view it may become for the sake of a finger.
    [[nodiscard]] virtual double farthest() const { return ZoomWindow::most; }
    /// Paints the drawing as it is planned, in its own measures; as much of it as is exposed will do. `foot` is the lower edge of what is
    /// in sight.
    virtual void paintDrawing(QPainter &painter, const QRectF &exposed, double foot) const = 0;
    /// This one was clicked, or an arrow came to it.
    virtual void choose(qsizetype index) = 0;

    /// Buttons made on the ground, in place of those there were. There has to be something to plan by now.
    void setButtons(const QList<QAbstractButton *> &buttons);
    /// Plans anew what was changed.
    void arrange();
    /// Brings it into sight where it is another than before.
    void setInHand(std::optional<qsizetype> index);

    [[nodiscard]] const QList<QAbstractButton *> &buttons() const { return m_buttons; }
    [[nodiscard]] std::optional<qsizetype> inHand() const { return m_inHand; }
    /// All of the drawing looks different now, or this part of it.
    void repaintDrawing();
    void repaintPart(const QRectF &part);
    [[nodiscard]] double foot() const;

    void resizeEvent(QResizeEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;
    void wheelEvent(QWheelEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    class Ground;

    /// Lays out what there is to draw in the room there is.
    void fitIn();
    /// Planned once for each size: a line of words above it that comes and goes changes the size twice.
    [[nodiscard]] double knownSideAt(QSizeF drawing) const;
    void planFor(QSizeF drawing);
    void place();
    void zoomTo(double factor, QPointF keep);
    void bringIntoSight(const QRectF &part);
    void bringInHandIntoSight();
    [[nodiscard]] QPointF middle() const;
    [[nodiscard]] bool isCrowded(QSizeF view) const;
    /// How many times as large as the view the drawing has to be for a finger.
    [[nodiscard]] double fingerFactor(QSizeF view) const;
    void zoomByKey(int key);
    [[nodiscard]] bool pressKey(qsizetype from, int key);
    void showFocused(qsizetype index, Qt::FocusReason reason);
    [[nodiscard]] bool drag(QObject *watched, QEvent *event);
    void moveTo(QPointF position);

    ZoomWindow m_window;
    mutable std::map<std::pair<double, double>, double> m_sides; ///< of a button, by the size of the drawing it is planned for
    std::optional<QSizeF> m_plannedFor;
    bool m_drawn = false;        ///< there is something to plan
    bool m_zoomedByHand = false; ///< the person chose how large it is
    QWidget *m_ground;
    std::optional<QPointF> m_shownAt; ///< the corner the plan is painted from; nothing where another was painted
    KeyButton *m_larger;
    KeyButton *m_smaller;
    KeyButton *m_whole;
    QList<QAbstractButton *> m_buttons;
    std::optional<qsizetype> m_inHand;
    std::optional<QPointF> m_pressed; ///< where the drawing is held
    bool m_dragging = false;
};

} // namespace asleft
