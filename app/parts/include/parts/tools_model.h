#pragma once

#include <parts/ruled_rows.h>
#include <parts/tool_words.h>

#include <work/workshop.h>

#include <array>

namespace asleft {

/// The tools of a rack as they hang together.
enum class ToolGroup {
    FeelerSets,
    Gauges, ///< dial gauges and micrometers
    TorqueWrenches,
    AngleGauges,
    Adapters,
    Sockets,
};
inline constexpr std::size_t toolGroups = 6;
ToolGroup groupOf(ToolKind kind);

/// What the shop measures with, the people who work in it and how it decides, kept up to date.
class ToolsModel : public QObject {
    Q_OBJECT

public:
    explicit ToolsModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *feelerRows() { return rowsOf(ToolGroup::FeelerSets); }
    [[nodiscard]] RuledRows *gaugeRows() { return rowsOf(ToolGroup::Gauges); }
    [[nodiscard]] RuledRows *wrenchRows() { return rowsOf(ToolGroup::TorqueWrenches); }
    [[nodiscard]] RuledRows *rowsOf(ToolGroup group) { return &m_toolRows.at(std::size_t(group)); }
    [[nodiscard]] RuledRows *peopleRows() { return &m_peopleRows; }
    /// How many torque wrenches are past their calibration.
    [[nodiscard]] int wrenchesOverdue() const;
    [[nodiscard]] const Tool *tool(qint64 id) const;
    [[nodiscard]] DecisionRule rule() const { return m_rule; }
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }
    [[nodiscard]] Garage &garage() const { return m_garage; }

    // The acts.
    Result<ToolId> addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark);
    Result<ToolId> addGauge(const GaugeText &text, DecimalMark mark);
    Result<ToolId> addTorqueWrench(const TorqueWrenchText &text, DecimalMark mark);
    Done setCalibrationDue(ToolId wrench, const QString &due);
    Result<ToolId> addFitting(const FittingText &text, DecimalMark mark);
    Result<PersonId> addPerson(const QString &initials, const QString &name);
    Done setRule(DecisionRule rule);

Q_SIGNALS:
    void changed();

private:
    void reload();

    Garage &m_garage;
    std::array<RuledRows, toolGroups> m_toolRows;
    RuledRows m_peopleRows;
    std::vector<Tool> m_tools;
    DecisionRule m_rule = DecisionRule::Simple;
    std::optional<Error> m_failure;
};

} // namespace asleft
