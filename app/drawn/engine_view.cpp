#include <drawn/engine_view.h>

#include <parts/ink_of.h>

#include <words/crank.h>

#include <QPainter>

namespace asleft {

EngineView::EngineView(QWidget *parent) : QWidget(parent)
{
    setMinimumSize(200, 180);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setAccessibleName(tr("Drawing of the engine"));
}

void EngineView::show(const EngineSketch &sketch)
{
    m_sketch = sketch;
    int cylinders = 0;
    for (const auto &bank : sketch.banks)
        cylinders += int(bank.size());
    setAccessibleDescription(tr("%1, cylinders: %2, firing order %3, %4")
                                 .arg(layoutName(sketch.layout), QString::number(cylinders), sketch.firingOrder.join(QLatin1Char('-')),
                                      rotationName(sketch.rotation)));
    update();
}

void EngineView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    asleft::paintEngine(painter, QRectF(rect()), m_sketch, inkOf(*this));
}

} // namespace asleft
