#include <bench/open_column.h>

#include <parts/heading.h>
#include <parts/rule.h>
#include <parts/ruled_list.h>
#include <parts/scroll_pane.h>

#include <words/job.h>

#include <QEvent>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

// A joint may have an item for each of its fasteners, or for a tool; none has a number above 999.
constexpr std::int64_t mostOfAJoint = 1000;

/// What tells an item from the others of its kind.
std::int64_t numberOf(const OpenItem &item)
{
    return std::visit(Overloaded{
                          [](const open::OfPoint &one) { return one.point.key(); },
                          [](const open::OfPoints &) { return std::int64_t(0); },
                          [](const open::OfSpec &one) { return one.spec.key(); },
                          [](const open::StepUndone &one) { return one.step.key(); },
                          [](const open::BleedingDown &) { return std::int64_t(0); },
                          [](const open::OfJoint &one) { return one.joint.key() * mostOfAJoint; },
                          [](const open::OfFastener &one) { return one.joint.key() * mostOfAJoint + one.fastener; },
                          [](const open::CalibrationOverdue &one) {
                              return one.joint.key() * mostOfAJoint + (one.tool ? one.tool->key() % mostOfAJoint : 0);
                          },
                      },
                      item);
}

/// The same item keeps its id from one state to the next, so that its row stays where it is.
qint64 idOf(const OpenItem &item)
{
    return numberOf(item) * 100 + qint64(item.index());
}

/// As high as its rows: the three parts scroll together, not each for itself.
void fitToRows(RuledList &list)
{
    int height = 2;
    for (int row = 0; row < list.model()->rowCount(); ++row)
        height += list.sizeHintForRow(row);
    list.setFixedHeight(height);
}

} // namespace

OpenColumn::OpenColumn(AppContext &context, QWidget *parent) : QWidget(parent), m_context(context)
{
    auto *outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->setSpacing(4);
    outer->addWidget(new Heading(tr("Still open"), TextSize::BodyStrong));
    outer->addSpacing(8);
    auto *inner = new QWidget;
    auto *column = new QVBoxLayout(inner);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    for (const Gate gate : {Gate::TurningTheCrank, Gate::FirstStart, Gate::HandOver}) {
        auto *line = new QHBoxLayout;
        line->addWidget(Heading::wrapped(gateName(gate), TextSize::SmallStrong), 1);
        Part part = buildPart(gate);
        line->addWidget(part.count, 0, Qt::AlignBottom);
        column->addLayout(line);
        column->addWidget(new Rule(Rule::Weight::Heavy));
        column->addWidget(part.list);
        column->addSpacing(12);
        m_parts.at(std::size_t(gate)) = part;
    }
    column->addStretch(1);
    outer->addWidget(new ScrollPane(inner), 1);
}

OpenColumn::Part OpenColumn::buildPart(Gate gate)
{
    Part part;
    part.count = new Heading(QString(), TextSize::SmallStrong);
    part.rows = new RuledRows(this);
    part.list = new RuledList(tr("Still open %1").arg(gateName(gate)), part.rows);
    part.list->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    part.list->installEventFilter(this);
    connect(part.list, &RuledList::chosen, this, [this, part](qint64 id) { choose(part, id); });
    return part;
}

bool OpenColumn::eventFilter(QObject *watched, QEvent *event)
{
    // A narrower list has lines that take two.
    if (event->type() == QEvent::Resize)
        fitToRows(*static_cast<RuledList *>(watched));
    return QWidget::eventFilter(watched, event);
}

void OpenColumn::present(const JobState &state)
{
    const StillOpen open = stillOpen(state, m_context.garage().now());
    m_items.clear();
    presentPart(m_parts.at(std::size_t(Gate::TurningTheCrank)), open.turning, state);
    presentPart(m_parts.at(std::size_t(Gate::FirstStart)), open.firstStart, state);
    presentPart(m_parts.at(std::size_t(Gate::HandOver)), open.handOver, state);
}

void OpenColumn::presentPart(Part &part, const std::vector<OpenItem> &items, const JobState &state)
{
    QList<RuledRow> rows;
    for (const OpenItem &item : items) {
        const OpenWords words = openWords(item, state, m_context.garage().now());
        rows.append({.id = idOf(item), .title = words.title, .note = words.note, .right = {}});
        if (const auto about = subjectOf(item))
            m_items.insert(idOf(item), *about);
    }
    part.rows->setRows(rows);
    part.list->setCurrentId(std::nullopt);
    fitToRows(*part.list);
    part.count->setText(rows.isEmpty() ? tr("nothing") : QString::number(rows.size()));
}

void OpenColumn::choose(const Part &part, qint64 id)
{
    part.list->setCurrentId(std::nullopt);
    const auto item = m_items.constFind(id);
    if (item == m_items.constEnd())
        return;
    Q_EMIT wanted(*item);
}

} // namespace asleft
