#pragma once

#include <draw/joint_drawing.h>

#include <QAbstractButton>

namespace asleft {

/// One fastener on the drawn joint: its shape, its name and its state for a screen reader, a click to take it in hand.
class FastenerButton : public QAbstractButton {
    Q_OBJECT

public:
    explicit FastenerButton(QWidget *parent = nullptr);

    void setFastener(const QString &name, const FastenerLook &look);
    [[nodiscard]] const FastenerLook &look() const { return m_look; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    FastenerLook m_look;
};

} // namespace asleft
