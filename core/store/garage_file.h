#pragma once

#include <base/result.h>

#include <cstdint>
#include <optional>
#include <string>

/// What the store asks of the file system itself, beside what SQLite does.
namespace asleft::store {

/// Which file a path leads to, whatever it is called.
struct FileIdentity {
    std::uint64_t device = 0;
    std::uint64_t inode = 0;
    bool operator==(const FileIdentity &) const = default;
};
std::optional<FileIdentity> identityOf(const std::string &path);

/// A garage's write-ahead log.
std::string logOf(const std::string &path);

/// The absolute path of an existing file, without symbolic links. Refuses what is missing, is not a file or may not be read.
Result<std::string> existingFile(const std::string &path);

/// Makes an empty file where nothing is; returns its absolute path.
Result<std::string> makeEmptyFile(const std::string &path);

/// Removes a file and what SQLite keeps beside it.
void removeWithCompanions(const std::string &path);

/// Makes sure that the names of new files in the folder of `path` survive a power cut.
Done syncFolderOf(const std::string &path);

/// `path` itself if nothing is there, else the first of path-2, path-3, …
std::string freeName(const std::string &path);

} // namespace asleft::store
