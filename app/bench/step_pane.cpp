#include <bench/step_pane.h>

#include "caution_words.h"
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/rule.h>

#include <words/errors.h>
#include <words/job.h>
#include <words/times.h>

#include <QVBoxLayout>

namespace asleft {

StepPane::StepPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_title = new Heading({}, TextSize::Now);
    m_detail = new Heading({}, TextSize::Body);
    m_when = new Heading({}, TextSize::Small, Heading::Tone::Quiet);
    for (Heading *words : {m_title, m_detail, m_when}) {
        words->setWordWrap(true);
        column->addWidget(words);
    }
    column->addWidget(new Rule);
    m_cautions = new CautionWordsView;
    column->addWidget(m_cautions);
    m_message = new MessageLine;
    column->addWidget(m_message);
    m_done = new KeyButton(tr("Done"));
    m_done->setStrong(true);
    column->addWidget(m_done, 0, Qt::AlignLeft);
    column->addStretch(1);
    keepFromWriting(context.garage(), {m_done});
    connect(m_done, &KeyButton::clicked, this, &StepPane::markDone);
}

void StepPane::showStep(StepId step)
{
    m_step = step;
    m_askedAbout.clear();
    m_message->clear();
    refresh();
}

QString StepPane::doneWords(StepId step) const
{
    const JobState &state = m_book.state();
    for (auto act = state.acts.rbegin(); act != state.acts.rend(); ++act) {
        const auto *fact = std::get_if<StepDoneFact>(&act->what.fact);
        if (!fact || fact->step != step || !state.inForce(*act))
            continue;
        const Person *person = state.frame->person(act->what.who);
        return tr("Done %1 by %2")
            .arg(momentText(act->what.at, m_context.garage().now()), person ? QString::fromStdString(person->initials) : QString());
    }
    return {};
}

void StepPane::refresh()
{
    const JobState &state = m_book.state();
    const Step *step = m_step ? state.frame->step(*m_step) : nullptr;
    if (!step)
        return;
    const bool isDone = stepDone(state, *step);
    m_title->setText(stepTitle(*step, *state.frame));
    m_detail->setText(QString::fromStdString(step->detail));
    m_detail->setVisible(!step->detail.empty());
    m_when->setText(isDone ? doneWords(step->id) : tr("To be done %1").arg(gateName(step->before)));
    m_cautions->setCautions(step->cautions);
    m_done->setVisible(!isDone);
}

void StepPane::takeFocus()
{
    m_done->setFocus(Qt::OtherFocusReason);
}

QStringList StepPane::stillOpenBefore(const Step &step) const
{
    // A line that comes before hand-over is done after the first start: whatever should have been seen to before that is asked about.
    QStringList open;
    if (step.before != Gate::HandOver)
        return open;
    const StillOpen all = stillOpen(m_book.state(), m_context.garage().now());
    for (const auto *items : {&all.turning, &all.firstStart})
        for (const OpenItem &item : *items)
            open.append(openWords(item, m_book.state(), m_context.garage().now()).title);
    return open;
}

void StepPane::markDone()
{
    const Step *step = m_book.state().frame->step(*m_step);
    const QStringList open = step ? stillOpenBefore(*step) : QStringList();
    if (!open.isEmpty() && m_askedAbout != open) {
        m_askedAbout = open;
        m_message->refuse(tr("Still open before first start: %1. Nothing is logged yet; “Done” once more if it is done all the same.")
                              .arg(open.join(QStringLiteral(", "))));
        return;
    }
    const auto logged = m_book.markStepDone(*m_step);
    if (!logged)
        m_message->refuse(sentence(logged.error()));
    else
        Q_EMIT finished();
}

} // namespace asleft
