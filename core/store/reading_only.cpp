#include "reading_only.h"

#include "errors.h"

#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <system_error>

namespace asleft::store {

namespace fs = std::filesystem;

namespace {

/// Of a copy; what is copied is called after it.
constexpr const char *copyName = "copy.asleft";

bool sameFile(const std::optional<FileStamp> &one, const std::optional<FileStamp> &other)
{
    return one && other ? one->identity == other->identity : one.has_value() == other.has_value();
}

/// Or not there at all.
bool isEmpty(const std::string &path)
{
    const auto stamp = stampOf(path);
    return !stamp || stamp->size == 0;
}

Beside lookBeside(const std::string &path)
{
    const std::string log = logOf(path);
    return {exists(log), isEmpty(log), mayBe(indexOf(path), R_OK), !isEmpty(journalOf(path))};
}

} // namespace

bool mayBeWritten(const std::string &path)
{
    if (!mayBe(path, W_OK) || !mayBe(fs::path(path).parent_path().string(), W_OK | X_OK))
        return false;
    for (const std::string &beside : {logOf(path), indexOf(path), journalOf(path)})
        if (exists(beside) && !mayBe(beside, W_OK))
            return false;
    return true;
}

ReadingWay wayToRead(const Beside &beside)
{
    if (beside.hasJournal)
        return ReadingWay::FromACopy;
    if (beside.hasLog && beside.indexCanBeRead)
        return ReadingWay::WithOthers;
    return beside.logIsEmpty ? ReadingWay::AsItLies : ReadingWay::FromACopy;
}

Result<std::unique_ptr<PrivateFolder>> PrivateFolder::make()
{
    const char *named = std::getenv("TMPDIR");
    const std::string parent = named != nullptr && *named != '\0' ? named : P_tmpdir;
    std::string pattern = parent + "/asleft-XXXXXX";
    if (::mkdtemp(pattern.data()) != nullptr)
        return std::unique_ptr<PrivateFolder>(new PrivateFolder(std::move(pattern)));
    const int why = errno;
    // A missing file would be taken for the garage.
    if (why == ENOENT || why == ENOTDIR)
        return fail(ErrorKind::DiskFault, parent, std::generic_category().message(why));
    return tl::unexpected(errorFromSystem(why, parent));
}

PrivateFolder::~PrivateFolder()
{
    std::error_code ignored;
    fs::remove_all(m_path, ignored);
}

Result<ReadingDoor> ReadingDoor::to(const std::string &path)
{
    ReadingDoor door;
    door.m_path = door.m_opens = path;
    // Before anything is looked at: whatever changes from here on is noticed.
    door.m_file = stampOf(path);
    door.m_log = stampOf(logOf(path));
    for (const std::string &needed : {logOf(path), journalOf(path)})
        if (!isEmpty(needed) && !mayBe(needed, R_OK))
            return tl::unexpected(errorFromSystem(errno, needed));
    door.m_way = wayToRead(lookBeside(path));
    if (door.m_way == ReadingWay::FromACopy)
        if (auto copied = door.copy(); !copied)
            return tl::unexpected(copied.error());
    return door;
}

Done ReadingDoor::copy()
{
    auto folder = PrivateFolder::make();
    if (!folder)
        return tl::unexpected(folder.error());
    m_folder = *std::move(folder);
    m_opens = (fs::path(m_folder->path()) / copyName).string();
    const std::array<std::array<std::string, 2>, 3> files = {
        {{m_path, m_opens}, {logOf(m_path), logOf(m_opens)}, {journalOf(m_path), journalOf(m_opens)}}};
    for (const auto &[from, to] : files) {
        if (!exists(from))
            continue;
        std::error_code error;
        fs::copy_file(from, to, error);
        // The copy has to take in what its log says, whatever may be done with the original.
        if (!error)
            fs::permissions(to, fs::perms::owner_read | fs::perms::owner_write, error);
        if (error)
            return tl::unexpected(errorFromSystem(error.value(), to));
    }
    return {};
}

const char *ReadingDoor::parameters() const
{
    switch (m_way) {
    // readonly_shm: an index that could be written is left as it is all the same.
    case ReadingWay::WithOthers: return "mode=ro&readonly_shm=1";
    case ReadingWay::AsItLies: return "mode=ro&immutable=1";
    case ReadingWay::FromACopy: return "mode=rw";
    }
    return "mode=ro";
}

bool ReadingDoor::isStale() const
{
    const auto file = stampOf(m_path);
    const auto log = stampOf(logOf(m_path));
    // What others write to the same files is seen through the log.
    if (m_way == ReadingWay::WithOthers)
        return !sameFile(file, m_file) || !sameFile(log, m_log);
    return file != m_file || log != m_log;
}

} // namespace asleft::store
