// asleft_bench [--short] [FOLDER]: how fast, each as a ratio to the barest thing that does the same, in one run.
#include "bench_timing.h"

#include <QCoreApplication>
#include <QTemporaryDir>

int main(int count, char **words)
{
    using namespace asleft::bench;
    const QCoreApplication application(count, words);
    QStringList arguments = QCoreApplication::arguments().mid(1);
    const Rounds rounds{arguments.removeAll(QStringLiteral("--short")) > 0};
    QTemporaryDir ownFolder;
    const std::string folder = (arguments.isEmpty() ? ownFolder.path() : arguments.first()).toStdString();
    benchFirstPaint(folder, rounds);
    benchLog(folder, rounds);
    benchOpenJob(folder, rounds);
    benchPlans(rounds);
    return 0;
}
