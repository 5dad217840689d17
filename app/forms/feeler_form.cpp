#include <forms/feeler_form.h>

#include <words/numbers.h>

#include <parts/fields.h>

#include "form_layout.h"
#include <drawn/leaf_fan.h>
#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/tool_words.h>
#include <parts/tools_model.h>
#include <words/numbers.h>

#include <shop/entry.h>

#include <QVBoxLayout>

namespace asleft {

FeelerForm::FeelerForm(ToolsModel &tools, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_tools(tools), m_mark(mark), m_name(new ValueField(tr("Name of the set"))), m_leaves(new ValueField(tr("Leaves"))),
      m_unit(new ChoiceKeys(tr("Bare numbers count in"), lengthUnitTexts())), m_fan(new LeafFan),
      m_save(new KeyButton(tr("Save the feeler set"))), m_message(new MessageLine)
{
    QVBoxLayout *column = columnUnder(tr("New feeler set"), this);
    column->addWidget(m_name);
    column->addWidget(m_leaves);
    column->addWidget(m_unit);
    column->addWidget(m_fan);
    addEnd(*column, m_message, m_save);
    keepFromWriting(tools.garage(), {m_save});
    m_leaves->setPlaceholder(tr("0.05-1.00 by 0.05 mm"));
    connect(m_name, &ValueField::edited, m_name, &ValueField::accept);
    connect(m_name, &ValueField::edited, m_message, &MessageLine::clear);
    connect(m_leaves, &ValueField::edited, m_message, &MessageLine::clear);
    connect(m_leaves, &ValueField::edited, this, [this] { tell(false); });
    connect(m_leaves, &ValueField::left, this, [this] { tell(!m_leaves->text().trimmed().isEmpty()); });
    connect(m_unit, &ChoiceKeys::chosen, this, [this] { tell(false); });
    chainByEnter({m_name, m_leaves});
    connect(m_leaves, &ValueField::entered, this, &FeelerForm::save);
    connect(m_save, &KeyButton::clicked, this, &FeelerForm::save);
}

LengthUnit FeelerForm::unit() const
{
    return lengthUnits.at(std::size_t(m_unit->choice()));
}

Result<std::vector<Typed<Length>>> FeelerForm::read() const
{
    return parseLeaves(m_leaves->text().toStdString(), unit(), m_mark);
}

void FeelerForm::tell(bool refuse)
{
    const auto leaves = read();
    m_fan->show(leaves ? *leaves : std::vector<Typed<Length>>{});
    m_leaves->setNote(leaves ? leavesWords(*leaves) : QString());
    markField(m_leaves, leaves, refuse);
}

void FeelerForm::look(const Tool &set)
{
    if (!m_leaves->text().isEmpty())
        return;
    m_fan->show(set.leaves);
    m_message->quiet(tr("%1: %2").arg(QString::fromStdString(set.name), QString::fromStdString(set.leavesText)));
}

void FeelerForm::save()
{
    tell(true);
    if (m_name->text().trimmed().isEmpty())
        m_name->refuse(tr("Give the set a name, such as the one on its handle."));
    if (focusRefused({m_name, m_leaves}))
        return;
    const auto added = m_tools.addFeelerSet(m_name->text(), m_leaves->text(), unit(), m_mark);
    if (!added) {
        m_message->refuse(sentence(added.error()));
        return;
    }
    m_message->done(tr("%1 is on the rack.").arg(m_name->text().trimmed()));
    m_name->setText({});
    m_leaves->setText({});
    m_leaves->setNote({});
    m_fan->show({});
    m_name->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
