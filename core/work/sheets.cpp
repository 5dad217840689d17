#include <work/jobs.h>

#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <array>
#include <utility>

// Qt puts resources of a static library in only when they are asked for, and the asking must stand outside any namespace.
static void initSheets()
{
    Q_INIT_RESOURCE(sheets);
}

namespace asleft {

namespace {

/// The built-in sheets are part of the program: one that cannot be read is a bug, and a test reads them all.
template <class Value, std::size_t Count>
Value valueNamed(const std::array<std::pair<const char *, Value>, Count> &words, const QString &word)
{
    for (const auto &[name, value] : words) {
        if (word == QLatin1String(name))
            return value;
    }
    Q_ASSERT_X(false, "job sheet", qPrintable(word));
    return words.front().second;
}

constexpr std::array<std::pair<const char *, Gate>, 3> gateWords{{
    {"turning the crank", Gate::TurningTheCrank},
    {"first start", Gate::FirstStart},
    {"hand-over", Gate::HandOver},
}};

constexpr std::array<std::pair<const char *, Caution>, 11> cautionNames{{
    {"stands and chocks", Caution::StandsAndChocks},
    {"neutral", Caution::Neutral},
    {"battery off", Caution::BatteryOff},
    {"hands clear", Caution::HandsClear},
    {"hot parts", Caution::HotParts},
    {"fuel under pressure", Caution::FuelUnderPressure},
    {"fluid and fire", Caution::FluidAndFire},
    {"springs", Caution::Springs},
    {"two turns by hand", Caution::TwoTurnsByHand},
    {"fluids filled", Caution::FluidsFilled},
    {"means to stop", Caution::MeansToStop},
}};

SheetLine lineFrom(const QJsonObject &json)
{
    SheetLine line;
    line.kind = json[QLatin1String("kind")].toString() == QLatin1String("valve set") ? StepKind::ValveSet : StepKind::Note;
    line.title = json[QLatin1String("title")].toString().toStdString();
    line.detail = json[QLatin1String("detail")].toString().toStdString();
    line.before = valueNamed(gateWords, json[QLatin1String("before")].toString());
    for (const auto &caution : json[QLatin1String("cautions")].toArray())
        line.cautions.push_back(valueNamed(cautionNames, caution.toString()));
    return line;
}

JobSheet sheetFrom(const QString &path)
{
    QFile file(path);
    const bool opened = file.open(QIODevice::ReadOnly);
    Q_ASSERT(opened);
    Q_UNUSED(opened)
    const QJsonObject json = QJsonDocument::fromJson(file.readAll()).object();
    JobSheet sheet{json[QLatin1String("title")].toString().toStdString(), {}};
    for (const auto &line : json[QLatin1String("lines")].toArray())
        sheet.lines.push_back(lineFrom(line.toObject()));
    return sheet;
}

} // namespace

std::vector<JobSheet> builtInSheets()
{
    initSheets();
    return {sheetFrom(QStringLiteral(":/sheets/set-the-valves.json")), sheetFrom(QStringLiteral(":/sheets/parts-off-and-on.json"))};
}

} // namespace asleft
