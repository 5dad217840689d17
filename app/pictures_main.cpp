#include <draw/fonts.h>
#include <draw/palette.h>
#include <pictures/pictures.h>
#include <words/translation.h>

#include <QApplication>
#include <QStyleFactory>

#include <cstdio>

namespace {

/// The offscreen platform complains of itself at every window; whoever draws pictures has no use for that.
void withoutPlatformComplaints(QtMsgType, const QMessageLogContext &, const QString &text)
{
    if (!text.startsWith(QLatin1String("This plugin does not support")))
        std::fprintf(stderr, "%s\n", qPrintable(text));
}

} // namespace

/// asleft-pictures GARAGE FOLDER [SCREEN...]: every screen, light and dark, in two sizes, or these screens light at 1280×800.
int main(int count, char **words)
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(withoutPlatformComplaints);
    QApplication application(count, words);
    asleft::installTranslation(application);
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(asleft::textFont(asleft::TextSize::Body));
    QApplication::setPalette(asleft::palette(asleft::Look::Light));
    const QStringList arguments = QCoreApplication::arguments().mid(1);
    if (arguments.size() < 2) {
        std::fputs("asleft-pictures GARAGE FOLDER [SCREEN...] draws the screens of the program from a copy of a garage.\n", stderr);
        return 2;
    }
    QString refusal;
    const QStringList screens = arguments.mid(2);
    if (screens.isEmpty())
        refusal = asleft::drawPictures(arguments[0], arguments[1]);
    for (const QString &screen : screens) {
        const QString out = QStringLiteral("%1/%2.png").arg(arguments[1], screen);
        if (!asleft::pictureScreens().contains(screen))
            refusal = QStringLiteral("There is no screen %1.").arg(screen);
        else if (refusal.isEmpty())
            refusal = asleft::drawPicture(arguments[0], asleft::Look::Light, screen, {1280, 800}, out);
    }
    if (refusal.isEmpty())
        return 0;
    std::fprintf(stderr, "asleft-pictures: %s\n", qPrintable(refusal));
    return 1;
}
