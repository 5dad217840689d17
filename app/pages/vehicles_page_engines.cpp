// How engines are moved, put in and described on the page of vehicles.
#include <forms/engine_gap.h>
#include <forms/move_pane.h>
#include <forms/vehicle_form.h>
#include <pages/vehicles_page.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/ruled_list.h>
#include <parts/vehicles_model.h>

#include <QStackedLayout>

namespace asleft {

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
