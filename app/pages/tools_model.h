#pragma once

#include "parts/ruled_rows.h"

#include <work/vehicles.h>

namespace asleft {

/// The feeler sets of the shop and the people who work in it, kept up to date.
class ToolsModel : public QObject {
    Q_OBJECT

public:
    explicit ToolsModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *feelerRows() { return &m_feelerRows; }
    [[nodiscard]] RuledRows *peopleRows() { return &m_peopleRows; }
    [[nodiscard]] const Tool *tool(qint64 id) const;
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }

    // The acts.
    Result<ToolId> addFeelerSet(const QString &name, const QString &leaves, LengthUnit unit, DecimalMark mark);
    Result<PersonId> addPerson(const QString &initials, const QString &name);

Q_SIGNALS:
    void changed();

private:
    void reload();

    Garage &m_garage;
    RuledRows m_feelerRows;
    RuledRows m_peopleRows;
    std::vector<Tool> m_feelerSets;
    std::optional<Error> m_failure;
};

/// "20 leaves, 0.05 to 1.00 mm"
QString leavesWords(const std::vector<Typed<Length>> &leaves);

} // namespace asleft
