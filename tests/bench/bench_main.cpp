// asleft_bench [--short] [--only paint|log|open|growth|plans|joints] [FOLDER]: how fast, each as a ratio to the barest thing that does the
// same, in one run.
#include "bench_timing.h"

#include <QCoreApplication>
#include <QTemporaryDir>

int main(int count, char **words)
{
    using namespace asleft::bench;
    const QCoreApplication application(count, words);
    QStringList arguments = QCoreApplication::arguments().mid(1);
    const Rounds rounds{arguments.removeAll(QStringLiteral("--short")) > 0};
    QString only;
    if (const auto at = arguments.indexOf(QStringLiteral("--only")); at >= 0 && at + 1 < arguments.size()) {
        only = arguments.at(at + 1);
        arguments.remove(at, 2);
    }
    const auto wanted = [&only](const char *name) { return only.isEmpty() || only == QLatin1String(name); };
    QTemporaryDir ownFolder;
    const std::string folder = (arguments.isEmpty() ? ownFolder.path() : arguments.first()).toStdString();
    if (wanted("paint"))
        benchFirstPaint(folder, rounds);
    if (wanted("log"))
        benchLog(folder, rounds);
    if (wanted("open"))
        benchOpenJob(folder, rounds);
    if (wanted("growth"))
        benchGrowth(folder, rounds);
    if (wanted("plans"))
        benchPlans(rounds);
    if (wanted("joints"))
        benchJoints(rounds);
    return 0;
}
