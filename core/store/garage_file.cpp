#include "garage_file.h"

#include "errors.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <filesystem>

namespace asleft::store {

namespace fs = std::filesystem;

std::optional<FileStamp> stampOf(const std::string &path)
{
    struct stat status = {};
    if (::stat(path.c_str(), &status) != 0)
        return std::nullopt;
    return FileStamp{{status.st_dev, status.st_ino}, status.st_size, status.st_mtim.tv_sec * 1'000'000'000 + status.st_mtim.tv_nsec};
}

std::optional<FileIdentity> identityOf(const std::string &path)
{
    const auto stamp = stampOf(path);
    return stamp ? std::optional(stamp->identity) : std::nullopt;
}

bool exists(const std::string &path)
{
    return stampOf(path).has_value();
}

bool mayBe(const std::string &path, int mode)
{
    return ::faccessat(AT_FDCWD, path.c_str(), mode, AT_EACCESS) == 0;
}

std::string logOf(const std::string &path)
{
    return path + "-wal";
}

std::string indexOf(const std::string &path)
{
    return path + "-shm";
}

std::string journalOf(const std::string &path)
{
    return path + "-journal";
}

Result<std::string> existingFile(const std::string &path)
{
    struct stat status = {};
    if (::stat(path.c_str(), &status) != 0)
        return tl::unexpected(errorFromSystem(errno, path));
    if (!S_ISREG(status.st_mode))
        return fail(ErrorKind::NotAGarage, path);

    std::error_code error;
    const std::string real = fs::canonical(path, error).string();
    if (error)
        return tl::unexpected(errorFromSystem(error.value(), path));
    if (!mayBe(real, R_OK))
        return tl::unexpected(errorFromSystem(errno, path));
    return real;
}

Result<std::string> makeEmptyFile(const std::string &path)
{
    const int file = ::open(path.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, 0644);
    if (file < 0 && errno == EACCES)
        return fail(ErrorKind::GarageReadOnly, path);
    if (file < 0)
        return tl::unexpected(errorFromSystem(errno, path));
    ::close(file);

    std::error_code error;
    std::string real = fs::canonical(path, error).string();
    if (error)
        return tl::unexpected(errorFromSystem(error.value(), path));
    return real;
}

void removeWithCompanions(const std::string &path)
{
    for (const std::string &file : {path, logOf(path), indexOf(path), journalOf(path)})
        ::unlink(file.c_str());
}

Done syncFolderOf(const std::string &path)
{
    const int folder = ::open(fs::path(path).parent_path().c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (folder < 0)
        return tl::unexpected(errorFromSystem(errno, path));
    const bool synced = ::fsync(folder) == 0;
    const int why = errno;
    ::close(folder);
    // Some file systems cannot sync a folder and say EINVAL; there is nothing more to be done about it there.
    if (!synced && why != EINVAL)
        return tl::unexpected(errorFromSystem(why, path));
    return {};
}

std::string freeName(const std::string &path)
{
    std::string name = path;
    std::error_code error;
    for (int count = 2; fs::exists(fs::symlink_status(name, error)); ++count)
        name = path + '-' + std::to_string(count);
    return name;
}

} // namespace asleft::store
