#include "pages/vehicles_page.h"

#include "pages/vehicle_form.h"
#include "pages/vehicles_model.h"
#include "parts/ink_of.h"
#include "parts/key_button.h"
#include "parts/rule.h"
#include "parts/ruled_list.h"
#include "parts/scroll_sheet.h"
#include "parts/sheet_head.h"

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

namespace asleft {

namespace {

constexpr int listWidth = 236;

} // namespace

VehiclesPage::VehiclesPage(Desk &desk, VehiclesModel &vehicles, QWidget *parent)
    : QWidget(parent), m_desk(desk), m_vehicles(vehicles), m_head(new SheetHead(tr("Vehicles"))),
      m_list(new RuledList(tr("List of vehicles"), vehicles.rows())), m_new(new KeyButton(tr("New vehicle"))),
      m_form(new VehicleForm(desk.mark())), m_message(new MessageLine), m_save(new KeyButton(tr("Save"))),
      m_readMeter(new KeyButton(tr("Read the meter"))), m_specs(new KeyButton(tr("Specs of this engine"))),
      m_job(new KeyButton(tr("New job")))
{
    lay();
    wire();
    if (m_vehicles.vehicles().empty())
        beginNew();
    else
        choose(m_vehicles.vehicles().front().vehicle.id.key());
}

void VehiclesPage::lay()
{
    auto *columns = new QHBoxLayout;
    columns->setContentsMargins(sheetMargin - 8, 12, sheetMargin, 12);
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
    column->setFixedWidth(listWidth);
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->addWidget(m_list, 1);
    auto *keys = new QHBoxLayout;
    keys->setContentsMargins(8, 0, 0, 0);
    keys->addWidget(m_new, 1);
    rows->addLayout(keys);
    m_list->setEmptyWords(tr("No vehicles yet. The first one is typed on the right."));
    return column;
}

QWidget *VehiclesPage::sheetColumn()
{
    auto *column = new QWidget;
    auto *rows = new QVBoxLayout(column);
    rows->setContentsMargins(0, 0, 0, 0);
    rows->setSpacing(8);
    rows->addWidget(new ScrollSheet(m_form), 1);
    rows->addWidget(m_message);
    auto *keys = new QHBoxLayout;
    keys->setSpacing(10);
    keys->addWidget(m_save);
    keys->addWidget(m_readMeter);
    keys->addStretch(1);
    keys->addWidget(m_specs);
    keys->addWidget(m_job);
    rows->addLayout(keys);
    m_save->setStrong(true);
    m_save->setToolTip(tr("Ctrl+S"));
    return column;
}

void VehiclesPage::wire()
{
    connect(m_list, &RuledList::chosen, this, &VehiclesPage::choose);
    connect(m_new, &KeyButton::clicked, this, &VehiclesPage::beginNew);
    connect(m_form, &VehicleForm::edited, this, [this] {
        m_message->clear();
        keepDraft();
    });
    connect(m_form, &VehicleForm::finished, this, &VehiclesPage::save);
    connect(m_save, &KeyButton::clicked, this, &VehiclesPage::save);
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(saving, &QShortcut::activated, this, &VehiclesPage::save);
    connect(m_readMeter, &KeyButton::clicked, this, &VehiclesPage::readMeter);
    connect(m_specs, &KeyButton::clicked, this, [this] {
        if (const VehicleRow *shown = row())
            Q_EMIT specsWanted(shown->engine.id);
    });
    connect(m_job, &KeyButton::clicked, this, [this] {
        if (const VehicleRow *shown = row())
            Q_EMIT newJobWanted(shown->vehicle.id);
    });
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
    showSheet();
    m_form->focusFirst();
}

void VehiclesPage::choose(qint64 vehicle)
{
    m_current = vehicle;
    m_message->clear();
    showSheet();
}

void VehiclesPage::showSheet()
{
    const VehicleRow *shown = row();
    const auto draft = m_drafts.find(m_current);
    if (draft != m_drafts.end())
        m_form->setTyped(draft->second);
    else
        m_form->setTyped(shown ? typedOf(*shown, m_desk.mark()) : VehicleTyped{});
    m_form->setMeterNote(shown && shown->meter ? tr("last read %1").arg(meterText(*shown->meter)) : QString());
    m_list->setCurrentId(m_current);
    m_head->setBeside(shown ? QString::fromStdString(shown->vehicle.name) : tr("new vehicle"));
    m_head->setRight(shown && shown->meter ? meterText(*shown->meter) : QString(),
                     shown ? QString::fromStdString(shown->vehicle.mark) : QString());
    m_save->setText(shown ? tr("Save changes") : tr("Save vehicle"));
    for (KeyButton *key : {m_readMeter, m_specs, m_job})
        key->setVisible(shown != nullptr);
}

void VehiclesPage::keepDraft()
{
    m_drafts[m_current] = m_form->typed();
}

void VehiclesPage::save()
{
    const auto text = m_form->take();
    if (!text) {
        m_message->refuse(tr("Not saved yet: see the marked field."));
        return;
    }
    const VehicleRow *shown = row();
    if (shown)
        saveChanged(*shown, *text);
    else
        saveNew(*text);
}

void VehiclesPage::saveNew(const VehicleText &text)
{
    const auto added = m_vehicles.add(text, m_desk.mark());
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
    if (const Done changed = m_vehicles.change(row, text, m_desk.mark()); !changed) {
        refuse(changed.error());
        return;
    }
    m_drafts.erase(id);
    showSheet();
    m_message->done(tr("Saved."));
}

void VehiclesPage::readMeter()
{
    ValueField *meter = m_form->field(VehicleField::Meter);
    const VehicleRow *shown = row();
    if (!shown)
        return;
    if (const Done read = m_vehicles.readMeter(*shown, meter->text(), m_form->meterUnit()); !read) {
        meter->refuse(sentence(read.error()));
        meter->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    meter->setText({});
    meter->accept();
    const bool onlyMeter = m_form->typed() == typedOf(*row(), m_desk.mark());
    if (onlyMeter)
        m_drafts.erase(m_current);
    else
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
    // What is being typed stays as it is; only what stands around it is told anew.
    const bool typing = m_drafts.contains(m_current);
    if (!typing) {
        showSheet();
        return;
    }
    if (const VehicleRow *shown = row())
        m_form->setMeterNote(shown->meter ? tr("last read %1").arg(meterText(*shown->meter)) : QString());
}

} // namespace asleft
