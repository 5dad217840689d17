#include <parts/bench_sheet_saving.h>

#include <records/bench_sheet.h>
#include <words/errors.h>

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QSettings>
#include <QStandardPaths>

namespace asleft {

namespace {

const QString paperKey = QStringLiteral("sheet/paper");
const QString folderKey = QStringLiteral("sheet/folder");
const QString letterWord = QStringLiteral("letter");
const QString a4Word = QStringLiteral("a4");
const QString suffix = QStringLiteral("pdf");

/// Letter is the paper of North America and a few countries beyond it; everywhere else it is A4. Common knowledge, no source.
SheetPaper usualPaper()
{
    switch (QLocale().territory()) {
    case QLocale::UnitedStates:
    case QLocale::Canada:
    case QLocale::Mexico:
    case QLocale::Chile:
    case QLocale::Colombia:
    case QLocale::Philippines:
    case QLocale::Venezuela: return SheetPaper::Letter;
    default: return SheetPaper::A4;
    }
}

/// "Hollin 40 tractor, Set the valves": without what file systems choke on.
QString suggestedName(const JobState &state)
{
    const JobFrame &frame = *state.frame;
    const bool byEngine = frame.vehicle.stand && !frame.engine.name.empty();
    const std::string &of = byEngine ? frame.engine.name : frame.vehicle.name;
    QString name = QStringLiteral("%1, %2").arg(QString::fromStdString(of), QString::fromStdString(frame.job.title));
    name.replace(QRegularExpression(QStringLiteral("[\\x00-\\x1f\\\\/:*?\"<>|]")), QStringLiteral("-"));
    return name.left(100);
}

QString startFolder()
{
    const QString last = QSettings().value(folderKey).toString();
    if (!last.isEmpty() && QFileInfo(last).isDir())
        return last;
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

} // namespace

SheetPaper rememberedPaper()
{
    const QString word = QSettings().value(paperKey).toString();
    if (word == letterWord)
        return SheetPaper::Letter;
    return word == a4Word ? SheetPaper::A4 : usualPaper();
}

void rememberPaper(SheetPaper paper)
{
    QSettings().setValue(paperKey, paper == SheetPaper::Letter ? letterWord : a4Word);
}

QString paperName(SheetPaper paper)
{
    return paper == SheetPaper::Letter ? BenchSheetSaving::tr("Letter") : BenchSheetSaving::tr("A4");
}

Done saveBenchSheet(const JobBook &book, SheetPaper paper, Moment printed, const QString &path)
{
    const JobState &state = book.state();
    return writeBenchSheet(state, state.plan ? *state.plan : book.proposedPlan(), paper, printed, path.toStdString());
}

BenchSheetSaving::BenchSheetSaving(QWidget *window) : QObject(window), m_window(window) {}

void BenchSheetSaving::ask(Garage &garage, JobId job, SheetPaper paper)
{
    const auto book = JobBook::open(garage, job);
    if (!book) {
        Q_EMIT refused(sentence(book.error()));
        return;
    }
    auto *dialog = new QFileDialog(m_window, tr("Where the bench sheet goes"), startFolder());
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setAcceptMode(QFileDialog::AcceptSave);
    dialog->setNameFilters({tr("Bench sheets (*.pdf)")});
    dialog->setDefaultSuffix(suffix);
    dialog->selectFile(suggestedName((*book)->state()));
    connect(dialog, &QFileDialog::fileSelected, this,
            [this, &garage, job, paper](const QString &path) { write(garage, job, paper, path); });
    dialog->open();
}

void BenchSheetSaving::write(Garage &garage, JobId job, SheetPaper paper, const QString &path)
{
    const auto book = JobBook::open(garage, job);
    const Done written = book ? saveBenchSheet(**book, paper, garage.now(), path) : Done(tl::unexpected(book.error()));
    if (!written) {
        Q_EMIT refused(sentence(written.error()));
        return;
    }
    QSettings().setValue(folderKey, QFileInfo(path).absolutePath());
    Q_EMIT this->written(tr("The bench sheet is written: %1").arg(QDir::toNativeSeparators(path)));
}

} // namespace asleft
