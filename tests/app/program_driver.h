#pragma once

#include "bench_driver.h"

#include <window/opening.h>
#include <window/window.h>

#include <QProcess>

#include <csignal>
#include <cstdio>

namespace asleft::testing {

/// What a test of the whole program is started with to run its first half, in a process that does not outlive it.
inline const QString untilKilled = QStringLiteral("until-killed");

inline std::unique_ptr<Opening> openProgram(Arguments::Wish wish, const QString &file)
{
    Arguments arguments;
    arguments.wish = wish;
    arguments.garage = file;
    auto opening = std::make_unique<Opening>();
    if (opening->begin(arguments) || !opening->window())
        qFatal("the garage did not open");
    QApplication::setActiveWindow(opening->window());
    QCoreApplication::processEvents();
    return opening;
}

inline void typeInto(ValueField *field, const QString &text)
{
    QTest::mouseClick(field->edit(), Qt::LeftButton);
    field->edit()->selectAll();
    type(text);
}

inline void goTo(Window &window, Page place)
{
    click(window.tabs()->tab(place));
    QCOMPARE(window.page(), place);
}

/// The end of a first half: its last words, and what the second has to know.
inline void sayAndDie(const QString &lastWords, const QString &told)
{
    std::printf("%s %s\n", qPrintable(lastWords), qPrintable(told));
    std::fflush(stdout);
    std::raise(SIGKILL);
}

/// Runs the first half with these arguments; `told` is what it said beside its last words.
inline void runUntilKilled(const QStringList &arguments, const QString &lastWords, QString &told)
{
    constexpr int mostMilliseconds = 120'000;
    QProcess first;
    first.start(QCoreApplication::applicationFilePath(), QStringList{nameOfTest(), untilKilled} + arguments);
    QVERIFY(first.waitForFinished(mostMilliseconds));
    const QString said = QString::fromUtf8(first.readAllStandardOutput() + first.readAllStandardError());
    QVERIFY2(first.exitStatus() == QProcess::CrashExit && said.contains(lastWords), qPrintable(said));
    told = said.section(lastWords, 1).trimmed().section(QLatin1Char('\n'), 0, 0);
}

/// Runs the test, or its first half, which `halfOf` makes of the arguments.
template <class Test, class HalfOf>
int runProgramTest(const QStringList &arguments, HalfOf halfOf)
{
    if (arguments.value(1) == untilKilled) {
        auto half = halfOf(arguments.mid(2));
        return QTest::qExec(half.get(), {arguments.first()});
    }
    return runTest<Test>(arguments);
}

} // namespace asleft::testing
