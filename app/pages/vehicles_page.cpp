#include <pages/vehicles_page.h>

#include <forms/engine_gap.h>
#include <forms/move_pane.h>
#include <forms/vehicle_form.h>
#include <parts/ink_of.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/page_head.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>
#include <parts/vehicles_model.h>

#include <words/vehicles.h>

#include <QHBoxLayout>
#include <QScrollBar>
#include <QShortcut>
#include <QStackedLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int vehicleListWidth = 236;
/// In the place of a row's id: the engine that is typed for the stand.
constexpr qint64 newEngine = 0;

} // namespace

VehiclesPage::VehiclesPage(AppContext &context, VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_context(context), m_vehicles(vehicles), m_head(new PageHead(tr("Vehicles"))),
      m_list(new RuledList(tr("List of vehicles"), vehicles.rows())), m_new(new KeyButton(tr("New vehicle"))),
      m_newEngine(new KeyButton(tr("New engine"))), m_scroll(nullptr), m_form(new VehicleForm(context.mark())),
      m_gap(new EngineGap(vehicles)), m_movePane(new MovePane(vehicles)), m_stack(new QStackedLayout), m_message(new MessageLine),
      m_save(new KeyButton(tr("Save"))), m_asStored(new KeyButton(tr("As stored"))), m_specs(new KeyButton(tr("Specs of this engine"))),
      m_job(new KeyButton(tr("New job")))
{
    buildLayout();
    wire();
    wireEngine();
    keepFromWriting(context.garage(), {m_new, m_newEngine, m_save, m_job, m_form->readMeterKey(), m_form->moveKey()});
    if (m_vehicles.vehicles().empty())
        beginNew();
    else
        choose(idOf(m_vehicles.vehicles().front()));
}

void VehiclesPage::buildLayout()
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(paneMargin - 8, 12, paneMargin, 12);
    columns->setSpacing(18);
    columns->addWidget(listColumn());
    columns->addWidget(new Rule(Rule::Weight::Fine, Qt::Vertical));
    columns->addWidget(sheetColumn(), 1);
    auto *page = new QVBoxLayout(this);
    page->setContentsMargins(0, 0, 0, 0);
    page->setSpacing(0);
    page->addWidget(m_head);
    page->addLayout(columns, 1);
}

QWidget *VehiclesPage::listColumn()
{
    auto *column = new QWidget;
    column->setFixedWidth(vehicleListWidth);
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(m_list, 1);
    auto *keys = new QVBoxLayout;
    keys->setContentsMargins(8, 0, 0, 0);
    keys->addWidget(m_new);
    keys->addWidget(m_newEngine);
    rows->addLayout(keys);
    m_list->setEmptyWords(tr("No vehicles yet. The first one is typed on the right."));
    m_newEngine->setToolTip(tr("An engine that is in no vehicle; it goes onto the stand."));
    return column;
}

QWidget *VehiclesPage::sheetColumn()
{
    auto *sheet = new QWidget;
    auto *parts = new QVBoxLayout(sheet);
    parts->setContentsMargins(0, 0, 0, 0);
    parts->setSpacing(16);
    parts->addWidget(m_form);
    parts->addWidget(m_gap);
    parts->addStretch(1);
    auto *typing = new QWidget;
    auto *rows = new QVBoxLayout(typing);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    m_scroll = new ScrollPane(sheet);
    rows->addWidget(m_scroll, 1);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(m_save);
    keys->addWidget(m_asStored);
    keys->addStretch(1);
    keys->addWidget(m_specs);
    keys->addWidget(m_job);
    rows->addWidget(m_message);
    rows->addLayout(keys);
    m_save->setStrong(true);
    m_save->setToolTip(tr("Ctrl+S"));
    m_asStored->setPlain(true);
    m_asStored->setToolTip(tr("Forgets what is typed here and was not saved."));
    auto *column = new QWidget;
    column->setLayout(m_stack);
    m_stack->addWidget(typing);
    m_stack->addWidget(m_movePane);
    m_stack->setContentsMargins(0, 0, 0, 0);
    return column;
}

void VehiclesPage::wire()
{
    connect(m_list, &RuledList::chosen, this, &VehiclesPage::choose);
    connect(m_new, &KeyButton::clicked, this, &VehiclesPage::beginNew);
    connect(m_newEngine, &KeyButton::clicked, this, &VehiclesPage::beginNewEngine);
    connect(m_form, &VehicleForm::edited, this, [this] {
        m_message->clear();
        keepDraft();
    });
    connect(m_form, &VehicleForm::finished, this, &VehiclesPage::save);
    connect(m_save, &KeyButton::clicked, this, &VehiclesPage::save);
    connect(m_asStored, &KeyButton::clicked, this, &VehiclesPage::forgetDraft);
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(saving, &QShortcut::activated, this, &VehiclesPage::save);
    connect(m_form->readMeterKey(), &KeyButton::clicked, this, &VehiclesPage::readMeter);
    connect(&m_vehicles, &VehiclesModel::changed, this, &VehiclesPage::vehiclesChanged);
}

const VehicleRow *VehiclesPage::row() const
{
    return m_current ? m_vehicles.at(*m_current) : nullptr;
}

void VehiclesPage::beginNew()
{
    m_current.reset();
    m_message->clear();
    showPane();
    m_form->focusFirst();
}

void VehiclesPage::beginNewEngine()
{
    choose(newEngine);
    m_form->focusFirst();
}

void VehiclesPage::choose(qint64 row)
{
    m_current = row;
    m_message->clear();
    showPane();
    // Another one is read from its name on.
    m_scroll->verticalScrollBar()->setValue(0);
}

void VehiclesPage::showPane()
{
    const VehicleRow *shown = row();
    m_stack->setCurrentIndex(0);
    m_form->setLastMeter(shown ? shown->meter : std::nullopt, shown ? m_vehicles.meterNote(*shown) : QString());
    if (const auto draft = m_drafts.find(m_current); draft != m_drafts.end()) {
        m_shownEngine = draft->second.engine;
        m_form->setTyped(draft->second.typed);
    } else {
        m_shownEngine = shown && shown->engine ? std::optional(shown->engine->id) : std::nullopt;
        VehicleTyped blank;
        blank.about = m_current == newEngine ? VehicleTyped::About::Engine : VehicleTyped::About::Both;
        m_form->setTyped(shown ? typedOf(*shown, m_context.mark()) : blank);
    }
    m_list->setCurrentId(m_current);
    showHead();
    showKeys();
}

void VehiclesPage::showHead()
{
    const VehicleRow *shown = row();
    if (!shown) {
        m_head->setBeside(m_current ? tr("new engine") : tr("new vehicle"));
        m_head->setRight({}, {});
    } else {
        m_head->setBeside(rowName(*shown));
        m_head->setRight(shown->meter ? meterText(*shown->meter) : QString(),
                         shown->vehicle.stand ? tr("on the stand") : QString::fromStdString(shown->vehicle.mark));
    }
    QString place;
    // Of an engine that never moved there is nothing to tell.
    if (const auto stays = m_shownEngine ? m_vehicles.stays(*m_shownEngine) : std::vector<EngineStay>{}; stays && stays->size() > 1) {
        const EngineStay &before = stays->at(stays->size() - 2);
        const QString past =
            before.stand ? tr("before that on the stand") : tr("before that in %1").arg(QString::fromStdString(before.vehicleName));
        place = QStringLiteral("%1, %2").arg(tr("here since %1").arg(momentText(stays->back().since, m_context.garage().now())), past);
    }
    m_form->setPlace(place);
}

void VehiclesPage::showKeys()
{
    const VehicleRow *shown = row();
    const bool typing = m_drafts.contains(m_current);
    const bool engine = shown && shown->engine;
    m_save->setText(describing() ? tr("Put this engine in")
                    : shown      ? tr("Save changes")
                    : m_current  ? tr("Save engine")
                                 : tr("Save vehicle"));
    m_gap->setVisible(shown && !engine && m_form->typed().about == VehicleTyped::About::Vehicle);
    m_asStored->setVisible(shown && typing);
    m_form->readMeterKey()->setVisible(shown && !shown->vehicle.stand);
    m_form->moveKey()->setVisible(engine);
    m_specs->setVisible(engine);
    m_job->setVisible(engine);
}

void VehiclesPage::keepDraft()
{
    const VehicleRow *shown = row();
    if (shown && m_form->typed() == typedOf(*shown, m_context.mark()))
        m_drafts.erase(m_current);
    else
        m_drafts[m_current] = {m_form->typed(), m_shownEngine};
    showKeys();
}

void VehiclesPage::forgetDraft()
{
    m_drafts.erase(m_current);
    m_message->clear();
    showPane();
    m_form->focusFirst();
}

void VehiclesPage::save()
{
    if (m_stack->currentIndex() != 0)
        return;
    const auto text = m_form->take();
    if (!text) {
        m_message->refuse(tr("Not saved yet: see the marked field."));
        return;
    }
    const VehicleRow *shown = row();
    if (!shown && !m_current)
        saveNew(*text);
    else if (!shown || describing())
        saveEngine(shown ? std::optional(shown->vehicle.id) : std::nullopt, *text);
    else
        saveChanged(*shown, *text);
}

void VehiclesPage::saveNew(const VehicleText &text)
{
    const auto added = m_vehicles.add(text, m_context.mark());
    if (!added) {
        refuse(added.error());
        return;
    }
    m_drafts.erase(std::nullopt);
    choose(added->vehicle.key());
    m_message->done(tr("%1 is in the garage.").arg(QString::fromStdString(text.name)));
    m_job->setFocus(Qt::OtherFocusReason);
}

void VehiclesPage::saveChanged(const VehicleRow &row, const VehicleText &text)
{
    const std::optional<qint64> id = m_current;
    if (const Done changed = m_vehicles.change(row.vehicle.id, m_shownEngine, text, m_context.mark()); !changed) {
        refuse(changed.error());
        return;
    }
    m_drafts.erase(id);
    showPane();
    m_message->done(tr("Saved."));
}

void VehiclesPage::readMeter()
{
    ValueField *meter = m_form->field(VehicleField::Meter);
    const VehicleRow *shown = row();
    if (!shown)
        return;
    const Done read = m_vehicles.readMeter(*shown, meter->text(), m_form->meterUnit(), m_form->meterReplaced());
    if (!read) {
        m_form->refuseMeter(read.error());
        return;
    }
    // The rest of what is typed stays; the meter has been taken out of it.
    VehicleTyped rest = m_form->typed();
    rest.texts.erase(VehicleField::Meter);
    rest.meterReplaced = false;
    m_form->setTyped(rest);
    // The key just pressed goes dead, and the keyboard would fall on the next one, which moves the engine.
    meter->edit()->setFocus(Qt::OtherFocusReason);
    keepDraft();
    m_message->done(tr("The meter is read."));
}

void VehiclesPage::refuse(const Error &error)
{
    const bool atField = m_form->refuse(error);
    m_message->refuse(atField ? tr("Not saved yet: see the marked field.") : sentence(error));
}

void VehiclesPage::vehiclesChanged()
{
    if (m_vehicles.failure())
        m_message->refuse(sentence(*m_vehicles.failure()));
    followEngine();
    // What is being typed stays as it is; only what stands around it is told anew.
    if (!m_drafts.contains(m_current)) {
        const int open = m_stack->currentIndex();
        showPane();
        m_stack->setCurrentIndex(open);
        return;
    }
    if (const VehicleRow *shown = row())
        m_form->setLastMeter(shown->meter, m_vehicles.meterNote(*shown));
    showHead();
    showKeys();
}

void VehiclesPage::wireEngine()
{
    connect(m_specs, &KeyButton::clicked, this, [this] {
        if (const VehicleRow *shown = row(); shown && shown->engine)
            Q_EMIT specsWanted(shown->engine->id);
    });
    connect(m_job, &KeyButton::clicked, this, [this] {
        if (const VehicleRow *shown = row(); shown && shown->engine)
            Q_EMIT newJobWanted(shown->engine->id);
    });
    connect(m_form->moveKey(), &KeyButton::clicked, this, &VehiclesPage::beginMove);
    connect(m_movePane, &MovePane::moved, this, &VehiclesPage::engineMoved);
    connect(m_movePane, &MovePane::left, this, [this] {
        m_stack->setCurrentIndex(0);
        m_form->moveKey()->setFocus(Qt::OtherFocusReason);
    });
    connect(m_gap, &EngineGap::putInWanted, this, &VehiclesPage::putIn);
    connect(m_gap, &EngineGap::describeWanted, this, &VehiclesPage::describeEngine);
}

/// Whether a new engine is typed for the vehicle that is shown.
bool VehiclesPage::describing() const
{
    const VehicleRow *shown = row();
    return shown && !shown->vehicle.stand && !m_shownEngine && m_form->typed().about == VehicleTyped::About::Engine;
}

/// What is typed and not saved would be torn in two by a move.
bool VehiclesPage::mayMove()
{
    if (!m_drafts.contains(m_current))
        return true;
    m_message->refuse(tr("What is typed here is not saved yet: save it or go back to what is stored, then move the engine."));
    return false;
}

void VehiclesPage::beginMove()
{
    const VehicleRow *shown = row();
    if (!shown || !shown->engine || !mayMove())
        return;
    m_message->clear();
    m_movePane->begin(shown->engine->id);
    m_stack->setCurrentWidget(m_movePane);
    m_movePane->takeFocus();
}

void VehiclesPage::putIn(EngineId engine)
{
    const VehicleRow *shown = row();
    const VehicleRow *source = m_vehicles.withEngine(engine);
    if (!shown || !source || !mayMove())
        return;
    const QString sentence = tr("%1 is in %2 now.").arg(engineWords(*source->engine), rowName(*shown));
    if (const Done moved = m_vehicles.move(engine, shown->vehicle.id); !moved)
        refuse(moved.error());
    else
        engineMoved(engine, sentence);
}

void VehiclesPage::describeEngine()
{
    if (!mayMove())
        return;
    VehicleTyped blank;
    blank.about = VehicleTyped::About::Engine;
    m_drafts[m_current] = {blank, std::nullopt};
    m_message->clear();
    showPane();
    m_form->focusFirst();
}

void VehiclesPage::engineMoved(EngineId engine, const QString &sentence)
{
    if (const VehicleRow *now = m_vehicles.withEngine(engine))
        choose(idOf(*now));
    m_message->done(sentence);
    m_list->setFocus(Qt::OtherFocusReason);
}

void VehiclesPage::saveEngine(std::optional<VehicleId> into, const VehicleText &text)
{
    const auto added = m_vehicles.addEngine(into, text, m_context.mark());
    if (!added) {
        refuse(added.error());
        return;
    }
    m_drafts.erase(m_current);
    const VehicleRow *now = m_vehicles.withEngine(*added);
    if (!now)
        return;
    choose(idOf(*now));
    const QString name = engineWords(*now->engine);
    m_message->done(into ? tr("%1 is in %2 now.").arg(name, rowName(*now)) : tr("%1 is on the stand.").arg(name));
    m_job->setFocus(Qt::OtherFocusReason);
}

/// The engine on the stand that is shown has gone into a vehicle meanwhile: the sheet goes with it, and what was typed of it too.
void VehiclesPage::followEngine()
{
    const VehicleRow *now = m_shownEngine && !row() ? m_vehicles.withEngine(*m_shownEngine) : nullptr;
    if (!now)
        return;
    const auto typed = m_drafts.extract(m_current);
    m_current = idOf(*now);
    if (typed.empty() || m_drafts.contains(m_current))
        return;
    Draft draft = typed.mapped();
    const VehicleTyped stored = typedOf(*now, m_context.mark());
    draft.typed.about = stored.about;
    draft.typed.meterUnit = stored.meterUnit;
    for (const VehicleField field : {VehicleField::Name, VehicleField::Mark, VehicleField::Number})
        draft.typed.texts[field] = stored.text(field);
    m_drafts.emplace(m_current, std::move(draft));
    showPane();
}

} // namespace asleft
