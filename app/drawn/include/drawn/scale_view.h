#pragma once

#include <draw/band_scale.h>

#include <QWidget>

namespace asleft {

/// The scale of the reading bar: the band with the value on it as it is typed.
class ScaleView : public QWidget {
    Q_OBJECT

public:
    explicit ScaleView(QWidget *parent = nullptr);

    void setBand(const std::optional<SpecBand<Length>> &bands, LengthUnit unit);
    /// A spec of turns from zero lash takes the place of a band of lengths.
    void setTurns(const SpecBand<Angle> &bands);
    void setValue(const std::optional<ScaleValue> &value);
    void setTurned(const std::optional<ScaleTurns> &turned);

    [[nodiscard]] QSize sizeHint() const override { return {400, int(bandScaleHeight)}; }
    [[nodiscard]] QSize minimumSizeHint() const override { return {240, int(bandScaleHeight)}; }

protected:
    void paintEvent(QPaintEvent *event) override;

private:
    std::optional<SpecBand<Length>> m_bands;
    LengthUnit m_unit = LengthUnit::Millimetre;
    std::optional<ScaleValue> m_value;
    std::optional<SpecBand<Angle>> m_turns;
    std::optional<ScaleTurns> m_turned;
};

} // namespace asleft
