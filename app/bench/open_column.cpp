#include "bench/open_column.h"

#include "parts/heading.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"

#include <show/words.h>

#include <QHBoxLayout>
#include <QScrollArea>
#include <QVBoxLayout>

namespace asleft {

namespace {

/// The same item keeps its id from one state to the next, so that its row stays where it is.
qint64 idOf(const OpenItem &item)
{
    const qint64 subject = item.point ? item.point->key() : item.step ? item.step->key() : item.spec ? item.spec->key() : 0;
    return subject * 100 + qint64(item.kind);
}

/// As high as its rows: the three parts scroll together, not each for itself.
void fitToRows(RuledList &list)
{
    int height = 2;
    for (int row = 0; row < list.model()->rowCount(); ++row)
        height += list.sizeHintForRow(row);
    list.setFixedHeight(height);
}

} // namespace

OpenColumn::OpenColumn(Desk &desk, QWidget *parent) : QWidget(parent), m_desk(desk)
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(4);
    outer->addWidget(new Heading(tr("Still open"), TextSize::BodyStrong));
    outer->addSpacing(8);
    auto *scroll = new QScrollArea;
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setFocusPolicy(Qt::NoFocus);
    auto *inner = new QWidget;
    auto *column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    for (const Gate gate : {Gate::TurningTheCrank, Gate::FirstStart, Gate::HandOver}) {
        auto *line = new QHBoxLayout;
        line->addWidget(new Heading(gateName(gate), TextSize::SmallStrong), 1);
        Part part = buildPart(gate);
        line->addWidget(part.count);
        column->addLayout(line);
        column->addWidget(new Rule(Rule::Weight::Heavy));
        column->addWidget(part.list);
        column->addSpacing(12);
        m_parts.at(std::size_t(gate)) = part;
    }
    column->addStretch(1);
    scroll->setWidget(inner);
    outer->addWidget(scroll, 1);
}

OpenColumn::Part OpenColumn::buildPart(Gate gate)
{
    Part part;
    part.count = new Heading(QString(), TextSize::SmallStrong);
    part.rows = new RuledRows(this);
    part.list = new RuledList(tr("Still open %1").arg(gateName(gate)), part.rows);
    part.list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    connect(part.list, &RuledList::chosen, this, [this, part](qint64 id) { choose(part, id); });
    return part;
}

void OpenColumn::present(const JobState &state)
{
    const StillOpen open = stillOpen(state);
    m_items.clear();
    presentPart(m_parts.at(std::size_t(Gate::TurningTheCrank)), open.turning, state);
    presentPart(m_parts.at(std::size_t(Gate::FirstStart)), open.firstStart, state);
    presentPart(m_parts.at(std::size_t(Gate::HandOver)), open.handOver, state);
}

void OpenColumn::presentPart(Part &part, const std::vector<OpenItem> &items, const JobState &state)
{
    QList<RuledRow> rows;
    for (const OpenItem &item : items) {
        const OpenWords words = openWords(item, state, m_desk.garage().now());
        rows.append({.id = idOf(item), .title = words.title, .note = words.note, .right = {}});
        m_items.insert(idOf(item), item);
    }
    part.rows->setRows(rows);
    part.list->setCurrentId(std::nullopt);
    fitToRows(*part.list);
    part.count->setText(rows.isEmpty() ? tr("nothing") : QString::number(rows.size()));
}

void OpenColumn::choose(const Part &part, qint64 id)
{
    part.list->setCurrentId(std::nullopt);
    const auto item = m_items.constFind(id);
    if (item == m_items.constEnd())
        return;
    if (item->point)
        Q_EMIT pointWanted(*item->point);
    else if (item->step)
        Q_EMIT stepWanted(*item->step);
}

} // namespace asleft
