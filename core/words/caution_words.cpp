#include <words/cautions.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class CautionSentences {
    Q_DECLARE_TR_FUNCTIONS(CautionSentences)
};

} // namespace

CautionWords cautionWords(Caution caution)
{
    using Say = CautionSentences;
    switch (caution) {
    case Caution::StandsAndChocks:
        return {Say::tr("Stands and chocks"), Say::tr("Chock the wheels, and rest a raised vehicle on stands, never on a jack.")};
    case Caution::Neutral:
        return {Say::tr("Neutral"), Say::tr("Put the gearbox in neutral before the crank is turned, or the vehicle moves with it.")};
    case Caution::BatteryOff:
        return {Say::tr("Battery off"), Say::tr("Take the earth lead off the battery, so that nothing can turn the engine but you.")};
    case Caution::HandsClear:
        return {Say::tr("Hands clear"), Say::tr("Keep fingers, leaves and sleeves out of rockers, belts and gears while the crank turns.")};
    case Caution::HotParts: return {Say::tr("Hot parts"), Say::tr("Let the engine cool, or wear gloves: exhaust, coolant and oil burn.")};
    case Caution::FuelUnderPressure:
        return {Say::tr("Fuel under pressure"),
                Say::tr("Let the pressure off before a fuel line is opened; a fine jet goes through skin.")};
    case Caution::FluidAndFire:
        return {Say::tr("Fluid and fire"),
                Say::tr("Catch fuel and oil, wipe up what is spilt, keep flame and sparks away, an extinguisher near.")};
    case Caution::Springs:
        return {Say::tr("Springs"), Say::tr("A loaded spring flies. Hold it with the proper tool and keep your face aside.")};
    case Caution::TwoTurnsByHand:
        return {Say::tr("Two turns by hand"),
                Say::tr("Turn the crank two full turns by hand before the first start. If it stops, find out why; never force it.")};
    case Caution::FluidsFilled:
        return {Say::tr("Fluids filled"),
                Say::tr("Look at oil, coolant and fuel before the first start, and look under the engine for drips.")};
    case Caution::MeansToStop:
        return {Say::tr("Means to stop"), Say::tr("Have the means to stop the engine in reach before it is started, fuel and air both.")};
    }
    return {};
}

QString standingSentence()
{
    return CautionSentences::tr("The manual, local codes and licensed practice go before this program.");
}

} // namespace asleft
