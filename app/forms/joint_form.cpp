#include <forms/joint_form.h>

#include <forms/pattern_editor.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/read_only.h>
#include <parts/specs_model.h>

#include <words/errors.h>
#include <words/joints.h>
#include <words/numbers.h>

#include <QShortcut>

namespace asleft {

namespace {

using Field = JointField;
using Choice = JointChoice;

/// A choice whose first key says nothing.
template <class E>
std::optional<E> chosen(int choice)
{
    return choice > 0 ? std::optional(E(choice - 1)) : std::nullopt;
}

template <class E>
int choiceOf(const std::optional<E> &value)
{
    return value ? int(*value) + 1 : 0;
}

QString revisionLine(const Joint &joint)
{
    return QStringLiteral("%1 · %2").arg(jointLine(joint), jointSpecLine(joint));
}

} // namespace

JointForm::JointForm(SpecsModel &specs, DecimalMark mark, QWidget *parent)
    : QWidget(parent), m_specs(specs), m_mark(mark), m_pattern(new PatternEditor), m_name(new Heading({}, TextSize::Now)),
      m_now(new Heading({}, TextSize::Body)), m_preload(new MessageLine), m_question(new MessageLine), m_otherUnit(new KeyButton({})),
      m_right(new KeyButton(tr("It is right"))), m_reason(new ValueField(tr("It is right, because"))), m_save(new KeyButton(tr("Save"))),
      m_message(new MessageLine), m_earlier(new Notes(tr("Earlier revisions")))
{
    addFields();
    addChoices();
    buildLayout();
    wire();
    keepFromWriting(specs.garage(), {m_save, m_right});
    engineChanged();
}

void JointForm::wire()
{
    for (const auto &[which, widget] : m_fields) {
        if (which == Field::OwnThread)
            continue;
        connect(widget, &ValueField::edited, this, which == Field::Places ? &JointForm::placesTyped : &JointForm::edited);
        connect(widget, &ValueField::left, this, [this, which = which] { leftField(which); });
        connect(widget, &ValueField::entered, widget, &ValueField::moveOn);
    }
    for (const auto &[which, keys] : m_choices)
        connect(keys, &ChoiceKeys::chosen, this, &JointForm::edited);
    connect(m_pattern, &PatternEditor::edited, this, &JointForm::placesLaidOut);
    connect(m_pattern, &PatternEditor::ownThreadLeft, this, [this] { leftField(Field::OwnThread); });
    // Enter goes from field to field; Tab stops at the drawing and its keys on the way.
    choice(Choice::SingleUse)->setLast(true);
    connect(choice(Choice::SingleUse), &ChoiceKeys::entered, this, [this] { field(Field::Target)->edit()->setFocus(Qt::TabFocusReason); });
    choice(Choice::Certainty)->setLast(true);
    connect(choice(Choice::Certainty), &ChoiceKeys::entered, this, &JointForm::save);
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

bool JointForm::yes(JointChoice which) const
{
    return choice(which)->choice() == 1;
}

JointTyped JointForm::typed() const
{
    JointTyped typed;
    for (const auto &[which, widget] : m_fields)
        if (which != Field::OwnThread)
            typed.texts[which] = widget->text();
    typed.pattern = m_pattern->pattern();
    typed.unit = choice(Choice::Unit)->choice();
    typed.settle = SettleGround(choice(Choice::Settle)->choice());
    typed.condition = chosen<ThreadCondition>(choice(Choice::Condition)->choice());
    typed.finish = Finish(choice(Choice::Finish)->choice());
    typed.drive = DriveKind(choice(Choice::Drive)->choice());
    typed.female = chosen<FemaleMaterial>(choice(Choice::Female)->choice());
    typed.blindHole = yes(Choice::BlindHole);
    typed.singleUse = SingleUse(choice(Choice::SingleUse)->choice());
    typed.certainty = Certainty(choice(Choice::Certainty)->choice());
    typed.answered = m_answered;
    typed.answeredAbout = m_answeredAbout;
    return typed;
}

void JointForm::setTyped(const JointTyped &typed)
{
    for (const auto &[which, widget] : m_fields) {
        if (which != Field::OwnThread)
            widget->setText(typed.text(which));
        widget->accept();
    }
    if (m_pattern->pattern() != typed.pattern)
        m_pattern->setPattern(typed.pattern);
    choice(Choice::Unit)->setChoice(typed.unit);
    choice(Choice::Settle)->setChoice(int(typed.settle));
    choice(Choice::Condition)->setChoice(choiceOf(typed.condition));
    choice(Choice::Finish)->setChoice(int(typed.finish));
    choice(Choice::Drive)->setChoice(int(typed.drive));
    choice(Choice::Female)->setChoice(choiceOf(typed.female));
    choice(Choice::BlindHole)->setChoice(typed.blindHole ? 1 : 0);
    choice(Choice::SingleUse)->setChoice(int(typed.singleUse));
    choice(Choice::Certainty)->setChoice(int(typed.certainty));
    m_answered = typed.answered;
    m_answeredAbout = typed.answeredAbout;
    m_typedFrom.reset();
    m_refused.reset();
    endAsking();
    tell(reading());
}

void JointForm::focusFirst()
{
    field(Field::Name)->edit()->setFocus(Qt::TabFocusReason);
}

void JointForm::edited()
{
    m_message->clear();
    m_refused.reset();
    endAsking();
    if (m_engine)
        m_drafts[{*m_engine, m_joint}] = typed();
    tell(reading());
}

/// The drawing follows the words as far as they make one; else it is what it was before. On the way from "12" to "14" stands "1": what
/// single fasteners have of their own is not lost by that.
void JointForm::placesTyped()
{
    if (!m_typedFrom)
        m_typedFrom = m_pattern->pattern();
    const auto made = parsePattern(field(Field::Places)->text().trimmed().toStdString());
    const bool another = made && (m_typedFrom->places.empty() || writePattern(*made) != writePattern(*m_typedFrom));
    m_pattern->replace(another ? withOwnOf(*made, *m_typedFrom) : *m_typedFrom, *m_typedFrom);
    edited();
}

void JointForm::placesLaidOut()
{
    m_typedFrom.reset();
    const Pattern &pattern = m_pattern->pattern();
    const std::string typed = field(Field::Places)->text().trimmed().toStdString();
    const auto made = parsePattern(typed);
    // "8 in a circle" stays as it was typed while it is still true.
    if (!made || writePattern(*made) != writePattern(pattern))
        field(Field::Places)->setText(pattern.places.empty() ? QString() : QString::fromStdString(writePattern(pattern)));
    edited();
}

/// A field passed by without typing is not told off for being empty.
void JointForm::leftField(JointField left)
{
    if (left == Field::Places)
        m_typedFrom.reset();
    const JointReading now = reading();
    tell(now);
    const auto refused = now.refusals.find(left);
    if (refused != now.refusals.end() && !field(left)->text().trimmed().isEmpty())
        refuseField(left, refused->second, now);
}

void JointForm::refuseField(JointField which, const Error &error, const JointReading &reading)
{
    if (which == Field::OwnThread && reading.ownThreadOf)
        m_pattern->take(*reading.ownThreadOf);
    field(which)->refuse(refusalSentence(which, error));
}

void JointForm::tell(const JointReading &reading)
{
    tellEchoes(m_fields, reading.echoes);
    auto refusals = reading.refusals;
    if (m_refused)
        refusals.insert(*m_refused);
    mendFields(m_fields, refusals, refusalSentence);
    const bool order = !reading.refusals.contains(Field::Order) && !reading.refusals.contains(Field::Places);
    m_pattern->setOrder(order ? reading.joint.order : TighteningOrder{});
    if (!reading.check)
        m_preload->clear();
    else if (reading.asks)
        m_preload->refuse(preloadQuestion(*reading.check, reading.joint));
    else
        m_preload->quiet(preloadSentence(*reading.check, reading.joint));
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
    typed.texts[Field::Manual] = QString::fromStdString(last.manual);
    typed.texts[Field::Page] = QString::fromStdString(last.page);
    typed.certainty = last.certainty;
    return typed;
}

void JointForm::fill()
{
    const auto draft = m_engine ? m_drafts.find({*m_engine, m_joint}) : m_drafts.end();
    const Joint *now = m_joint ? m_specs.joint(*m_joint) : nullptr;
    setTyped(draft != m_drafts.end() ? draft->second : now ? typedOf(*now) : blank());
}

bool JointForm::refuseAll(const JointReading &reading)
{
    if (reading.ownThreadOf)
        m_pattern->take(*reading.ownThreadOf);
    return refuseFields(m_fields, reading.refusals, refusalSentence);
}

void JointForm::save()
{
    if (!m_engine)
        return;
    m_message->clear();
    m_refused.reset();
    const JointReading now = reading();
    tell(now);
    if (refuseAll(now))
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
    const bool other = doubt.meant && doubt.meantValue && !readJointForm(inUnitMeant(typed(), reading, m_mark), m_mark).asks;
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
    m_answered = reason.isEmpty() ? tr("not said why") : reason;
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
    const auto which = fieldOf(error);
    if (!which) {
        m_message->refuse(sentence(error));
        return;
    }
    // Leaving another field must not take it away.
    m_refused.emplace(*which, error);
    field(*which)->refuse(sentence(error));
    field(*which)->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
