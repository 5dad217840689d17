#pragma once

#include "garage_file.h"

#include <memory>
#include <optional>
#include <string>

/// How a garage is read that may not be written: a copy on a read-only medium, another person's file.
namespace asleft::store {

/// Whether the garage may be written, and so all that SQLite keeps beside it, and its folder.
bool mayBeWritten(const std::string &path);

enum class ReadingWay {
    WithOthers, ///< through the log and its index, which whoever wrote last has left there
    AsItLies,   ///< the file alone: nothing stands beside it that it does not hold
    FromACopy,  ///< there is a log, but nothing that says where in it is what: SQLite would have to write that down beside it
};

/// What stands beside a garage.
struct Beside {
    bool hasLog = false;
    bool logIsEmpty = true;
    bool indexCanBeRead = false;
    bool hasJournal = false; ///< of a write that was cut off before the file had a log
};
ReadingWay wayToRead(const Beside &beside);

/// A folder of our own that goes with everything in it.
class PrivateFolder {
public:
    static Result<std::unique_ptr<PrivateFolder>> make();
    ~PrivateFolder();
    PrivateFolder(const PrivateFolder &) = delete;
    PrivateFolder &operator=(const PrivateFolder &) = delete;

    [[nodiscard]] const std::string &path() const { return m_path; }

private:
    explicit PrivateFolder(std::string path) : m_path(std::move(path)) {}

    std::string m_path;
};

/// The way one garage is read, and what it looked like when that was decided. Nothing is written through it, neither the file nor beside
/// it.
class ReadingDoor {
public:
    /// Refuses a garage whose log may not be read: what is in it would be missing without a word.
    static Result<ReadingDoor> to(const std::string &path);

    /// What to open: the garage, or a copy of it, and with which parameters of its URI.
    [[nodiscard]] const std::string &opens() const { return m_opens; }
    [[nodiscard]] const char *parameters() const;
    /// Whether somebody has written since, in a way that is not seen through it.
    [[nodiscard]] bool isStale() const;

private:
    ReadingDoor() = default;
    Done copy();

    ReadingWay m_way = ReadingWay::AsItLies;
    std::string m_path;
    std::string m_opens;
    std::unique_ptr<PrivateFolder> m_folder;
    std::optional<FileStamp> m_file;
    std::optional<FileStamp> m_log;
};

} // namespace asleft::store
