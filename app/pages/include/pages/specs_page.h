#pragma once

#include <parts/app_context.h>
#include <parts/ruled_rows.h>

#include <QWidget>

class QStackedLayout;

namespace asleft {

class JointForm;
class MessageLine;
class RuledList;
class PageHead;
class SpecForm;
class SpecsModel;
class TableForm;
class VehiclesModel;

/// What the manual asks of an engine: lashes and whatever else it has to be set, the lock nuts' torque, where to turn the crank, and the
/// joints.
class SpecsPage : public QWidget {
    Q_OBJECT

public:
    enum class Section { IntakeLash, ExhaustLash, BridgeScrew, Decompressor, Injector, LockNut, CrankPositions };

    SpecsPage(AppContext &context, SpecsModel &specs, VehiclesModel &vehicles, QWidget *parent = nullptr);

    void chooseEngine(EngineId engine);
    /// A section the engine has; another one is passed over.
    void chooseSection(Section section);
    [[nodiscard]] Section section() const { return m_section; }
    /// A joint the engine has; nothing: a new one.
    void chooseJoint(std::optional<JointId> joint);
    [[nodiscard]] bool showsJoint() const { return m_showsJoint; }
    [[nodiscard]] const RuledRows &jointRows() const { return m_jointRows; }
    [[nodiscard]] JointForm *jointForm() const { return m_jointForm; }
    [[nodiscard]] const RuledRows &sections() const { return m_sectionRows; }
    [[nodiscard]] SpecForm *form(Section section) const { return m_forms.at(std::size_t(section)); }
    [[nodiscard]] TableForm *table() const { return m_table; }

private:
    void buildLayout(AppContext &context);
    QWidget *listColumn();
    void wire();
    void showEngine();
    void showSections();
    void showJoints();

    SpecsModel &m_specs;
    VehiclesModel &m_vehicles;
    PageHead *m_head;
    RuledList *m_vehicleList;
    RuledRows m_sectionRows;
    RuledList *m_sectionList;
    RuledRows m_jointRows;
    RuledList *m_jointList;
    Section m_section = Section::IntakeLash;
    bool m_showsJoint = false;
    MessageLine *m_message;
    std::vector<SpecForm *> m_forms;
    TableForm *m_table;
    JointForm *m_jointForm;
    QStackedLayout *m_stack;
};

} // namespace asleft
