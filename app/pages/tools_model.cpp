#include "pages/tools_model.h"

#include <show/words.h>

#include <algorithm>

namespace asleft {

namespace {

RuledRow rowOf(const Tool &tool)
{
    RuledRow row;
    row.id = tool.id.key();
    row.title = QString::fromStdString(tool.name);
    const bool feelers = tool.kind == ToolKind::FeelerSet;
    row.note = feelers ? leavesWords(tool.leaves) : gaugeWords(tool);
    row.right = feelers ? QString() : toolKindName(tool.kind);
    return row;
}

QList<RuledRow> rowsOf(const std::vector<Person> &people)
{
    QList<RuledRow> rows;
    for (const Person &person : people) {
        RuledRow row;
        row.id = person.id.key();
        row.title = QString::fromStdString(person.initials);
        row.right = QString::fromStdString(person.name);
        rows.append(row);
    }
    return rows;
}

} // namespace

QString leavesWords(const std::vector<Typed<Length>> &leaves)
{
    if (leaves.empty())
        return {};
    const QString count = ToolsModel::tr("%n leaves", nullptr, int(leaves.size()));
    if (leaves.size() == 1)
        return ToolsModel::tr("one leaf, %1").arg(typedText(leaves.front()));
    return ToolsModel::tr("%1, %2 to %3").arg(count, typedText(leaves.front()), typedText(leaves.back()));
}

QString gaugeWords(const Tool &gauge)
{
    const auto uncertainty = uncertaintyOf(gauge, {});
    if (!uncertainty)
        return ToolsModel::tr("how far its readings may be off is not known");
    const LengthUnit unit = gauge.permissibleError ? gauge.permissibleError->unit
                            : gauge.resolution     ? gauge.resolution->unit
                                                   : LengthUnit::Millimetre;
    return ToolsModel::tr("readings are good to %1").arg(uncertaintyText(*uncertainty, unit));
}

ToolsModel::ToolsModel(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        using What = Change::What;
        if (change.what == What::Tools || change.what == What::People || change.what == What::Rules)
            reload();
    });
    reload();
}

const Tool *ToolsModel::tool(qint64 id) const
{
    const auto found = std::ranges::find_if(m_tools, [id](const Tool &tool) { return tool.id.key() == id; });
    return found == m_tools.end() ? nullptr : &*found;
}

Result<ToolId> ToolsModel::addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark)
{
    return asleft::addFeelerSet(m_garage, name.toStdString(), leaves.toStdString(), unit, mark);
}

Result<ToolId> ToolsModel::addGauge(const GaugeText &text, DecimalMark mark)
{
    return asleft::addGauge(m_garage, text, mark);
}

Result<PersonId> ToolsModel::addPerson(const QString &initials, const QString &name)
{
    return asleft::addPerson(m_garage, initials.toStdString(), name.toStdString());
}

Done ToolsModel::setRule(DecisionRule rule)
{
    return setDecisionRule(m_garage, rule);
}

void ToolsModel::reload()
{
    m_failure.reset();
    if (auto read = tools(m_garage))
        m_tools = std::move(*read);
    else
        m_failure = read.error();
    QList<RuledRow> feelers;
    QList<RuledRow> gauges;
    for (const Tool &tool : m_tools)
        (tool.kind == ToolKind::FeelerSet ? feelers : gauges).append(rowOf(tool));
    m_feelerRows.setRows(feelers);
    m_gaugeRows.setRows(gauges);
    if (const auto read = people(m_garage))
        m_peopleRows.setRows(rowsOf(*read));
    else
        m_failure = read.error();
    if (const auto read = decisionRule(m_garage))
        m_rule = *read;
    else
        m_failure = read.error();
    Q_EMIT changed();
}

} // namespace asleft
