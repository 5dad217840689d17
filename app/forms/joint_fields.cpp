// What stands in the joint form, and where.
#include <forms/joint_form.h>

#include "form_layout.h"
#include <forms/pattern_editor.h>
#include <forms/spec_reader.h>
#include <parts/choice_keys.h>
#include <parts/heading.h>
#include <parts/key_button.h>
#include <parts/message_line.h>
#include <parts/notes.h>
#include <parts/rule.h>
#include <parts/value_field.h>
#include <words/joint_names.h>

#include <QHBoxLayout>
#include <QVBoxLayout>

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

} // namespace

void JointForm::addFields()
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

void JointForm::addChoices()
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

void JointForm::buildLayout()
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    column->addWidget(m_name);
    column->addWidget(m_now);
    column->addWidget(new Rule);
    buildLayoutFields(*column);
    layTightening(*column);
    laySource(*column);
    layEnd(*column);
    column->addStretch(1);
    m_name->setWordWrap(true);
    m_now->setWordWrap(true);
}

/// The fields at the left, what they make at the right.
void JointForm::buildLayoutFields(QVBoxLayout &column)
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

void JointForm::layTightening(QVBoxLayout &column)
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

void JointForm::laySource(QVBoxLayout &column)
{
    column.addLayout(groupHead(tr("Where it is printed")));
    column.addLayout(rowOf({{field(Field::Manual), 3}, {field(Field::Page), 1}}));
    column.addWidget(choice(Choice::Certainty));
}

void JointForm::layEnd(QVBoxLayout &column)
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

} // namespace asleft
