#include <parts/tools_model.h>

#include <parts/tool_words.h>

#include <words/tools.h>

#include <algorithm>

namespace asleft {

namespace {

QString noteOf(const Tool &tool, std::chrono::sys_days today)
{
    switch (groupOf(tool.kind)) {
    case ToolGroup::FeelerSets: return leavesWords(tool.leaves);
    case ToolGroup::Gauges: return gaugeWords(tool);
    case ToolGroup::TorqueWrenches: return wrenchWords(tool, today);
    case ToolGroup::AngleGauges: return {};
    case ToolGroup::Adapters:
    case ToolGroup::Sockets: return fittingWords(tool);
    }
    return {};
}

RuledRow rowOf(const Tool &tool, std::chrono::sys_days today)
{
    RuledRow row;
    row.id = tool.id.key();
    row.title = QString::fromStdString(tool.name);
    row.note = noteOf(tool, today);
    row.right = groupOf(tool.kind) == ToolGroup::Gauges ? toolKindName(tool.kind) : QString();
    return row;
}

QList<RuledRow> rowsOfPeople(const std::vector<Person> &people)
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

ToolGroup groupOf(ToolKind kind)
{
    switch (kind) {
    case ToolKind::FeelerSet: return ToolGroup::FeelerSets;
    case ToolKind::DialGauge:
    case ToolKind::Micrometer: return ToolGroup::Gauges;
    case ToolKind::TorqueSet:
    case ToolKind::TorqueRead: return ToolGroup::TorqueWrenches;
    case ToolKind::AngleGauge: return ToolGroup::AngleGauges;
    case ToolKind::Adapter: return ToolGroup::Adapters;
    case ToolKind::Socket: return ToolGroup::Sockets;
    }
    return ToolGroup::Sockets;
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

int ToolsModel::wrenchesOverdue() const
{
    const auto today = todayIn(m_garage);
    return int(std::ranges::count_if(m_tools, [today](const Tool &tool) { return tool.torque && isOverdue(*tool.torque, today); }));
}

Result<ToolId> ToolsModel::addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark)
{
    return asleft::addFeelerSet(m_garage, name.toStdString(), leaves.toStdString(), unit, mark);
}

Result<ToolId> ToolsModel::addGauge(const GaugeText &text, DecimalMark mark)
{
    return asleft::addGauge(m_garage, text, mark);
}

Result<ToolId> ToolsModel::addTorqueWrench(const TorqueWrenchText &text, DecimalMark mark)
{
    return asleft::addTorqueWrench(m_garage, text, mark);
}

Done ToolsModel::setCalibrationDue(ToolId wrench, const QString &due)
{
    return asleft::setCalibrationDue(m_garage, wrench, due.trimmed().toStdString());
}

Result<ToolId> ToolsModel::addFitting(const FittingText &text, DecimalMark mark)
{
    return asleft::addFitting(m_garage, text, mark);
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
    std::array<QList<RuledRow>, toolGroups> rows;
    const auto today = todayIn(m_garage);
    for (const Tool &tool : m_tools)
        rows.at(std::size_t(groupOf(tool.kind))).append(rowOf(tool, today));
    for (std::size_t group = 0; group < toolGroups; ++group)
        m_toolRows.at(group).setRows(rows.at(group));
    if (const auto read = people(m_garage))
        m_peopleRows.setRows(rowsOfPeople(*read));
    else
        m_failure = read.error();
    if (const auto read = decisionRule(m_garage))
        m_rule = *read;
    else
        m_failure = read.error();
    Q_EMIT changed();
}

} // namespace asleft
