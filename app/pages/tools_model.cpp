#include "pages/tools_model.h"

#include <show/words.h>

#include <algorithm>

namespace asleft {

namespace {

QList<RuledRow> rowsOf(const std::vector<Tool> &sets)
{
    QList<RuledRow> rows;
    for (const Tool &set : sets) {
        RuledRow row;
        row.id = set.id.key();
        row.title = QString::fromStdString(set.name);
        row.note = leavesWords(set.leaves);
        rows.append(row);
    }
    return rows;
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

ToolsModel::ToolsModel(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        if (change.what == Change::What::Tools || change.what == Change::What::People)
            reload();
    });
    reload();
}

const Tool *ToolsModel::tool(qint64 id) const
{
    const auto found = std::ranges::find_if(m_feelerSets, [id](const Tool &set) { return set.id.key() == id; });
    return found == m_feelerSets.end() ? nullptr : &*found;
}

Result<ToolId> ToolsModel::addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark)
{
    return asleft::addFeelerSet(m_garage, name.toStdString(), leaves.toStdString(), unit, mark);
}

Result<PersonId> ToolsModel::addPerson(const QString &initials, const QString &name)
{
    return asleft::addPerson(m_garage, initials.toStdString(), name.toStdString());
}

void ToolsModel::reload()
{
    m_failure.reset();
    if (auto read = tools(m_garage))
        m_feelerSets = std::move(*read);
    else
        m_failure = read.error();
    m_feelerRows.setRows(rowsOf(m_feelerSets));
    if (const auto read = people(m_garage))
        m_peopleRows.setRows(rowsOf(*read));
    else
        m_failure = read.error();
    Q_EMIT changed();
}

} // namespace asleft
