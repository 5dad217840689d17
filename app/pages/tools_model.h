#pragma once

#include "parts/ruled_rows.h"

#include <work/workshop.h>

namespace asleft {

/// What the shop measures with, the people who work in it and how it decides, kept up to date.
class ToolsModel : public QObject {
    Q_OBJECT

public:
    explicit ToolsModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *feelerRows() { return &m_feelerRows; }
    /// Dial gauges and micrometers.
    [[nodiscard]] RuledRows *gaugeRows() { return &m_gaugeRows; }
    [[nodiscard]] RuledRows *peopleRows() { return &m_peopleRows; }
    [[nodiscard]] const Tool *tool(qint64 id) const;
    [[nodiscard]] DecisionRule rule() const { return m_rule; }
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }
    [[nodiscard]] Garage &garage() const { return m_garage; }

    // The acts.
    Result<ToolId> addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark);
    Result<ToolId> addGauge(const GaugeText &text, DecimalMark mark);
    Result<PersonId> addPerson(const QString &initials, const QString &name);
    Done setRule(DecisionRule rule);

Q_SIGNALS:
    void changed();

private:
    void reload();

    Garage &m_garage;
    RuledRows m_feelerRows;
    RuledRows m_gaugeRows;
    RuledRows m_peopleRows;
    std::vector<Tool> m_tools;
    DecisionRule m_rule = DecisionRule::Simple;
    std::optional<Error> m_failure;
};

/// "20 leaves, 0.05 to 1.00 mm"
QString leavesWords(const std::vector<Typed<Length>> &leaves);

/// "readings are good to ± 0.012 mm"; what is missing where that cannot be told.
QString gaugeWords(const Tool &gauge);

} // namespace asleft
