#pragma once

#include <work/job_book.h>

#include <QObject>
#include <QString>

class QFileDialog;
class QWidget;

namespace asleft {

enum class SheetPaper;

/// The paper the last bench sheet was written for; before the first, what is usual where this computer stands.
SheetPaper rememberedPaper();
void rememberPaper(SheetPaper paper);
QString paperName(SheetPaper paper); ///< "A4"

/// Writes the bench sheet of a job as PDF, by the plan it is worked by, else by the one it would be. Refuses as writeBenchSheet() does.
Done saveBenchSheet(const JobBook &book, SheetPaper paper, Moment printed, const QString &path);

/// Asks for a file and writes a job's bench sheet into it; what came of it is one sentence.
class BenchSheetSaving : public QObject {
    Q_OBJECT

public:
    /// The question where to stands in front of `window`.
    explicit BenchSheetSaving(QWidget *window);

    /// Asks, and comes back at once; the job is read anew when the file is chosen.
    void ask(Garage &garage, JobId job, SheetPaper paper);
    /// Without asking.
    void write(Garage &garage, JobId job, SheetPaper paper, const QString &path);

Q_SIGNALS:
    void written(const QString &sentence);
    void refused(const QString &sentence);

private:
    QWidget *m_window;
};

} // namespace asleft
