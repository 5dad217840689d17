#include <forms/spec_form.h>

#include <drawn/scale_view.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/specs_model.h>

#include <words/errors.h>
#include <words/specs.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

namespace asleft {

namespace {

using Field = SpecField;

QString inWords(SpecField, const Error &error)
{
    return sentence(error);
}

} // namespace

SpecForm::SpecForm(SpecSubject subject, SpecsModel &specs, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_subject(subject), m_specs(specs), m_mark(mark), m_now(new Heading({}, TextSize::Body)),
      m_fields({{Field::Band, new ValueField(tr("Asked for"))},
                {Field::OtherBand, new ValueField(tr("The same as printed in the other system"))},
                {Field::Manual, new ValueField(tr("Manual"))},
                {Field::Page, new ValueField(tr("Page"))}}),
      m_units(new ChoiceKeys(tr("Bare numbers count in"), unitChoices(subject))),
      m_condition(new ChoiceKeys(tr("Engine"), {conditionName(EngineCondition::Cold), conditionName(EngineCondition::Hot)})),
      m_certainty(new ChoiceKeys(tr("How sure"), certaintyChoices())), m_scale(new ScaleView), m_save(new KeyButton(tr("Save"))),
      m_message(new MessageLine), m_earlier(new Notes(tr("Earlier revisions")))
{
    buildLayout();
    wire();
    keepFromWriting(specs.garage(), {m_save});
    engineChanged();
}

void SpecForm::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    column->addWidget(new Heading(subjectName(m_subject), TextSize::Now));
    column->addWidget(m_now);
    column->addWidget(new Rule);
    column->addLayout(bandRow());
    auto *counts = new QHBoxLayout;
    counts->setSpacing(16);
    counts->addWidget(m_units);
    // A torque is the same cold or hot as far as a lock nut goes.
    if (m_subject == SpecSubject::LockNut)
        m_condition->hide();
    counts->addWidget(m_condition);
    counts->addStretch(1);
    column->addLayout(counts);
    if (m_subject == SpecSubject::LockNut)
        m_scale->hide();
    m_scale->setAccessibleName(tr("Drawing of the band"));
    column->addWidget(m_scale);
    column->addLayout(sourceRow());
    column->addWidget(m_certainty);
    column->addSpacing(6);
    column->addWidget(m_message);
    column->addWidget(m_save, 0, Qt::AlignLeft);
    column->addSpacing(8);
    column->addWidget(m_earlier);
    column->addStretch(1);
    m_now->setWordWrap(true);
    m_save->setStrong(true);
    m_save->setToolTip(tr("Ctrl+S"));
}

QLayout *SpecForm::bandRow()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(field(Field::Band), 1);
    row->addWidget(field(Field::OtherBand), 1);
    const bool lash = m_subject != SpecSubject::LockNut;
    field(Field::Band)->setPlaceholder(lash ? tr("0.35-0.45 or 0.40 ± 0.05") : tr("20-24 or 22 ± 2"));
    field(Field::OtherBand)->setPlaceholder(tr("only where the manual prints both"));
    return row;
}

QLayout *SpecForm::sourceRow()
{
    auto *row = new QHBoxLayout;
    row->setSpacing(16);
    row->addWidget(field(Field::Manual), 3);
    row->addWidget(field(Field::Page), 1);
    return row;
}

void SpecForm::wire()
{
    for (const auto &[which, widget] : m_fields) {
        connect(widget, &ValueField::edited, this, &SpecForm::edited);
        connect(widget, &ValueField::left, this, [this, which = which] { leftField(which); });
        connect(widget, &ValueField::entered, this, [this, which = which] { entered(which); });
    }
    for (ChoiceKeys *keys : {m_units, m_condition, m_certainty})
        connect(keys, &ChoiceKeys::chosen, this, &SpecForm::edited);
    m_certainty->setLast(true);
    connect(m_certainty, &ChoiceKeys::entered, this, &SpecForm::save);
    connect(m_save, &KeyButton::clicked, this, &SpecForm::save);
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(saving, &QShortcut::activated, this, &SpecForm::save);
    connect(&m_specs, &SpecsModel::engineChanged, this, &SpecForm::engineChanged);
    connect(&m_specs, &SpecsModel::specsChanged, this, &SpecForm::showRevisions);
}

SpecTyped SpecForm::typed() const
{
    SpecTyped typed;
    for (const auto &[which, widget] : m_fields)
        typed.texts[which] = widget->text().toStdString();
    typed.unit = unitsOf(m_subject).at(std::size_t(m_units->choice()));
    typed.condition = EngineCondition(m_condition->choice());
    typed.certainty = Certainty(m_certainty->choice());
    return typed;
}

void SpecForm::setTyped(const SpecTyped &typed)
{
    for (const auto &[which, widget] : m_fields) {
        widget->setText(QString::fromStdString(typed.text(which)));
        widget->accept();
    }
    m_units->setChoice(choiceOf(m_subject, typed.unit));
    m_condition->setChoice(int(typed.condition));
    m_certainty->setChoice(int(typed.certainty));
    m_left.clear();
    showUnits();
    tell(reading());
}

void SpecForm::focusFirst()
{
    field(Field::Band)->edit()->setFocus(Qt::TabFocusReason);
}

void SpecForm::edited()
{
    m_message->clear();
    showUnits();
    if (m_engine)
        m_drafts[*m_engine] = typed();
    tell(reading());
}

AdjusterKind SpecForm::adjusters() const
{
    const VehicleRow *row = m_specs.engine();
    return row ? row->engine->screw.kind : AdjusterKind::Screw;
}

/// Turns are offered where they make sense, or stand there already; a band in turns has no second system and no scale.
void SpecForm::showUnits()
{
    const std::optional<int> turns = turnsChoice(m_subject);
    const bool inTurns = m_units->choice() == turns;
    if (turns)
        m_units->key(*turns)->setVisible(inTurns || mayBeTurns(m_subject, adjusters()));
    field(Field::OtherBand)->setVisible(!inTurns);
    m_scale->setVisible(!inTurns && m_subject != SpecSubject::LockNut);
    if (m_subject != SpecSubject::LockNut)
        field(Field::Band)->setPlaceholder(inTurns ? tr("3/4 or 1/2-3/4") : tr("0.35-0.45 or 0.40 ± 0.05"));
}

QString SpecForm::asTyped(SpecField which) const
{
    return QStringLiteral("%1 %2").arg(m_units->choice()).arg(field(which)->text().trimmed());
}

bool SpecForm::asks(SpecField which, const SpecReading &reading)
{
    const QString question = questionOf(reading, which);
    if (question.isEmpty() || !m_asked.insert(asTyped(which)).second)
        return false;
    field(which)->ask(question);
    return true;
}

/// Enter goes the way of Tab, unless there is a question; the same Enter again answers it.
void SpecForm::entered(SpecField which)
{
    if (!asks(which, reading()))
        field(which)->moveOn();
}

void SpecForm::leftField(SpecField left)
{
    m_left.insert(left);
    const SpecReading now = reading();
    tell(now);
    const auto refused = now.refusals.find(left);
    // A field passed by without typing is not told off for being empty.
    if (refused != now.refusals.end() && refused->second.kind != ErrorKind::EmptyText)
        field(left)->refuse(sentence(refused->second));
    asks(left, now);
}

void SpecForm::tell(const SpecReading &reading)
{
    m_scale->setBand(reading.lash, reading.lash ? reading.lash->first.unit : LengthUnit::Millimetre);
    tellEchoes(m_fields, echoesOf(reading));
    mendFields(m_fields, reading.refusals, inWords);
}

void SpecForm::engineChanged()
{
    showUnits();
    if (m_engine == m_specs.engineId() && m_engine)
        return;
    m_engine = m_specs.engineId();
    setEnabled(m_engine.has_value());
    m_message->clear();
    fill();
}

void SpecForm::showRevisions()
{
    const Spec *now = m_specs.now(m_subject);
    m_now->setText(now ? specLine(*now) : tr("No spec yet."));
    m_save->setText(now ? tr("Save as revision %1").arg(now->revision + 1) : tr("Save"));
    QList<Notes::Note> notes;
    for (const Spec *spec : m_specs.earlier(m_subject))
        notes.append({{}, tr("revision %1: %2").arg(QString::number(spec->revision), specLine(*spec)), true});
    m_earlier->setNotes(notes);
    if (!m_engine || !m_drafts.contains(*m_engine))
        fill();
}

void SpecForm::fill()
{
    const auto draft = m_engine ? m_drafts.find(*m_engine) : m_drafts.end();
    if (draft != m_drafts.end()) {
        setTyped(draft->second);
        return;
    }
    if (const Spec *now = m_specs.now(m_subject)) {
        setTyped(typedOf(*now));
        // What is stored was asked about when it was typed.
        for (const SpecField which : {Field::Band, Field::OtherBand})
            m_asked.insert(asTyped(which));
        return;
    }
    const SpecSource last = m_specs.lastSource();
    const bool tappet = m_subject == SpecSubject::IntakeLash || m_subject == SpecSubject::ExhaustLash;
    SpecTyped typed;
    typed.unit = tappet && adjusters() == AdjusterKind::Hydraulic ? SpecUnit(AngleUnit::Turn) : unitsOf(m_subject).front();
    typed.texts[Field::Manual] = last.manual;
    typed.texts[Field::Page] = last.page;
    typed.certainty = last.certainty;
    setTyped(typed);
}

void SpecForm::save()
{
    if (!m_engine)
        return;
    m_message->clear();
    const SpecReading now = reading();
    tell(now);
    if (refuseFields(m_fields, now.refusals, inWords))
        return;
    for (const SpecField which : {Field::Band, Field::OtherBand}) {
        if (asks(which, now)) {
            field(which)->edit()->setFocus(Qt::OtherFocusReason);
            return;
        }
    }
    const Spec *before = m_specs.now(m_subject);
    const int revision = before ? before->revision : 0;
    const SpecTyped kept = typed();
    m_drafts.erase(*m_engine);
    if (const auto revised = m_specs.revise(m_subject, now.text, m_mark); !revised) {
        m_drafts[*m_engine] = kept;
        m_message->refuse(sentence(revised.error()));
        return;
    }
    const Spec *after = m_specs.now(m_subject);
    const bool same = after && after->revision == revision;
    m_message->done(same ? tr("This is what the spec says already.")
                         : tr("Saved. Readings taken before keep the revision they were judged by."));
}

} // namespace asleft
