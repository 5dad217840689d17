#include <work/joints.h>

#include "internals.h"

#include <store/things.h>

#include <algorithm>
#include <set>

namespace asleft {

namespace {

/// What readJoint() does not read is as long as somebody pasted it.
Done textsFit(const JointText &text)
{
    for (const FastenerPosition &place : text.pattern.places) {
        if (Done fits = shortEnough({place.length}); !fits)
            return fits;
    }
    return shortEnough({text.answered}, longestNote);
}

Result<Joint> checkedJoint(const JointText &text, EngineId engine, DecimalMark mark)
{
    auto joint = readJoint(text, mark);
    if (!joint)
        return joint;
    if (const Done fits = textsFit(joint->text); !fits)
        return tl::unexpected(fits.error());
    joint->engine = engine;
    return joint;
}

/// Refuses a name that another joint than `self` has.
Done nameFree(const std::vector<Joint> &revisions, const std::string &name, std::optional<JointId> self)
{
    for (const Joint &other : newestOf(revisions)) {
        if (other.id != self && other.text.name == name)
            return fail(ErrorKind::JointTaken, name);
    }
    return {};
}

std::set<int> numbersOf(const Joint &joint)
{
    std::set<int> numbers;
    for (const FastenerPosition &place : joint.text.pattern.places)
        numbers.insert(place.number);
    return numbers;
}

bool saysTheSame(const Joint &one, const Joint &other)
{
    return one.text == other.text && one.target == other.target && one.passes == other.passes;
}

/// Refuses other numbers where acts speak of the ones there are.
Done numbersKept(Database &database, const Joint &before, const Joint &now)
{
    if (numbersOf(before) == numbersOf(now))
        return {};
    const auto worked = jointWorkedOn(database, before.id);
    if (!worked)
        return tl::unexpected(worked.error());
    return *worked ? Done(fail(ErrorKind::JointInUse, before.text.name)) : Done{};
}

/// Whether a revision was stored: none is where nothing is new.
Result<bool> storeRevision(Transaction &transaction, const Joint &wanted)
{
    const auto revisions = joints(transaction.database(), wanted.engine);
    if (!revisions)
        return tl::unexpected(revisions.error());
    const auto present = newestOf(*revisions);
    const auto before = std::ranges::find(present, wanted.id, &Joint::id);
    if (before == present.end())
        return fail(ErrorKind::NotFound, Noun::Joint);
    if (saysTheSame(*before, wanted))
        return false;
    const Done allowed =
        nameFree(*revisions, wanted.text.name, wanted.id).and_then([&] { return numbersKept(transaction.database(), *before, wanted); });
    if (!allowed)
        return tl::unexpected(allowed.error());
    return insertJointRevision(transaction, wanted).map([](int) { return true; });
}

/// Without a title: what it is called is told by its kind and joint.
SheetLine lineFor(StepKind kind, const Joint &joint)
{
    return {.kind = kind, .title = {}, .detail = {}, .before = Gate::FirstStart, .cautions = {}, .joint = joint.id};
}

std::vector<SheetLine> linesFor(StepKind kind, const std::vector<Joint> &joints)
{
    std::vector<SheetLine> lines;
    for (const Joint &joint : joints)
        lines.push_back(lineFor(kind, joint));
    return lines;
}

/// Two full turns by hand, or whatever comes after the first start.
bool wantsAllTight(const SheetLine &line)
{
    return line.before == Gate::HandOver || std::ranges::find(line.cautions, Caution::TwoTurnsByHand) != line.cautions.end();
}

bool hasLine(const Job &job, StepKind kind, JointId joint)
{
    return std::ranges::any_of(job.steps, [&](const Step &step) { return step.kind == kind && step.joint == joint; });
}

/// Whether any line was added.
Result<bool> appendLines(Transaction &transaction, JobId id, const Joint &joint)
{
    const auto open = job(transaction.database(), id);
    if (!open)
        return tl::unexpected(open.error());
    if (open->engine != joint.engine)
        return fail(ErrorKind::WrongJob, Noun::Joint);
    bool added = false;
    for (const StepKind kind : {StepKind::Loosen, StepKind::Tighten}) {
        if (hasLine(*open, kind, joint.id))
            continue;
        if (const auto step = appendStep(transaction, id, lineFor(kind, joint)); !step)
            return tl::unexpected(step.error());
        added = true;
    }
    return added;
}

} // namespace

Result<JointId> addJoint(Garage &garage, EngineId engineId, const JointText &text, DecimalMark mark)
{
    if (const Done may = writable(garage); !may)
        return tl::unexpected(may.error());
    const auto wanted = checkedJoint(text, engineId, mark);
    if (!wanted)
        return tl::unexpected(wanted.error());
    auto added = inTransaction(garage, [&](Transaction &transaction) -> Result<JointId> {
        if (const auto known = engine(transaction.database(), engineId); !known)
            return tl::unexpected(known.error());
        const auto revisions = joints(transaction.database(), engineId);
        if (!revisions)
            return tl::unexpected(revisions.error());
        if (const Done free = nameFree(*revisions, wanted->text.name, std::nullopt); !free)
            return tl::unexpected(free.error());
        return insertJoint(transaction, *wanted);
    });
    if (added)
        Q_EMIT garage.changed({Change::What::Joints, engineId});
    return added;
}

Done reviseJoint(Garage &garage, JointId joint, EngineId engine, const JointText &text, DecimalMark mark)
{
    if (Done may = writable(garage); !may)
        return may;
    auto wanted = checkedJoint(text, engine, mark);
    if (!wanted)
        return tl::unexpected(wanted.error());
    wanted->id = joint;
    const auto stored = inTransaction(garage, [&](Transaction &transaction) { return storeRevision(transaction, *wanted); });
    if (!stored)
        return tl::unexpected(stored.error());
    if (*stored)
        Q_EMIT garage.changed({Change::What::Joints, engine});
    return {};
}

Result<std::vector<Joint>> joints(Garage &garage, EngineId engine)
{
    return joints(*garage.internals().database, engine);
}

std::vector<Joint> newestOf(const std::vector<Joint> &revisions)
{
    std::vector<Joint> newest;
    for (const Joint &revision : revisions) {
        const auto known = std::ranges::find(newest, revision.id, &Joint::id);
        if (known == newest.end())
            newest.push_back(revision);
        else if (known->revision < revision.revision)
            *known = revision;
    }
    return newest;
}

JobSheet withJoints(JobSheet sheet, const std::vector<Joint> &joints)
{
    // What was on the outside came off first and goes on last.
    auto tightening = linesFor(StepKind::Tighten, joints);
    std::ranges::reverse(tightening);
    sheet.lines.insert(std::ranges::find_if(sheet.lines, wantsAllTight), tightening.begin(), tightening.end());

    const auto loosening = linesFor(StepKind::Loosen, joints);
    const auto mayWait = [](const SheetLine &line) { return line.before != Gate::TurningTheCrank; };
    sheet.lines.insert(std::ranges::find_if(sheet.lines, mayWait), loosening.begin(), loosening.end());
    return sheet;
}

Done addJointToJob(Garage &garage, JobId job, const Joint &joint)
{
    if (Done may = writable(garage); !may)
        return may;
    const auto added = inTransaction(garage, [&](Transaction &transaction) { return appendLines(transaction, job, joint); });
    if (!added)
        return tl::unexpected(added.error());
    if (*added)
        Q_EMIT garage.changed({.what = Change::What::Jobs, .job = job});
    return {};
}

} // namespace asleft
