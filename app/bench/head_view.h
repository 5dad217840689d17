#pragma once

#include <show/head.h>

#include <QWidget>

#include <optional>

namespace asleft {

class PointButton;

/// The head, or both heads, drawn with its setting points, and the leader line from the point in hand down to the view's lower edge,
/// where the reading bar begins. One stop for Tab; arrows go from point to point.
class HeadView : public QWidget {
    Q_OBJECT

public:
    explicit HeadView(QWidget *parent = nullptr);
    ~HeadView() override;

    void setDesign(const EngineDesign &design);
    /// Names and looks in the order of EngineDesign::adjusters(); the one in hand, if any, by its place there.
    void setPoints(const QStringList &names, const QList<PointLook> &looks, std::optional<qsizetype> inHand);

    [[nodiscard]] PointButton *button(qsizetype index) const { return m_buttons.at(index); }
    /// The point an arrow key leads to from `from`: the nearest one in that direction; nothing at the edge.
    [[nodiscard]] std::optional<qsizetype> neighbour(qsizetype from, Qt::Key arrow) const;
    /// Where along the lower edge the leader line comes down.
    [[nodiscard]] std::optional<double> footX() const;

    [[nodiscard]] QSize minimumSizeHint() const override { return {420, 216}; }

Q_SIGNALS:
    void pointChosen(qsizetype index);

protected:
    void resizeEvent(QResizeEvent *event) override;
    void paintEvent(QPaintEvent *event) override;
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void arrange();

    std::optional<EngineDesign> m_design;
    HeadPlan m_plan;
    QList<PointButton *> m_buttons;
    QList<PointLook> m_looks;
    std::optional<qsizetype> m_inHand;
};

} // namespace asleft
