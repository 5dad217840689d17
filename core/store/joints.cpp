#include <store/things.h>

#include "bands.h"
#include "changes.h"
#include "connection.h"

namespace asleft {

using namespace store;

namespace {

const std::string revisionColumns = "joint, revision, name, thread_text, thread, strength_text, strength, pattern, order_text, "
                                    "tightening_order, order_generated, target_text, other_target_text, unit, passes_text, passes, settle, "
                                    "condition, finish, drive, drive_size, female, engagement, blind_hole, single_use, manual, page, "
                                    "certainty, answered";

QVariantList valuesOf(JointId id, int revision, const Joint &joint)
{
    const JointText &text = joint.text;
    const auto thread = joint.thread ? std::optional(joint.thread->name) : std::nullopt;
    return values(id, revision, text.name, text.thread, thread, text.strength, joint.strength, text.pattern.kind, text.order,
                  writeOrder(joint.order), joint.orderGenerated, text.target, text.otherTarget, text.unit, text.passes,
                  writePasses(joint.passes), text.settle, text.condition, text.finish, text.drive, text.driveSize, text.female,
                  text.engagement, text.blindHole, text.singleUse, text.source.manual, text.source.page, text.source.certainty,
                  text.answered);
}

Done writePlace(Connection &connection, std::int64_t row, std::size_t place, const FastenerPosition &at)
{
    return connection.run("INSERT INTO joint_place (joint_revision, place, number, x, y, thread, length) VALUES (?, ?, ?, ?, ?, ?, ?)",
                          values(row, place, at.number, at.x, at.y, at.thread, at.length));
}

Done writeBand(Connection &connection, std::int64_t row, int place, const Band<Torque> &band)
{
    static const std::string insert =
        "INSERT INTO joint_band (joint_revision, place, " + bandColumns + ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)";
    return connection.run(insert, values(row, place) + bandValues(band));
}

Done writeRevision(Connection &connection, JointId id, int revision, const Joint &joint)
{
    static const std::string insert = "INSERT INTO joint_revision (" + revisionColumns +
                                      ") VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?) "
                                      "RETURNING id";
    const auto row = connection.insert(insert, valuesOf(id, revision, joint));
    if (!row)
        return tl::unexpected(row.error());
    if (!*row)
        return connection.refuse({ErrorKind::Database, {insert}});
    Done done;
    const auto &places = joint.text.pattern.places;
    for (std::size_t place = 0; done && place < places.size(); ++place)
        done = writePlace(connection, **row, place, places[place]);
    if (done && joint.target)
        done = writeBand(connection, **row, 0, joint.target->first);
    if (done && joint.target && joint.target->second)
        done = writeBand(connection, **row, 1, *joint.target->second);
    return done;
}

/// A revision's own row, with what it was read as still to be read.
struct JointHead {
    std::int64_t row;
    Joint joint;
    std::optional<std::string> thread;
    std::string order;
    std::string passes;
};

JointHead jointHeadOf(Row &row)
{
    JointHead head{row.number(), {JointId(0), 1, row.id<EngineId>(), {}}, {}, {}, {}};
    Joint &joint = head.joint;
    JointText &text = joint.text;
    joint.id = row.id<JointId>();
    joint.revision = row.small();
    text.name = row.text();
    text.thread = row.text();
    head.thread = row.textIfAny();
    text.strength = row.text();
    joint.strength = row.wordIfAny<StrengthClass>();
    text.pattern.kind = row.word<PatternKind>();
    text.order = row.text();
    head.order = row.text();
    joint.orderGenerated = row.flag();
    text.target = row.text();
    text.otherTarget = row.text();
    text.unit = row.word<TorqueUnit>();
    text.passes = row.text();
    head.passes = row.text();
    text.settle = row.word<SettleGround>();
    text.condition = row.wordIfAny<ThreadCondition>();
    text.finish = row.word<Finish>();
    text.drive = row.word<DriveKind>();
    text.driveSize = row.text();
    text.female = row.wordIfAny<FemaleMaterial>();
    text.engagement = row.text();
    text.blindHole = row.flag();
    text.singleUse = row.word<SingleUse>();
    text.source = sourceOf(row);
    text.answered = row.text();
    return head;
}

Result<std::vector<FastenerPosition>> placesOf(Connection &connection, std::int64_t row)
{
    return allRows(connection, "SELECT number, x, y, thread, length FROM joint_place WHERE joint_revision = ? ORDER BY place", values(row),
                   [](Row &columns) {
                       return FastenerPosition{columns.small(), columns.real(), columns.real(), columns.text(), columns.text()};
                   });
}

Result<std::optional<SpecBand<Torque>>> targetIn(Connection &connection, std::int64_t row)
{
    static const std::string select = "SELECT " + bandColumns + " FROM joint_band WHERE joint_revision = ? ORDER BY place";
    auto bands = allRows(connection, select, values(row), bandOf<Torque>);
    if (!bands)
        return tl::unexpected(bands.error());
    return pairOf(*std::move(bands));
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
Done understand(JointHead &head)
{
    Joint &joint = head.joint;
    return (head.thread ? keep(parseThread(*head.thread), joint.thread) : Done())
        .and_then([&] { return checkPattern(joint.text.pattern); })
        .and_then([&] { return keep(parseOrder(head.order, joint.text.pattern), joint.order); })
        .and_then([&] { return keep(parsePasses(head.passes, joint.text.unit), joint.passes); })
        .and_then([&] { return checkPasses(joint); });
}

Result<Joint> wholeJoint(Connection &connection, JointHead head)
{
    auto places = placesOf(connection, head.row);
    if (!places)
        return tl::unexpected(places.error());
    head.joint.text.pattern.places = *std::move(places);
    auto target = targetIn(connection, head.row);
    if (!target)
        return tl::unexpected(target.error());
    head.joint.target = *std::move(target);
    if (!understand(head))
        return fail(ErrorKind::Damaged, Noun::Joint, connection.path(), std::to_string(head.joint.id.key()),
                    std::to_string(head.joint.revision));
    return std::move(head.joint);
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
    static const std::string select = "SELECT joint_revision.id, joint.engine, " + revisionColumns +
                                      " FROM joint JOIN joint_revision ON joint_revision.joint = joint.id WHERE joint.engine = ? "
                                      "ORDER BY joint_revision.id";
    Connection &connection = Internals::of(database);
    auto heads = allRows(connection, select, values(engine), jointHeadOf);
    if (!heads)
        return tl::unexpected(heads.error());
    std::vector<Joint> joints;
    joints.reserve(heads->size());
    for (JointHead &head : *heads) {
        auto joint = wholeJoint(connection, std::move(head));
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
