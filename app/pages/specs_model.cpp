#include "pages/specs_model.h"

#include "pages/vehicles_model.h"

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
    if (change.what != Change::What::Specs || !ours)
        return;
    reload();
    Q_EMIT specsChanged();
}

void SpecsModel::setEngine(std::optional<EngineId> engine)
{
    m_engine = engine;
    reload();
    Q_EMIT engineChanged();
    Q_EMIT specsChanged();
}

const VehicleRow *SpecsModel::engine() const
{
    return m_engine ? m_vehicles.withEngine(*m_engine) : nullptr;
}

void SpecsModel::reload()
{
    m_specs.clear();
    m_table.reset();
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

SpecSource SpecsModel::lastSource() const
{
    const auto last = std::ranges::max_element(m_specs, {}, &Spec::id);
    if (last != m_specs.end())
        return last->source;
    return m_table ? m_table->source : SpecSource{};
}

Result<SpecId> SpecsModel::revise(SpecSubject subject, const SpecText &text, DecimalMark mark)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, "engine");
    return reviseSpec(m_garage, *m_engine, subject, text, mark);
}

Done SpecsModel::reviseTable(const std::vector<TableLine> &lines, const SpecSource &source)
{
    if (!m_engine)
        return fail(ErrorKind::NotFound, "engine");
    return asleft::reviseTable(m_garage, *m_engine, lines, source);
}

} // namespace asleft
