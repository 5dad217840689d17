#include "bench/sitting_sheet.h"

#include "parts/choice_keys.h"
#include "parts/heading.h"
#include "parts/key_button.h"
#include "parts/rule.h"
#include "parts/value_field.h"

#include <show/words.h>
#include <work/vehicles.h>

#include <QVBoxLayout>

#include <algorithm>

namespace asleft {

SittingSheet::SittingSheet(Desk &desk, JobBook &book, QWidget *parent) : QWidget(parent), m_desk(desk), m_book(book)
{
    auto *column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    sayWhereItWasLeft(column);
    askWho(column);
    askTools(column);
    m_begin = new KeyButton(tr("Begin"));
    m_begin->setStrong(true);
    column->addWidget(m_begin, 0, Qt::AlignLeft);
    column->addStretch(1);
    connect(m_begin, &KeyButton::clicked, this, &SittingSheet::begin);
    connect(m_initials, &ValueField::entered, this, &SittingSheet::begin);
    connect(m_initials, &ValueField::edited, m_initials, &ValueField::accept);
}

void SittingSheet::sayWhereItWasLeft(QVBoxLayout *column)
{
    const JobState &state = m_book.state();
    column->addWidget(new Heading(lastAct(state) ? tr("Where this job was left") : tr("A new job"), TextSize::Now));
    for (const QString &line : resumeLines(state, m_desk.garage().now(), m_book.tool())) {
        auto *words = new Heading(line, TextSize::Body);
        words->setWordWrap(true);
        column->addWidget(words);
        column->addWidget(new Rule);
    }
    column->addSpacing(8);
}

void SittingSheet::askWho(QVBoxLayout *column)
{
    const JobState &state = m_book.state();
    QStringList initials;
    for (const Person &person : state.frame->people)
        initials.append(QString::fromStdString(person.initials));
    if (!initials.isEmpty()) {
        m_who = new ChoiceKeys(tr("Who is at the bench?"), initials);
        column->addWidget(m_who);
        const Act *last = lastAct(state);
        const auto known = std::ranges::find(state.frame->people, last ? last->what.who : state.frame->people.front().id, &Person::id);
        if (known != state.frame->people.end())
            m_who->setChoice(int(known - state.frame->people.begin()));
    }
    m_initials = new ValueField(initials.isEmpty() ? tr("Who is at the bench? Initials") : tr("Somebody else: initials"));
    m_initials->setMaximumWidth(280);
    column->addWidget(m_initials);
}

void SittingSheet::askTools(QVBoxLayout *column)
{
    QStringList sets;
    for (const Tool &set : m_book.state().frame->tools)
        sets.append(QString::fromStdString(set.name));
    if (!sets.isEmpty()) {
        m_leaves = new ChoiceKeys(tr("Feeler set"), sets + QStringList{tr("another")});
        column->addWidget(m_leaves);
    }
    m_condition = new ChoiceKeys(tr("The engine is"), {conditionName(EngineCondition::Cold), conditionName(EngineCondition::Hot)});
    column->addWidget(m_condition);
}

void SittingSheet::takeFocus()
{
    // Whoever worked last is chosen already: Enter alone begins.
    if (m_who)
        m_begin->setFocus(Qt::OtherFocusReason);
    else
        m_initials->edit()->setFocus(Qt::OtherFocusReason);
}

void SittingSheet::begin()
{
    const auto &people = m_book.state().frame->people;
    std::optional<PersonId> who;
    if (m_who && m_initials->text().trimmed().isEmpty())
        who = people.at(std::size_t(m_who->choice())).id;
    else if (const auto added = addPerson(m_desk.garage(), m_initials->text().toStdString(), {}))
        who = *added;
    else {
        m_initials->refuse(sentence(added.error()));
        m_initials->edit()->setFocus(Qt::OtherFocusReason);
        return;
    }
    const auto &sets = m_book.state().frame->tools;
    const auto set = m_leaves ? std::size_t(m_leaves->choice()) : sets.size();
    if (set < sets.size())
        m_book.setTool(sets[set].id);
    m_book.setCondition(m_condition->choice() == 0 ? EngineCondition::Cold : EngineCondition::Hot);
    m_book.setWho(*who);
    Q_EMIT begun();
}

} // namespace asleft
