#include <window/arguments.h>
#include <window/opening.h>

#include <draw/fonts.h>
#include <words/translation.h>

#include <QApplication>
#include <QStyleFactory>

int main(int count, char **words)
{
    // A picture, the help and the version are told anywhere, also where there is no display.
    if (asleft::needsNoDisplay(count, words))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, words);
    asleft::installTranslation(application);
    QCoreApplication::setOrganizationName(QStringLiteral("Asleft"));
    QCoreApplication::setApplicationName(QStringLiteral("Asleft"));
    QCoreApplication::setApplicationVersion(QStringLiteral(ASLEFT_VERSION));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(asleft::textFont(asleft::TextSize::Body));

    asleft::Opening opening;
    if (const auto code = opening.begin(asleft::readArguments(QCoreApplication::arguments())))
        return *code;
    return QApplication::exec();
}
