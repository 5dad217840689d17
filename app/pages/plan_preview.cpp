#include "pages/plan_preview.h"

#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/message_line.h"
#include "parts/notes.h"
#include "parts/rule.h"

#include <show/words.h>

#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

/// How to get there, what is set there, and how much room the tightest of them has.
Notes::Note noteOf(const EngineDesign &design, const PlanPosition &position, std::optional<Angle> from)
{
    Notes::Note note;
    note.head = placeName(design, position.place);
    QStringList words;
    if (from)
        words.append(travelSentence(design, *from, position.crank));
    words.append(PlanPreview::tr("Sets %1.").arg(QString::fromStdString(describePoints(design, position))));
    const auto tightest = std::ranges::min_element(position.points, {}, &PlanPoint::margin);
    if (tightest != position.points.end())
        words.append(PlanPreview::tr("Tightest is %1: %2.").arg(pointInText(design, tightest->adjuster), marginText(design, *tightest)));
    note.words = words.join(QLatin1Char(' '));
    return note;
}

} // namespace

PlanPreview::PlanPreview(QWidget *parent)
    : QWidget(parent),
      m_way(new ChoiceKeys(tr("Positions"), {planWayName(PlanWay::TwoPositions), planWayName(PlanWay::EachOnCompression)})),
      m_source(new MessageLine), m_positions(new Notes(tr("Positions of the generated plan")))
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("Generated plan"), TextSize::BodyStrong));
    column->addWidget(new Rule);
    column->addWidget(m_way);
    column->addWidget(m_source);
    column->addWidget(m_positions);
    connect(m_way, &ChoiceKeys::chosen, this, &PlanPreview::show);
}

void PlanPreview::setDesign(const std::optional<EngineDesign> &design)
{
    m_design = design;
    show();
}

void PlanPreview::show()
{
    QList<Notes::Note> notes;
    m_source->clear();
    if (m_design) {
        const CrankPlan plan = generatePlan(*m_design, PlanWay(m_way->choice()));
        m_source->quiet(planSource(*m_design, plan));
        std::optional<Angle> from;
        for (const PlanPosition &position : plan.positions) {
            notes.append(noteOf(*m_design, position, from));
            from = position.crank;
        }
        QStringList unreached;
        for (const AdjusterRef valve : plan.unreached)
            unreached.append(pointInText(*m_design, valve));
        if (!unreached.isEmpty())
            notes.append({{}, tr("No position sets %1.").arg(unreached.join(QStringLiteral(", ")))});
    }
    m_positions->setNotes(notes);
}

} // namespace asleft
