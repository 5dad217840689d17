#pragma once

#include <QWidget>

namespace asleft {

/// What stands in the middle of the Bench, one at a time.
class Pane : public QWidget {
    Q_OBJECT

public:
    using QWidget::QWidget;

    /// The job has changed while this sheet is in sight.
    virtual void refresh() {}
    /// Gives the keyboard to what is wanted first.
    virtual void takeFocus() = 0;
};

} // namespace asleft
