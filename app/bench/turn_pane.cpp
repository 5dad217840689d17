#include <bench/turn_pane.h>

#include "caution_words.h"
#include "list_stretch.h"
#include <bench/crank_pane.h>
#include <bench/valve_pane.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/ruled_list.h>

#include <words/crank.h>
#include <words/errors.h>
#include <words/job.h>
#include <words/points.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

TurnPane::TurnPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_context(context), m_book(book)
{
    build();
    keepFromWriting(context.garage(), {m_read, m_turned, m_elsewhere});
    connect(m_positions, &RuledList::chosen, this, &TurnPane::showStep);
    connect(m_read, &KeyButton::clicked, this, [this] {
        const auto logged = m_book.readTurningCautions();
        if (!logged)
            m_message->refuse(sentence(logged.error()));
        showStep();
        takeFocus();
    });
    connect(m_turned, &KeyButton::clicked, this, &TurnPane::turn);
    connect(m_elsewhere, &KeyButton::clicked, this, [this] { Q_EMIT wanted({makePane<CrankPane>}); });
    connect(m_back, &KeyButton::clicked, this, [this] { Q_EMIT wanted({makePane<ValvePane>}); });
}

void TurnPane::build()
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
    m_how = Heading::wrapped({}, TextSize::Small);
    column->addWidget(m_how);
    m_open = new Heading({}, TextSize::Body);
    m_open->setWordWrap(true);
    column->addWidget(m_open);
    m_cautions = new CautionWordsView;
    column->addWidget(m_cautions);
    m_message = new MessageLine;
    column->addWidget(m_message);
    buildKeys(column);
    column->addStretch(1);
}

void TurnPane::buildKeys(QVBoxLayout *column)
{
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
}

const PlanPosition *TurnPane::target() const
{
    // By its place in the plan: a manual may print one angle in two lines.
    const auto id = m_positions->currentId();
    return id && *id < qint64(m_plan.positions.size()) ? &m_plan.positions[std::size_t(*id)] : nullptr;
}

std::optional<PaneWanted> TurnPane::asksFirst()
{
    const JobState &state = m_book.state();
    const auto open = openNuts(state);
    if (open.empty())
        return m_book.session().crankConfirmed ? std::nullopt : std::optional(PaneWanted{makePane<CrankPane>});
    QStringList names;
    for (const PointId point : open)
        names.append(pointShort(*state.frame, point));
    const Error nutsOpen{ErrorKind::NutStillOpen, {names.join(QStringLiteral(", ")).toStdString()}};
    return PaneWanted{makePane<ValvePane>, open.front(), {}, sentence(nutsOpen)};
}

void TurnPane::open()
{
    m_message->clear();
    m_refused.reset();
    showPositions();
    if (!m_plan.positions.empty())
        m_positions->setCurrentId(qint64(nextPosition()));
    showStep();
}

void TurnPane::refresh()
{
    const auto until = bleedDownUntil(m_book.state());
    const bool over = !until || *until <= m_context.garage().now();
    if (m_refused && over) {
        m_refused.reset();
        m_message->clear();
    }
    showPositions();
    showStep();
}

void TurnPane::showPositions()
{
    const JobState &state = m_book.state();
    const EngineDesign &design = state.frame->engine.design;
    m_plan = state.plan ? *state.plan : m_book.proposedPlan();
    QList<RuledRow> rows;
    for (const PlanPosition &position : m_plan.positions) {
        const bool stands = state.crank && state.crank->crank == inCycle(design, position.crank);
        // The mark on the pulley is of no. 1 on most engines: what stands opposite helps to find it.
        const auto opposite = position.place.event == CrankEvent::Compression ? companion(design, position.place.cylinder) : std::nullopt;
        rows.append({.id = rows.size(),
                     .title = positionName(design, position),
                     .note = QString::fromStdString(describePoints(design, position)),
                     .right = stands     ? tr("it stands here")
                              : opposite ? crankPositionInText(design, {*opposite, CrankEvent::Overlap})
                                         : QString(),
                     .quiet = stands});
    }
    m_rows->setRows(rows);
}

std::size_t TurnPane::nextPosition() const
{
    const NextAct next = nextValveAct(m_book.state());
    if (const auto *turn = std::get_if<next::TurnCrank>(&next))
        return turn->position;
    const auto here = planPositionHere(m_book.state());
    return here ? (*here + 1) % m_plan.positions.size() : 0;
}

/// How far and which way; how the place is known when it comes; what the pinion does, and what to do if it went past.
void TurnPane::showWay()
{
    const JobState &state = m_book.state();
    const PlanPosition *to = target();
    const bool known = to && state.crank && state.crank->crank;
    m_travel->setVisible(known);
    m_how->setVisible(known);
    if (!known)
        return;
    const EngineDesign &design = state.frame->engine.design;
    const Angle from = *state.crank->crank;
    const auto joined = [](QStringList words) {
        words.removeAll(QString());
        return words.join(QChar::Space);
    };
    m_travel->setText(joined({travelSentence(design, from, to->crank), findingSentence(design, *to)}));
    m_how->setText(joined({pinionSentence(design, from, to->crank), overshotSentence()}));
}

QString TurnPane::whatIsOpen() const
{
    const JobState &state = m_book.state();
    const Moment now = m_context.garage().now();
    QStringList open;
    for (const OpenItem &item : stillOpen(state, now).turning)
        open.append(openWords(item, state, now).title);
    QStringList words;
    if (!open.isEmpty())
        words.append(tr("Still open before turning: %1.").arg(open.join(QStringLiteral(", "))));
    QStringList unset;
    for (const SettingPoint &point : state.frame->engine.points)
        if (here(state, point.id) == Here::InPlan && !state.point(point.id).settled())
            unset.append(pointShort(*state.frame, point.id));
    if (!unset.isEmpty())
        words.append(tr("Set at this position and not settled yet: %1.").arg(unset.join(QStringLiteral(", "))));
    return words.join(QChar::Space);
}

void TurnPane::showStep()
{
    const EngineDesign &design = m_book.state().frame->engine.design;
    const PlanPosition *to = target();
    showWay();
    m_open->setText(whatIsOpen());
    m_open->setVisible(!m_open->text().isEmpty());
    const bool read = m_book.session().turningCautionsRead;
    m_cautions->setCautions(read ? std::vector<Caution>{} : JobBook::turningCautions());
    m_read->setVisible(!read);
    m_turned->setVisible(read);
    m_turned->setText(to ? tr("It is turned: %1").arg(positionInText(design, *to)) : tr("It is turned"));
    m_turned->setEnabled(to != nullptr);
}

void TurnPane::takeFocus()
{
    (m_book.session().turningCautionsRead ? m_turned : m_read)->setFocus(Qt::OtherFocusReason);
}

void TurnPane::turn()
{
    const PlanPosition *to = target();
    if (!to)
        return;
    const auto logged = m_book.turnCrank(to->crank, m_refused == to->crank);
    m_refused.reset();
    if (logged) {
        Q_EMIT wanted({makePane<ValvePane>});
        return;
    }
    QString why = sentence(logged.error());
    if (logged.error().kind == ErrorKind::StillBleedingDown) {
        m_refused = to->crank;
        why = tr("%1 “It is turned” once more logs it all the same.").arg(why);
    }
    m_message->refuse(why);
    if (logged.error().kind == ErrorKind::CrankNotConfirmed)
        Q_EMIT wanted({makePane<CrankPane>});
}

} // namespace asleft
