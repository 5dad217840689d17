#include <forms/engine_gap.h>

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/vehicles_model.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

EngineGap::EngineGap(VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_vehicles(vehicles), m_stand(new RuledList(tr("Engines on the stand"), &m_rows)),
      m_putIn(new KeyButton(tr("Put it in"))), m_describe(new KeyButton(tr("Describe a new engine")))
{
    buildLayout();
    keepFromWriting(vehicles.garage(), {m_putIn, m_describe});
    connect(m_stand, &RuledList::chosen, this, [this] { m_putIn->setEnabled(true); });
    connect(m_stand, &RuledList::opened, this, &EngineGap::putIn);
    connect(m_putIn, &KeyButton::clicked, this, &EngineGap::putIn);
    connect(m_describe, &KeyButton::clicked, this, &EngineGap::describeWanted);
    connect(&vehicles, &VehiclesModel::changed, this, &EngineGap::fill);
    fill();
}

void EngineGap::buildLayout()
{
    auto *head = new QHBoxLayout;
    head->setSpacing(14);
    head->addWidget(new Heading(tr("No engine in it"), TextSize::BodyStrong));
    head->addWidget(new Rule, 1, Qt::AlignVCenter);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(m_putIn);
    keys->addWidget(m_describe);
    keys->addStretch(1);
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(8);
    column->addLayout(head);
    column->addWidget(
        Heading::wrapped(tr("Put an engine in: one from the stand, or describe a new one."), TextSize::Body, Heading::Tone::Quiet));
    column->addWidget(m_stand, 50);
    column->addLayout(keys);
    column->addStretch(1);
    m_stand->setFitted(true);
    m_stand->setEmptyWords(tr("No engine is on the stand."));
}

void EngineGap::fill()
{
    QList<RuledRow> rows;
    for (const VehicleRow &row : m_vehicles.vehicles()) {
        if (!row.vehicle.stand || !row.engine)
            continue;
        RuledRow engine;
        engine.id = row.engine->id.key();
        engine.title = engineWords(*row.engine);
        engine.note = engineKind(row.engine->design);
        rows.append(engine);
    }
    m_rows.setRows(rows);
    if (m_stand->currentId() && !m_rows.indexOf(*m_stand->currentId()).isValid())
        m_stand->setCurrentId({});
    m_putIn->setEnabled(m_stand->currentId().has_value());
}

void EngineGap::putIn()
{
    if (const auto engine = m_stand->currentId())
        Q_EMIT putInWanted(EngineId(*engine));
}

} // namespace asleft
