#include <parts/ruled_rows.h>

namespace asleft {

void RuledRows::setRows(const QList<RuledRow> &rows)
{
    if (m_rows.isEmpty()) {
        fill(rows);
        return;
    }
    removeMissing(rows);
    for (qsizetype at = 0; at < rows.size(); ++at)
        place(rows[at], at);
}

void RuledRows::fill(const QList<RuledRow> &rows)
{
    if (rows.isEmpty())
        return;
    beginInsertRows({}, 0, int(rows.size()) - 1);
    m_rows = rows;
    for (const RuledRow &row : rows)
        m_ids.insert(row.id);
    endInsertRows();
}

void RuledRows::removeMissing(const QList<RuledRow> &rows)
{
    QSet<qint64> wanted;
    for (const RuledRow &row : rows)
        wanted.insert(row.id);
    for (qsizetype at = m_rows.size() - 1; at >= 0; --at) {
        const qint64 id = m_rows[at].id;
        if (wanted.contains(id))
            continue;
        beginRemoveRows({}, int(at), int(at));
        m_rows.removeAt(at);
        m_ids.remove(id);
        endRemoveRows();
    }
}

void RuledRows::place(const RuledRow &row, qsizetype at)
{
    if (!m_ids.contains(row.id)) {
        beginInsertRows({}, int(at), int(at));
        m_rows.insert(at, row);
        m_ids.insert(row.id);
        endInsertRows();
        return;
    }
    if (m_rows[at].id != row.id) {
        const int from = indexOf(row.id).row();
        beginMoveRows({}, from, from, {}, int(at));
        m_rows.move(from, at);
        endMoveRows();
    }
    if (m_rows[at] == row)
        return;
    m_rows[at] = row;
    Q_EMIT dataChanged(index(int(at)), index(int(at)));
}

QModelIndex RuledRows::indexOf(qint64 id) const
{
    for (qsizetype at = 0; at < m_rows.size(); ++at)
        if (m_rows[at].id == id)
            return index(int(at));
    return {};
}

int RuledRows::rowCount(const QModelIndex &parent) const
{
    return parent.isValid() ? 0 : int(m_rows.size());
}

void RuledRows::fetchMore(const QModelIndex &parent)
{
    // It may set itself anew while it runs.
    if (const auto read = m_further; canFetchMore(parent))
        read();
}

QVariant RuledRows::data(const QModelIndex &index, int role) const
{
    if (!index.isValid() || index.row() >= m_rows.size())
        return {};
    const RuledRow &row = m_rows[index.row()];
    const auto join = [](const QStringList &parts) {
        QStringList filled = parts;
        filled.removeAll(QString());
        return filled;
    };
    switch (role) {
    case Qt::DisplayRole: return row.title;
    case Qt::ToolTipRole: return join({row.title, row.note, row.right}).join(QChar::LineFeed);
    case Qt::AccessibleTextRole: return join({row.title, row.note, row.right}).join(QStringLiteral(", "));
    case IdRole: return row.id;
    case NoteRole: return row.note;
    case RightRole: return row.right;
    case QuietRole: return row.quiet;
    default: return {};
    }
}

} // namespace asleft
