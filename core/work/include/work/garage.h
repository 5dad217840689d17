#pragma once

#include <base/clock.h>
#include <base/ids.h>
#include <base/result.h>
#include <base/uid.h>

#include <QObject>

#include <memory>
#include <optional>
#include <string>

namespace asleft {

/// What has changed in a garage, told after it is safely stored.
struct Change {
    enum class What { Vehicles, Specs, Joints, People, Tools, Rules, Jobs, Acts };
    What what;
    std::optional<EngineId> engine = {}; ///< of Vehicles, Specs and Joints, where one engine is meant
    std::optional<JobId> job = {};       ///< of Acts, and of Jobs where one got a further line
};

/// One garage file, open. The functions of vehicles.h, specs.h and jobs.h and the JobBook work on it; each owns its transaction
/// and announces what it changed, once, after COMMIT.
class Garage : public QObject {
    Q_OBJECT

public:
    /// What a garage needs from outside. `computer` names this installation: undo takes back only its own acts.
    struct Surroundings {
        std::shared_ptr<const Clock> clock;
        std::shared_ptr<UidSource> uids;
        std::string station;
    };

    static Result<std::unique_ptr<Garage>> create(const std::string &path, Surroundings surroundings);
    /// A file that may not be written opens for reading only, with everything that was safely stored in it; every act and edit is then
    /// refused with GarageReadOnly.
    static Result<std::unique_ptr<Garage>> open(const std::string &path, Surroundings surroundings);
    ~Garage() override;

    [[nodiscard]] const std::string &path() const;
    [[nodiscard]] const std::string &station() const;
    [[nodiscard]] bool readOnly() const;
    [[nodiscard]] Moment now() const;

    /// The rooms behind the garage; only work/ can see into it.
    struct Internals;
    [[nodiscard]] Internals &internals() { return *m_internals; }

Q_SIGNALS:
    void changed(const asleft::Change &change);

private:
    explicit Garage(std::unique_ptr<Internals> internals);
    std::unique_ptr<Internals> m_internals;
};

} // namespace asleft
