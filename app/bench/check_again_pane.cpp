#include <bench/check_again_pane.h>

#include "list_stretch.h"
#include <bench/valve_pane.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/read_only.h>
#include <parts/ruled_list.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/points.h>
#include <words/readings.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

using Reach = CheckAgainPane::Reach;

constexpr Reach everyReach[] = {Reach::ThisPoint, Reach::Cylinder, Reach::Bank, Reach::AllLeft};

/// What each kind of work moves as a rule.
Reach usualReach(Disturbance cause)
{
    switch (cause) {
    case Disturbance::HeadTightened:
    case Disturbance::RockersTightened: return Reach::Bank;
    case Disturbance::TimingMoved: return Reach::AllLeft;
    case Disturbance::ValveOrSeatCut:
    case Disturbance::BridgeSet: return Reach::Cylinder;
    case Disturbance::Other: break;
    }
    return Reach::ThisPoint;
}

QList<Disturbance> causesOf(const EngineDesign &design)
{
    QList<Disturbance> causes{Disturbance::HeadTightened, Disturbance::RockersTightened, Disturbance::TimingMoved,
                              Disturbance::ValveOrSeatCut};
    if (design.train.bridgeScrews)
        causes.append(Disturbance::BridgeSet);
    causes.append(Disturbance::Other);
    return causes;
}

std::size_t bankOf(const EngineDesign &design, Cylinder cylinder)
{
    const auto holds = [cylinder](const auto &bank) { return std::ranges::count(bank, cylinder) > 0; };
    return std::size_t(std::ranges::find_if(design.banks, holds) - design.banks.begin());
}

} // namespace

CheckAgainPane::CheckAgainPane(AppContext &context, JobBook &book, QWidget *parent) : Pane(parent), m_book(book)
{
    build();
    keepFromWriting(context.garage(), {m_log});
    connect(m_causes, &RuledList::chosen, this, [this] { choose(cause()); });
    connect(m_causes, &RuledList::opened, this, [this] { m_reach->takeFocus(); });
    connect(m_reach, &ChoiceKeys::chosen, this, [this] {
        m_reachChosen = true;
        m_message->clear();
        showNames();
    });
    connect(m_words, &ValueField::entered, this, &CheckAgainPane::log);
    connect(m_log, &KeyButton::clicked, this, &CheckAgainPane::log);
    connect(m_back, &KeyButton::clicked, this, [this] { Q_EMIT wanted({makePane<ValvePane>}); });
}

void CheckAgainPane::build()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    m_title = Heading::wrapped(tr("What was done since may have moved what is left"), TextSize::Now);
    column->addWidget(m_title);
    auto *rows = new RuledRows(this);
    QList<RuledRow> causes;
    for (const Disturbance cause : causesOf(m_book.state().frame->engine.design))
        causes.append({.id = qint64(cause), .title = disturbanceName(cause), .note = {}, .right = {}});
    rows->setRows(causes);
    m_causes = new RuledList(tr("What was done"), rows);
    m_causes->setFitted(true);
    column->addWidget(m_causes, listStretch);
    m_reach = new ChoiceKeys(tr("Check again"), {tr("this point"), tr("its cylinder"), tr("its bank"), tr("all that are left")});
    column->addWidget(m_reach);
    m_names = Heading::wrapped({}, TextSize::Body);
    column->addWidget(m_names);
    m_words = new ValueField(tr("In your words; may be empty"));
    column->addWidget(m_words);
    m_message = new MessageLine;
    column->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    m_log = new KeyButton(tr("Check them again"));
    m_log->setStrong(true);
    m_back = new KeyButton(tr("Back to the head"));
    m_back->setPlain(true);
    keys->addWidget(m_log);
    keys->addWidget(m_back);
    keys->addStretch(1);
    column->addLayout(keys);
    column->addStretch(1);
}

void CheckAgainPane::open()
{
    m_point.reset();
    m_reachChosen = false;
    m_words->setText({});
    m_message->clear();
    const auto &causes = static_cast<RuledRows *>(m_causes->model())->rows();
    m_causes->setCurrentId(causes.front().id);
    choose(cause());
}

Disturbance CheckAgainPane::cause() const
{
    return Disturbance(m_causes->currentId().value_or(qint64(Disturbance::Other)));
}

bool CheckAgainPane::isWithin(const SettingPoint &point, Reach reach) const
{
    if (reach == Reach::AllLeft)
        return true;
    const Engine &engine = m_book.state().frame->engine;
    const SettingPoint *inHand = m_point ? m_book.state().frame->point(*m_point) : nullptr;
    if (!inHand)
        return false;
    if (reach == Reach::ThisPoint)
        return point.id == inHand->id;
    if (reach == Reach::Cylinder)
        return point.adjuster.cylinder == inHand->adjuster.cylinder;
    return bankOf(engine.design, point.adjuster.cylinder) == bankOf(engine.design, inHand->adjuster.cylinder);
}

std::vector<PointId> CheckAgainPane::leftWithin(Reach reach) const
{
    std::vector<PointId> points;
    for (const SettingPoint &point : m_book.state().frame->engine.points)
        if (m_book.state().point(point.id).stage == PointStage::Left && isWithin(point, reach))
            points.push_back(point.id);
    return points;
}

void CheckAgainPane::choose(Disturbance cause)
{
    m_message->clear();
    if (!m_reachChosen) {
        // As far as such work goes, but not to where nothing is left.
        auto reach = std::ranges::find(everyReach, usualReach(cause));
        while (reach + 1 != std::end(everyReach) && leftWithin(*reach).empty())
            ++reach;
        m_reach->setChoice(int(*reach));
    }
    showNames();
}

void CheckAgainPane::takeUp(const Subject &about)
{
    if (const auto *point = std::get_if<PointId>(&about))
        m_point = *point;
    choose(cause());
}

void CheckAgainPane::refresh()
{
    showNames();
}

void CheckAgainPane::showNames()
{
    for (const Reach reach : everyReach)
        m_reach->key(int(reach))->setEnabled(!leftWithin(reach).empty());
    QStringList names;
    for (const PointId point : leftWithin(Reach(m_reach->choice())))
        names.append(pointShort(*m_book.state().frame, point));
    m_names->setText(names.isEmpty()
                         ? tr("None of them is left: there is nothing to check again.")
                         : tr("%1: %2", "how many points, their names").arg(names.size()).arg(names.join(QStringLiteral(", "))));
    m_log->setEnabled(!names.isEmpty());
}

void CheckAgainPane::log()
{
    if (!m_log->isEnabled())
        return;
    const auto done = m_book.sendToCheckAgain(leftWithin(Reach(m_reach->choice())), cause(), m_words->text().toStdString());
    if (!done)
        m_message->refuse(sentence(done.error()));
    else
        Q_EMIT wanted({makePane<ValvePane>, {}, *done});
}

void CheckAgainPane::takeFocus()
{
    m_causes->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
