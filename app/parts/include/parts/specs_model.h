#pragma once

#include <parts/ruled_rows.h>

#include <work/joints.h>
#include <work/specs.h>
#include <work/vehicles.h>

namespace asleft {

class VehiclesModel;

/// What the manual asks of one engine: its specs and joints in every revision and its own table of crank positions, kept up to date.
class SpecsModel : public QObject {
    Q_OBJECT

public:
    SpecsModel(Garage &garage, VehiclesModel &vehicles, QObject *parent = nullptr);

    void setEngine(std::optional<EngineId> engine);
    [[nodiscard]] std::optional<EngineId> engineId() const { return m_engine; }
    /// The vehicle, or the stand, with that engine; its engine is there.
    [[nodiscard]] const VehicleRow *engine() const;
    [[nodiscard]] Garage &garage() const { return m_garage; }

    /// The revision in force of a subject; nothing if there is none yet.
    [[nodiscard]] const Spec *now(SpecSubject subject) const;
    /// The revisions before it, newest first.
    [[nodiscard]] std::vector<const Spec *> earlier(SpecSubject subject) const;
    /// Manual and page of whatever was stored last for this engine: the next value mostly stands on the same page.
    [[nodiscard]] SpecSource lastSource() const;
    /// The newest revision of each joint, in the order they were described.
    [[nodiscard]] const std::vector<Joint> &joints() const { return m_joints; }
    [[nodiscard]] const Joint *joint(JointId joint) const;
    /// The revisions before it, newest first.
    [[nodiscard]] std::vector<const Joint *> earlierOf(JointId joint) const;
    [[nodiscard]] const std::optional<TurningTable> &table() const { return m_table; }
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }

    // The acts.
    Result<SpecId> revise(SpecSubject subject, const SpecText &text, DecimalMark mark);
    Done reviseTable(const std::vector<TableLine> &lines, const SpecSource &source);
    Result<JointId> addJoint(const JointText &text, DecimalMark mark);
    Result<JointId> reviseJoint(JointId joint, const JointText &text, DecimalMark mark);

Q_SIGNALS:
    /// Another engine, or the engine itself was edited.
    void engineChanged();
    /// Its specs or its table have another revision.
    void specsChanged();
    /// There is another joint, or another revision of one.
    void jointsChanged();

private:
    void heed(const Change &change);
    void reload();
    void reloadJoints();

    Garage &m_garage;
    VehiclesModel &m_vehicles;
    std::optional<EngineId> m_engine;
    std::vector<Spec> m_specs;
    std::optional<TurningTable> m_table;
    std::vector<Joint> m_jointRevisions;
    std::vector<Joint> m_joints;
    std::optional<Error> m_failure;
};

} // namespace asleft
