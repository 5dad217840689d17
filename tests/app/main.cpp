// app_tests NAME [QTEST ARGUMENTS]: runs the test of that name; without one, tells the names.
#include "app_test.h"

#include <draw/fonts.h>
#include <words/translation.h>

#include <QApplication>
#include <QFileInfo>
#include <QSettings>
#include <QStyleFactory>
#include <QTemporaryDir>

#include <cstdio>

namespace asleft::testing {

namespace {

QMap<QString, RunTest> &tests()
{
    static QMap<QString, RunTest> known;
    return known;
}

} // namespace

bool registerTest(const char *file, RunTest run)
{
    tests().insert(QFileInfo(QString::fromLocal8Bit(file)).completeBaseName(), run);
    return true;
}

QString nameOfTest()
{
    return QCoreApplication::arguments().value(1);
}

} // namespace asleft::testing

int main(int count, char **words)
{
    using namespace asleft;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(count, words);
    installTranslation(application);
    // What is remembered from one start to the next is kept apart from whoever runs the tests.
    const QTemporaryDir settings;
    QSettings::setDefaultFormat(QSettings::IniFormat);
    QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings.path());
    QCoreApplication::setOrganizationName(QStringLiteral("Asleft tests"));
    QApplication::setStyle(QStyleFactory::create(QStringLiteral("Fusion")));
    QApplication::setFont(textFont(TextSize::Body));
    const QStringList arguments = QCoreApplication::arguments();
    const auto test = testing::tests().constFind(arguments.value(1));
    if (test == testing::tests().constEnd()) {
        for (const QString &name : testing::tests().keys())
            std::printf("%s\n", qPrintable(name));
        return 2;
    }
    return (*test)(QStringList(arguments.first()) + arguments.mid(2));
}
