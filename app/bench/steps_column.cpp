#include <bench/steps_column.h>

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/keypad.h>
#include <parts/ruled_list.h>

#include <draw/point_shape.h>
#include <words/job.h>

#include <QGridLayout>
#include <QHBoxLayout>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace asleft {

StepsColumn::StepsColumn(QWidget *parent) : QWidget(parent)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(4);
    auto *line = new QHBoxLayout;
    line->addWidget(new Heading(tr("Steps"), TextSize::BodyStrong), 1);
    m_count = new Heading({}, TextSize::Small, Heading::Tone::Quiet);
    line->addWidget(m_count);
    column->addLayout(line);
    m_rows = new RuledRows(this);
    m_list = new RuledList(tr("Steps"), m_rows);
    m_list->setPaintIcon([this](QPainter &painter, const QRectF &area, qint64 id, const Ink &ink) {
        const Step *step = m_book ? m_book->state().frame->step(StepId(id)) : nullptr;
        if (step)
            paintStep(painter, area, stepLookOf(m_book->state(), *step), ink);
    });
    m_keypad = new Keypad;
    m_stack = new QStackedWidget;
    m_stack->addWidget(m_list);
    m_stack->addWidget(m_keypad);
    column->addWidget(m_stack, 1);
    buildKeys(column);
    connect(m_list, &RuledList::chosen, this, [this](qint64 id) { Q_EMIT stepChosen(StepId(id)); });
    connect(m_padKey, &KeyButton::toggled, this, &StepsColumn::turnOver);
    connect(m_session, &KeyButton::clicked, this, &StepsColumn::sessionWanted);
    connect(m_type, &KeyButton::clicked, this, &StepsColumn::typeWanted);
    connect(m_print, &KeyButton::clicked, this, &StepsColumn::printWanted);
}

void StepsColumn::buildKeys(QVBoxLayout *column)
{
    m_padKey = new KeyButton(tr("Keypad"));
    m_padKey->setCheckable(true);
    m_padKey->setToolTip(tr("Digits to touch, in place of the steps"));
    m_session = new KeyButton(tr("Who, tools"));
    m_session->setToolTip(tr("Somebody else takes over, another tool, cold or hot"));
    m_type = new KeyButton(tr("Type in a sheet"));
    m_type->setToolTip(tr("Type in a bench sheet that was filled in with a pencil (Ctrl+B)"));
    m_print = new KeyButton(tr("Sheet, PDF"));
    m_print->setToolTip(tr("The empty bench sheet of this job as a PDF (Ctrl+P)"));
    auto *keys = new QGridLayout;
    keys->setSpacing(4);
    keys->addWidget(m_padKey, 0, 0);
    keys->addWidget(m_session, 0, 1);
    keys->addWidget(m_type, 1, 0);
    keys->addWidget(m_print, 1, 1);
    for (KeyButton *key : {m_session, m_type, m_print}) {
        key->setPlain(true);
        key->setEnabled(false);
    }
    column->addLayout(keys);
}

void StepsColumn::setKeypadTarget(QLineEdit *target)
{
    m_keypad->setTarget(target);
}

void StepsColumn::turnOver(bool keypad)
{
    m_stack->setCurrentWidget(keypad ? static_cast<QWidget *>(m_keypad) : m_list);
    m_padKey->setText(keypad ? tr("Steps") : tr("Keypad"));
    Q_EMIT turnedOver();
}

void StepsColumn::present(const JobBook *book, std::optional<StepId> viewed)
{
    m_book = book;
    for (KeyButton *key : {m_session, m_type, m_print})
        key->setEnabled(book != nullptr);
    QList<RuledRow> rows;
    int done = 0;
    const std::vector<Step> none;
    for (const Step &step : book ? book->state().frame->job.steps : none) {
        const bool isDone = stepDone(book->state(), step);
        done += isDone ? 1 : 0;
        rows.append({.id = step.id.key(), .title = stepTitle(step, *book->state().frame), .note = {}, .right = {}, .quiet = isDone});
    }
    m_rows->setRows(rows);
    m_count->setText(book ? tr("%1 of %2").arg(done).arg(rows.size()) : QString());
    m_list->setCurrentId(viewed ? std::optional(viewed->key()) : std::nullopt);
    m_list->viewport()->update();
}

} // namespace asleft
