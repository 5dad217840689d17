#pragma once

#include <cstdint>
#include <functional>
#include <string>

/// A layer between SQLite and the disk that counts every change made to a file and can make one go wrong. Qt's driver uses the same
/// SQLite, so it sees what Qt does.
namespace asleft::faults {

enum class Change { Write, Sync, Truncate, GrowSharedMemory, Delete };

/// Something that is about to be done to a file.
struct Event {
    Change change;
    std::string path;
    std::int64_t offset = 0; ///< of a write; the new size of a truncation
    std::string bytes;       ///< of a write
};

/// What the disk answers instead of obeying; 0 lets it obey. Called before the event, counted from 0.
using Answer = std::function<int(int count, const Event &event)>;

/// Becomes SQLite's default for every file opened from here on. Once per program.
void install();

/// Starts counting from 0. An empty answer lets everything happen.
void answerWith(Answer answer);

/// How many events there were since then.
int events();

} // namespace asleft::faults
