#include <forms/move_pane.h>

#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/vehicles_model.h>

#include <words/errors.h>
#include <words/times.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

RuledRow placeOf(const VehicleRow &vehicle)
{
    RuledRow row;
    row.id = vehicle.vehicle.id.key();
    row.title = QString::fromStdString(vehicle.vehicle.name);
    row.note = vehicle.engine ? MovePane::tr("in it now: %1").arg(engineWords(*vehicle.engine)) : MovePane::tr("no engine in it");
    row.right = QString::fromStdString(vehicle.vehicle.mark);
    return row;
}

} // namespace

QStringList stayWords(const std::vector<EngineStay> &stays, Moment now)
{
    QStringList words;
    for (const EngineStay &stay : stays) {
        const QString since = momentText(stay.since, now);
        words.prepend(stay.stand ? MovePane::tr("since %1 on the stand").arg(since)
                                 : MovePane::tr("since %1 in %2").arg(since, QString::fromStdString(stay.vehicleName)));
    }
    return words;
}

MovePane::MovePane(VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_vehicles(vehicles), m_head(new Heading({}, TextSize::Now)),
      m_where(new Heading({}, TextSize::Small, Heading::Tone::Quiet)), m_places(new RuledList(tr("Where the engine goes"), &m_placeRows)),
      m_whatHappens(new MessageLine), m_move(new KeyButton(tr("Move the engine"))), m_leave(new KeyButton(tr("Leave it where it is"))),
      m_stays(new Notes(tr("Where this engine has been")))
{
    buildLayout();
    keepFromWriting(vehicles.garage(), {m_move});
    connect(m_places, &RuledList::chosen, this, &MovePane::tell);
    connect(m_places, &RuledList::opened, this, [this] { m_move->setFocus(Qt::OtherFocusReason); });
    connect(m_move, &KeyButton::clicked, this, &MovePane::move);
    connect(m_leave, &KeyButton::clicked, this, &MovePane::left);
    auto *leaving = new QShortcut(QKeySequence(Qt::Key_Escape), this);
    leaving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(leaving, &QShortcut::activated, this, &MovePane::left);
    connect(&vehicles, &VehiclesModel::changed, this, &MovePane::fill);
}

void MovePane::buildLayout()
{
    auto *column = new QVBoxLayout;
    column->setSpacing(8);
    column->addWidget(m_head);
    column->addWidget(m_where);
    column->addWidget(new Rule);
    column->addWidget(m_places, 50);
    column->addSpacing(4);
    column->addWidget(m_whatHappens);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(m_move);
    keys->addWidget(m_leave);
    keys->addStretch(1);
    column->addLayout(keys);
    column->addStretch(1);
    m_head->setWordWrap(true);
    m_places->setFitted(true);
    m_move->setStrong(true);

    auto *past = new QVBoxLayout;
    past->setSpacing(8);
    past->addWidget(new Heading(tr("Where it has been"), TextSize::BodyStrong));
    past->addWidget(new Rule);
    past->addWidget(m_stays);
    past->addStretch(1);

    auto *columns = new QHBoxLayout(this);
    columns->setContentsMargins(0, 0, 0, 0);
    columns->setSpacing(18);
    columns->addLayout(column, 3);
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addLayout(past, 2);
}

const VehicleRow *MovePane::now() const
{
    return m_engine ? m_vehicles.withEngine(*m_engine) : nullptr;
}

const VehicleRow *MovePane::chosen() const
{
    const auto id = m_places->currentId();
    return id && *id != onStand ? m_vehicles.at(*id) : nullptr;
}

void MovePane::begin(EngineId engine)
{
    m_engine = engine;
    m_places->setCurrentId({});
    fill();
}

void MovePane::takeFocus()
{
    m_places->setFocus(Qt::OtherFocusReason);
}

void MovePane::fill()
{
    const VehicleRow *here = now();
    if (!here)
        return;
    QList<RuledRow> places;
    if (!here->vehicle.stand) {
        RuledRow stand;
        stand.id = onStand;
        stand.title = tr("Onto the stand");
        stand.note = tr("into no vehicle for now");
        places.append(stand);
    }
    for (const VehicleRow &vehicle : m_vehicles.vehicles())
        if (!vehicle.vehicle.stand && vehicle.vehicle.id != here->vehicle.id)
            places.append(placeOf(vehicle));
    m_placeRows.setRows(places);
    if (const auto id = m_places->currentId(); id && !m_placeRows.indexOf(*id).isValid())
        m_places->setCurrentId({});
    m_head->setText(tr("Move %1").arg(engineWords(*here->engine)));
    m_where->setText(here->vehicle.stand ? tr("it is on the stand") : tr("it is in %1").arg(rowName(*here)));
    QList<Notes::Note> notes;
    if (const auto stays = m_vehicles.stays(*m_engine))
        for (const QString &words : stayWords(*stays, m_vehicles.garage().now()))
            notes.append({{}, words});
    m_stays->setNotes(notes);
    tell();
}

void MovePane::tell()
{
    const VehicleRow *here = now();
    const auto id = m_places->currentId();
    m_move->setEnabled(here && id);
    if (!here || !id) {
        m_whatHappens->quiet(tr("Choose where it goes. Its specs, jobs and readings go with it."));
        return;
    }
    const QString engine = engineWords(*here->engine);
    const VehicleRow *there = chosen();
    if (!there)
        m_whatHappens->quiet(tr("%1 goes onto the stand; %2 is then without an engine. Specs, jobs and readings go with the engine.")
                                 .arg(engine, rowName(*here)));
    else if (there->engine)
        m_whatHappens->quiet(tr("%1 goes into %2; %3, which is in there now, goes onto the stand. Specs, jobs and readings go with their "
                                "engines.")
                                 .arg(engine, rowName(*there), engineWords(*there->engine)));
    else
        m_whatHappens->quiet(
            tr("%1 goes into %2, which has no engine now. Specs, jobs and readings go with the engine.").arg(engine, rowName(*there)));
}

void MovePane::move()
{
    const VehicleRow *here = now();
    const auto id = m_places->currentId();
    if (!here || !id)
        return;
    const EngineId engine = *m_engine;
    const QString name = engineWords(*here->engine);
    const VehicleRow *there = chosen();
    QString sentence = there ? tr("%1 is in %2 now.").arg(name, rowName(*there)) : tr("%1 is on the stand now.").arg(name);
    if (there && there->engine)
        sentence = tr("%1 %2 is on the stand.").arg(sentence, engineWords(*there->engine));
    const auto into = there ? std::optional(there->vehicle.id) : std::nullopt;
    if (const Done done = m_vehicles.move(engine, into); !done) {
        m_whatHappens->refuse(asleft::sentence(done.error()));
        return;
    }
    Q_EMIT moved(engine, sentence);
}

} // namespace asleft
