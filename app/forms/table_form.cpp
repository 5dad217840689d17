#include <forms/table_form.h>

#include <forms/plan_preview.h>
#include <forms/table_row.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/specs_model.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/specs.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

constexpr int firstRows = 2;
constexpr int mostRows = 48;

bool sameLines(const std::vector<TableLine> &some, const std::vector<TableLine> &others)
{
    return std::ranges::equal(some, others, [](const TableLine &a, const TableLine &b) {
        return a.cylinder == b.cylinder && a.event == b.event && a.points == b.points;
    });
}

} // namespace

TableForm::TableForm(SpecsModel &specs, QWidget *parent)
    : QWidget(parent), m_specs(specs), m_now(new Heading({}, TextSize::Body)), m_manual(new ValueField(tr("Manual"))),
      m_page(new ValueField(tr("Page"))), m_rowColumn(new QVBoxLayout), m_add(new KeyButton(tr("One more position"))),
      m_save(new KeyButton(tr("Save the table"))), m_unreached(new MessageLine), m_message(new MessageLine),
      m_keep(new KeyButton(tr("Keep as printed"))), m_look(new KeyButton(tr("Look again"))), m_preview(new PlanPreview)
{
    buildLayout();
    wire();
    keepFromWriting(specs.garage(), {m_save, m_keep});
    engineChanged();
}

void TableForm::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    column->addWidget(new Heading(tr("Crank positions"), TextSize::Now));
    column->addWidget(m_now);
    column->addWidget(new Rule);
    column->addLayout(sourceRow());
    m_rowColumn->setSpacing(8);
    column->addLayout(m_rowColumn);
    column->addWidget(m_unreached);
    column->addWidget(m_message);
    column->addLayout(keys());
    column->addSpacing(14);
    column->addWidget(m_preview);
    column->addStretch(1);
    m_now->setWordWrap(true);
    m_save->setStrong(true);
    m_save->setToolTip(tr("Ctrl+S"));
    m_keep->hide();
    m_look->hide();
}

QLayout *TableForm::sourceRow()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(m_manual, 3);
    row->addWidget(m_page, 1);
    return row;
}

QLayout *TableForm::keys()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(10);
    row->addWidget(m_keep);
    row->addWidget(m_look);
    row->addWidget(m_save);
    row->addWidget(m_add);
    row->addStretch(1);
    return row;
}

void TableForm::wire()
{
    chainByEnter({m_manual, m_page});
    connect(m_page, &ValueField::entered, this, [this] { m_rows.first()->cylinder()->edit()->setFocus(Qt::TabFocusReason); });
    for (ValueField *field : {m_manual, m_page})
        connect(field, &ValueField::edited, this, [this] { m_typing = true; });
    connect(m_add, &KeyButton::clicked, this, &TableForm::addRow);
    connect(m_save, &KeyButton::clicked, this, &TableForm::save);
    connect(m_look, &KeyButton::clicked, this, [this] {
        endAsking();
        m_rows.first()->points()->edit()->setFocus(Qt::OtherFocusReason);
    });
    connect(m_keep, &KeyButton::clicked, this, [this] {
        m_kept = lines();
        endAsking();
        store();
    });
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(saving, &QShortcut::activated, this, &TableForm::save);
    connect(&m_specs, &SpecsModel::engineChanged, this, &TableForm::engineChanged);
    connect(&m_specs, &SpecsModel::specsChanged, this, [this] {
        if (!m_typing)
            fill();
    });
}

std::vector<TableLine> TableForm::lines() const
{
    std::vector<TableLine> lines;
    for (const TableRow *row : m_rows)
        lines.push_back(row->line());
    return lines;
}

std::optional<TableTold> TableForm::reading() const
{
    const VehicleRow *row = m_specs.engine();
    return row ? std::optional(tellTable(row->engine->design, lines())) : std::nullopt;
}

void TableForm::focusFirst()
{
    m_manual->edit()->setFocus(Qt::TabFocusReason);
}

void TableForm::insertRow()
{
    auto *row = new TableRow;
    m_rows.append(row);
    m_rowColumn->addWidget(row);
    row->show();
    connect(row, &TableRow::edited, this, &TableForm::edited);
    connect(row, &TableRow::left, this, [this] {
        if (const auto now = reading())
            tell(*now, false);
    });
    connect(row, &TableRow::finished, this, [this, row] { rowFinished(row); });
    connect(row, &TableRow::removeWanted, this, [this, row] { removeRow(row); });
}

void TableForm::addRow()
{
    if (m_rows.size() >= mostRows)
        return;
    insertRow();
    numberRows();
    m_rows.last()->cylinder()->edit()->setFocus(Qt::TabFocusReason);
}

void TableForm::removeRow(TableRow *row)
{
    if (m_rows.size() == 1) {
        row->setLine({});
        edited();
        return;
    }
    const qsizetype at = m_rows.indexOf(row);
    m_rows.removeAt(at);
    m_rows.at(qMax(qsizetype(0), at - 1))->points()->edit()->setFocus(Qt::OtherFocusReason);
    // The key that was pressed belongs to the row: it has to outlive its own click.
    row->hide();
    row->deleteLater();
    numberRows();
    edited();
}

void TableForm::numberRows()
{
    QWidget *before = m_page->edit();
    for (qsizetype at = 0; at < m_rows.size(); ++at) {
        m_rows[at]->setPlace(int(at) + 1);
        m_rows[at]->linkAfter(before);
        before = m_rows[at]->last();
    }
    for (QWidget *key : {m_keep, m_look, m_save, m_add}) {
        setTabOrder(before, key);
        before = key;
    }
}

void TableForm::rowFinished(TableRow *row)
{
    const qsizetype next = m_rows.indexOf(row) + 1;
    if (next < m_rows.size())
        m_rows.at(next)->cylinder()->edit()->setFocus(Qt::TabFocusReason);
    else
        m_save->setFocus(Qt::TabFocusReason);
}

void TableForm::edited()
{
    m_typing = true;
    m_message->clear();
    endAsking();
    if (const auto now = reading())
        tell(*now, false);
}

void TableForm::tell(const TableTold &reading, bool refuseAll)
{
    for (qsizetype at = 0; at < m_rows.size(); ++at)
        m_rows[at]->tell(reading.rows.at(std::size_t(at)), refuseAll || m_rows[at]->wasLeft());
    if (reading.blank() || reading.unreached.isEmpty())
        m_unreached->clear();
    else
        m_unreached->quiet(tr("No position sets %1.").arg(reading.unreached.join(QStringLiteral(", "))));
}

void TableForm::engineChanged()
{
    const VehicleRow *row = m_specs.engine();
    setEnabled(row != nullptr);
    m_preview->setDesign(row ? std::optional(row->engine->design) : std::nullopt);
    if (m_engine == m_specs.engineId() && m_engine)
        return;
    m_engine = m_specs.engineId();
    m_typing = false;
    m_message->clear();
    fill();
}

void TableForm::fill()
{
    const auto &table = m_specs.table();
    const SpecSource source = table ? table->source : m_specs.lastSource();
    m_manual->setText(QString::fromStdString(source.manual));
    m_page->setText(QString::fromStdString(source.page));
    const std::vector<TableLine> stored = table ? table->lines : std::vector<TableLine>(firstRows);
    m_kept = stored;
    for (TableRow *row : std::exchange(m_rows, {})) {
        row->hide();
        row->deleteLater();
    }
    for (const TableLine &line : stored) {
        insertRow();
        m_rows.last()->setLine(line);
    }
    numberRows();
    m_now->setText(table ? tr("From %1, revision %2.").arg(sourceText(source), QString::number(table->revision))
                         : tr("The manual's table is not typed yet; until then the generated plan counts."));
    endAsking();
    if (const auto now = reading())
        tell(*now, false);
}

void TableForm::save()
{
    const auto now = reading();
    if (!now)
        return;
    tell(*now, true);
    if (now->blank()) {
        m_message->refuse(sentence({ErrorKind::TableEmpty, {}}));
        return;
    }
    if (now->refused()) {
        m_message->refuse(tr("Not saved yet: see the marked line."));
        return;
    }
    const QStringList doubts = now->doubted();
    if (!doubts.isEmpty() && !sameLines(m_kept, lines()))
        askToKeep(doubts);
    else
        store();
}

void TableForm::askToKeep(const QStringList &doubts)
{
    m_message->refuse(tr("By its cam this may be off its seat: %1. Compare the table with the manual; it can be kept as printed.")
                          .arg(doubts.join(QStringLiteral("; "))));
    m_keep->show();
    m_look->show();
    m_save->hide();
    m_keep->setFocus(Qt::OtherFocusReason);
}

void TableForm::endAsking()
{
    if (m_keep->isHidden())
        return;
    m_message->clear();
    m_save->show();
    if (m_keep->hasFocus())
        m_save->setFocus(Qt::OtherFocusReason);
    m_keep->hide();
    m_look->hide();
}

void TableForm::store()
{
    m_typing = false;
    const SpecSource source{m_manual->text().toStdString(), m_page->text().toStdString(), Certainty::ReadInManual};
    if (const Done stored = m_specs.reviseTable(lines(), source); !stored) {
        m_typing = true;
        m_message->refuse(sentence(stored.error()));
        return;
    }
    m_message->done(tr("The table is saved; new jobs of this engine are worked by it."));
}

} // namespace asleft
