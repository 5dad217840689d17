#include <words/crank.h>
#include <words/numbers.h>
#include <words/points.h>
#include <words/times.h>

#include <QCoreApplication>

namespace asleft {

namespace {

class CrankWords {
    Q_DECLARE_TR_FUNCTIONS(CrankWords)
};

QString labelOf(const EngineDesign &design, Cylinder cylinder)
{
    return QString::fromStdString(design.label(cylinder));
}

bool isTwoStroke(const EngineDesign &design)
{
    return design.cycle == Cycle::TwoStroke;
}

QString deadCentreAtHead(const EngineDesign &design, CrankEvent event)
{
    if (isTwoStroke(design))
        return event == CrankEvent::Compression ? CrankWords::tr("No. %1 at top dead centre")
                                                : CrankWords::tr("No. %1 at bottom dead centre");
    return event == CrankEvent::Compression ? CrankWords::tr("No. %1 on compression") : CrankWords::tr("No. %1 at overlap");
}

QString deadCentreInText(const EngineDesign &design, CrankEvent event)
{
    if (isTwoStroke(design))
        return event == CrankEvent::Compression ? CrankWords::tr("no. %1 at top dead centre")
                                                : CrankWords::tr("no. %1 at bottom dead centre");
    return event == CrankEvent::Compression ? CrankWords::tr("no. %1 on compression") : CrankWords::tr("no. %1 at overlap");
}

QString eventAtHead(const EngineDesign &design, CrankEvent event)
{
    switch (event) {
    case CrankEvent::Compression:
    case CrankEvent::Overlap: return deadCentreAtHead(design, event);
    case CrankEvent::ExhaustOpens: return CrankWords::tr("No. %1, exhaust just opening");
    case CrankEvent::IntakeCloses: return CrankWords::tr("No. %1, intake just closed");
    case CrankEvent::IntakeFullyOpen: return CrankWords::tr("No. %1, intake fully open");
    case CrankEvent::ExhaustFullyOpen: return CrankWords::tr("No. %1, exhaust fully open");
    }
    return {};
}

QString eventInText(const EngineDesign &design, CrankEvent event)
{
    switch (event) {
    case CrankEvent::Compression:
    case CrankEvent::Overlap: return deadCentreInText(design, event);
    case CrankEvent::ExhaustOpens: return CrankWords::tr("no. %1 with its exhaust just opening");
    case CrankEvent::IntakeCloses: return CrankWords::tr("no. %1 with its intake just closed");
    case CrankEvent::IntakeFullyOpen: return CrankWords::tr("no. %1 with its intake fully open");
    case CrankEvent::ExhaustFullyOpen: return CrankWords::tr("no. %1 with its exhaust fully open");
    }
    return {};
}

/// Whether a position of a plan stands at the place it is named by, and not some degrees on.
bool standsAtItsPlace(const EngineDesign &design, const PlanPosition &position)
{
    return inCycle(design, crankAt(design, position.place)) == inCycle(design, position.crank);
}

/// "exhaust 3"; where a side has several, "the exhausts of no. 3".
QString valvesOf(const EngineDesign &design, Cylinder cylinder, Side side)
{
    if (design.train.lashes(side) < 2)
        return pointInText(design, {cylinder, side});
    const QString label = labelOf(design, cylinder);
    return side == Side::Intake ? CrankWords::tr("the intakes of no. %1").arg(label) : CrankWords::tr("the exhausts of no. %1").arg(label);
}

QString findEvent(const EngineDesign &design, CrankPosition place)
{
    const QString intake = valvesOf(design, place.cylinder, Side::Intake);
    const QString exhaust = valvesOf(design, place.cylinder, Side::Exhaust);
    switch (place.event) {
    case CrankEvent::Compression:
    case CrankEvent::Overlap: return {};
    case CrankEvent::ExhaustOpens: return CrankWords::tr("Turn until you see %1 just begin to open.").arg(exhaust);
    case CrankEvent::IntakeCloses: return CrankWords::tr("Turn until you see %1 come to rest, just closed.").arg(intake);
    case CrankEvent::IntakeFullyOpen: return CrankWords::tr("Turn until you see %1 pressed all the way down.").arg(intake);
    case CrankEvent::ExhaustFullyOpen: return CrankWords::tr("Turn until you see %1 pressed all the way down.").arg(exhaust);
    }
    return {};
}

} // namespace

QString crankPositionName(const EngineDesign &design, CrankPosition place)
{
    return eventAtHead(design, place.event).arg(labelOf(design, place.cylinder));
}

QString crankPositionInText(const EngineDesign &design, CrankPosition place)
{
    return eventInText(design, place.event).arg(labelOf(design, place.cylinder));
}

QString positionName(const EngineDesign &design, const PlanPosition &position)
{
    return standsAtItsPlace(design, position) ? crankPositionName(design, position.place) : crankName(design, position.crank);
}

QString positionInText(const EngineDesign &design, const PlanPosition &position)
{
    return standsAtItsPlace(design, position) ? crankPositionInText(design, position.place) : crankInText(design, position.crank);
}

QString findingSentence(const EngineDesign &design, const PlanPosition &position)
{
    if (standsAtItsPlace(design, position))
        return findEvent(design, position.place);
    const CrankReading reading = readCrank(design, position.crank);
    if (reading.after == Angle())
        return {};
    return CrankWords::tr("Zero the degree wheel with %1, then turn %2 on.")
        .arg(crankPositionInText(design, reading.place), degreesText(reading.after));
}

QString crankName(const EngineDesign &design, std::optional<Angle> crank)
{
    if (!crank)
        return CrankWords::tr("Unknown");
    const CrankReading reading = readCrank(design, *crank);
    return reading.after == Angle() ? crankPositionName(design, reading.place) : crankInText(design, crank);
}

QString crankInText(const EngineDesign &design, std::optional<Angle> crank)
{
    if (!crank)
        return CrankWords::tr("unknown");
    const CrankReading reading = readCrank(design, *crank);
    const QString place = crankPositionInText(design, reading.place);
    return reading.after == Angle() ? place : CrankWords::tr("%1 after %2").arg(degreesText(reading.after), place);
}

QString crankKnown(const JobState &state, Moment now)
{
    if (!state.crank)
        return CrankWords::tr("nobody has said yet");
    const QString time = momentText(state.crank->at, now);
    if (!state.crank->crank)
        return CrankWords::tr("said to be unknown %1").arg(time);
    return state.crank->how == CrankHow::Confirmed ? CrankWords::tr("confirmed %1").arg(time) : CrankWords::tr("turned there %1").arg(time);
}

QString overshotSentence()
{
    return CrankWords::tr("Gone past the mark? Go back well past it and come up to it again in the normal direction.");
}

QString rotationName(Rotation rotation)
{
    return rotation == Rotation::Clockwise ? CrankWords::tr("clockwise seen from the front")
                                           : CrankWords::tr("anticlockwise seen from the front");
}

QString layoutName(Layout layout)
{
    switch (layout) {
    case Layout::InLine: return CrankWords::tr("in line");
    case Layout::Vee: return CrankWords::tr("V");
    case Layout::Flat: return CrankWords::tr("flat");
    case Layout::Single: return CrankWords::tr("single cylinder");
    case Layout::W: return CrankWords::tr("W");
    case Layout::Radial: return CrankWords::tr("radial");
    case Layout::Opposed: return CrankWords::tr("opposed rows");
    }
    return {};
}

QString cycleName(Cycle cycle)
{
    return cycle == Cycle::FourStroke ? CrankWords::tr("four-stroke") : CrankWords::tr("two-stroke");
}

} // namespace asleft
