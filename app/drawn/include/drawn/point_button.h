#pragma once

#include <draw/point_shape.h>

#include <QAbstractButton>

namespace asleft {

/// One setting point on the drawn head: its shape, its name and its state for a screen reader, a click to take it in hand.
class PointButton : public QAbstractButton {
    Q_OBJECT

public:
    explicit PointButton(QWidget *parent = nullptr);

    void setPoint(const QString &name, const PointLook &look);
    [[nodiscard]] const PointLook &look() const { return m_look; }

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    PointLook m_look;
};

} // namespace asleft
