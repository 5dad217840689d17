#include <forms/joint_fields.h>

#include "form_layout.h"
#include <forms/pattern_editor.h>
#include <forms/spec_reader.h>
#include <parts/choice_keys.h>
#include <parts/fields.h>
#include <parts/message_line.h>
#include <parts/value_field.h>

#include <words/joint_names.h>
#include <words/joints.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

namespace {

using Field = JointField;
using Choice = JointChoice;

constexpr int spacing = 16;
constexpr int narrow = 130;

QHBoxLayout *rowOf(const QList<std::pair<QWidget *, int>> &widgets)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(spacing);
    for (const auto &[widget, stretch] : widgets)
        row->addWidget(widget, stretch);
    return row;
}

/// Keys side by side, as wide as they are.
QHBoxLayout *keysRow(const QList<QWidget *> &widgets)
{
    auto *row = new QHBoxLayout;
    row->setSpacing(spacing);
    for (QWidget *widget : widgets)
        row->addWidget(widget);
    row->addStretch(1);
    return row;
}

/// The words of every value from the first of an enumeration to `last`.
template <class E>
QStringList namesTo(E last, QString (*name)(E))
{
    QStringList names;
    for (int value = 0; value <= int(last); ++value)
        names.append(name(E(value)));
    return names;
}

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

int placeOf(TorqueUnit unit)
{
    return int(std::ranges::find(torqueChoices, unit) - torqueChoices.begin());
}

} // namespace

JointFields::JointFields(QWidget *parent) : QWidget(parent), m_pattern(new PatternEditor), m_preload(new MessageLine)
{
    addFields();
    addChoices();
    buildLayout();
    wire();
}

void JointFields::addFields()
{
    const auto add = [this](Field field, const QString &label, const QString &placeholder = {}) {
        auto *made = new ValueField(label);
        made->setPlaceholder(placeholder);
        m_fields.emplace(field, made);
    };
    add(Field::Name, tr("Joint"), tr("cylinder head cover"));
    add(Field::Places, tr("Places"), tr("12 around a circle, 2 rows of 7"));
    add(Field::Thread, tr("Thread"), tr("M8x1 or 3/8-24"));
    add(Field::Strength, tr("Class or grade"), tr("8.8, grade 5"));
    add(Field::Engagement, tr("Engagement"), tr("not known"));
    add(Field::Target, tr("Torque asked for"), tr("32 ± 4 or 28-36"));
    add(Field::OtherTarget, tr("The same as printed in the other system"), tr("only where the manual prints both"));
    add(Field::Passes, tr("Passes"), tr("target, or: finger, 50 %, target, +90°"));
    add(Field::Order, tr("Order of tightening"), tr("as the manual prints it: 7-3-1-5; else generated"));
    add(Field::DriveSize, tr("Size"), tr("10 mm"));
    add(Field::Manual, tr("Manual"));
    add(Field::Page, tr("Page"));
    m_fields.emplace(Field::OwnThread, m_pattern->ownThread());
}

void JointFields::addChoices()
{
    const auto make = [this](Choice choice, const QString &label, const QStringList &words) {
        m_choices.emplace(choice, new ChoiceKeys(label, words));
    };
    const QStringList notSaid{tr("not said")};
    QStringList conditions{tr("dry"), tr("oiled"), tr("thread-lock"), tr("sealant"), tr("anti-seize")};
    make(Choice::Unit, tr("Bare numbers count in"), torqueUnitTexts());
    make(Choice::Settle, tr("Go round until none moves"), {tr("no"), tr("it has limiters"), tr("the manual says so")});
    make(Choice::Condition, tr("Threads, as the manual states them"), notSaid + conditions);
    make(Choice::Finish, tr("Finish"), namesTo(Finish::Cadmium, &finishName));
    make(Choice::Drive, tr("Taken hold of by"), namesTo(DriveKind::Screwdriver, &driveKindName));
    make(Choice::Female, tr("Screwed into"),
         QStringList{tr("not said")} + namesTo(FemaleMaterial::Aluminium, &femaleMaterialName) << tr("insert"));
    make(Choice::BlindHole, tr("Blind hole"), {tr("no"), tr("yes")});
    make(Choice::SingleUse, tr("May be used"), {tr("again"), tr("once: to yield"), tr("once: crush washer")});
    make(Choice::Certainty, tr("How sure"), certaintyChoices());
}

void JointFields::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    buildFastener(*column);
    buildTightening(*column);
    buildSource(*column);
}

/// The fields at the left, what they make at the right.
void JointFields::buildFastener(QVBoxLayout &column)
{
    auto *fields = new QVBoxLayout;
    fields->setSpacing(10);
    fields->addWidget(field(Field::Name));
    fields->addWidget(field(Field::Places));
    fields->addLayout(rowOf({{field(Field::Thread), 1}, {field(Field::Strength), 1}}));
    fields->addLayout(keysRow({choice(Choice::Female)}));
    field(Field::Engagement)->setMaximumWidth(narrow);
    fields->addLayout(keysRow({field(Field::Engagement), choice(Choice::BlindHole)}));
    fields->addLayout(keysRow({choice(Choice::SingleUse)}));
    fields->addStretch(1);
    auto *both = new QHBoxLayout;
    both->setSpacing(spacing);
    both->addLayout(fields, 1);
    both->addWidget(m_pattern, 1);
    column.addLayout(both);
}

void JointFields::buildTightening(QVBoxLayout &column)
{
    column.addLayout(groupHead(tr("Tightening")));
    column.addLayout(rowOf({{field(Field::Target), 1}, {field(Field::OtherTarget), 1}}));
    column.addLayout(keysRow({choice(Choice::Unit)}));
    column.addWidget(m_preload);
    column.addLayout(rowOf({{field(Field::Passes), 1}, {field(Field::Order), 1}}));
    column.addLayout(keysRow({choice(Choice::Settle), choice(Choice::Finish)}));
    column.addLayout(keysRow({choice(Choice::Condition)}));
    field(Field::DriveSize)->setMaximumWidth(narrow);
    column.addLayout(keysRow({choice(Choice::Drive), field(Field::DriveSize)}));
}

void JointFields::buildSource(QVBoxLayout &column)
{
    column.addLayout(groupHead(tr("Where it is printed")));
    column.addLayout(rowOf({{field(Field::Manual), 3}, {field(Field::Page), 1}}));
    column.addWidget(choice(Choice::Certainty));
}

void JointFields::wire()
{
    for (const auto &[which, widget] : m_fields) {
        if (which == Field::OwnThread)
            continue;
        connect(widget, &ValueField::edited, this, which == Field::Places ? &JointFields::placesTyped : &JointFields::changedHere);
        connect(widget, &ValueField::left, this, [this, which = which] { leftField(which); });
        connect(widget, &ValueField::entered, widget, &ValueField::moveOn);
    }
    for (const auto &[which, keys] : m_choices)
        connect(keys, &ChoiceKeys::chosen, this, &JointFields::changedHere);
    connect(m_pattern, &PatternEditor::edited, this, &JointFields::placesLaidOut);
    connect(m_pattern, &PatternEditor::ownThreadLeft, this, [this] { leftField(Field::OwnThread); });
    // Enter goes from field to field; Tab stops at the drawing and its keys on the way.
    choice(Choice::SingleUse)->setLast(true);
    connect(choice(Choice::SingleUse), &ChoiceKeys::entered, this, [this] { field(Field::Target)->edit()->setFocus(Qt::TabFocusReason); });
    choice(Choice::Certainty)->setLast(true);
    connect(choice(Choice::Certainty), &ChoiceKeys::entered, this, &JointFields::finished);
}

bool JointFields::yes(JointChoice which) const
{
    return choice(which)->choice() == 1;
}

JointTyped JointFields::typed() const
{
    JointTyped typed;
    for (const auto &[which, widget] : m_fields)
        if (which != Field::OwnThread)
            typed.texts[which] = widget->text().toStdString();
    typed.pattern = m_pattern->pattern();
    typed.unit = torqueChoices.at(std::size_t(choice(Choice::Unit)->choice()));
    typed.settle = SettleGround(choice(Choice::Settle)->choice());
    typed.condition = chosen<ThreadCondition>(choice(Choice::Condition)->choice());
    typed.finish = Finish(choice(Choice::Finish)->choice());
    typed.drive = DriveKind(choice(Choice::Drive)->choice());
    typed.female = chosen<FemaleMaterial>(choice(Choice::Female)->choice());
    typed.blindHole = yes(Choice::BlindHole);
    typed.singleUse = SingleUse(choice(Choice::SingleUse)->choice());
    typed.certainty = Certainty(choice(Choice::Certainty)->choice());
    return typed;
}

void JointFields::setTyped(const JointTyped &typed)
{
    for (const auto &[which, widget] : m_fields) {
        if (which != Field::OwnThread)
            widget->setText(QString::fromStdString(typed.text(which)));
        widget->accept();
    }
    if (m_pattern->pattern() != typed.pattern)
        m_pattern->setPattern(typed.pattern);
    choice(Choice::Unit)->setChoice(placeOf(typed.unit));
    choice(Choice::Settle)->setChoice(int(typed.settle));
    choice(Choice::Condition)->setChoice(choiceOf(typed.condition));
    choice(Choice::Finish)->setChoice(int(typed.finish));
    choice(Choice::Drive)->setChoice(int(typed.drive));
    choice(Choice::Female)->setChoice(choiceOf(typed.female));
    choice(Choice::BlindHole)->setChoice(typed.blindHole ? 1 : 0);
    choice(Choice::SingleUse)->setChoice(int(typed.singleUse));
    choice(Choice::Certainty)->setChoice(int(typed.certainty));
    m_typedFrom.reset();
    m_refused.reset();
}

void JointFields::focusFirst()
{
    field(Field::Name)->edit()->setFocus(Qt::TabFocusReason);
}

void JointFields::changedHere()
{
    m_refused.reset();
    Q_EMIT edited();
}

void JointFields::leftField(JointField which)
{
    if (which == Field::Places)
        m_typedFrom.reset();
    Q_EMIT left(which);
}

/// The drawing follows the words as far as they make one; else it is what it was before. On the way from "12" to "14" stands "1": what
/// single fasteners have of their own is not lost by that.
void JointFields::placesTyped()
{
    if (!m_typedFrom)
        m_typedFrom = m_pattern->pattern();
    const auto made = parsePattern(field(Field::Places)->text().trimmed().toStdString());
    const bool another = made && (m_typedFrom->places.empty() || writePattern(*made) != writePattern(*m_typedFrom));
    m_pattern->replace(another ? withOwnOf(*made, *m_typedFrom) : *m_typedFrom, *m_typedFrom);
    changedHere();
}

void JointFields::placesLaidOut()
{
    m_typedFrom.reset();
    const Pattern &pattern = m_pattern->pattern();
    const std::string typed = field(Field::Places)->text().trimmed().toStdString();
    const auto made = parsePattern(typed);
    // "8 in a circle" stays as it was typed while it is still true.
    if (!made || writePattern(*made) != writePattern(pattern))
        field(Field::Places)->setText(pattern.places.empty() ? QString() : QString::fromStdString(writePattern(pattern)));
    changedHere();
}

void JointFields::tell(const JointReading &reading)
{
    tellEchoes(m_fields, echoesOf(reading));
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

void JointFields::tellLeft(JointField which, const JointReading &reading)
{
    tell(reading);
    if (which == Field::OwnThread && reading.ownThreadOf)
        m_pattern->take(*reading.ownThreadOf);
    refuseLeft(m_fields, which, reading.refusals, refusalSentence);
}

bool JointFields::refuse(const JointReading &reading)
{
    m_refused.reset();
    tell(reading);
    if (reading.ownThreadOf)
        m_pattern->take(*reading.ownThreadOf);
    return refuseFields(m_fields, reading.refusals, refusalSentence);
}

/// Leaving another field must not take it away.
void JointFields::refuse(JointField which, const Error &error)
{
    m_refused.emplace(which, error);
    field(which)->refuse(refusalSentence(which, error));
    field(which)->edit()->setFocus(Qt::OtherFocusReason);
}

} // namespace asleft
