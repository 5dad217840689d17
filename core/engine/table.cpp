#include <engine/plan.h>

#include "engine_words.h"
#include "point_words.h"

#include <algorithm>
#include <utility>

namespace asleft {

namespace {

/// The points of one line as far as they are read. A group holds for the labels behind it until another is named, apart or glued, or one of
/// several is named by its short name: a label behind that would be anybody's guess.
class Reading {
public:
    explicit Reading(const EngineDesign &design) : m_design(design) {}

    Done read(std::string_view word);
    /// Everything read; refuses a group no label has followed, and nothing at all.
    Result<std::vector<AdjusterRef>> points() const;

private:
    /// A single-letter word may be a cylinder's label as well: behind a group it is that.
    [[nodiscard]] bool isLabel(std::string_view word) const { return m_group && word.size() == 1 && m_design.named(word); }
    Done begin(PointGroup group, std::string_view word);
    [[nodiscard]] std::optional<NamedPoints> named(std::string_view word) const;
    /// Whether these are among what the group no label has followed yet is about: `IN E1` contradicts itself.
    [[nodiscard]] bool fitsPending(const NamedPoints &named) const;
    void take(const NamedPoints &named);

    const EngineDesign &m_design;
    std::vector<AdjusterRef> m_points;
    std::optional<PointGroup> m_group;
    std::string_view m_pending; ///< the words of a group no label has followed yet
    bool m_bridge = false;      ///< `BRIDGE` was read, but not yet of which side
};

Done Reading::begin(PointGroup group, std::string_view word)
{
    if (m_bridge ? group.kind != PointKind::Lash : !m_pending.empty())
        return fail(ErrorKind::TablePointUnread, m_pending);
    if (m_bridge)
        group.kind = PointKind::BridgeScrew;
    if (pointsOf(m_design, group, {}).empty())
        return fail(ErrorKind::TablePointUnread, word);
    m_bridge = false;
    m_group = group;
    m_pending = word;
    return {};
}

std::optional<NamedPoints> Reading::named(std::string_view word) const
{
    if (m_bridge)
        return std::nullopt;
    if (auto labelled = m_group ? pointsLabelled(m_design, *m_group, word) : std::nullopt)
        return labelled;
    return pointsGlued(m_design, word);
}

bool Reading::fitsPending(const NamedPoints &named) const
{
    if (m_pending.empty())
        return true;
    const auto meant = pointsOf(m_design, *m_group, named.points.front().cylinder);
    return std::ranges::find(meant, named.points.front()) != meant.end();
}

void Reading::take(const NamedPoints &named)
{
    m_points.insert(m_points.end(), named.points.begin(), named.points.end());
    m_group = named.holds ? std::optional(named.group) : std::nullopt;
    m_pending = {};
}

Done Reading::read(std::string_view word)
{
    if (isBridgeWord(word)) {
        if (!m_pending.empty())
            return fail(ErrorKind::TablePointUnread, m_pending);
        m_bridge = true;
        m_pending = word;
        return {};
    }
    if (const auto group = isLabel(word) ? std::nullopt : groupNamed(word))
        return begin(*group, word);
    if (const auto points = named(word); points && fitsPending(*points)) {
        take(*points);
        return {};
    }
    if (const auto label = unknownCylinderIn(m_design, word, m_group && !m_bridge))
        return fail(ErrorKind::TableCylinder, *label);
    return fail(ErrorKind::TablePointUnread, word);
}

Result<std::vector<AdjusterRef>> Reading::points() const
{
    if (!m_pending.empty())
        return fail(ErrorKind::TablePointUnread, m_pending);
    if (m_points.empty())
        return fail(ErrorKind::EmptyText);
    return m_points;
}

Result<std::vector<AdjusterRef>> readPoints(const EngineDesign &design, std::string_view text)
{
    if (const Done fits = notTooLong(text); !fits)
        return tl::unexpected(fits.error());
    Reading reading(design);
    const std::string plain = plainText(text);
    for (const std::string_view word : wordsOf(plain, " ,;:"))
        if (const Done read = reading.read(word); !read)
            return tl::unexpected(read.error());
    return reading.points();
}

/// A two-stroke has no intakes to tell a place by.
bool hasEvent(const EngineDesign &design, CrankEvent event)
{
    return design.cycle == Cycle::FourStroke || (event != CrankEvent::IntakeCloses && event != CrankEvent::IntakeFullyOpen);
}

Result<CrankPosition> readPlace(const EngineDesign &design, const TableLine &line)
{
    if (const Done fits = notTooLong(line.cylinder); !fits)
        return tl::unexpected(fits.error());
    const std::string label = plainText(line.cylinder);
    const auto cylinder = design.named(label);
    if (cylinder && hasEvent(design, line.event))
        return CrankPosition{*cylinder, line.event};
    if (cylinder)
        return fail(ErrorKind::TablePositionUnread, label);
    return fail(looksLikeLabel(label) ? ErrorKind::TableCylinder : ErrorKind::TablePositionUnread, label);
}

/// One line, its points taken from those no line above it sets.
Result<PlanPosition> readLine(const EngineDesign &design, const TableLine &line, std::vector<AdjusterRef> &unreached, TableField &at)
{
    at = TableField::Cylinder;
    const auto place = readPlace(design, line);
    if (!place)
        return tl::unexpected(place.error());
    at = TableField::Points;
    const auto typed = readPoints(design, line.points);
    if (!typed)
        return tl::unexpected(typed.error());
    std::vector<AdjusterRef> left = unreached;
    for (const AdjusterRef valve : *typed)
        if (std::erase(left, valve) == 0)
            return fail(ErrorKind::TablePointTwice, shortName(design, valve));
    unreached = std::move(left);

    PlanPosition position{*place, crankAt(design, *place), {}};
    for (const AdjusterRef valve : design.adjusters())
        if (std::ranges::find(*typed, valve) != typed->end())
            position.points.push_back({valve, margin(design, valve, position.crank)});
    return position;
}

} // namespace

TableReading readTable(const EngineDesign &design, const std::vector<TableLine> &lines)
{
    TableReading reading{{}, design.adjusters()};
    for (const TableLine &line : lines) {
        ReadTableLine &read = reading.lines.emplace_back();
        read.empty = isBlank(line.cylinder) && isBlank(line.points);
        if (read.empty)
            continue;
        TableField field{};
        if (auto position = readLine(design, line, reading.unreached, field))
            read.position = *std::move(position);
        else
            read.refusal = TableRefusal{field, position.error()};
    }
    return reading;
}

Result<CrankPlan> planFromTable(const EngineDesign &design, const std::vector<TableLine> &lines, std::string source, std::string page)
{
    CrankPlan plan;
    plan.source = std::move(source);
    plan.page = std::move(page);
    TableReading reading = readTable(design, lines);
    for (ReadTableLine &line : reading.lines) {
        if (line.refusal)
            return tl::unexpected(line.refusal->error);
        if (line.position)
            plan.positions.push_back(*std::move(line.position));
    }
    plan.unreached = std::move(reading.unreached);
    if (plan.positions.empty())
        return fail(ErrorKind::TableEmpty);
    return plan;
}

} // namespace asleft
