#include "bench_timing.h"

#include <demo_garage.h>

#include <QProcess>

namespace asleft::bench {

namespace {

void run(const QString &program, const QStringList &arguments)
{
    if (const int code = QProcess::execute(program, arguments); code != 0)
        broken(program.toStdString() + " ended with " + std::to_string(code));
}

} // namespace

void benchFirstPaint(const std::string &folder, Rounds rounds)
{
    const std::string garage = folder + "/first-paint.asleft";
    need(makeDemoGarage(garage), "the demo garage could not be made");
    const QString bare = QStringLiteral(BARE_WINDOW);
    const QString ours = QStringLiteral(GARAGE_WINDOW);
    const QStringList arguments{QStringLiteral("--open"), QString::fromStdString(garage)};
    const auto start = [&] { run(ours, arguments); };
    compare("first paint: demo garage / bare QMainWindow", rounds.of(25), start, [&] { run(bare, {}); });
    compare("first paint: demo garage / QMainWindow with one line of text", rounds.of(25), start,
            [&] { run(bare, {QStringLiteral("--text")}); });
}

} // namespace asleft::bench
