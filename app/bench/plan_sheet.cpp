#include "bench/plan_sheet.h"

#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/rule.h"

#include <show/words.h>

#include <QScrollArea>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

QString positionLine(const EngineDesign &design, const PlanPosition &position)
{
    const auto least = std::ranges::min_element(position.points, {}, &PlanPoint::margin);
    const QString sets = QString::fromStdString(describePoints(design, position));
    if (least == position.points.end())
        return placeName(design, position.place);
    return PlanSheet::tr("%1: %2 · least %3").arg(placeName(design, position.place), sets, marginText(design, *least));
}

} // namespace

PlanSheet::PlanSheet(Desk &desk, JobBook &book, QWidget *parent) : QWidget(parent), m_desk(desk), m_book(book)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("The crank plan of this job"), TextSize::Now));
    column->addWidget(Heading::wrapped(
        tr("A plan once chosen stays with the job. The manual's own table is typed under Specs and goes before any generated plan."),
        TextSize::Small, Heading::Tone::Quiet));
    auto *scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_plans = new QWidget;
    scroll->setWidget(m_plans);
    column->addWidget(scroll, 1);
    m_message = new MessageLine;
    column->addWidget(m_message);
    m_back = new KeyButton(tr("Back to the head"));
    m_back->setPlain(true);
    column->addWidget(m_back, 0, Qt::AlignLeft);
    connect(m_back, &KeyButton::clicked, this, &PlanSheet::left);
}

void PlanSheet::refresh()
{
    m_message->clear();
    m_work.clear();
    delete m_plans->layout();
    qDeleteAll(m_plans->findChildren<QWidget *>(QString(), Qt::FindDirectChildrenOnly));
    auto *column = new QVBoxLayout(m_plans);
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(4);
    const EngineDesign &design = m_book.state().frame->engine.design;
    const CrankPlan proposed = m_book.proposedPlan();
    if (!proposed.generated)
        addPlan(column, proposed);
    addPlan(column, generatePlan(design, PlanWay::TwoPositions));
    addPlan(column, generatePlan(design, PlanWay::EachOnCompression));
    column->addStretch(1);
}

void PlanSheet::addPlan(QVBoxLayout *column, const CrankPlan &plan)
{
    const EngineDesign &design = m_book.state().frame->engine.design;
    column->addWidget(Heading::wrapped(planSource(design, plan), TextSize::BodyStrong));
    for (const PlanPosition &position : plan.positions)
        column->addWidget(Heading::wrapped(positionLine(design, position), TextSize::Small));
    QStringList unreached;
    for (const AdjusterRef valve : plan.unreached)
        unreached.append(pointShort(design, valve));
    if (!unreached.isEmpty())
        column->addWidget(Heading::wrapped(tr("No position sets %1.").arg(unreached.join(QStringLiteral(", "))), TextSize::Small));
    const bool chosen = m_book.state().plan == plan;
    auto *work = new KeyButton(chosen ? tr("This job is worked by it") : tr("Work by this plan"));
    work->setAccessibleName(tr("%1: %2").arg(work->text(), planSource(design, plan)));
    work->setEnabled(!chosen);
    column->addWidget(work, 0, Qt::AlignLeft);
    column->addSpacing(6);
    column->addWidget(new Rule);
    m_work.append(work);
    connect(work, &KeyButton::clicked, this, [this, plan] {
        const auto logged = m_book.choosePlan(plan);
        if (!logged)
            m_message->refuse(sentence(logged.error()));
        else
            Q_EMIT left();
    });
}

void PlanSheet::takeFocus()
{
    m_back->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
