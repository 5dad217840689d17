#include "pages/vehicle_reader.h"

#include <measure/format.h>
#include <show/words.h>

#include <QCoreApplication>

namespace asleft {

namespace {

using Field = VehicleField;

constexpr std::size_t longestName = 200;

QString words(const char *text)
{
    return QCoreApplication::translate("VehicleReader", text);
}

class Reader {
public:
    Reader(const VehicleTyped &typed, DecimalMark mark) : m_typed(typed), m_mark(mark) {}

    VehicleReading read()
    {
        readNames();
        readMeterField();
        readCylinders();
        readCam();
        readEngine();
        readScrewFields();
        return std::move(m_reading);
    }

private:
    void refuse(Field field, const Error &error) { m_reading.refusals.emplace(field, error); }
    bool refused(Field field) const { return m_reading.refusals.contains(field); }

    void readNames()
    {
        VehicleText &text = m_reading.text;
        text.name = m_typed.plain(Field::Name);
        text.mark = m_typed.plain(Field::Mark);
        text.engineName = m_typed.plain(Field::EngineName);
        if (m_typed.text(Field::Name).trimmed().isEmpty())
            refuse(Field::Name, {ErrorKind::NameMissing, {"vehicle"}});
        for (const Field field : {Field::Name, Field::Mark, Field::EngineName}) {
            const std::size_t length = m_typed.text(field).trimmed().toStdString().size();
            if (length > longestName)
                refuse(field, {ErrorKind::TextTooLong, {std::to_string(length), std::to_string(longestName)}});
        }
    }

    void readMeterField()
    {
        m_reading.text.meter = m_typed.plain(Field::Meter);
        m_reading.text.meterUnit = m_typed.meterUnit;
        if (m_typed.text(Field::Meter).trimmed().isEmpty())
            return;
        if (const auto meter = parseMeter(m_reading.text.meter, m_typed.meterUnit); !meter)
            refuse(Field::Meter, meter.error());
    }

    void readCylinders()
    {
        const std::string typed = m_typed.plain(Field::Cylinders);
        const auto number = parseNumber(typed, m_mark);
        bool whole = false;
        const int count = m_typed.text(Field::Cylinders).trimmed().toInt(&whole);
        if (!number)
            refuse(Field::Cylinders, number.error());
        else if (!whole)
            refuse(Field::Cylinders, {ErrorKind::NotANumber, {typed}});
        m_engine.cylinders = whole ? count : 0;
    }

    void readCam()
    {
        CamEvents &cam = m_engine.cam;
        if (!m_typed.camKnown)
            return;
        cam.assumed = false;
        cam.checkLift = m_typed.plain(Field::CheckLift);
        readAngle(Field::IntakeOpens, cam.intakeOpensBeforeTdc);
        readAngle(Field::IntakeCloses, cam.intakeClosesAfterBdc);
        readAngle(Field::ExhaustOpens, cam.exhaustOpensBeforeBdc);
        readAngle(Field::ExhaustCloses, cam.exhaustClosesAfterTdc);
        if (!m_typed.text(Field::Ramp).trimmed().isEmpty())
            readAngle(Field::Ramp, cam.rampAllowance);
    }

    void readAngle(Field field, Angle &angle)
    {
        if (const auto read = parseSignedAngle(m_typed.plain(field), m_mark))
            angle = *read;
        else
            refuse(field, read.error());
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
        m_engine.rotation = m_typed.rotation;
        EngineText trial = m_engine;
        trial.cam = {};
        trial.firingOrder = anyOrder(usualNumbering(trial.layout, trial.cylinders));
        if (!refused(Field::Cylinders))
            tryField(Field::Cylinders, trial);
        m_engine.firingOrder = m_typed.plain(Field::FiringOrder);
        m_engine.gaps = m_typed.plain(Field::Gaps);
        m_engine.numbering = m_typed.plain(Field::Numbering);
        m_engine.valveOrder = m_typed.plain(Field::ValveOrder);
        m_reading.text.engine = m_engine;
        // Without a number of cylinders nothing can be said about the rest.
        if (refused(Field::Cylinders))
            return;
        trial.numbering = m_engine.numbering;
        if (!m_typed.text(Field::Numbering).trimmed().isEmpty())
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
        if (m_typed.text(Field::FiringOrder).trimmed().isEmpty() && m_engine.cylinders > 1)
            refuse(Field::FiringOrder, {ErrorKind::EmptyText, {}});
        tryField(Field::FiringOrder, trial);
        trial = usual;
        trial.gaps = m_engine.gaps;
        tryField(Field::Gaps, trial);
        trial = usual;
        trial.valveOrder = m_engine.valveOrder;
        tryField(Field::ValveOrder, trial);
        tryCam(usual);
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
    }

    /// Every label once, in whatever order: enough to try the other fields by.
    static std::string anyOrder(const std::string &numbering)
    {
        std::string order = numbering;
        for (char &letter : order)
            letter = letter == '/' ? ' ' : letter;
        return order;
    }

    void readScrewFields()
    {
        ScrewText &screw = m_reading.text.screw;
        screw = {m_typed.plain(Field::Pitch), {}};
        if (const auto pitch = readScrew(screw, m_mark); !pitch)
            refuse(Field::Pitch, pitch.error());
        screw.ratio = m_typed.plain(Field::Ratio);
        // A ratio is read against a pitch that is known to be good, so that it is refused for itself alone.
        if (const auto ratio = readScrew({"1 mm", screw.ratio}, m_mark); !ratio)
            refuse(Field::Ratio, ratio.error());
    }

    const VehicleTyped &m_typed;
    DecimalMark m_mark;
    EngineText m_engine;
    VehicleReading m_reading;
};

QString angleText(Angle angle, DecimalMark mark)
{
    QString text = QString::fromStdString(formatExact(angle < Angle{} ? -angle : angle, AngleUnit::Degree, mark));
    text.remove(QChar(0x00B0));
    return angle < Angle{} ? QLatin1Char('-') + text.trimmed() : text.trimmed();
}

} // namespace

QString VehicleTyped::text(VehicleField field) const
{
    const auto found = texts.find(field);
    return found == texts.end() ? QString() : found->second;
}

VehicleReading readVehicle(const VehicleTyped &typed, DecimalMark mark)
{
    return Reader(typed, mark).read();
}

QString refusalSentence(VehicleField field, const Error &error)
{
    if (error.kind == ErrorKind::NameMissing)
        return words("Give the vehicle a name.");
    if (error.kind != ErrorKind::EmptyText)
        return sentence(error);
    switch (field) {
    case Field::Cylinders: return words("Type how many cylinders the engine has.");
    case Field::FiringOrder: return words("Type the firing order as the maker gives it, such as 1-3-4-2.");
    default: return words("Type degrees, or say that the cam events are not known.");
    }
}

VehicleTyped typedOf(const VehicleRow &row, DecimalMark mark)
{
    const EngineText engine = describeDesign(row.engine.design);
    const auto said = [](const std::string &text) { return QString::fromStdString(text); };
    VehicleTyped typed;
    typed.layout = engine.layout;
    typed.rotation = engine.rotation;
    typed.meterUnit = row.meter ? row.meter->unit : MeterUnit::Hour;
    typed.camKnown = !engine.cam.assumed;
    typed.texts = {{Field::Name, said(row.vehicle.name)},          {Field::Mark, said(row.vehicle.mark)},
                   {Field::EngineName, said(row.engine.name)},     {Field::Cylinders, QString::number(engine.cylinders)},
                   {Field::FiringOrder, said(engine.firingOrder)}, {Field::Gaps, said(engine.gaps)},
                   {Field::Numbering, said(engine.numbering)},     {Field::ValveOrder, said(engine.valveOrder)},
                   {Field::Pitch, said(row.engine.screw.pitch)},   {Field::Ratio, said(row.engine.screw.ratio)}};
    if (typed.camKnown) {
        typed.texts[Field::IntakeOpens] = angleText(engine.cam.intakeOpensBeforeTdc, mark);
        typed.texts[Field::IntakeCloses] = angleText(engine.cam.intakeClosesAfterBdc, mark);
        typed.texts[Field::ExhaustOpens] = angleText(engine.cam.exhaustOpensBeforeBdc, mark);
        typed.texts[Field::ExhaustCloses] = angleText(engine.cam.exhaustClosesAfterTdc, mark);
        typed.texts[Field::CheckLift] = said(engine.cam.checkLift);
        typed.texts[Field::Ramp] = angleText(engine.cam.rampAllowance, mark);
    }
    return typed;
}

} // namespace asleft
