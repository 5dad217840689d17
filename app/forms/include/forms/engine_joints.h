#pragma once

#include <shop/joint.h>
#include <work/garage.h>

#include <QObject>

#include <chrono>
#include <optional>
#include <vector>

namespace asleft {

/// The joints of one engine and the rack they are tightened with, kept up to date: what a job is planned by.
class EngineJoints : public QObject {
    Q_OBJECT

public:
    explicit EngineJoints(Garage &garage, QObject *parent = nullptr);

    void setEngine(std::optional<EngineId> engine);
    [[nodiscard]] std::optional<EngineId> engine() const { return m_engine; }
    /// The newest revision of each, in the order they were described.
    [[nodiscard]] const std::vector<Joint> &joints() const { return m_joints; }
    [[nodiscard]] const Joint *joint(JointId id) const;
    [[nodiscard]] const std::vector<Tool> &tools() const { return m_tools; }
    [[nodiscard]] std::chrono::sys_days today() const;
    /// Why the garage could not be read, if it could not.
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }

Q_SIGNALS:
    void changed();

private:
    void reload();

    Garage &m_garage;
    std::optional<EngineId> m_engine;
    std::vector<Joint> m_joints;
    std::vector<Tool> m_tools;
    std::optional<Error> m_failure;
};

} // namespace asleft
