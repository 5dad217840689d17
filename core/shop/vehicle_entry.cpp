#include <shop/vehicle_entry.h>

#include <measure/parse.h>
#include <measure/text.h>

#include <limits>

namespace asleft {

namespace {

using Field = VehicleField;

/// Where a refusal of the engine is told. Of two events that do not fit each other, at the second.
Field fieldOf(EngineField field)
{
    switch (field) {
    case EngineField::Cylinders: return Field::Cylinders;
    case EngineField::Numbering: return Field::Numbering;
    case EngineField::FiringOrder: return Field::FiringOrder;
    case EngineField::Gaps: return Field::Gaps;
    case EngineField::Valves: return Field::Valves;
    case EngineField::ValveOrder: return Field::ValveOrder;
    case EngineField::IntakeEvents: return Field::IntakeCloses;
    case EngineField::ExhaustEvents: return Field::ExhaustCloses;
    case EngineField::ExhaustAgain: return Field::ExhaustAgainTo;
    case EngineField::Injector: return Field::InjectorTo;
    case EngineField::Ramp: return Field::Ramp;
    case EngineField::CheckLift: return Field::CheckLift;
    case EngineField::Barring: break;
    }
    return Field::Barring;
}

/// A meter as it was read, with its unit where none was typed.
std::string withUnit(const MeterReading &reading)
{
    std::string text = inOneLine(reading.text);
    if (text.empty() || !isAsciiDigit(text.back()))
        return text;
    switch (reading.unit) {
    case MeterUnit::Kilometre: return text += " km";
    case MeterUnit::Mile: return text += " mi";
    case MeterUnit::Hour: return text += " h";
    }
    return text;
}

class VehicleEntryReader {
public:
    VehicleEntryReader(const VehicleTyped &typed, DecimalMark mark, const std::optional<MeterReading> &lastMeter)
        : m_typed(typed), m_mark(mark), m_lastMeter(lastMeter)
    {
    }

    VehicleReading read()
    {
        readNames();
        readMeterField();
        if (m_typed.about == VehicleTyped::About::Vehicle)
            return std::move(m_reading);
        readCylinders();
        readCam();
        readDesign();
        readAdjusters();
        return std::move(m_reading);
    }

private:
    void refuse(Field field, const Error &error) { m_reading.refusals.emplace(field, error); }
    bool refused(Field field) const { return m_reading.refusals.contains(field); }
    /// Nothing for a field that is not asked for.
    std::string said(Field field) const { return isAskedFor(field, m_typed) ? m_typed.text(field) : std::string(); }
    bool blank(Field field) const { return isBlank(said(field)); }

    void readNames()
    {
        VehicleText &text = m_reading.text;
        text.name = said(Field::Name);
        text.mark = said(Field::Mark);
        text.number = said(Field::Number);
        text.engineName = said(Field::EngineName);
        if (isAskedFor(Field::Name, m_typed) && blank(Field::Name))
            refuse(Field::Name, {ErrorKind::NameMissing, {}, Noun::Vehicle});
        for (const Field field : {Field::Name, Field::Mark, Field::Number, Field::EngineName}) {
            const std::size_t length = inOneLine(said(field)).size();
            if (length > longestName)
                refuse(field, {ErrorKind::TextTooLong, {std::to_string(length), std::to_string(longestName)}});
        }
    }

    void readMeterField()
    {
        m_reading.text.meter = said(Field::Meter);
        m_reading.text.meterUnit = m_typed.meterUnit;
        m_reading.text.meterReplaced = m_typed.meterReplaced;
        if (blank(Field::Meter))
            return;
        const auto meter = parseMeter(m_reading.text.meter, m_typed.meterUnit);
        if (!meter)
            refuse(Field::Meter, meter.error());
        else if (m_lastMeter && !m_typed.meterReplaced && m_lastMeter->unit == meter->unit && meter->thousandths < m_lastMeter->thousandths)
            refuse(Field::Meter, {ErrorKind::MeterRunsBack, {meter->text, withUnit(*m_lastMeter)}});
    }

    void readCylinders()
    {
        if (m_typed.layout == Layout::Single) {
            m_engine.cylinders = 1;
            return;
        }
        m_engine.cylinders = 0;
        const std::string typed = said(Field::Cylinders);
        const auto number = parseNumber(typed, m_mark);
        const auto whole = number && number->denominator() == 1 ? number->rounded() : std::nullopt;
        if (!number)
            refuse(Field::Cylinders, number.error());
        else if (!whole || *whole > std::numeric_limits<int>::max())
            refuse(Field::Cylinders, {ErrorKind::NotANumber, {typed}});
        else
            m_engine.cylinders = static_cast<int>(*whole);
    }

    [[nodiscard]] CamEvents usualCam() const { return m_typed.cycle == Cycle::TwoStroke ? twoStrokeCam() : CamEvents{}; }

    void readCam()
    {
        m_engine.cam = usualCam();
        if (!m_typed.camKnown)
            return;
        CamEvents &cam = m_engine.cam;
        cam.assumed = false;
        cam.checkLift = said(Field::CheckLift);
        readAngle(Field::IntakeOpens, cam.intakeOpensBeforeTdc);
        readAngle(Field::IntakeCloses, cam.intakeClosesAfterBdc);
        readAngle(Field::ExhaustOpens, cam.exhaustOpensBeforeBdc);
        readAngle(Field::ExhaustCloses, cam.exhaustClosesAfterTdc);
        if (!blank(Field::Ramp))
            readAngle(Field::Ramp, cam.rampAllowance);
        cam.exhaustAgain = readArc(Field::ExhaustAgainFrom, Field::ExhaustAgainTo);
        cam.injector = readArc(Field::InjectorFrom, Field::InjectorTo);
    }

    void readAngle(Field field, Angle &angle)
    {
        if (!isAskedFor(field, m_typed))
            return;
        if (const auto read = parseSignedAngle(m_typed.text(field), m_mark))
            angle = *read;
        else
            refuse(field, read.error());
    }

    /// Both ends or neither.
    std::optional<CrankArc> readArc(Field from, Field to)
    {
        if (blank(from) && blank(to))
            return std::nullopt;
        CrankArc arc;
        readAngle(from, arc.starts);
        readAngle(to, arc.ends);
        return refused(from) || refused(to) ? std::nullopt : std::optional(arc);
    }

    void readDesign()
    {
        m_engine.layout = m_typed.layout;
        m_engine.cycle = m_typed.cycle;
        m_engine.rotation = m_typed.rotation;
        m_engine.injectors = m_typed.injectors;
        m_engine.decompressors = m_typed.decompressors;
        m_engine.firingOrder = said(Field::FiringOrder);
        m_engine.gaps = said(Field::Gaps);
        m_engine.numbering = said(Field::Numbering);
        m_engine.barring = said(Field::Barring);
        m_engine.valves = said(Field::Valves);
        m_engine.valveOrder = said(Field::ValveOrder);
        m_engine.bridged = m_typed.bridged;
        m_engine.bridgeScrews = m_typed.bridged && m_typed.bridgeScrews;
        m_reading.text.engine = m_engine;
        if (isAskedFor(Field::FiringOrder, m_typed) && blank(Field::FiringOrder) && m_engine.cylinders > 1)
            refuse(Field::FiringOrder, {ErrorKind::EmptyText, {}});
        for (const auto &[field, error] : readEngine(m_engine, m_mark).refusals)
            refuse(fieldOf(field), error);
    }

    void readAdjusters()
    {
        ScrewText &screw = m_reading.text.screw;
        screw.kind = m_typed.adjusters;
        screw.pitch = said(Field::Pitch);
        screw.bleedDown = said(Field::BleedDown);
        if (const auto pitch = readScrew(screw, m_mark); !pitch)
            refuse(Field::Pitch, pitch.error());
        if (const auto bleedDown = readBleedDown(screw, m_mark); !bleedDown)
            refuse(Field::BleedDown, bleedDown.error());
        screw.ratio = said(Field::Ratio);
        // A ratio is read against a pitch that is known to be good, so that it is refused for itself alone.
        ScrewText known;
        known.pitch = "1 mm";
        known.ratio = screw.ratio;
        if (const auto ratio = readScrew(known, m_mark); !ratio)
            refuse(Field::Ratio, ratio.error());
    }

    const VehicleTyped &m_typed;
    DecimalMark m_mark;
    const std::optional<MeterReading> &m_lastMeter;
    EngineText m_engine;
    VehicleReading m_reading;
};

} // namespace

std::string VehicleTyped::text(VehicleField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? std::string() : found->second;
}

bool isAskedFor(VehicleField field, const VehicleTyped &typed)
{
    const bool engine = typed.about != VehicleTyped::About::Vehicle;
    switch (field) {
    case Field::Name:
    case Field::Mark:
    case Field::Number:
    case Field::Meter: return typed.about != VehicleTyped::About::Engine;
    case Field::EngineName:
    case Field::Barring:
    case Field::Valves:
    case Field::ValveOrder: return engine;
    case Field::Cylinders:
    case Field::FiringOrder:
    case Field::Gaps:
    case Field::Numbering: return engine && typed.layout != Layout::Single;
    case Field::Pitch:
    case Field::Ratio: return engine && typed.adjusters == AdjusterKind::Screw;
    case Field::BleedDown: return engine && typed.adjusters == AdjusterKind::Hydraulic;
    case Field::IntakeOpens:
    case Field::IntakeCloses: return engine && typed.camKnown && typed.cycle == Cycle::FourStroke;
    case Field::ExhaustOpens:
    case Field::ExhaustCloses:
    case Field::CheckLift:
    case Field::Ramp:
    case Field::ExhaustAgainFrom:
    case Field::ExhaustAgainTo: return engine && typed.camKnown;
    case Field::InjectorFrom:
    case Field::InjectorTo: return engine && typed.camKnown && typed.injectors;
    }
    return false;
}

VehicleReading readVehicle(const VehicleTyped &typed, DecimalMark mark, const std::optional<MeterReading> &lastMeter)
{
    return VehicleEntryReader(typed, mark, lastMeter).read();
}

} // namespace asleft
