#include "copy.h"

#include "errors.h"
#include "garage_file.h"

#include <sqlite3.h>

#include <memory>

namespace asleft::store {
namespace {

struct Closing {
    void operator()(sqlite3 *handle) const { sqlite3_close(handle); }
};
using Handle = std::unique_ptr<sqlite3, Closing>;

/// The handle closes even one that did not open. The code is SQLite's.
int openPlain(const std::string &path, int flags, Handle &handle)
{
    sqlite3 *opened = nullptr;
    const int code = sqlite3_open_v2(path.c_str(), &opened, flags, nullptr);
    handle.reset(opened);
    if (code == SQLITE_OK)
        sqlite3_extended_result_codes(opened, 1);
    return code;
}

/// All pages in one go: page by page beside a writer may never end.
int copyPages(sqlite3 *from, sqlite3 *to)
{
    sqlite3_backup *backup = sqlite3_backup_init(to, "main", from, "main");
    if (backup == nullptr)
        return sqlite3_extended_errcode(to);
    const int stepped = sqlite3_backup_step(backup, -1);
    const int finished = sqlite3_backup_finish(backup);
    return stepped == SQLITE_DONE ? finished : stepped;
}

} // namespace

Done copyGarage(const std::string &path, const std::string &target)
{
    // A connection of its own: one that is in a write transaction may not be copied from.
    Handle from;
    Handle to;
    int code = openPlain(path, SQLITE_OPEN_READWRITE, from);
    if (code == SQLITE_OK)
        code = openPlain(target, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE, to);
    if (code == SQLITE_OK)
        code = copyPages(from.get(), to.get());
    if (code != SQLITE_OK)
        return tl::unexpected(errorFrom(code, target, sqlite3_errstr(code)));
    return syncFolderOf(target);
}

} // namespace asleft::store
