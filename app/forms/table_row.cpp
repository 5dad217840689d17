#include <forms/table_row.h>

#include <parts/choice_keys.h>
#include <parts/key_button.h>
#include <parts/value_field.h>

#include <words/errors.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

namespace asleft {

namespace {

/// The key for whatever else a stored line may say; there is none of its own for what a manual seldom prints.
constexpr int otherKey = 2;

QString eventWords(CrankEvent event)
{
    switch (event) {
    case CrankEvent::Compression: return TableRow::tr("on compression");
    case CrankEvent::Overlap: return TableRow::tr("at overlap");
    case CrankEvent::ExhaustOpens: return TableRow::tr("exhaust just opening");
    case CrankEvent::IntakeCloses: return TableRow::tr("intake just closed");
    case CrankEvent::IntakeFullyOpen: return TableRow::tr("intake fully open");
    case CrankEvent::ExhaustFullyOpen: return TableRow::tr("exhaust fully open");
    }
    return {};
}

} // namespace

TableRow::TableRow(QWidget *parent)
    : QWidget(parent), m_cylinder(new ValueField({})),
      m_stroke(new ChoiceKeys(tr("stands"), {eventWords(CrankEvent::Compression), eventWords(CrankEvent::Overlap), QString()})),
      m_points(new ValueField({})), m_remove(new KeyButton(tr("Take out"))), m_understood(new MessageLine), m_doubts(new MessageLine)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    auto *row = new QHBoxLayout;
    row->setSpacing(12);
    column->addLayout(row);
    column->addWidget(m_understood);
    column->addWidget(m_doubts);
    m_cylinder->setMinimumWidth(90);
    row->addWidget(m_cylinder, 1);
    row->addWidget(m_stroke);
    row->addWidget(m_points, 4);
    m_remove->setPlain(true);
    row->addLayout(besideFields(m_remove));
    m_points->setPlaceholder(QStringLiteral("IN 1 2 EX 1 3"));
    for (ValueField *field : {m_cylinder, m_points}) {
        connect(field, &ValueField::edited, this, &TableRow::edited);
        connect(field, &ValueField::left, this, [this] {
            // Leaving the first field of a line is only going on to its second.
            m_left = m_left || !m_points->text().trimmed().isEmpty();
            Q_EMIT left();
        });
    }
    connect(m_stroke, &ChoiceKeys::chosen, this, &TableRow::edited);
    connect(m_cylinder, &ValueField::entered, m_stroke, &ChoiceKeys::takeFocus);
    connect(m_points, &ValueField::entered, this, &TableRow::finished);
    connect(m_remove, &KeyButton::clicked, this, &TableRow::removeWanted);
    m_stroke->key(otherKey)->hide();
    setPlace(1);
}

TableLine TableRow::line() const
{
    const CrankEvent event = m_stroke->choice() == otherKey ? m_other : CrankEvent(m_stroke->choice());
    return {m_cylinder->text().toStdString(), event, m_points->text().toStdString()};
}

void TableRow::setLine(const TableLine &line)
{
    m_cylinder->setText(QString::fromStdString(line.cylinder));
    const bool other = line.event != CrankEvent::Compression && line.event != CrankEvent::Overlap;
    if (other) {
        m_other = line.event;
        m_stroke->key(otherKey)->setText(eventWords(m_other));
        m_stroke->key(otherKey)->setAccessibleName(tr("stands: %1").arg(eventWords(m_other)));
    }
    m_stroke->key(otherKey)->setVisible(other);
    m_stroke->setChoice(other ? otherKey : int(line.event));
    m_points->setText(QString::fromStdString(line.points));
}

void TableRow::setPlace(int place)
{
    m_cylinder->setLabel(tr("%1. Cylinder").arg(place));
    m_points->setLabel(tr("Points set at position %1").arg(place));
    m_remove->setAccessibleName(tr("Take out position %1").arg(place));
}

void TableRow::linkAfter(QWidget *before)
{
    QWidget *previous = before;
    for (QWidget *next :
         {static_cast<QWidget *>(m_cylinder->edit()), static_cast<QWidget *>(m_stroke->key(0)), static_cast<QWidget *>(m_stroke->key(1)),
          static_cast<QWidget *>(m_stroke->key(otherKey)), static_cast<QWidget *>(m_points->edit()), static_cast<QWidget *>(m_remove)}) {
        setTabOrder(previous, next);
        previous = next;
    }
}

QWidget *TableRow::last() const
{
    return m_remove;
}

void TableRow::tell(const TableRowTold &reading, bool refuse)
{
    const bool stands = m_points->isRefused() || m_cylinder->isRefused();
    m_understood->quiet(reading.understood.isEmpty() ? QString() : tr("understood: %1").arg(reading.understood));
    m_doubts->refuse(reading.doubts.join(QChar::LineFeed));
    m_points->accept();
    m_cylinder->accept();
    if (!reading.refusal || !(refuse || stands))
        return;
    if (reading.refusal->error.kind == ErrorKind::EmptyText) {
        m_points->refuse(tr("Type the points that are set here, such as IN 1 2 EX 1 3."));
        return;
    }
    ValueField *spokenOf = reading.refusal->field == TableField::Cylinder ? m_cylinder : m_points;
    spokenOf->refuse(sentence(reading.refusal->error));
}

} // namespace asleft
