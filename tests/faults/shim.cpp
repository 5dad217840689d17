#include "shim.h"

#include <sqlite3.h>

#include <new>
#include <stdexcept>

namespace asleft::faults {
namespace {

Answer answer;
int counted = 0;
sqlite3_vfs *disk = nullptr;

/// What SQLite allocates for an open file: ours, with the disk's own behind it.
struct File {
    sqlite3_file base;
    std::string *path;

    [[nodiscard]] sqlite3_file *real() { return reinterpret_cast<sqlite3_file *>(this + 1); }
};

File &fileOf(sqlite3_file *file)
{
    return *reinterpret_cast<File *>(file);
}

sqlite3_file *realOf(sqlite3_file *file)
{
    return fileOf(file).real();
}

/// Says what is about to happen; the answer is SQLITE_OK or the failure to return instead.
int ask(const Event &event)
{
    const int count = counted++;
    return answer ? answer(count, event) : SQLITE_OK;
}

int closeFile(sqlite3_file *file)
{
    const int code = realOf(file)->pMethods != nullptr ? realOf(file)->pMethods->xClose(realOf(file)) : SQLITE_OK;
    delete fileOf(file).path;
    return code;
}

int readFile(sqlite3_file *file, void *into, int amount, sqlite3_int64 offset)
{
    return realOf(file)->pMethods->xRead(realOf(file), into, amount, offset);
}

int writeFile(sqlite3_file *file, const void *from, int amount, sqlite3_int64 offset)
{
    const int code = ask({Change::Write, *fileOf(file).path, offset, {static_cast<const char *>(from), static_cast<std::size_t>(amount)}});
    // A disk that runs full in the middle keeps what fitted.
    if (code == SQLITE_FULL)
        realOf(file)->pMethods->xWrite(realOf(file), from, amount / 2, offset);
    return code != SQLITE_OK ? code : realOf(file)->pMethods->xWrite(realOf(file), from, amount, offset);
}

int truncateFile(sqlite3_file *file, sqlite3_int64 size)
{
    const int code = ask({Change::Truncate, *fileOf(file).path, size, {}});
    return code != SQLITE_OK ? code : realOf(file)->pMethods->xTruncate(realOf(file), size);
}

int syncFile(sqlite3_file *file, int flags)
{
    const int code = ask({Change::Sync, *fileOf(file).path, 0, {}});
    return code != SQLITE_OK ? code : realOf(file)->pMethods->xSync(realOf(file), flags);
}

int sizeOfFile(sqlite3_file *file, sqlite3_int64 *size)
{
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}

int lockFile(sqlite3_file *file, int lock)
{
    return realOf(file)->pMethods->xLock(realOf(file), lock);
}

int unlockFile(sqlite3_file *file, int lock)
{
    return realOf(file)->pMethods->xUnlock(realOf(file), lock);
}

int isLocked(sqlite3_file *file, int *locked)
{
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), locked);
}

int controlFile(sqlite3_file *file, int operation, void *argument)
{
    return realOf(file)->pMethods->xFileControl(realOf(file), operation, argument);
}

int sectorOf(sqlite3_file *file)
{
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}

int traitsOf(sqlite3_file *file)
{
    return realOf(file)->pMethods->xDeviceCharacteristics(realOf(file));
}

int mapShared(sqlite3_file *file, int region, int size, int extend, void volatile **mapped)
{
    const int code = extend != 0 ? ask({Change::GrowSharedMemory, *fileOf(file).path, 0, {}}) : SQLITE_OK;
    return code != SQLITE_OK ? code : realOf(file)->pMethods->xShmMap(realOf(file), region, size, extend, mapped);
}

int lockShared(sqlite3_file *file, int offset, int count, int flags)
{
    return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
}

void barrier(sqlite3_file *file)
{
    realOf(file)->pMethods->xShmBarrier(realOf(file));
}

int unmapShared(sqlite3_file *file, int remove)
{
    return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

/// Version 2: without memory-mapped reading, which would go past us.
constexpr sqlite3_io_methods methods = {2,          closeFile,  readFile,    writeFile,   truncateFile, syncFile, sizeOfFile,
                                        lockFile,   unlockFile, isLocked,    controlFile, sectorOf,     traitsOf, mapShared,
                                        lockShared, barrier,    unmapShared, nullptr,     nullptr};

int openFile(sqlite3_vfs *, const char *name, sqlite3_file *file, int flags, int *given)
{
    auto &ours = *new (file) File{{nullptr}, nullptr};
    const int code = disk->xOpen(disk, name, ours.real(), flags, given);
    // Without methods SQLite will not call us to close.
    if (code != SQLITE_OK)
        return code;
    ours.path = new std::string(name != nullptr ? name : "");
    ours.base.pMethods = &methods;
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs *, const char *name, int syncFolder)
{
    const int code = ask({Change::Delete, name, 0, {}});
    return code != SQLITE_OK ? code : disk->xDelete(disk, name, syncFolder);
}

} // namespace

void install()
{
    if (disk != nullptr)
        return;
    disk = sqlite3_vfs_find(nullptr);
    static sqlite3_vfs shim = *disk;
    shim.zName = "shim";
    shim.szOsFile = static_cast<int>(sizeof(File)) + disk->szOsFile;
    shim.xOpen = openFile;
    shim.xDelete = deleteFile;
    if (sqlite3_vfs_register(&shim, 1) != SQLITE_OK)
        throw std::runtime_error("the layer was not taken");
}

void answerWith(Answer given)
{
    answer = std::move(given);
    counted = 0;
}

int events()
{
    return counted;
}

} // namespace asleft::faults
