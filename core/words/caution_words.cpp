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
    switch (caution) {
    case Caution::StandsAndChocks:
        return {CautionSentences::tr("Stands and chocks"),
                CautionSentences::tr("Chock the wheels, and rest a raised vehicle on stands, never on a jack.")};
    case Caution::Neutral:
        return {CautionSentences::tr("Neutral"),
                CautionSentences::tr("Put the gearbox in neutral before the crank is turned, or the vehicle moves with it.")};
    case Caution::BatteryOff:
        return {CautionSentences::tr("Battery off"),
                CautionSentences::tr("Take the earth lead off the battery, so that nothing can turn the engine but you.")};
    case Caution::HandsClear:
        return {CautionSentences::tr("Hands clear"),
                CautionSentences::tr("Keep fingers, leaves and sleeves out of rockers, belts and gears while the crank turns.")};
    case Caution::HotParts:
        return {CautionSentences::tr("Hot parts"),
                CautionSentences::tr("Let the engine cool, or wear gloves: exhaust, coolant and oil burn.")};
    case Caution::FuelUnderPressure:
        return {CautionSentences::tr("Fuel under pressure"),
                CautionSentences::tr("Let the pressure off before a fuel line is opened; a fine jet goes through skin.")};
    case Caution::FluidAndFire:
        return {CautionSentences::tr("Fluid and fire"),
                CautionSentences::tr("Catch fuel and oil, wipe up what is spilt, keep flame and sparks away, an extinguisher near.")};
    case Caution::Springs:
        return {CautionSentences::tr("Springs"),
                CautionSentences::tr("A loaded spring flies. Hold it with the proper tool and keep your face aside.")};
    case Caution::TwoTurnsByHand:
        return {CautionSentences::tr("Two turns by hand"),
                CautionSentences::tr(
                    "Turn the crank two full turns by hand before the first start. If it stops, find out why; never force it.")};
    case Caution::FluidsFilled:
        return {CautionSentences::tr("Fluids filled"),
                CautionSentences::tr("Look at oil, coolant and fuel before the first start, and look under the engine for drips.")};
    case Caution::MeansToStop:
        return {CautionSentences::tr("Means to stop"),
                CautionSentences::tr("Have the means to stop the engine in reach before it is started, fuel and air both.")};
    }
    return {};
}

QString standingSentence()
{
    return CautionSentences::tr("The manual, local codes and licensed practice go before this program.");
}

} // namespace asleft
