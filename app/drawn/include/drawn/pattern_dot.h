#pragma once

#include <draw/joint_drawing.h>

#include <QAbstractButton>

namespace asleft {

/// One place of a pattern as it is laid out: clicked, dragged, or moved by the arrow keys.
class PatternDot : public QAbstractButton {
    Q_OBJECT

public:
    explicit PatternDot(QWidget *parent);

    void setLook(const FastenerLook &look);

Q_SIGNALS:
    void focused();
    /// Where its middle has been dragged to, in the coordinates of its parent.
    void dragged(const QPointF &middle);
    void dropped();
    /// A key that is not for a button: moving, going to another place, taking it away.
    void keyed(int key, Qt::KeyboardModifiers modifiers);

protected:
    void paintEvent(QPaintEvent *event) override;
    void focusInEvent(QFocusEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;
    void mousePressEvent(QMouseEvent *event) override;
    void mouseMoveEvent(QMouseEvent *event) override;
    void mouseReleaseEvent(QMouseEvent *event) override;

private:
    FastenerLook m_look;
    QPointF m_grip; ///< from the middle to where it was taken hold of
    QPoint m_pressedAt;
    bool m_dragging = false;
};

} // namespace asleft
