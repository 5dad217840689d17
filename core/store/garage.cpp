#include "garage.h"

#include "copy.h"
#include "errors.h"

#include <cassert>

namespace asleft::store {
namespace {

/// Everything after the empty file was made, on the way to a new garage.
Result<std::unique_ptr<Connection>> furnish(const std::string &path, std::span<const SchemaStep> steps)
{
    auto opened = Connection::open(path);
    if (!opened)
        return opened;
    Connection &connection = **opened;
    auto done = connection.writeAhead().and_then([&] { return connection.rememberFiles(); }).and_then([&] { return connection.begin(); });
    if (done)
        done = connection.runOnce("PRAGMA application_id = " + std::to_string(garageApplicationId));
    for (std::size_t index = 0; done && index < steps.size(); ++index)
        done = takeStep(connection, steps, index);
    if (done)
        done = connection.commit().and_then([&] { return syncFolderOf(path); });
    if (!done)
        return tl::unexpected(done.error());
    return opened;
}

/// SQLite reads a last page that was cut off as if the rest were zeros, and notices only where that makes no sense. With a log the page
/// may still be on its way from there.
Done isNotCutOff(Connection &connection)
{
    const auto pageSize = connection.pragmaNumber("page_size");
    if (!pageSize)
        return tl::unexpected(pageSize.error());
    // The log first: while it is empty, nobody is moving pages out of it.
    const auto log = stampOf(logOf(connection.path()));
    const auto file = stampOf(connection.path());
    if (file && file->size % *pageSize != 0 && (!log || log->size == 0))
        return fail(ErrorKind::Damaged, Noun::FilePage, connection.path(), std::to_string(file->size / *pageSize + 1));
    return {};
}

Done isGarage(Connection &connection, std::size_t known)
{
    const auto application = connection.pragmaNumber("application_id");
    if (!application)
        return tl::unexpected(application.error());
    if (*application != garageApplicationId)
        return fail(ErrorKind::NotAGarage, connection.path());
    const auto version = connection.pragmaNumber("user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (*version < 1)
        return fail(ErrorKind::NotAGarage, connection.path());
    if (static_cast<std::size_t>(*version) > known)
        return fail(ErrorKind::GarageNewer, connection.path(), std::to_string(*version), std::to_string(known));
    return isNotCutOff(connection);
}

/// A failure of the step itself names the step; one of the disk says what a person can mend.
Error upgradeError(const Error &error, const std::string &path, std::string_view step)
{
    if (error.kind != ErrorKind::Database)
        return error;
    return {ErrorKind::UpgradeFailed, {path, std::string(step), error.arguments.empty() ? std::string() : error.arguments.front()}};
}

/// Which steps an upgrade has taken, and the copy made before the first.
struct Upgrade {
    std::optional<std::string> copy;
    bool committed = false;
};

/// Takes the next step, if there is one; says whether there was. Another computer may be upgrading too, so the version is read again
/// once the write lock is held.
Result<bool> takeNextStep(Connection &connection, std::span<const SchemaStep> steps, Upgrade &upgrade)
{
    if (auto begun = connection.begin(); !begun)
        return tl::unexpected(begun.error());
    const auto version = connection.pragmaNumber("user_version");
    if (!version || static_cast<std::size_t>(*version) >= steps.size()) {
        connection.rollback();
        return version.map([](std::int64_t) { return false; });
    }
    Done done;
    if (!upgrade.copy) {
        upgrade.copy = freeName(connection.path() + ".before-" + std::to_string(steps.size()));
        done = copyGarage(connection.path(), *upgrade.copy);
    }
    const auto index = static_cast<std::size_t>(*version);
    if (done)
        done = takeStep(connection, steps, index);
    if (done)
        done = connection.commit();
    else
        connection.rollback();
    if (!done)
        return tl::unexpected(upgradeError(done.error(), connection.path(), steps[index].name));
    upgrade.committed = true;
    return true;
}

Done upgradeGarage(Connection &connection, std::span<const SchemaStep> steps)
{
    Upgrade upgrade;
    for (;;) {
        const auto more = takeNextStep(connection, steps, upgrade);
        // Of a file that was left as it was, a copy is of no use.
        if (!more && upgrade.copy && !upgrade.committed)
            removeWithCompanions(*upgrade.copy);
        if (!more)
            return tl::unexpected(more.error());
        if (!*more)
            return {};
    }
}

/// Refuses a garage that has steps to take, and cannot.
Done isUpToDate(Connection &connection, std::size_t known)
{
    const auto version = connection.pragmaNumber("user_version");
    if (!version)
        return tl::unexpected(version.error());
    if (static_cast<std::size_t>(*version) < known)
        return fail(ErrorKind::GarageReadOnly, connection.path());
    return {};
}

Result<std::unique_ptr<Connection>> openForWriting(const std::string &file, std::span<const SchemaStep> steps)
{
    auto opened = Connection::open(file);
    if (!opened)
        return opened;
    Connection &connection = **opened;
    const auto done = isGarage(connection, steps.size())
                          .and_then([&] { return connection.writeAhead(); })
                          .and_then([&] { return connection.rememberFiles(); })
                          .and_then([&] { return upgradeGarage(connection, steps); });
    if (!done)
        return tl::unexpected(done.error());
    return opened;
}

Result<std::unique_ptr<Connection>> openForReading(const std::string &file, std::span<const SchemaStep> steps)
{
    auto opened = Connection::openForReading(file);
    if (!opened)
        return opened;
    Connection &connection = **opened;
    const auto done = isGarage(connection, steps.size()).and_then([&] { return isUpToDate(connection, steps.size()); });
    if (!done)
        return tl::unexpected(done.error());
    return opened;
}

} // namespace

Result<std::unique_ptr<Connection>> createGarage(const std::string &path, std::span<const SchemaStep> steps)
{
    const auto made = makeEmptyFile(path);
    if (!made)
        return tl::unexpected(made.error());
    auto furnished = furnish(*made, steps);
    if (!furnished)
        removeWithCompanions(*made);
    return furnished;
}

Result<std::unique_ptr<Connection>> openGarage(const std::string &path, std::span<const SchemaStep> steps)
{
    const auto file = existingFile(path);
    if (!file)
        return tl::unexpected(file.error());
    auto opened = mayBeWritten(*file) ? openForWriting(*file, steps) : openForReading(*file, steps);
    // Some file systems say only when it comes to writing that there will be none.
    if (!opened && opened.error().kind == ErrorKind::GarageReadOnly)
        return openForReading(*file, steps);
    return opened;
}

Result<std::unique_ptr<Connection>> openGarageForReading(const std::string &path, std::span<const SchemaStep> steps)
{
    return existingFile(path).and_then([&](const std::string &file) { return openForReading(file, steps); });
}

} // namespace asleft::store
