#pragma once

#include <draw/joint_drawing.h>

#include <QImage>
#include <QWidget>

#include <optional>

namespace asleft {

class PatternDot;

/// The drawing a pattern is laid out on: its places as dots that can be taken, dragged and clicked, over the part with the path of
/// tightening, or over a photo of it. It changes nothing by itself and says what was asked for.
class PatternBoard : public QWidget {
    Q_OBJECT

public:
    explicit PatternBoard(QWidget *parent = nullptr);

    void setPattern(const Pattern &pattern, const TighteningOrder &order);
    /// Places are then laid out over it; a null image takes it away.
    void setPhoto(const QImage &photo);
    [[nodiscard]] bool hasPhoto() const { return !m_photo.isNull(); }
    /// While places are numbered one after the other: those that have their number. Nothing: they are not.
    void setNumbered(const std::optional<std::vector<int>> &numbered);

    /// The place in hand, an index; -1 where there are none.
    [[nodiscard]] int inHand() const { return m_inHand; }
    void setInHand(int index);
    void focusInHand();
    [[nodiscard]] bool keyboardIsHere() const;

    [[nodiscard]] PatternDot *dot(int index) const { return m_dots.at(index); }
    /// How large each dot is where the whole drawing has so much room; nothing without places, and over a photo.
    [[nodiscard]] double dotSideIn(QSize room) const;
    /// Where a point of the drawing lies in the pattern, and back.
    [[nodiscard]] QPointF toPattern(const QPointF &at) const;
    [[nodiscard]] QPointF toBoard(const QPointF &place) const;

Q_SIGNALS:
    /// Other places, or another ground under them.
    void changed();
    void taken(int index);
    /// A click on a place, or Enter.
    void pressed(int index);
    void moveWanted(int index, const QPointF &place);
    /// A click on the photo.
    void pageWanted(const QPointF &place);
    /// One more, wherever there is room for it.
    void addWanted();
    void removeWanted(int index);
    void stopWanted();

protected:
    void paintEvent(QPaintEvent *event) override;
    void resizeEvent(QResizeEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void makeDots();
    void wire(PatternDot *dot);
    void replan();
    void placeDots();
    void dressDots();
    void keyed(int index, int key, Qt::KeyboardModifiers modifiers);
    void step(int index, int key);
    [[nodiscard]] std::optional<QPointF> nudge(int index, int key, bool far) const;
    [[nodiscard]] QRectF photoRect() const;
    [[nodiscard]] QPointF middleOf(int index) const;
    [[nodiscard]] int indexOf(const PatternDot *dot) const { return int(m_dots.indexOf(const_cast<PatternDot *>(dot))); }
    void paintPhoto(QPainter &painter) const;

    Pattern m_pattern;
    TighteningOrder m_order;
    JointPlan m_plan;
    QImage m_photo;
    std::optional<std::vector<int>> m_numbered;
    QList<PatternDot *> m_dots;
    int m_inHand = -1;
    std::optional<int> m_dragged;
    // From pattern to drawing.
    QPointF m_origin;
    double m_scale = 1;
};

} // namespace asleft
