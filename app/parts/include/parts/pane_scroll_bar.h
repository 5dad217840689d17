#pragma once

#include <QScrollBar>

namespace asleft {

/// A calm scroll bar: a thin line with a thumb on it, and nothing else.
class PaneScrollBar : public QScrollBar {
    Q_OBJECT

public:
    explicit PaneScrollBar(QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
};

} // namespace asleft
