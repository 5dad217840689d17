#include <window/opening.h>

#include <forms/start_pane.h>
#include <parts/message_line.h>
#include <parts/station_number.h>
#include <window/page_picture.h>
#include <window/window.h>

#include <words/errors.h>

#include <QFileInfo>
#include <QGuiApplication>
#include <QSettings>

#include <cstdio>

namespace asleft {

namespace {

const QString stationKey = QStringLiteral("seat");
const QString lastKey = QStringLiteral("lastGarage");
const QString lookKey = QStringLiteral("look");
const QString darkWord = QStringLiteral("dark");
const QString lightWord = QStringLiteral("light");

constexpr int done = 0;
constexpr int failed = 1;
constexpr int misused = 2;

void print(std::FILE *where, const QString &text)
{
    std::fputs(text.toLocal8Bit().constData(), where);
    if (!text.endsWith(QLatin1Char('\n')))
        std::fputs("\n", where);
}

/// The offscreen platform complains of itself at every window; whoever draws pictures has no use for that.
void withoutPlatformComplaints(QtMsgType, const QMessageLogContext &, const QString &text)
{
    if (!text.startsWith(QLatin1String("This plugin does not support")))
        print(stderr, text);
}

Garage::Surroundings surroundings()
{
    return {std::make_shared<SystemClock>(), std::make_shared<RandomUids>(), stationOfThisInstallation()};
}

Result<std::unique_ptr<Garage>> garageAt(const QString &path, bool make)
{
    const std::string name = QFileInfo(path).absoluteFilePath().toStdString();
    return make ? Garage::create(name, surroundings()) : Garage::open(name, surroundings());
}

} // namespace

std::string stationOfThisInstallation()
{
    QSettings settings;
    QString station = settings.value(stationKey).toString();
    if (station.isEmpty()) {
        station = QString::fromStdString(RandomUids().next());
        settings.setValue(stationKey, station);
        // The folder of the settings has to be there for the places in it.
        settings.sync();
    }
    static const StationNumber place(QFileInfo(settings.fileName()).absolutePath());
    return place.station(station);
}

Opening::Opening(QObject *parent) : QObject(parent) {}

Opening::~Opening() = default;

std::optional<int> Opening::begin(const Arguments &arguments)
{
    using Wish = Arguments::Wish;
    m_look = arguments.look;
    QGuiApplication::setPalette(palette(rememberedLook()));
    switch (arguments.wish) {
    case Wish::Help: print(stdout, helpText()); return done;
    case Wish::Version: print(stdout, tr("asleft %1").arg(QCoreApplication::applicationVersion())); return done;
    case Wish::Refused: print(stderr, arguments.refusal); return misused;
    case Wish::Picture: return draw(arguments);
    case Wish::Open: return openWindow(arguments.garage, false);
    case Wish::New: return openWindow(arguments.garage, true);
    case Wish::Last: break;
    }
    const QString last = QSettings().value(lastKey).toString();
    if (last.isEmpty()) {
        offerStart({});
        return std::nullopt;
    }
    return openWindow(last, false);
}

std::optional<int> Opening::openWindow(const QString &path, bool make)
{
    auto garage = garageAt(path, make);
    if (garage) {
        show(std::move(*garage));
        return std::nullopt;
    }
    print(stderr, sentence(garage.error()));
    offerStart(sentence(garage.error()));
    return std::nullopt;
}

int Opening::draw(const Arguments &arguments)
{
    qInstallMessageHandler(withoutPlatformComplaints);
    // Opened once for itself, so that a refusal names the file the person named.
    if (const auto garage = garageAt(arguments.garage, false); !garage) {
        print(stderr, sentence(garage.error()));
        return failed;
    }
    const QString refusal = drawPage(arguments.garage, arguments.look.value_or(Look::Light), arguments.page, arguments.size, arguments.out);
    if (refusal.isEmpty())
        return done;
    print(stderr, refusal);
    return failed;
}

void Opening::show(std::unique_ptr<Garage> garage)
{
    m_garage = std::move(garage);
    QSettings().setValue(lastKey, QString::fromStdString(m_garage->path()));
    m_context = std::make_unique<AppContext>(*m_garage, rememberedLook());
    connect(m_context.get(), &AppContext::lookChanged, this,
            [this] { QSettings().setValue(lookKey, m_context->look() == Look::Dark ? darkWord : lightWord); });
    m_window = std::make_unique<Window>(*m_context);
    m_window->begin();
    m_window->show();
}

void Opening::offerStart(const QString &refusal)
{
    m_start = std::make_unique<StartPane>();
    if (!refusal.isEmpty())
        m_start->message()->refuse(refusal);
    connect(m_start.get(), &StartPane::newWanted, this, [this](const QString &path) { follow(path, true); });
    connect(m_start.get(), &StartPane::openWanted, this, [this](const QString &path) { follow(path, false); });
    m_start->show();
}

void Opening::follow(const QString &path, bool make)
{
    auto garage = garageAt(path, make);
    if (!garage) {
        m_start->message()->refuse(sentence(garage.error()));
        return;
    }
    show(std::move(*garage));
    m_start->hide();
    // It is in the middle of telling which file was chosen: it goes when that is done.
    m_start.release()->deleteLater();
}

Look Opening::rememberedLook() const
{
    if (m_look)
        return *m_look;
    return QSettings().value(lookKey).toString() == darkWord ? Look::Dark : Look::Light;
}

} // namespace asleft
