#include "bench/scale_view.h"

#include "parts/ink_of.h"

#include <show/words.h>

#include <QPainter>

namespace asleft {

ScaleView::ScaleView(QWidget *parent) : QWidget(parent)
{
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void ScaleView::setBand(const std::optional<SpecBand<Length>> &bands, LengthUnit unit)
{
    m_bands = bands;
    m_unit = unit;
    setAccessibleName(bands ? tr("Band: %1").arg(bandText(*bands)) : tr("No spec yet"));
    update();
}

void ScaleView::setValue(const std::optional<ScaleValue> &value)
{
    m_value = value;
    setAccessibleDescription(value && m_bands ? verdictText(value->interval, value->verdict, *m_bands, value->unit) : QString());
    update();
}

void ScaleView::paintEvent(QPaintEvent *)
{
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintBandScale(painter, QRectF(rect()), m_bands ? &*m_bands : nullptr, m_unit, m_value, inkOf(*this));
}

} // namespace asleft
