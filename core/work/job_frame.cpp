#include "job_frame.h"

#include "internals.h"

#include <store/things.h>

namespace asleft {

namespace {

/// Puts a value where it belongs, or remembers the first failure.
class Gathering {
public:
    template <class T>
    void take(Result<T> read, T &place)
    {
        if (read)
            place = std::move(*read);
        else if (!m_error)
            m_error = std::move(read.error());
    }
    [[nodiscard]] const std::optional<Error> &error() const { return m_error; }

private:
    std::optional<Error> m_error;
};

} // namespace

Result<std::shared_ptr<const JobFrame>> loadFrame(Garage &garage, JobId jobId)
{
    Database &database = *garage.internals().database;
    auto itself = job(database, jobId);
    if (!itself)
        return tl::unexpected(itself.error());
    auto worked = engine(database, itself->engine);
    if (!worked)
        return tl::unexpected(worked.error());
    auto owner = vehicle(database, itself->vehicle);
    if (!owner)
        return tl::unexpected(owner.error());

    auto frame = std::make_shared<JobFrame>(JobFrame{std::move(*itself), std::move(*owner), std::move(*worked), {}, {}, {}, {}, {}, {}});
    Gathering gathering;
    gathering.take(latestMeter(database, frame->vehicle.id), frame->meter);
    gathering.take(specs(database, frame->engine.id), frame->specs);
    gathering.take(joints(database, frame->engine.id), frame->joints);
    gathering.take(table(database, frame->engine.id), frame->table);
    gathering.take(people(database), frame->people);
    gathering.take(tools(database), frame->tools);
    gathering.take(decisionRule(database), frame->rule);
    if (gathering.error())
        return tl::unexpected(*gathering.error());
    return std::shared_ptr<const JobFrame>(std::move(frame));
}

bool touchesFrame(const Change &change, const JobFrame &frame)
{
    switch (change.what) {
    case Change::What::Specs:
    case Change::What::Joints: return !change.engine || *change.engine == frame.engine.id;
    case Change::What::Vehicles: // the job's vehicle may hold another engine by now
    case Change::What::People:
    case Change::What::Tools:
    case Change::What::Rules: return true;
    case Change::What::Jobs: return change.job == frame.job.id; // it got a further line
    case Change::What::Acts: return false;
    }
    return false;
}

} // namespace asleft
