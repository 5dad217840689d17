#include "bench/turn_sheet.h"

#include "bench/caution_words.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/message_line.h"
#include "parts/ruled_list.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int listStretch = 100; ///< the list takes its rows' room before the empty foot takes any

} // namespace

TurnSheet::TurnSheet(Desk &desk, JobBook &book, QWidget *parent) : QWidget(parent), m_desk(desk), m_book(book)
{
    build();
    connect(m_positions, &RuledList::chosen, this, &TurnSheet::showStep);
    connect(m_read, &KeyButton::clicked, this, [this] {
        const auto logged = m_book.readTurningCautions();
        if (!logged)
            m_message->refuse(sentence(logged.error()));
        showStep();
        takeFocus();
    });
    connect(m_turned, &KeyButton::clicked, this, &TurnSheet::turn);
    connect(m_elsewhere, &KeyButton::clicked, this, &TurnSheet::crankWanted);
    connect(m_back, &KeyButton::clicked, this, &TurnSheet::left);
}

void TurnSheet::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addWidget(new Heading(tr("Turn the crank"), TextSize::Now));
    m_rows = new RuledRows(this);
    m_positions = new RuledList(tr("Positions of the plan"), m_rows);
    m_positions->setFitted(true);
    column->addWidget(m_positions, listStretch);
    m_travel = new Heading({}, TextSize::BodyStrong);
    m_travel->setWordWrap(true);
    column->addWidget(m_travel);
    m_open = new Heading({}, TextSize::Body);
    m_open->setWordWrap(true);
    column->addWidget(m_open);
    m_cautions = new CautionWordsView;
    column->addWidget(m_cautions);
    m_message = new MessageLine;
    column->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    m_read = new KeyButton(tr("Read, and seen to"));
    m_turned = new KeyButton(tr("It is turned"));
    m_elsewhere = new KeyButton(tr("It stands elsewhere"));
    m_back = new KeyButton(tr("Back to the head"));
    m_back->setPlain(true);
    m_read->setStrong(true);
    m_turned->setStrong(true);
    for (KeyButton *key : {m_read, m_turned, m_elsewhere, m_back})
        keys->addWidget(key);
    keys->addStretch(1);
    column->addLayout(keys);
    column->addStretch(1);
}

std::optional<Angle> TurnSheet::target() const
{
    // By its place in the plan: a manual may print one angle in two lines.
    const auto id = m_positions->currentId();
    return id && *id < qint64(m_cranks.size()) ? std::optional(m_cranks[std::size_t(*id)]) : std::nullopt;
}

void TurnSheet::refresh()
{
    m_message->clear();
    showPositions();
    showStep();
}

void TurnSheet::showPositions()
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    QList<RuledRow> rows;
    m_cranks.clear();
    const CrankPlan plan = state.plan ? *state.plan : m_book.proposedPlan();
    for (const PlanPosition &position : plan.positions) {
        const bool stands = state.crank && state.crank->crank == position.crank;
        // The mark on the pulley is of no. 1 on most engines: what stands opposite helps to find it.
        const auto opposite = position.place.event == CrankEvent::Compression ? companion(design, position.place.cylinder) : std::nullopt;
        m_cranks.push_back(position.crank);
        rows.append({.id = rows.size(),
                     .title = placeName(design, position.place),
                     .note = QString::fromStdString(describePoints(design, position)),
                     .right = stands     ? tr("it stands here")
                              : opposite ? placeInText(design, {*opposite, CrankEvent::Overlap})
                                         : QString(),
                     .quiet = stands});
    }
    m_rows->setRows(rows);
    const NextAct next = nextValveAct(state);
    std::size_t wanted = 0;
    if (next.kind == NextAct::Kind::TurnCrank)
        wanted = *next.position;
    else if (const auto here = planPositionHere(state))
        wanted = (*here + 1) % plan.positions.size();
    if (!rows.isEmpty())
        m_positions->setCurrentId(rows.at(qsizetype(wanted)).id);
}

void TurnSheet::showStep()
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    const auto to = target();
    const bool known = to && state.crank && state.crank->crank;
    m_travel->setText(known ? travelSentence(design, *state.crank->crank, *to) + QChar::Space + overshotSentence() : QString());
    QStringList open;
    for (const OpenItem &item : stillOpen(state).turning)
        open.append(openWords(item, state, m_desk.garage().now()).title);
    QStringList words;
    if (!open.isEmpty())
        words.append(tr("Still open before turning: %1.").arg(open.join(QStringLiteral(", "))));
    QStringList unset;
    for (const SettingPoint &point : state.frame->engine.points)
        if (here(state, point.id) == Here::InPlan && !state.point(point.id).settled())
            unset.append(pointShort(*state.frame, point.id));
    if (!unset.isEmpty())
        words.append(tr("Set at this position and not settled yet: %1.").arg(unset.join(QStringLiteral(", "))));
    m_open->setText(words.join(QChar::Space));
    m_open->setVisible(!words.isEmpty());
    const bool read = m_book.sitting().turningCautionsRead;
    m_cautions->setCautions(read ? std::vector<Caution>{} : JobBook::turningCautions());
    m_read->setVisible(!read);
    m_turned->setVisible(read);
    m_turned->setText(to ? tr("It is turned: %1").arg(crankInText(design, to)) : tr("It is turned"));
    m_turned->setEnabled(to.has_value());
}

void TurnSheet::takeFocus()
{
    (m_book.sitting().turningCautionsRead ? m_turned : m_read)->setFocus(Qt::OtherFocusReason);
}

void TurnSheet::turn()
{
    const auto to = target();
    if (!to)
        return;
    const auto logged = m_book.turnCrank(*to);
    if (logged) {
        Q_EMIT turned();
        return;
    }
    m_message->refuse(sentence(logged.error()));
    if (logged.error().kind == ErrorKind::CrankNotConfirmed)
        Q_EMIT crankWanted();
}

} // namespace asleft
