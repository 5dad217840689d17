#pragma once

#include "desk.h"
#include "parts/ruled_rows.h"

#include <QWidget>

class QStackedLayout;

namespace asleft {

class MessageLine;
class RuledList;
class SheetHead;
class SpecForm;
class SpecsModel;
class TableForm;
class VehiclesModel;

/// What the manual asks of an engine: lashes and whatever else it has to be set, the lock nuts' torque, and where to turn the crank.
class SpecsPage : public QWidget {
    Q_OBJECT

public:
    enum class Section { IntakeLash, ExhaustLash, BridgeScrew, Decompressor, Injector, LockNut, CrankPositions };

    SpecsPage(Desk &desk, SpecsModel &specs, VehiclesModel &vehicles, QWidget *parent = nullptr);

    void chooseEngine(EngineId engine);
    /// A section the engine has; another one is passed over.
    void chooseSection(Section section);
    [[nodiscard]] Section section() const { return m_section; }
    [[nodiscard]] const RuledRows &sections() const { return m_sectionRows; }
    [[nodiscard]] SpecForm *form(Section section) const { return m_forms.at(std::size_t(section)); }
    [[nodiscard]] TableForm *table() const { return m_table; }

private:
    void lay(Desk &desk);
    QWidget *listColumn();
    void wire();
    void showEngine();
    void showSections();

    SpecsModel &m_specs;
    VehiclesModel &m_vehicles;
    SheetHead *m_head;
    RuledList *m_vehicleList;
    RuledRows m_sectionRows;
    RuledList *m_sectionList;
    Section m_section = Section::IntakeLash;
    MessageLine *m_message;
    std::vector<SpecForm *> m_forms;
    TableForm *m_table;
    QStackedLayout *m_stack;
};

} // namespace asleft
