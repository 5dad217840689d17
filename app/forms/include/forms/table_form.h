#pragma once

#include <forms/table_reader.h>

#include <QWidget>

class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class PlanPreview;
class SpecsModel;
class TableRow;
class ValueField;

/// The manual's own table of crank positions, typed as it is printed and checked as it is typed; below it the plan that would be
/// generated without one.
class TableForm : public QWidget {
    Q_OBJECT

public:
    explicit TableForm(SpecsModel &specs, QWidget *parent = nullptr);

    [[nodiscard]] std::vector<TableLine> lines() const;
    [[nodiscard]] TableRow *row(int at) const { return m_rows.at(at); }
    [[nodiscard]] int rows() const { return int(m_rows.size()); }
    [[nodiscard]] ValueField *manual() const { return m_manual; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] KeyButton *keepKey() const { return m_keep; }
    [[nodiscard]] PlanPreview *preview() const { return m_preview; }
    void focusFirst();
    void addRow();
    void save();

private:
    void buildLayout();
    QLayout *sourceRow();
    QLayout *keys();
    void wire();
    void insertRow();
    void removeRow(TableRow *row);
    void numberRows();
    void edited();
    void rowFinished(TableRow *row);
    void tell(const TableTold &reading, bool refuseAll);
    void engineChanged();
    void fill();
    void askToKeep(const QStringList &doubts);
    void endAsking();
    void store();
    [[nodiscard]] std::optional<TableTold> reading() const;

    SpecsModel &m_specs;
    Heading *m_now;
    ValueField *m_manual;
    ValueField *m_page;
    QVBoxLayout *m_rowColumn;
    QList<TableRow *> m_rows;
    KeyButton *m_add;
    KeyButton *m_save;
    MessageLine *m_unreached;
    MessageLine *m_message;
    KeyButton *m_keep;
    KeyButton *m_look;
    PlanPreview *m_preview;
    std::vector<TableLine> m_kept; ///< the lines a person has said to keep as printed
    std::optional<EngineId> m_engine;
    bool m_typing = false; ///< typed and not saved
};

} // namespace asleft
