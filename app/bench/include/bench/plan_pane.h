#pragma once

#include <bench/pane.h>
#include <parts/app_context.h>

#include <work/job_book.h>

class QVBoxLayout;

namespace asleft {

class Heading;
class KeyButton;
class MessageLine;
class Notes;
class RuledList;
class RuledRows;
class ValueField;

/// The plans this engine can be worked by: the manual's own table first, then every way to generate one, from where the crank stands. On
/// the left the ways, on the right the plan of the one in hand, or the sentence why there is none.
class PlanPane : public Pane {
    Q_OBJECT

public:
    PlanPane(AppContext &context, JobBook &book, QWidget *parent = nullptr);

    void refresh() override;
    void takeFocus() override;
    /// Takes a way in hand, as a click on it does.
    void choose(PlanWay way);
    [[nodiscard]] RuledList *ways() const { return m_ways; }
    [[nodiscard]] RuledRows *rows() const { return m_rows; }
    [[nodiscard]] RuledList *marks() const { return m_marks; }
    [[nodiscard]] ValueField *leastMargin() const { return m_margin; }
    [[nodiscard]] Notes *positions() const { return m_positions; }
    [[nodiscard]] MessageLine *message() const { return m_message; }
    [[nodiscard]] KeyButton *workKey() const { return m_work; }

private:
    void build();
    void buildPlan(QVBoxLayout *column);
    void buildMarks(QVBoxLayout *column);
    void showWays();
    void showPlan();
    void say(const CrankPlan &plan);
    void work();
    /// The plan of the row in hand.
    [[nodiscard]] Result<CrankPlan> planInHand() const;
    [[nodiscard]] PlanAsk asked(PlanWay way) const;
    [[nodiscard]] bool hasRuleOfNine() const;
    [[nodiscard]] bool isInUse(const CrankPlan &plan) const;
    [[nodiscard]] const EngineDesign &design() const { return m_book.state().frame->engine.design; }

    AppContext &m_context;
    JobBook &m_book;
    RuledRows *m_rows = nullptr;
    RuledList *m_ways = nullptr;
    Heading *m_source = nullptr;
    Heading *m_note = nullptr;
    Heading *m_begins = nullptr;
    QWidget *m_fewest = nullptr; ///< what the fewest positions are asked with
    RuledList *m_marks = nullptr;
    ValueField *m_margin = nullptr;
    MessageLine *m_warning = nullptr;
    Notes *m_positions = nullptr;
    MessageLine *m_message = nullptr;
    KeyButton *m_work = nullptr;
    KeyButton *m_back = nullptr;
    std::optional<CrankPlan> m_plan; ///< shown now
};

} // namespace asleft
