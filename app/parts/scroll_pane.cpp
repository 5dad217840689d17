#include <parts/scroll_pane.h>

#include <parts/pane_scroll_bar.h>

#include <QApplication>
#include <QEvent>
#include <QTimer>

namespace asleft {

namespace {

constexpr int aroundFocus = 60;

} // namespace

ScrollPane::ScrollPane(QWidget *form, QWidget *parent) : QScrollArea(parent)
{
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBar(new PaneScrollBar);
    setFocusPolicy(Qt::NoFocus);
    setWidget(form);
    form->setAutoFillBackground(false);
    viewport()->setAutoFillBackground(false);
    connect(qApp, &QApplication::focusChanged, this, &ScrollPane::followFocus);
}

/// The field that has the keyboard loses it as it goes, when this is no longer a sheet that could follow.
ScrollPane::~ScrollPane()
{
    disconnect(qApp, nullptr, this, nullptr);
}

/// A sentence that came with the change of focus may still be making room for itself: the sheet moves once that is done.
void ScrollPane::followFocus()
{
    QTimer::singleShot(0, this, [this] {
        QWidget *now = QApplication::focusWidget();
        if (now && widget()->isAncestorOf(now))
            ensureWidgetVisible(now, 0, aroundFocus);
    });
}

QSize ScrollPane::minimumSizeHint() const
{
    return {widget()->minimumSizeHint().width() + verticalScrollBar()->sizeHint().width(), 200};
}

bool ScrollPane::eventFilter(QObject *watched, QEvent *event)
{
    // The form is never narrower than what it holds: it scrolls one way only.
    if (watched == widget() && event->type() == QEvent::LayoutRequest)
        updateGeometry();
    return QScrollArea::eventFilter(watched, event);
}

} // namespace asleft
