#pragma once

#include "parts/ruled_rows.h"

#include <engine/plan.h>

#include <QWidget>

#include <optional>

namespace asleft {

class ChoiceKeys;
class MessageLine;
class Notes;

/// The plan that geometry gives for an engine, for looking at: where to turn to, and what is set there.
class PlanPreview : public QWidget {
    Q_OBJECT

public:
    explicit PlanPreview(QWidget *parent = nullptr);

    void setDesign(const std::optional<EngineDesign> &design);
    [[nodiscard]] Notes *positions() const { return m_positions; }

private:
    void show();

    std::optional<EngineDesign> m_design;
    ChoiceKeys *m_way;
    MessageLine *m_source;
    Notes *m_positions;
};

} // namespace asleft
