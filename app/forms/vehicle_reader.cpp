#include <forms/vehicle_reader.h>

#include <words/errors.h>
#include <words/vehicles.h>

#include <QCoreApplication>

namespace asleft {

namespace {

using Field = VehicleField;

constexpr std::size_t longestName = 200;

class VehicleReader {
    Q_DECLARE_TR_FUNCTIONS(VehicleReader)
};

class Reader {
public:
    Reader(const VehicleTyped &typed, DecimalMark mark, const std::optional<MeterReading> &lastMeter)
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
        readEngine();
        readAdjusters();
        return std::move(m_reading);
    }

private:
    void refuse(Field field, const Error &error) { m_reading.refusals.emplace(field, error); }
    bool refused(Field field) const { return m_reading.refusals.contains(field); }
    /// Nothing for a field that is not asked for.
    std::string said(Field field) const { return isAskedFor(field, m_typed) ? m_typed.plain(field) : std::string(); }
    bool blank(Field field) const { return !isAskedFor(field, m_typed) || m_typed.text(field).trimmed().isEmpty(); }

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
            const std::size_t length = QString::fromStdString(said(field)).trimmed().toStdString().size();
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
            refuse(Field::Meter, {ErrorKind::MeterRunsBack, {meter->text, meterText(*m_lastMeter).toStdString()}});
    }

    void readCylinders()
    {
        if (m_typed.layout == Layout::Single) {
            m_engine.cylinders = 1;
            return;
        }
        const std::string typed = said(Field::Cylinders);
        const auto number = parseNumber(typed, m_mark);
        bool whole = false;
        const int count = m_typed.text(Field::Cylinders).trimmed().toInt(&whole);
        if (!number)
            refuse(Field::Cylinders, number.error());
        else if (!whole)
            refuse(Field::Cylinders, {ErrorKind::NotANumber, {typed}});
        m_engine.cylinders = whole ? count : 0;
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
        if (const auto read = parseSignedAngle(m_typed.plain(field), m_mark))
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

    /// Tries one field on top of an engine that is otherwise as usual, so that each slip is told at its own field.
    void tryField(Field field, const EngineText &trial)
    {
        if (const auto design = designEngine(trial, m_mark); !design && !refused(field))
            refuse(field, design.error());
    }

    void readEngine()
    {
        m_engine.layout = m_typed.layout;
        m_engine.cycle = m_typed.cycle;
        m_engine.rotation = m_typed.rotation;
        m_engine.injectors = m_typed.injectors;
        m_engine.decompressors = m_typed.decompressors;
        EngineText trial = m_engine;
        trial.cam = usualCam();
        trial.firingOrder = anyOrder(usualNumbering(trial.layout, trial.cylinders));
        if (!refused(Field::Cylinders))
            tryField(Field::Cylinders, trial);
        m_engine.firingOrder = said(Field::FiringOrder);
        m_engine.gaps = said(Field::Gaps);
        m_engine.numbering = said(Field::Numbering);
        m_engine.barring = said(Field::Barring);
        m_engine.valves = said(Field::Valves);
        m_engine.valveOrder = said(Field::ValveOrder);
        m_engine.bridged = m_typed.bridged;
        m_engine.bridgeScrews = m_typed.bridged && m_typed.bridgeScrews;
        m_reading.text.engine = m_engine;
        // Without a number of cylinders nothing can be said about the rest.
        if (refused(Field::Cylinders))
            return;
        trial.numbering = m_engine.numbering;
        if (!blank(Field::Numbering))
            trial.firingOrder = anyOrder(m_engine.numbering);
        tryField(Field::Numbering, trial);
        if (refused(Field::Numbering))
            return;
        tryEachOn(trial);
    }

    void tryEachOn(const EngineText &usual)
    {
        EngineText trial = usual;
        trial.firingOrder = m_engine.firingOrder;
        if (isAskedFor(Field::FiringOrder, m_typed) && blank(Field::FiringOrder) && m_engine.cylinders > 1)
            refuse(Field::FiringOrder, {ErrorKind::EmptyText, {}});
        tryField(Field::FiringOrder, trial);
        trial = usual;
        trial.gaps = m_engine.gaps;
        tryField(Field::Gaps, trial);
        trial = usual;
        trial.barring = m_engine.barring;
        tryField(Field::Barring, trial);
        tryValves(usual);
        tryCam(usual);
    }

    void tryValves(const EngineText &usual)
    {
        EngineText trial = usual;
        trial.valves = m_engine.valves;
        trial.bridged = m_engine.bridged;
        trial.bridgeScrews = m_engine.bridgeScrews;
        tryField(Field::Valves, trial);
        // How many letters an order has follows from the valves.
        if (refused(Field::Valves))
            return;
        trial.valveOrder = m_engine.valveOrder;
        tryField(Field::ValveOrder, trial);
    }

    void tryCam(const EngineText &usual)
    {
        EngineText trial = usual;
        trial.cam.intakeOpensBeforeTdc = m_engine.cam.intakeOpensBeforeTdc;
        trial.cam.intakeClosesAfterBdc = m_engine.cam.intakeClosesAfterBdc;
        tryField(Field::IntakeCloses, trial);
        trial = usual;
        trial.cam.exhaustOpensBeforeBdc = m_engine.cam.exhaustOpensBeforeBdc;
        trial.cam.exhaustClosesAfterTdc = m_engine.cam.exhaustClosesAfterTdc;
        tryField(Field::ExhaustCloses, trial);
        trial = usual;
        trial.cam.rampAllowance = m_engine.cam.rampAllowance;
        tryField(Field::Ramp, trial);
        trial = usual;
        trial.cam.checkLift = m_engine.cam.checkLift;
        tryField(Field::CheckLift, trial);
        trial = usual;
        trial.cam.exhaustAgain = m_engine.cam.exhaustAgain;
        tryField(Field::ExhaustAgainTo, trial);
        trial = usual;
        trial.cam.injector = m_engine.cam.injector;
        tryField(Field::InjectorTo, trial);
    }

    /// Every label once, in whatever order: enough to try the other fields by.
    static std::string anyOrder(const std::string &numbering)
    {
        std::string order = numbering;
        for (char &letter : order)
            letter = letter == '/' ? ' ' : letter;
        return order;
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

QString VehicleTyped::text(VehicleField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? QString() : found->second;
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
    return Reader(typed, mark, lastMeter).read();
}

QString refusalSentence(VehicleField field, const Error &error)
{
    if (error.kind == ErrorKind::NameMissing)
        return VehicleReader::tr("Give the vehicle a name.");
    if (error.kind != ErrorKind::EmptyText)
        return sentence(error);
    switch (field) {
    case Field::Cylinders: return VehicleReader::tr("Type how many cylinders the engine has.");
    case Field::FiringOrder: return VehicleReader::tr("Type the firing order as the maker gives it, such as 1-3-4-2.");
    case Field::ExhaustAgainFrom:
    case Field::ExhaustAgainTo:
    case Field::InjectorFrom:
    case Field::InjectorTo: return VehicleReader::tr("Type both ends, or leave both empty.");
    case Field::Name:
    case Field::Mark:
    case Field::Number:
    case Field::Meter:
    case Field::EngineName:
    case Field::Gaps:
    case Field::Numbering:
    case Field::Barring:
    case Field::Valves:
    case Field::ValveOrder:
    case Field::Pitch:
    case Field::Ratio:
    case Field::BleedDown:
    case Field::IntakeOpens:
    case Field::IntakeCloses:
    case Field::ExhaustOpens:
    case Field::ExhaustCloses:
    case Field::CheckLift:
    case Field::Ramp: break; // an empty one is refused of the cam events alone
    }
    return VehicleReader::tr("Type degrees, or say that the cam events are not known.");
}

} // namespace asleft
