#include <parts/specs_model.h>

#include <parts/vehicles_model.h>

#include <algorithm>

namespace asleft {

SpecsModel::SpecsModel(Garage &garage, VehiclesModel &vehicles, QObject *parent) : QObject(parent), m_garage(garage), m_vehicles(vehicles)
{
    connect(&garage, &Garage::changed, this, &SpecsModel::heed);
    connect(&vehicles, &VehiclesModel::changed, this, &SpecsModel::engineChanged);
}

void SpecsModel::heed(const Change &change)
{
    const bool ours = m_engine && (!change.engine || change.engine == m_engine);
    if (!ours || (change.what != Change::What::Specs && change.what != Change::What::Joints))
        return;
    reload();
    if (change.what == Change::What::Specs)
        Q_EMIT specsChanged();
    else
        Q_EMIT jointsChanged();
}

void SpecsModel::setEngine(std::optional<EngineId> engine)
{
    m_engine = engine;
    reload();
    Q_EMIT engineChanged();
    Q_EMIT specsChanged();
    Q_EMIT jointsChanged();
}

const VehicleRow *SpecsModel::engine() const
{
    return m_engine ? m_vehicles.withEngine(*m_engine) : nullptr;
}

void SpecsModel::reload()
{
    m_specs.clear();
    m_table.reset();
    m_jointRevisions.clear();
    m_joints.clear();
    m_failure.reset();
    if (!m_engine)
        return;
    if (auto read = specs(m_garage, *m_engine))
        m_specs = std::move(*read);
    else
        m_failure = read.error();
    if (auto read = turningTable(m_garage, *m_engine))
        m_table = std::move(*read);
    else
        m_failure = read.error();
    reloadJoints();
}

void SpecsModel::reloadJoints()
{
    if (auto read = asleft::joints(m_garage, *m_engine))
        m_jointRevisions = std::move(*read);
    else
        m_failure = read.error();
    m_joints = newestOf(m_jointRevisions);
}

const Spec *SpecsModel::now(SpecSubject subject) const
{
    const Spec *newest = nullptr;
    for (const Spec &spec : m_specs)
        if (spec.subject == subject && (!newest || spec.revision > newest->revision))
            newest = &spec;
    return newest;
}

std::vector<const Spec *> SpecsModel::earlier(SpecSubject subject) const
{
    std::vector<const Spec *> revisions;
    for (const Spec &spec : m_specs)
        if (spec.subject == subject)
            revisions.push_back(&spec);
    std::ranges::sort(revisions, std::ranges::greater{}, &Spec::revision);
    if (!revisions.empty())
        revisions.erase(revisions.begin());
    return revisions;
}

const Joint *SpecsModel::joint(JointId id) const
{
    const auto found = std::ranges::find(m_joints, id, &Joint::id);
    return found == m_joints.end() ? nullptr : &*found;
}

std::vector<const Joint *> SpecsModel::earlierOf(JointId id) const
{
    const Joint *newest = joint(id);
    std::vector<const Joint *> revisions;
    for (const Joint &revision : m_jointRevisions)
        if (newest && revision.id == id && revision.revision != newest->revision)
            revisions.push_back(&revision);
    std::ranges::sort(revisions, std::ranges::greater{}, &Joint::revision);
    return revisions;
}

SpecSource SpecsModel::lastSource() const
{
    const auto last = std::ranges::max_element(m_specs, {}, &Spec::id);
    if (last != m_specs.end())
        return last->source;
    if (m_table)
        return m_table->source;
    return m_joints.empty() ? SpecSource{} : m_joints.back().text.source;
}

Result<SpecId> SpecsModel::revise(SpecSubject subject, const SpecText &text, DecimalMark mark)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, Noun::Engine);
    return reviseSpec(m_garage, *m_engine, subject, text, mark);
}

Done SpecsModel::reviseTable(const std::vector<TableLine> &lines, const SpecSource &source)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, Noun::Engine);
    return asleft::reviseTable(m_garage, *m_engine, lines, source);
}

Result<JointId> SpecsModel::addJoint(const JointText &text, DecimalMark mark)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, Noun::Engine);
    return asleft::addJoint(m_garage, *m_engine, text, mark);
}

Result<JointId> SpecsModel::reviseJoint(JointId joint, const JointText &text, DecimalMark mark)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, Noun::Engine);
    if (const Done revised = asleft::reviseJoint(m_garage, joint, *m_engine, text, mark); !revised)
        return tl::unexpected(revised.error());
    return joint;
}

} // namespace asleft
