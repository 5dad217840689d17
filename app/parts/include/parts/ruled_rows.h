#pragma once

#include <QAbstractListModel>
#include <QList>
#include <QSet>
#include <QString>

#include <functional>
#include <optional>

namespace asleft {

/// One line of a ruled list.
struct RuledRow {
    qint64 id = 0;
    QString title;
    QString note;       ///< the quiet line under it; may be empty
    QString right;      ///< quiet words at its right end; may be empty
    bool quiet = false; ///< the title is quiet too: done with, or only for looking at
    bool operator==(const RuledRow &) const = default;
};

/// The rows of a ruled list, known by id. New contents are taken over row by row, never by a reset: the current line and the place
/// scrolled to stay where they are.
class RuledRows : public QAbstractListModel {
    Q_OBJECT

public:
    enum Roles { IdRole = Qt::UserRole, NoteRole, RightRole, QuietRole };

    using QAbstractListModel::QAbstractListModel;

    void setRows(const QList<RuledRow> &rows);
    /// There are more than these, which `read` sets once somebody has scrolled to their end; without it, these are all.
    void setFurther(std::function<void()> read) { m_further = std::move(read); }
    [[nodiscard]] const QList<RuledRow> &rows() const { return m_rows; }
    [[nodiscard]] QModelIndex indexOf(qint64 id) const;

    [[nodiscard]] int rowCount(const QModelIndex &parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex &index, int role) const override;
    [[nodiscard]] bool canFetchMore(const QModelIndex &parent) const override { return !parent.isValid() && m_further; }
    void fetchMore(const QModelIndex &parent) override;

private:
    void fill(const QList<RuledRow> &rows);
    void removeMissing(const QList<RuledRow> &rows);
    void place(const RuledRow &row, qsizetype at);

    QList<RuledRow> m_rows;
    QSet<qint64> m_ids; ///< of m_rows: a garage may have twenty thousand jobs
    std::function<void()> m_further;
};

} // namespace asleft
