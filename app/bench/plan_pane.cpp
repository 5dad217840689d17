#include <bench/plan_pane.h>

#include <bench/valve_pane.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/value_field.h>

#include <words/crank.h>
#include <words/errors.h>
#include <words/numbers.h>
#include <words/points.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int mostWaysWidth = 240;

// Rows that are no generated plan.
constexpr qint64 tableRow = 100;
constexpr qint64 inUseRow = 101;

constexpr PlanWay everyWay[] = {PlanWay::TwoPositions, PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing,
                                PlanWay::Fewest,       PlanWay::RuleOfNine};
constexpr CrankMarks everyMark[] = {CrankMarks::EveryTdc, CrankMarks::FirstOnly, CrankMarks::AnyAngle};

/// The same positions with the same points, wherever the list begins.
bool isSameWork(const CrankPlan &one, const CrankPlan &other)
{
    const auto byCrank = [](const CrankPlan &plan) {
        std::vector<PlanPosition> positions = plan.positions;
        std::ranges::stable_sort(positions, {}, &PlanPosition::crank);
        return positions;
    };
    return one.generated == other.generated && one.way == other.way && one.source == other.source && byCrank(one) == byCrank(other);
}

Notes::Note noteOf(const EngineDesign &design, const PlanPosition &position)
{
    QStringList words{findingSentence(design, position),
                      PlanPane::tr("Sets %1.").arg(QString::fromStdString(describePoints(design, position)))};
    const auto least = std::ranges::min_element(position.points, {}, &PlanPoint::margin);
    if (least != position.points.end())
        words.append(PlanPane::tr("Tightest is %1: %2.").arg(pointInText(design, least->adjuster), marginText(design, *least)));
    words.removeAll(QString());
    return {positionName(design, position), words.join(QChar::Space)};
}

} // namespace

PlanPane::PlanPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    build();
    keepFromWriting(context.garage(), {m_work});
    connect(m_ways, &RuledList::chosen, this, &PlanPane::showPlan);
    connect(m_ways, &RuledList::opened, this, [this] { m_work->setFocus(Qt::OtherFocusReason); });
    connect(m_marks, &RuledList::chosen, this, &PlanPane::showPlan);
    connect(m_margin, &ValueField::edited, this, &PlanPane::showPlan);
    connect(m_work, &KeyButton::clicked, this, &PlanPane::work);
    connect(m_back, &KeyButton::clicked, this, [this] { Q_EMIT wanted({makePane<ValvePane>}); });
}

void PlanPane::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("The crank plan of this job"), TextSize::Now));
    column->addWidget(Heading::wrapped(
        tr("A plan once chosen stays with the job. The manual's own table is typed under Specs and goes before any generated plan."),
        TextSize::Small, Heading::Tone::Quiet));
    auto *both = new QHBoxLayout;
    both->setSpacing(16);
    m_rows = new RuledRows(this);
    m_ways = new RuledList(tr("Ways to turn the crank"), m_rows);
    m_ways->setMaximumWidth(mostWaysWidth);
    both->addWidget(m_ways, 2);
    auto *plan = new QWidget;
    buildPlan(new QVBoxLayout(plan));
    both->addWidget(new ScrollPane(plan), 3);
    column->addLayout(both, 1);
    m_message = new MessageLine;
    column->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    m_work = new KeyButton(tr("Work by this plan"));
    m_work->setStrong(true);
    m_back = new KeyButton(tr("Back to the head"));
    m_back->setPlain(true);
    keys->addWidget(m_work);
    keys->addWidget(m_back);
    keys->addStretch(1);
    column->addLayout(keys);
}

void PlanPane::buildPlan(QVBoxLayout *column)
{
    column->setContentsMargins(0, 0, 8, 0);
    column->setSpacing(6);
    m_source = Heading::wrapped({}, TextSize::BodyStrong);
    m_note = Heading::wrapped({}, TextSize::Small);
    m_begins = Heading::wrapped({}, TextSize::Small, Heading::Tone::Quiet);
    for (Heading *words : {m_source, m_note, m_begins})
        column->addWidget(words);
    buildMarks(column);
    m_warning = new MessageLine;
    column->addWidget(m_warning);
    column->addWidget(new Rule);
    m_positions = new Notes(tr("Positions of the plan"));
    column->addWidget(m_positions);
    column->addStretch(1);
}

void PlanPane::buildMarks(QVBoxLayout *column)
{
    m_fewest = new QWidget;
    auto *asks = new QVBoxLayout(m_fewest);
    asks->setContentsMargins(0, 0, 0, 0);
    asks->setSpacing(4);
    asks->addWidget(new Heading(tr("It can be turned to"), TextSize::Small, Heading::Tone::Quiet));
    QList<RuledRow> rows;
    for (const CrankMarks marks : everyMark)
        rows.append({.id = qint64(marks), .title = crankMarksName(marks), .note = {}, .right = {}});
    auto *list = new RuledRows(this);
    list->setRows(rows);
    m_marks = new RuledList(tr("It can be turned to"), list);
    m_marks->setFitted(true);
    m_marks->setCurrentId(qint64(CrankMarks::EveryTdc));
    asks->addWidget(m_marks);
    m_margin = new ValueField(tr("Every point with a margin of at least, degrees"));
    m_margin->setText(degreesText(PlanAsk{}.leastMargin));
    asks->addWidget(m_margin);
    column->addWidget(m_fewest);
}

PlanAsk PlanPane::asked(PlanWay way) const
{
    PlanAsk ask;
    ask.way = way;
    const auto &crank = m_book.state().crank;
    ask.from = crank ? crank->crank : std::nullopt;
    ask.marks = CrankMarks(m_marks->currentId().value_or(qint64(CrankMarks::EveryTdc)));
    if (const auto margin = parse<Angle>(m_margin->text().toStdString(), AngleUnit::Degree, m_context.mark()))
        ask.leastMargin = margin->value;
    return ask;
}

bool PlanPane::isInUse(const CrankPlan &plan) const
{
    return m_book.state().plan && isSameWork(*m_book.state().plan, plan);
}

bool PlanPane::hasRuleOfNine() const
{
    const auto plan = planFor(design(), asked(PlanWay::RuleOfNine));
    return plan || plan.error().kind != ErrorKind::PlanNotForEngine;
}

void PlanPane::refresh()
{
    m_message->clear();
    const auto before = m_ways->currentId();
    showWays();
    const bool still = before && m_rows->indexOf(*before).isValid();
    if (!still && !m_rows->rows().isEmpty()) {
        const auto &rows = m_rows->rows();
        const auto inUse = std::ranges::find_if(rows, [](const RuledRow &row) { return !row.note.isEmpty(); });
        m_ways->setCurrentId((inUse == rows.end() ? rows.begin() : inUse)->id);
    }
    showPlan();
}

void PlanPane::showWays()
{
    QList<RuledRow> rows;
    bool used = false;
    const auto add = [&](qint64 id, const QString &title, bool inUse) {
        used = used || inUse;
        rows.append({.id = id, .title = title, .note = inUse ? tr("this job is worked by it") : QString(), .right = {}});
    };
    if (const CrankPlan proposed = m_book.proposedPlan(); !proposed.generated)
        add(tableRow, tr("the manual's table"), isInUse(proposed));
    for (const PlanWay way : everyWay) {
        if (way == PlanWay::RuleOfNine && !hasRuleOfNine())
            continue;
        const auto &now = m_book.state().plan;
        const bool likely = now && now->generated && now->way == way;
        const auto plan = likely ? std::optional(planFor(design(), asked(way))) : std::nullopt;
        add(qint64(way), planWayName(way), plan && *plan && isInUse(**plan));
    }
    // Chosen from another place of the crank, or before the table was typed anew.
    if (m_book.state().plan && !used)
        add(inUseRow, tr("as it was chosen"), true);
    m_rows->setRows(rows);
}

Result<CrankPlan> PlanPane::planInHand() const
{
    const qint64 row = m_ways->currentId().value_or(qint64(PlanWay::TwoPositions));
    if (row == tableRow)
        return m_book.proposedPlan();
    if (row == inUseRow && m_book.state().plan)
        return *m_book.state().plan;
    return planFor(design(), asked(PlanWay(row)));
}

void PlanPane::choose(PlanWay way)
{
    m_ways->setCurrentId(qint64(way));
    showPlan();
}

void PlanPane::showPlan()
{
    const qint64 row = m_ways->currentId().value_or(-1);
    const bool fewest = row == qint64(PlanWay::Fewest);
    m_fewest->setVisible(fewest);
    m_margin->accept();
    const auto margin = parse<Angle>(m_margin->text().toStdString(), AngleUnit::Degree, m_context.mark());
    if (fewest && !margin)
        m_margin->refuse(sentence(margin.error()));
    const auto plan = fewest && !margin ? Result<CrankPlan>(tl::unexpected(margin.error())) : planInHand();
    m_note->setText(row >= tableRow ? QString() : planWayNote(PlanWay(row)));
    m_note->setVisible(!m_note->text().isEmpty());
    m_plan.reset();
    if (plan) {
        say(*plan);
        return;
    }
    m_source->setText(row >= tableRow ? QString() : planWayName(PlanWay(row)));
    m_begins->setVisible(false);
    m_positions->setNotes({});
    m_warning->refuse(m_margin->isRefused() ? QString() : sentence(plan.error()));
    m_work->setText(tr("Work by this plan"));
    m_work->setEnabled(false);
}

void PlanPane::say(const CrankPlan &plan)
{
    m_plan = plan;
    m_source->setText(planSource(design(), plan));
    const auto &crank = m_book.state().crank;
    const bool known = plan.generated && crank && crank->crank;
    m_begins->setText(known ? tr("Counted on from where the crank stands: %1.").arg(crankInText(design(), crank->crank)) : QString());
    m_begins->setVisible(known);
    const QString warning = planWarning(design(), plan);
    if (warning.isEmpty())
        m_warning->clear();
    else
        m_warning->refuse(warning);
    QList<Notes::Note> notes;
    for (const PlanPosition &position : plan.positions)
        notes.append(noteOf(design(), position));
    m_positions->setNotes(notes);
    const bool inUse = isInUse(plan);
    m_work->setText(inUse ? tr("This job is worked by it") : tr("Work by this plan"));
    m_work->setAccessibleName(tr("%1: %2").arg(m_work->text(), m_source->text()));
    m_work->setEnabled(!inUse);
}

void PlanPane::work()
{
    if (!m_plan)
        return;
    const auto logged = m_book.choosePlan(*m_plan);
    if (!logged)
        m_message->refuse(sentence(logged.error()));
    else
        Q_EMIT wanted({makePane<ValvePane>});
}

void PlanPane::takeFocus()
{
    m_ways->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
