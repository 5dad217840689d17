#pragma once

#include <QScrollArea>

namespace asleft {

/// Room for a form that may be taller than the window: scrolls up and down only, without a frame, and brings the field the keyboard
/// speaks to into sight.
class ScrollPane : public QScrollArea {
    Q_OBJECT

public:
    explicit ScrollPane(QWidget *form, QWidget *parent = nullptr);
    ~ScrollPane() override;

    [[nodiscard]] QSize minimumSizeHint() const override;

protected:
    bool eventFilter(QObject *watched, QEvent *event) override;

private:
    void followFocus();
};

} // namespace asleft
