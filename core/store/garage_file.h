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

/// What a file looks like from outside: another stamp, another content.
struct FileStamp {
    FileIdentity identity;
    std::int64_t size = 0;
    std::int64_t changedNanoseconds = 0; ///< since 1970
    bool operator==(const FileStamp &) const = default;
};
/// Nothing where there is no such file.
std::optional<FileStamp> stampOf(const std::string &path);
bool exists(const std::string &path);

/// Whether this process may do to a file what `mode` says: R_OK, W_OK, X_OK. If not, errno says why.
bool mayBe(const std::string &path, int mode);

/// A garage's write-ahead log, the index of it that its readers share, and the journal it has while it is made.
std::string logOf(const std::string &path);
std::string indexOf(const std::string &path);
std::string journalOf(const std::string &path);

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
