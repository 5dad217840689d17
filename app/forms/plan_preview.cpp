#include <forms/plan_preview.h>

#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>

#include <words/crank.h>
#include <words/errors.h>
#include <words/points.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>
#include <array>

namespace asleft {

namespace {

constexpr std::array allWays{PlanWay::TwoPositions, PlanWay::EachOnCompression, PlanWay::CompanionAtOverlap, PlanWay::OpeningAndClosing,
                             PlanWay::Fewest,       PlanWay::RuleOfNine};

/// In the order of CrankMarks, shorter than crankMarksName(): they stand side by side.
QStringList marksWords()
{
    return {PlanPreview::tr("every dead centre"), PlanPreview::tr("only the first"), PlanPreview::tr("any angle")};
}

QString tightestOf(const EngineDesign &design, const PlanPosition &position)
{
    QStringList doubted;
    for (const PlanPoint &point : position.points)
        if (point.doubtful())
            doubted.append(pointInText(design, point.adjuster));
    if (!doubted.isEmpty())
        return PlanPreview::tr("Doubtful by the cam: %1.").arg(doubted.join(QStringLiteral(", ")));
    const auto tightest = std::ranges::min_element(position.points, {}, &PlanPoint::margin);
    if (tightest == position.points.end())
        return {};
    return PlanPreview::tr("Tightest is %1: %2.").arg(pointInText(design, tightest->adjuster), marginText(design, *tightest));
}

/// How to get there, what is set there, and how much room the tightest of them has.
Notes::Note noteOf(const EngineDesign &design, const PlanPosition &position, std::optional<Angle> from)
{
    Notes::Note note;
    note.head = positionName(design, position);
    QStringList words;
    if (from)
        words << travelSentence(design, *from, position.crank) << pinionSentence(design, *from, position.crank);
    words << findingSentence(design, position);
    words << PlanPreview::tr("Sets %1.").arg(QString::fromStdString(describePoints(design, position)));
    words << tightestOf(design, position);
    words.removeAll(QString());
    note.words = words.join(QLatin1Char(' '));
    return note;
}

QList<Notes::Note> notesOf(const EngineDesign &design, const CrankPlan &plan)
{
    QList<Notes::Note> notes;
    std::optional<Angle> from;
    for (const PlanPosition &position : plan.positions) {
        notes.append(noteOf(design, position, from));
        from = position.crank;
    }
    return notes;
}

} // namespace

PlanPreview::PlanPreview(QWidget *parent)
    : QWidget(parent), m_ways(new RuledList(tr("Ways to turn it"), &m_wayRows)),
      m_marks(new ChoiceKeys(tr("Marks there are to turn to"), marksWords())), m_source(new MessageLine), m_warning(new MessageLine),
      m_positions(new Notes(tr("Positions of the generated plan")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("Generated plans"), TextSize::BodyStrong));
    column->addWidget(new Rule);
    column->addLayout(buildLayout());
    m_ways->setWhole(true);
    m_ways->setWholeNotes(true);
    connect(m_ways, &RuledList::chosen, this, &PlanPreview::show);
    connect(m_marks, &ChoiceKeys::chosen, this, &PlanPreview::show);
}

QLayout *PlanPreview::buildLayout()
{
    auto *plan = new QVBoxLayout;
    plan->setSpacing(8);
    plan->addWidget(m_marks);
    plan->addWidget(m_source);
    plan->addWidget(m_warning);
    plan->addWidget(m_positions);
    plan->addStretch(1);
    auto *columns = new QHBoxLayout;
    columns->setSpacing(18);
    columns->addWidget(m_ways, 2);
    columns->addLayout(plan, 3);
    return columns;
}

void PlanPreview::setDesign(const std::optional<EngineDesign> &design)
{
    if (design == m_design && m_wayRows.rowCount() > 0)
        return;
    m_design = design;
    fill();
    show();
}

void PlanPreview::choose(PlanWay way)
{
    m_ways->setCurrentId(qint64(way));
    show();
}

/// The ways that fit the engine.
void PlanPreview::fill()
{
    QList<RuledRow> rows;
    for (const PlanWay way : allWays) {
        const auto plan = m_design ? planFor(*m_design, {.way = way}) : CrankPlan{};
        if (!plan && plan.error().kind == ErrorKind::PlanNotForEngine)
            continue;
        RuledRow row;
        row.id = qint64(way);
        row.title = planWayName(way);
        row.note = planWayNote(way);
        rows.append(row);
    }
    m_wayRows.setRows(rows);
    if (!m_ways->currentId() || !m_wayRows.indexOf(*m_ways->currentId()).isValid())
        m_ways->setCurrentId(rows.front().id);
}

void PlanPreview::show()
{
    const auto way = PlanWay(m_ways->currentId().value_or(0));
    m_marks->setVisible(way == PlanWay::Fewest);
    m_source->clear();
    m_warning->clear();
    m_positions->setNotes({});
    if (!m_design)
        return;
    const auto plan = planFor(*m_design, {.way = way, .marks = CrankMarks(m_marks->choice())});
    if (!plan) {
        m_warning->refuse(sentence(plan.error()));
        return;
    }
    m_source->quiet(planSource(*m_design, *plan));
    m_warning->refuse(planWarning(*m_design, *plan));
    m_positions->setNotes(notesOf(*m_design, *plan));
}

} // namespace asleft
