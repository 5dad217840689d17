#pragma once

#include <draw/joint_drawing.h>

#include <QAbstractButton>

#include <functional>

namespace asleft {

/// One fastener on the drawn joint: its shape, its name and its state for a screen reader, a click to take it in hand.
class FastenerButton : public QAbstractButton {
    Q_OBJECT

public:
    explicit FastenerButton(QWidget *parent = nullptr);

    void setFastener(const QString &name, const FastenerLook &look);
    [[nodiscard]] const FastenerLook &look() const { return m_look; }
    /// What its tooltip says at the time.
    void setTip(std::function<QString()> tip) { m_tip = std::move(tip); }

protected:
    bool event(QEvent *event) override;
    void paintEvent(QPaintEvent *event) override;

private:
    FastenerLook m_look;
    std::function<QString()> m_tip;
};

} // namespace asleft
