#pragma once

#include <parts/app_context.h>

#include <work/job_book.h>

#include <QWidget>

namespace asleft {

class ChoiceKeys;
class ValueField;

/// The head of a bench sheet: who filled it in, when, and whether the engine was cold or hot.
class PaperTop : public QWidget {
    Q_OBJECT

public:
    PaperTop(AppContext &context, const JobBook &book, QWidget *parent = nullptr);

    /// People may have come; whoever was chosen stays chosen.
    void refresh();
    [[nodiscard]] PersonId who() const;
    [[nodiscard]] EngineCondition condition() const;
    /// Whether the date can be read; where not, the refusal stands at it.
    bool check();
    /// Noon of the day; nothing where it is today. \pre check()
    [[nodiscard]] std::optional<Moment> day() const;
    [[nodiscard]] ValueField *date() const { return m_date; }
    [[nodiscard]] ChoiceKeys *whoKeys() const { return m_who; }
    [[nodiscard]] ChoiceKeys *conditionKeys() const { return m_condition; }

Q_SIGNALS:
    void conditionChosen();
    /// Enter in the last of its fields.
    void entered();

private:
    void buildWho(std::optional<PersonId> chosen);

    AppContext &m_context;
    const JobBook &m_book;
    std::vector<PersonId> m_people; ///< of the keys
    ChoiceKeys *m_who = nullptr;
    ValueField *m_date;
    ChoiceKeys *m_condition;
};

} // namespace asleft
