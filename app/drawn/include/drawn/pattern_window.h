#pragma once

#include <QScrollArea>

namespace asleft {

class PatternBoard;

/// The board as a whole, or, where that leaves its dots too small for a hand, enlarged and scrolled: the place in hand stays in sight.
class PatternWindow : public QScrollArea {
    Q_OBJECT

public:
    explicit PatternWindow(PatternBoard *board, QWidget *parent = nullptr);

    /// There are so many places that the whole drawing shows them too small.
    [[nodiscard]] bool isCrowded() const { return m_enlarging > 1; }
    [[nodiscard]] bool isLarge() const { return m_large; }
    /// Enlarged it is only while it is crowded.
    void setLarge(bool large);
    [[nodiscard]] QSize sizeHint() const override { return minimumSize(); }

Q_SIGNALS:
    /// Whether it is crowded, or enlarged.
    void changed();

protected:
    void resizeEvent(QResizeEvent *event) override;

private:
    void measure();
    void fit();
    void bringIntoSight(int dot);

    PatternBoard *m_board;
    double m_enlarging = 1; ///< what makes every dot large enough
    bool m_large = false;
};

} // namespace asleft
