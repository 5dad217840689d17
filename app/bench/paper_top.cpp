#include <bench/paper_top.h>

#include <bench/work_date.h>
#include <parts/choice_keys.h>
#include <parts/value_field.h>

#include <words/specs.h>

#include <QHBoxLayout>

#include <algorithm>

namespace asleft {

PaperTop::PaperTop(AppContext &context, const JobBook &book, QWidget *parent)
    : QWidget(parent), m_context(context), m_book(book), m_date(new ValueField(tr("Date of the work; empty: today"))),
      m_condition(new ChoiceKeys(tr("The engine was"), {conditionName(EngineCondition::Cold), conditionName(EngineCondition::Hot)}))
{
    auto *row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(16);
    row->addWidget(m_date, 1);
    row->addWidget(m_condition);
    buildWho(book.session().who);
    m_date->setPlaceholder(QStringLiteral("2026-05-14"));
    m_condition->setChoice(book.session().condition == EngineCondition::Cold ? 0 : 1);
    connect(m_date, &ValueField::edited, m_date, &ValueField::accept);
    connect(m_date, &ValueField::entered, this, [this] {
        if (check())
            Q_EMIT entered();
    });
    connect(m_condition, &ChoiceKeys::chosen, this, &PaperTop::conditionChosen);
}

void PaperTop::buildWho(std::optional<PersonId> chosen)
{
    delete m_who;
    m_people.clear();
    QStringList initials;
    for (const Person &person : m_book.state().frame->people) {
        initials.append(QString::fromStdString(person.initials));
        m_people.push_back(person.id);
    }
    m_who = new ChoiceKeys(tr("Who did it"), initials);
    static_cast<QHBoxLayout *>(layout())->insertWidget(0, m_who);
    const auto known = std::ranges::find(m_people, chosen, [](PersonId id) { return std::optional(id); });
    if (known != m_people.end())
        m_who->setChoice(int(known - m_people.begin()));
}

void PaperTop::refresh()
{
    std::vector<PersonId> people;
    for (const Person &person : m_book.state().frame->people)
        people.push_back(person.id);
    if (people != m_people)
        buildWho(m_people.empty() ? m_book.session().who : std::optional(who()));
}

PersonId PaperTop::who() const
{
    return m_people.at(std::size_t(m_who->choice()));
}

EngineCondition PaperTop::condition() const
{
    return m_condition->choice() == 0 ? EngineCondition::Cold : EngineCondition::Hot;
}

bool PaperTop::check()
{
    const QString typed = m_date->text().trimmed();
    const auto day = readDay(typed);
    if (!typed.isEmpty() && !day)
        m_date->refuse(tr("“%1” is no date. Nothing was logged; type it as 2026-05-14, or leave it empty for today.").arg(typed));
    else if (day && *day > dayOf(m_context.garage().now()))
        m_date->refuse(tr("“%1” is not yet. Nothing was logged; type the day the work was done.").arg(typed));
    else
        m_date->accept();
    return !m_date->isRefused();
}

std::optional<Moment> PaperTop::day() const
{
    const auto day = readDay(m_date->text());
    return day && *day != dayOf(m_context.garage().now()) ? std::optional(noonOf(*day)) : std::nullopt;
}

} // namespace asleft
