#pragma once

#include <QScrollBar>

namespace asleft {

/// A calm scroll bar: a thin line with a thumb on it, and nothing else.
class SheetScrollBar : public QScrollBar {
    Q_OBJECT

public:
    explicit SheetScrollBar(QWidget *parent = nullptr);

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent *event) override;
};

} // namespace asleft
