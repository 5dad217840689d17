#include <pages/job_view.h>

#include <parts/bench_sheet_saving.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/notes.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <records/bench_sheet.h>
#include <words/errors.h>
#include <words/times.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

JobView::JobView(QWidget *parent)
    : QWidget(parent), m_title(new Heading({}, TextSize::Now)), m_dates(new Heading({}, TextSize::Small, Heading::Tone::Quiet)),
      m_resume(new Notes(tr("Where it was left"))), m_message(new MessageLine), m_bench(new KeyButton(tr("Open on the Bench"))),
      m_paper(new ChoiceKeys(tr("Paper"), {paperName(SheetPaper::A4), paperName(SheetPaper::Letter)})),
      m_paperSheet(new KeyButton(tr("Bench sheet"))), m_paperMessage(new MessageLine),
      m_lines(new RuledList(tr("Lines of the job"), &m_rows))
{
    m_title->setWordWrap(true);
    m_bench->setStrong(true);
    m_lines->setPaintIcon([this](QPainter &painter, const QRectF &area, qint64 id, const Ink &ink) {
        paintStep(painter, area, m_looks.value(id, StepLook::ToDo), ink);
    });
    m_paper->setChoice(int(rememberedPaper()));
    connect(m_paper, &ChoiceKeys::chosen, this, [this] { rememberPaper(paper()); });
    buildLayout();
}

SheetPaper JobView::paper() const
{
    return SheetPaper(m_paper->choice());
}

void JobView::buildLayout()
{
    auto *left = new QVBoxLayout;
    left->setSpacing(8);
    left->addWidget(m_title);
    left->addWidget(m_dates);
    left->addSpacing(10);
    left->addWidget(new Heading(tr("Where it was left"), TextSize::BodyStrong));
    left->addWidget(new Rule(Rule::Weight::Fine));
    left->addWidget(m_resume);
    left->addWidget(m_message);
    left->addSpacing(10);
    left->addWidget(m_bench, 0, Qt::AlignLeft);
    left->addSpacing(18);
    left->addWidget(new Heading(tr("On paper"), TextSize::BodyStrong));
    left->addWidget(new Rule(Rule::Weight::Fine));
    left->addWidget(Heading::wrapped(tr("The valve set as an empty sheet to fill in with a pencil, where no screen can go."),
                                     TextSize::Small, Heading::Tone::Quiet));
    auto *paper = new QHBoxLayout;
    paper->setSpacing(10);
    paper->addWidget(m_paper);
    paper->addLayout(besideFields(m_paperSheet));
    paper->addStretch(1);
    left->addLayout(paper);
    left->addWidget(m_paperMessage);
    left->addStretch(1);

    auto *right = new QVBoxLayout;
    auto *head = new Heading(tr("Steps"), TextSize::BodyStrong);
    head->setIndent(8);
    right->addWidget(head);
    right->addWidget(m_lines, 1);

    auto *columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(18);
    columns->addLayout(left, 1);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(right, 1);
}

void JobView::show(const JobLine &job, const Result<JobGlance> &glance, Moment now)
{
    m_title->setText(QString::fromStdString(job.title));
    const QString opened = tr("opened %1").arg(momentText(job.opened, now));
    m_dates->setText(job.lastAct ? tr("%1, last worked on %2").arg(opened, momentText(*job.lastAct, now)) : opened);
    m_message->clear();
    m_bench->setEnabled(glance.has_value());
    m_paperSheet->setEnabled(glance.has_value());
    if (!glance) {
        m_message->refuse(sentence(glance.error()));
        return;
    }
    QList<Notes::Note> resume;
    for (const QString &line : glance->resume)
        resume.append({{}, line});
    m_resume->setNotes(resume);
    QList<RuledRow> rows;
    m_looks.clear();
    for (const JobGlance::Line &line : glance->lines) {
        rows.append(line.row);
        m_looks.insert(line.row.id, line.look);
    }
    m_rows.setRows(rows);
}

} // namespace asleft
