#include <joints/choice.h>

#include <measure/format.h>
#include <measure/judge.h>

namespace asleft {

namespace {

/// Decimals of what can be set on an ordinary wrench.
int settableDecimals(TorqueUnit unit)
{
    switch (unit) {
    case TorqueUnit::NewtonMetre:
    case TorqueUnit::PoundFoot: return 1;
    case TorqueUnit::KilogramForceMetre: return 2;
    case TorqueUnit::PoundInch:
    case TorqueUnit::KilogramForceCentimetre: return 0;
    }
    return 0;
}

constexpr int mostSettableDecimals = 9;
constexpr int leastSteps = 100; // in a setting: then one is at most a percent

/// As many decimals as can be set, and more where the setting is so small that these would be coarse.
int decimalsFor(Torque setting, TorqueUnit unit)
{
    int decimals = settableDecimals(unit);
    const Rational one = factor(unit);
    auto count = Rational(setting.smallest()).times(Rational(one.denominator(), one.numerator()));
    for (int i = 0; count && i < decimals; ++i)
        count = count->times(Rational(10));
    while (setting > Torque() && count && count->numerator() < leastSteps * count->denominator() && decimals < mostSettableDecimals) {
        count = count->times(Rational(10));
        ++decimals;
    }
    return decimals;
}

/// Turns what the fastener gets into what stands on the wrench, and back.
class Lever {
public:
    Lever(const TorqueTool &tool, const std::optional<AdapterFit> &fit) : m_lever(tool.lever)
    {
        if (fit && !changesNothing(*fit))
            m_fit = fit;
    }

    [[nodiscard]] std::optional<Torque> onTheWrench(Torque wanted) const { return through(wrenchSetting, wanted); }
    [[nodiscard]] std::optional<Torque> atTheFastener(Torque setting) const { return through(torqueAtFastener, setting); }

private:
    template <class Turn>
    [[nodiscard]] std::optional<Torque> through(Turn turn, Torque torque) const
    {
        if (!m_fit)
            return torque;
        if (!m_lever)
            return std::nullopt;
        const auto turned = turn(torque, *m_lever, *m_fit);
        return turned ? std::optional(*turned) : std::nullopt;
    }

    std::optional<Length> m_lever;
    std::optional<AdapterFit> m_fit = {};
};

/// Read back, so that the value is that of the figures on the wrench.
std::optional<Typed<Torque>> inFigures(Torque setting, TorqueUnit unit, int decimals, Rounding rounding = Rounding::HalfEven)
{
    const auto figures = parse<Torque>(formatNumber(setting, unit, decimals, DecimalMark::Point, rounding), unit);
    return figures ? std::optional(*figures) : std::nullopt;
}

bool isIn(const Band<Torque> &band, Torque torque)
{
    return judge(Interval<Torque>::point(torque), band) == Verdict::Inside;
}

/// The coarsest figures that leave the fastener in the band; of those the nearest.
std::optional<Typed<Torque>> inBand(Torque setting, TorqueUnit unit, const Lever &lever, const Band<Torque> &band)
{
    for (int decimals = decimalsFor(setting, unit); decimals <= mostSettableDecimals; ++decimals) {
        for (const Rounding rounding : {Rounding::HalfEven, Rounding::Up, Rounding::Down}) {
            auto figures = inFigures(setting, unit, decimals, rounding);
            const auto reached = figures ? lever.atTheFastener(figures->value) : std::nullopt;
            if (reached && isIn(band, *reached))
                return figures;
        }
    }
    return std::nullopt;
}

} // namespace

std::optional<Typed<Torque>> settingFor(const TorqueTool &tool, Torque wanted, const std::optional<AdapterFit> &fit,
                                        const Band<Torque> *band)
{
    const TorqueUnit unit = tool.most.unit;
    const Lever lever(tool, fit);
    const auto exact = lever.onTheWrench(wanted);
    if (!exact)
        return std::nullopt;
    if (band && isIn(*band, wanted)) {
        if (auto figures = inBand(*exact, unit, lever, *band))
            return figures;
    }
    const auto nearest = inFigures(*exact, unit, decimalsFor(*exact, unit));
    // More digits than a field takes: of a wrench nobody has.
    return nearest ? nearest : Typed<Torque>{*exact, unit, formatExact(*exact, unit)};
}

} // namespace asleft
