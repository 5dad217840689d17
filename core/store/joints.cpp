#include <store/things.h>

#include "bands.h"
#include "changes.h"

namespace asleft {

using namespace store;

namespace {

using RevisionId = RowId<struct RevisionTag>;

JointRow rowOf(JointId id, int revision, const Joint &joint)
{
    std::vector<Band<Torque>> target;
    if (joint.target)
        target.push_back(joint.target->first);
    if (joint.target && joint.target->second)
        target.push_back(*joint.target->second);
    return {id,
            revision,
            joint.text,
            joint.thread ? std::optional(joint.thread->name) : std::nullopt,
            joint.strength,
            writeOrder(joint.order),
            joint.orderGenerated,
            writePasses(joint.passes),
            std::move(target)};
}

Done writeRevision(Connection &connection, JointId id, int revision, const Joint &joint)
{
    const JointRow row = rowOf(id, revision, joint);
    const auto key = insertDescribed<RevisionId>(connection, "joint_revision", row);
    if (!key)
        return tl::unexpected(key.error());
    return writeLists(connection, "joint_revision", values(*key), row);
}

/// Puts what was read where it belongs.
template <class Read, class Place>
Done keep(Result<Read> read, Place &place)
{
    return std::move(read).map([&](Read &&value) { place = std::move(value); });
}

/// As readJoint() leaves them: only looked through.
Done checkPattern(const Pattern &pattern)
{
    Pattern checked;
    Done sound = keep(checkedPattern(pattern), checked);
    for (auto place = pattern.places.begin(); sound && place != pattern.places.end(); ++place) {
        std::optional<Thread> thread;
        if (!place->thread.empty())
            sound = keep(parseThread(place->thread), thread);
    }
    return sound;
}

Done checkPasses(const Joint &joint)
{
    const auto target = targetOf(joint);
    return checkPasses(joint.passes, {target ? std::optional(target->value) : std::nullopt, joint.text.settle != SettleGround::No});
}

/// Reads what stands in a revision's row the house's way; refuses what the joints' own readers refuse.
Done understand(const JointRow &row, Joint &joint)
{
    return (row.thread ? keep(parseThread(*row.thread), joint.thread) : Done())
        .and_then([&] { return checkPattern(joint.text.pattern); })
        .and_then([&] { return keep(parseOrder(row.order, joint.text.pattern), joint.order); })
        .and_then([&] { return keep(parsePasses(row.passes, joint.text.unit), joint.passes); })
        .and_then([&] { return checkPasses(joint); });
}

Result<Joint> wholeJoint(Connection &connection, EngineId engine, JointRow row)
{
    Joint joint{row.joint, row.revision, engine, row.text};
    joint.strength = row.strength;
    joint.orderGenerated = row.orderGenerated;
    joint.target = pairOf(std::move(row.target));
    if (!understand(row, joint))
        return fail(ErrorKind::Damaged, Noun::Joint, connection.path(), std::to_string(joint.id.key()), std::to_string(joint.revision));
    return joint;
}

} // namespace

Result<JointId> insertJoint(Transaction &transaction, const Joint &joint)
{
    Connection &connection = Internals::of(transaction);
    auto id = insertRow<JointId>(connection, "INSERT INTO joint (engine) VALUES (?) RETURNING id", values(joint.engine));
    if (!id)
        return id;
    return writeRevision(connection, *id, 1, joint).map([&] { return *id; });
}

Result<int> insertJointRevision(Transaction &transaction, const Joint &joint)
{
    Connection &connection = Internals::of(transaction);
    const auto last = oneRow(connection, "SELECT max(revision) FROM joint_revision WHERE joint = ? GROUP BY joint", values(joint.id),
                             [](Row &row) { return row.small(); });
    if (!last)
        return tl::unexpected(last.error());
    if (!*last)
        return connection.refuse({ErrorKind::NotFound, {}, Noun::Joint});
    const int revision = **last + 1;
    return writeRevision(connection, joint.id, revision, joint).map([&] { return revision; });
}

Result<std::vector<Joint>> joints(Database &database, EngineId engine)
{
    static const std::string select = "SELECT joint_revision.id, " + namesOf<JointRow>() +
                                      " FROM joint JOIN joint_revision ON joint_revision.joint = joint.id WHERE joint.engine = ? "
                                      "ORDER BY joint_revision.id";
    Connection &connection = Internals::of(database);
    std::vector<std::int64_t> keys;
    auto rows = allRows(connection, select, values(engine), [&](Row &row) {
        keys.push_back(row.number());
        return taken<JointRow>(row);
    });
    if (!rows)
        return tl::unexpected(rows.error());
    const Done read = readListsOf(connection, "joint_revision", Noun::Joint, *rows,
                                  [&](const JointRow &row) { return keys[static_cast<std::size_t>(&row - rows->data())]; });
    if (!read)
        return tl::unexpected(read.error());
    std::vector<Joint> joints;
    joints.reserve(rows->size());
    for (JointRow &row : *rows) {
        auto joint = wholeJoint(connection, engine, std::move(row));
        if (!joint)
            return tl::unexpected(joint.error());
        joints.push_back(*std::move(joint));
    }
    return joints;
}

Result<bool> jointWorkedOn(Database &database, JointId joint)
{
    return oneRow(Internals::of(database),
                  "SELECT EXISTS (SELECT act FROM fact_loosened WHERE joint = ?) OR EXISTS (SELECT act FROM fact_ticks WHERE joint = ?) "
                  "OR EXISTS (SELECT act FROM fact_unticked WHERE joint = ?) "
                  "OR EXISTS (SELECT act FROM fact_joint_begun WHERE joint = ?) "
                  "OR EXISTS (SELECT act FROM fact_fitted WHERE joint = ?) OR EXISTS (SELECT act FROM fact_accepted WHERE joint = ?) "
                  "OR EXISTS (SELECT act FROM fact_finding WHERE joint = ?)",
                  values(joint, joint, joint, joint, joint, joint, joint), [](Row &row) { return row.flag(); })
        .map([](std::optional<bool> any) { return any.value_or(false); });
}

} // namespace asleft
