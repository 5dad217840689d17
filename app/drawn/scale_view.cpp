#include <drawn/scale_view.h>

#include <parts/ink_of.h>

#include <words/numbers.h>
#include <words/readings.h>

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
    m_turns.reset();
    setAccessibleName(bands ? tr("Band: %1").arg(bandText(*bands)) : tr("No spec yet"));
    update();
}

void ScaleView::setTurns(const SpecBand<Angle> &bands)
{
    m_bands.reset();
    m_turns = bands;
    setAccessibleName(tr("Turns from zero lash: %1").arg(bandText(bands)));
    update();
}

void ScaleView::setTurned(const std::optional<ScaleTurns> &turned)
{
    m_turned = turned;
    if (m_turns)
        setAccessibleDescription(turned ? verdictName(turned->verdict) : QString());
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
    if (m_turns)
        paintBandScale(painter, QRectF(rect()), &*m_turns, m_turns->first.unit, m_turned, inkOf(*this));
    else
        paintBandScale(painter, QRectF(rect()), m_bands ? &*m_bands : nullptr, m_unit, m_value, inkOf(*this));
}

} // namespace asleft
