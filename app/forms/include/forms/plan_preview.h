#pragma once

#include <parts/ruled_rows.h>

#include <engine/plan.h>

#include <QWidget>

#include <optional>

namespace asleft {

class ChoiceKeys;
class MessageLine;
class Notes;
class RuledList;

/// The plans that geometry gives for an engine, for looking at: the ways to choose one, where each turns to, and what is set there.
class PlanPreview : public QWidget {
    Q_OBJECT

public:
    explicit PlanPreview(QWidget *parent = nullptr);

    void setDesign(const std::optional<EngineDesign> &design);
    void choose(PlanWay way);
    [[nodiscard]] RuledList *ways() const { return m_ways; }
    [[nodiscard]] ChoiceKeys *marks() const { return m_marks; }
    [[nodiscard]] MessageLine *warning() const { return m_warning; }
    [[nodiscard]] Notes *positions() const { return m_positions; }

private:
    QLayout *buildLayout();
    void fill();
    void show();

    std::optional<EngineDesign> m_design;
    RuledRows m_wayRows;
    RuledList *m_ways;
    ChoiceKeys *m_marks;
    MessageLine *m_source;
    MessageLine *m_warning;
    Notes *m_positions;
};

} // namespace asleft
