#include "pictures.h"

#include "desk.h"
#include "pages/start_sheet.h"
#include "screens.h"
#include "window.h"

#include <QApplication>
#include <QDir>
#include <QFile>
#include <QPixmap>
#include <QTemporaryDir>

namespace asleft {

namespace {

const QString startScreen = QStringLiteral("start");

QString notWritten(const QString &path)
{
    return QCoreApplication::translate("Pictures", "The picture %1 could not be written; is there room, and may one write there?")
        .arg(path);
}

/// A garage of its own for each picture, so that each shows the garage as it is, however many were drawn before.
Result<std::unique_ptr<Garage>> copyOf(const QString &garage, const QTemporaryDir &folder)
{
    const QString copy = folder.filePath(QStringLiteral("copy.asleft"));
    QFile::copy(garage, copy);
    // What was committed and is not in the main file yet stands in the log beside it.
    QFile::copy(garage + QStringLiteral("-wal"), copy + QStringLiteral("-wal"));
    return Garage::open(copy.toStdString(), {std::make_shared<SystemClock>(), std::make_shared<RandomUids>(), "picture"});
}

QString draw(QWidget &window, QSize size, const std::function<void()> &prepare, const QString &path)
{
    window.resize(size);
    window.show();
    QApplication::setActiveWindow(&window);
    prepare();
    // Layouts settle when their events are seen; wrapped lines take a second round.
    QCoreApplication::processEvents();
    QCoreApplication::processEvents();
    return window.grab().save(path, "PNG") ? QString() : notWritten(path);
}

} // namespace

QStringList pictureScreens()
{
    QStringList names{startScreen};
    for (const Screen &screen : screens())
        names.append(QLatin1String(screen.name));
    return names;
}

QString drawPicture(const QString &garage, Look look, const QString &screen, QSize size, const QString &out)
{
    const QTemporaryDir folder;
    const auto copy = copyOf(garage, folder);
    if (!copy)
        return sentence(copy.error());
    Desk desk(**copy, look);
    if (screen == startScreen) {
        StartSheet sheet;
        return draw(
            sheet, size, [] {}, out);
    }
    const auto found = std::ranges::find(screens(), screen, [](const Screen &known) { return QString::fromLatin1(known.name); });
    Q_ASSERT(found != screens().end());
    Window window(desk);
    const auto prepare = [&] {
        window.goTo(found->place);
        if (found->prepare)
            found->prepare(window);
    };
    return draw(window, size, prepare, out);
}

QString drawPictures(const QString &garage, const QString &folder)
{
    if (!QDir().mkpath(folder))
        return notWritten(folder);
    for (const Look look : {Look::Light, Look::Dark}) {
        for (const QSize size : {QSize(1280, 800), QSize(1920, 1080)}) {
            for (const QString &screen : pictureScreens()) {
                const QString name = QStringLiteral("%1-%2-%3.png")
                                         .arg(screen, QLatin1String(look == Look::Light ? "light" : "dark"), QString::number(size.width()));
                if (QString refusal = drawPicture(garage, look, screen, size, QDir(folder).filePath(name)); !refusal.isEmpty())
                    return refusal;
            }
        }
    }
    return {};
}

} // namespace asleft
