#include <forms/joint_form.h>

#include "form_layout.h"
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/rule.h>
#include <parts/specs_model.h>
#include <parts/value_field.h>

#include <words/errors.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <QHBoxLayout>
#include <QShortcut>
#include <QVBoxLayout>

namespace asleft {

namespace {

QString revisionLine(const Joint &joint)
{
    return QStringLiteral("%1 · %2").arg(jointLine(joint), jointSpecLine(joint));
}

} // namespace

JointForm::JointForm(SpecsModel &specs, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_specs(specs), m_mark(mark), m_fields(new JointFields), m_name(new Heading({}, TextSize::Now)),
      m_now(new Heading({}, TextSize::Body)), m_question(new MessageLine), m_otherUnit(new KeyButton({})),
      m_right(new KeyButton(tr("It is right"))), m_reason(new ValueField(tr("It is right, because"))), m_save(new KeyButton(tr("Save"))),
      m_message(new MessageLine), m_earlier(new Notes(tr("Earlier revisions")))
{
    buildLayout();
    wire();
    keepFromWriting(specs.garage(), {m_save, m_right});
    engineChanged();
}

void JointForm::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    column->addWidget(m_name);
    column->addWidget(m_now);
    column->addWidget(new Rule);
    column->addWidget(m_fields);
    buildEnd(*column);
    column->addStretch(1);
    m_name->setWordWrap(true);
    m_now->setWordWrap(true);
}

void JointForm::buildEnd(QVBoxLayout &column)
{
    column.addSpacing(6);
    column.addWidget(m_question);
    column.addWidget(m_message);
    auto *asked = new QHBoxLayout;
    asked->setSpacing(10);
    asked->addLayout(besideFields(m_otherUnit));
    asked->addWidget(m_reason, 1);
    asked->addLayout(besideFields(m_right));
    column.addLayout(asked);
    column.addWidget(m_save, 0, Qt::AlignLeft);
    column.addSpacing(8);
    column.addWidget(m_earlier);
    m_save->setStrong(true);
    m_save->setToolTip(tr("Ctrl+S"));
    for (QWidget *part : {static_cast<QWidget *>(m_otherUnit), static_cast<QWidget *>(m_reason), static_cast<QWidget *>(m_right)})
        part->hide();
}

void JointForm::wire()
{
    connect(m_fields, &JointFields::edited, this, &JointForm::edited);
    connect(m_fields, &JointFields::left, this, [this](JointField field) { m_fields->tellLeft(field, reading()); });
    connect(m_fields, &JointFields::finished, this, &JointForm::save);
    connect(m_save, &KeyButton::clicked, this, &JointForm::save);
    connect(m_otherUnit, &KeyButton::clicked, this, &JointForm::takeOtherUnit);
    connect(m_right, &KeyButton::clicked, this, &JointForm::itIsRight);
    connect(m_reason, &ValueField::entered, this, &JointForm::itIsRight);
    auto *saving = new QShortcut(QKeySequence::Save, this);
    saving->setContext(Qt::WidgetWithChildrenShortcut);
    connect(saving, &QShortcut::activated, this, &JointForm::save);
    connect(&m_specs, &SpecsModel::engineChanged, this, &JointForm::engineChanged);
    connect(&m_specs, &SpecsModel::jointsChanged, this, &JointForm::showRevisions);
}

JointTyped JointForm::typed() const
{
    JointTyped typed = m_fields->typed();
    typed.answered = m_answered;
    typed.answeredAbout = m_answeredAbout;
    return typed;
}

void JointForm::setTyped(const JointTyped &typed)
{
    m_fields->setTyped(typed);
    m_answered = typed.answered;
    m_answeredAbout = typed.answeredAbout;
    endAsking();
    m_fields->tell(reading());
}

void JointForm::edited()
{
    m_message->clear();
    endAsking();
    if (m_engine)
        m_drafts[{*m_engine, m_joint}] = typed();
    m_fields->tell(reading());
}

void JointForm::engineChanged()
{
    if (m_engine == m_specs.engineId() && m_engine)
        return;
    m_engine = m_specs.engineId();
    setEnabled(m_engine.has_value());
    showJoint(std::nullopt);
}

void JointForm::showJoint(std::optional<JointId> joint)
{
    m_joint = joint;
    m_message->clear();
    showRevisions();
    fill();
}

void JointForm::showRevisions()
{
    const Joint *now = m_joint ? m_specs.joint(*m_joint) : nullptr;
    m_name->setText(now ? QString::fromStdString(now->text.name) : tr("New joint"));
    m_now->setText(now ? revisionLine(*now) : tr("Fasteners that are tightened together."));
    m_save->setText(now ? tr("Save as revision %1").arg(now->revision + 1) : tr("Save"));
    QList<Notes::Note> notes;
    if (m_joint)
        for (const Joint *joint : m_specs.earlierOf(*m_joint))
            notes.append({{}, tr("revision %1: %2").arg(QString::number(joint->revision), revisionLine(*joint)), true});
    m_earlier->setNotes(notes);
    if (!m_engine || !m_drafts.contains({*m_engine, m_joint}))
        fill();
}

JointTyped JointForm::blank() const
{
    JointTyped typed;
    const SpecSource last = m_specs.lastSource();
    typed.texts[JointField::Manual] = last.manual;
    typed.texts[JointField::Page] = last.page;
    typed.certainty = last.certainty;
    return typed;
}

void JointForm::fill()
{
    const auto draft = m_engine ? m_drafts.find({*m_engine, m_joint}) : m_drafts.end();
    const Joint *now = m_joint ? m_specs.joint(*m_joint) : nullptr;
    setTyped(draft != m_drafts.end() ? draft->second : now ? typedOf(*now) : blank());
}

void JointForm::save()
{
    if (!m_engine)
        return;
    m_message->clear();
    const JointReading now = reading();
    if (m_fields->refuse(now))
        return;
    if (now.asks)
        ask(now);
    else
        store(now);
}

void JointForm::ask(const JointReading &reading)
{
    m_question->refuse(preloadQuestion(*reading.check, reading.joint));
    const auto &doubt = *reading.check->doubt;
    const bool other = doubt.meant && doubt.meantValue && !readJoint(inUnitMeant(typed(), reading, m_mark), m_mark).asks;
    if (other)
        m_otherUnit->setText(tr("Take %1").arg(torqueText(*doubt.meantValue, *doubt.meant)));
    m_otherUnit->setVisible(other);
    m_reason->show();
    m_right->show();
    m_save->hide();
    if (other)
        m_otherUnit->setFocus(Qt::OtherFocusReason);
    else
        m_reason->edit()->setFocus(Qt::OtherFocusReason);
}

void JointForm::endAsking()
{
    if (m_right->isHidden())
        return;
    m_question->clear();
    m_reason->setText({});
    m_reason->accept();
    m_reasonWanted = false;
    m_save->show();
    if (m_otherUnit->hasFocus() || m_right->hasFocus() || m_reason->edit()->hasFocus())
        m_save->setFocus(Qt::OtherFocusReason);
    for (QWidget *part : {static_cast<QWidget *>(m_otherUnit), static_cast<QWidget *>(m_reason), static_cast<QWidget *>(m_right)})
        part->hide();
}

void JointForm::takeOtherUnit()
{
    setTyped(inUnitMeant(typed(), reading(), m_mark));
    edited();
    save();
}

/// A reason is asked for once; it is never waited for.
void JointForm::itIsRight()
{
    const QString reason = m_reason->text().trimmed();
    if (reason.isEmpty() && !m_reasonWanted) {
        m_reasonWanted = true;
        m_reason->ask(tr("Say in a few words why it is right; once more without any, and it is kept as not said."));
        m_reason->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    m_answered = (reason.isEmpty() ? tr("not said why") : reason).toStdString();
    m_answeredAbout = questionedWith(typed());
    endAsking();
    save();
}

void JointForm::store(const JointReading &reading)
{
    const Joint *before = m_joint ? m_specs.joint(*m_joint) : nullptr;
    const int revision = before ? before->revision : 0;
    const Draft draft{*m_engine, m_joint};
    // While it is announced it is a draft still: the form is not filled with what was before.
    m_drafts[draft] = typed();
    const Result<JointId> stored = m_joint ? m_specs.reviseJoint(*m_joint, reading.text, m_mark) : m_specs.addJoint(reading.text, m_mark);
    if (!stored) {
        refusedByGarage(stored.error());
        return;
    }
    m_drafts.erase(draft);
    const bool isNew = !m_joint;
    showJoint(*stored);
    if (isNew)
        Q_EMIT added(*stored);
    const Joint *after = m_specs.joint(*stored);
    m_message->done(after && after->revision == revision ? tr("This is what is stored already.")
                                                         : tr("Saved. Work done before keeps the revision it was done by."));
}

void JointForm::refusedByGarage(const Error &error)
{
    if (error.kind == ErrorKind::JointTaken)
        m_fields->refuse(JointField::Name, error);
    else if (error.kind == ErrorKind::JointInUse)
        m_fields->refuse(JointField::Places, error);
    else
        m_message->refuse(sentence(error));
}

} // namespace asleft
