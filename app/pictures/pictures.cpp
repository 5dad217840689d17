#include <pictures/pictures.h>

#include <forms/start_pane.h>
#include <parts/garage_copy.h>
#include <pictures/screens.h>
#include <window/page_picture.h>
#include <window/window.h>
#include <words/errors.h>

#include <QCoreApplication>
#include <QDir>

#include <algorithm>

namespace asleft {

namespace {

const QString startScreen = QStringLiteral("start");

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
    // A garage of its own for each picture, so that each shows the garage as it is, however many were drawn before.
    const auto copy = GarageCopy::of(garage);
    if (!copy)
        return sentence(copy.error());
    AppContext context(copy->garage(), look);
    if (screen == startScreen) {
        StartPane pane;
        return drawWindow(
            pane, size, [] {}, out);
    }
    const auto found = std::ranges::find(screens(), screen, [](const Screen &known) { return QString::fromLatin1(known.name); });
    Q_ASSERT(found != screens().end());
    Window window(context);
    const auto prepare = [&] {
        window.goTo(found->page);
        if (found->prepare)
            found->prepare(window);
    };
    return drawWindow(window, size, prepare, out);
}

QString drawPictures(const QString &garage, const QString &folder)
{
    if (!QDir().mkpath(folder))
        return QCoreApplication::translate("Pictures", "The folder %1 could not be made; may one write there?").arg(folder);
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
