#pragma once

#include <parts/ruled_rows.h>

#include <draw/point_shape.h>
#include <work/jobs.h>
#include <work/joints.h>

namespace asleft {

/// A job at a glance: where it was left and how far its lines are.
struct JobGlance {
    struct Line {
        RuledRow row;
        StepLook look;
    };
    QStringList resume;
    QList<Line> lines;
    QString vehicle;
    QString meter;
};

/// Which joints a job has lines for.
struct JobJoints {
    EngineId engine;
    std::vector<JointId> present; ///< those with both, to loosen and to tighten
};

/// The jobs of the garage, the one worked on last first: as many as somebody has scrolled to, read when first looked at and kept up to date
/// from then on.
class JobsModel : public QObject {
    Q_OBJECT

public:
    explicit JobsModel(Garage &garage, QObject *parent = nullptr);

    [[nodiscard]] RuledRows *rows() { return &m_rows; }
    /// Those read so far.
    [[nodiscard]] const std::vector<JobLine> &jobs();
    [[nodiscard]] const JobLine *at(qint64 id) const;
    [[nodiscard]] const std::optional<Error> &failure() const { return m_failure; }
    [[nodiscard]] Moment now() const { return m_garage.now(); }

    Result<JobGlance> glance(JobId job) const;
    Result<JobJoints> jointsOf(JobId job) const;
    /// The act: puts the lines of a joint at the end of a job.
    Done addJoint(JobId job, const Joint &joint);
    /// The act: opens a job with the lines of a sheet.
    Result<JobId> open(VehicleId vehicle, EngineId engine, const JobSheet &sheet, const QString &title);

    /// Reads the jobs if that was not done since acts were logged: the Bench logs often, and the list is looked at seldom.
    void refresh();

Q_SIGNALS:
    void changed();
    /// Acts were logged; refresh() would tell them.
    void outdated();

private:
    void reload();
    void readFurther();
    void take(Result<std::vector<JobLine>> read, int most, bool further);
    void heed(const Change &change);

    Garage &m_garage;
    RuledRows m_rows;
    std::vector<JobLine> m_jobs;
    std::optional<Error> m_failure;
    bool m_isRead = false;
    bool m_outdated = true;
};

} // namespace asleft
