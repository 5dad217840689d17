#include <forms/engine_joints.h>

#include <parts/tool_words.h>

#include <work/joints.h>
#include <work/workshop.h>

#include <algorithm>

namespace asleft {

EngineJoints::EngineJoints(Garage &garage, QObject *parent) : QObject(parent), m_garage(garage)
{
    connect(&garage, &Garage::changed, this, [this](const Change &change) {
        using What = Change::What;
        const bool ours = change.what == What::Joints && m_engine && (!change.engine || change.engine == m_engine);
        if (ours || change.what == What::Tools)
            reload();
    });
    reload();
}

void EngineJoints::setEngine(std::optional<EngineId> engine)
{
    if (engine == m_engine)
        return;
    m_engine = engine;
    reload();
}

const Joint *EngineJoints::joint(JointId id) const
{
    const auto found = std::ranges::find(m_joints, id, &Joint::id);
    return found == m_joints.end() ? nullptr : &*found;
}

std::chrono::sys_days EngineJoints::today() const
{
    return todayIn(m_garage);
}

void EngineJoints::reload()
{
    m_failure.reset();
    m_joints.clear();
    if (m_engine) {
        if (const auto read = asleft::joints(m_garage, *m_engine))
            m_joints = newestOf(*read);
        else
            m_failure = read.error();
    }
    if (auto read = asleft::tools(m_garage))
        m_tools = std::move(*read);
    else
        m_failure = read.error();
    Q_EMIT changed();
}

} // namespace asleft
