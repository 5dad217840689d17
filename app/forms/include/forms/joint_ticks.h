#pragma once

#include <shop/joint.h>

#include <QCheckBox>

#include <vector>

class QVBoxLayout;

namespace asleft {

struct Ink;

/// A joint to be ticked. In the box of a ticked one stands its place in the order of ticking.
class JointTick : public QCheckBox {
    Q_OBJECT

public:
    explicit JointTick(JointId joint, QWidget *parent = nullptr);

    [[nodiscard]] JointId joint() const { return m_joint; }
    void setWords(const QString &name, const QString &note);
    /// Counts from 1; 0 where it is not ticked.
    void setPlace(int place);
    [[nodiscard]] const QString &name() const { return m_name; }
    [[nodiscard]] int place() const { return m_place; }

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

    /// Gives the keyboard to what comes after.
    void moveOn() { focusNextChild(); }

protected:
    [[nodiscard]] bool hitButton(const QPoint &position) const override;
    void paintEvent(QPaintEvent *event) override;
    void keyPressEvent(QKeyEvent *event) override;

private:
    void paintBox(QPainter &painter, const Ink &ink) const;

    JointId m_joint;
    QString m_name; ///< not the button's text, where an ampersand would mark a key
    QString m_note;
    int m_place = 0;
};

/// Joints to be ticked in the order they come off.
class JointTicks : public QWidget {
    Q_OBJECT

public:
    explicit JointTicks(const QString &name, QWidget *parent = nullptr);

    /// What is ticked and still there stays ticked, and the keyboard stays where it is.
    void setJoints(const std::vector<Joint> &joints);
    [[nodiscard]] const std::vector<JointId> &ticked() const { return m_ticked; }
    [[nodiscard]] const std::vector<JointTick *> &ticks() const { return m_ticks; }
    [[nodiscard]] JointTick *tickOf(JointId joint) const;
    void clear();

Q_SIGNALS:
    /// The person ticked a joint, or took the tick away.
    void changed();

private:
    JointTick *add(JointId joint);
    void toggle(JointId joint, bool on);
    void showPlaces();

    QVBoxLayout *m_column;
    std::vector<JointTick *> m_ticks;
    std::vector<JointId> m_ticked;
};

} // namespace asleft
