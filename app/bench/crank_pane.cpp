#include <bench/crank_pane.h>

#include "caution_words.h"
#include "list_stretch.h"
#include <bench/valve_pane.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>

#include <words/crank.h>
#include <words/errors.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

/// Every crank angle at which some cylinder stands at a dead centre, from the first of the firing order on, those of the plan, and the one
/// it was left at.
std::vector<Angle> placesOf(const JobState &state, const CrankPlan &plan)
{
    const EngineDesign &design = state.frame->engine.design;
    std::vector<Angle> places;
    for (const Cylinder cylinder : design.firingOrder) {
        for (const CrankEvent stroke : {CrankEvent::Compression, CrankEvent::Overlap})
            places.push_back(crankAt(design, {cylinder, stroke}));
    }
    for (const PlanPosition &position : plan.positions)
        places.push_back(inCycle(design, position.crank));
    if (state.crank && state.crank->crank)
        places.push_back(*state.crank->crank);
    std::ranges::sort(places);
    const auto twice = std::ranges::unique(places);
    places.erase(twice.begin(), twice.end());
    return places;
}

/// One place with what the plan sets there and how it is found; a manual's table may name it in several lines.
RuledRow rowOf(const EngineDesign &design, const CrankPlan &plan, Angle place)
{
    RuledRow row{.id = place.smallest(), .title = crankName(design, place), .note = {}, .right = {}};
    QStringList sets;
    for (const PlanPosition &position : plan.positions) {
        if (inCycle(design, position.crank) != place)
            continue;
        row.note = findingSentence(design, position);
        sets.append(QString::fromStdString(describePoints(design, position)));
    }
    row.right = sets.join(QStringLiteral("; "));
    return row;
}

} // namespace

CrankPane::CrankPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("Where does the crank stand?"), TextSize::Now));
    m_left = new Heading({}, TextSize::Body);
    m_left->setWordWrap(true);
    column->addWidget(m_left);
    m_rows = new RuledRows(this);
    m_places = new RuledList(tr("Places of the crank"), m_rows);
    m_places->setFitted(true);
    column->addWidget(m_places, listStretch);
    m_check = new Heading({}, TextSize::Small);
    m_check->setWordWrap(true);
    column->addWidget(m_check);
    m_cautions = new CautionWordsView;
    column->addWidget(m_cautions);
    m_message = new MessageLine;
    column->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    m_stands = new KeyButton(tr("It stands there"));
    m_stands->setStrong(true);
    m_unknown = new KeyButton(tr("Unknown"));
    keys->addWidget(m_stands);
    keys->addWidget(m_unknown);
    keys->addStretch(1);
    column->addLayout(keys);
    column->addStretch(1);

    const auto chosenPlace = [this] { return Angle::ofSmallest(*m_places->currentId()); };
    connect(m_places, &RuledList::chosen, this, &CrankPane::showCheck);
    // Choosing a place and saying that the crank stands there are two things: nobody walks through this by Enter alone unawares.
    connect(m_places, &RuledList::opened, this, [this] { m_stands->setFocus(Qt::OtherFocusReason); });
    connect(m_stands, &KeyButton::clicked, this, [this, chosenPlace] { answer(chosenPlace()); });
    connect(m_unknown, &KeyButton::clicked, this, [this] { answer(std::nullopt); });
    refresh();
}

void CrankPane::refresh()
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    const CrankPlan plan = state.plan ? *state.plan : m_book.proposedPlan();
    QList<RuledRow> rows;
    for (const Angle place : placesOf(state, plan))
        rows.append(rowOf(design, plan, place));
    m_rows->setRows(rows);
    const bool known = state.crank && state.crank->crank;
    m_left->setText(known ? tr("It was left at %1, %2. Look at the mark and tell the stroke.")
                                .arg(crankInText(design, state.crank->crank), crankKnown(state, m_context.garage().now()))
                          : tr("Nobody has said yet. Bring it to a mark and tell the stroke, or say that it is unknown."));
    // What nobody has said is not proposed either.
    m_places->setCurrentId(known ? std::optional(state.crank->crank->smallest()) : std::nullopt);
    m_cautions->setCautions(known || m_book.session().turningCautionsRead ? std::vector<Caution>{} : JobBook::turningCautions());
    showCheck();
}

void CrankPane::showCheck()
{
    const auto chosen = m_places->currentId();
    m_stands->setEnabled(chosen.has_value());
    if (!chosen) {
        m_check->clear();
        return;
    }
    const EngineDesign &design = m_book.state().frame->engine.design;
    const CrankReading saying = readCrank(design, Angle::ofSmallest(*chosen));
    m_check->setText(strokeCheckSentence(design, strokeCheck(design, saying.place.cylinder)));
}

void CrankPane::takeFocus()
{
    (m_stands->isEnabled() ? static_cast<QWidget *>(m_stands) : m_places)->setFocus(Qt::OtherFocusReason);
}

void CrankPane::answer(std::optional<Angle> crank)
{
    if (const auto logged = m_book.confirmCrank(crank); !logged) {
        m_message->refuse(sentence(logged.error()));
        return;
    }
    m_message->clear();
    Q_EMIT wanted({makePane<ValvePane>});
}

} // namespace asleft
