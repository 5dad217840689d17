#include "crash.h"

#include "support.h"

#include <algorithm>
#include <filesystem>

namespace asleft::faults {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t sector = 512;

/// What becomes of one unsynced change.
enum class Fate { Lost, Done, Torn };

void write(std::string &bytes, std::size_t offset, std::string_view what)
{
    bytes.resize(std::max(bytes.size(), offset + what.size()));
    std::ranges::copy(what, bytes.begin() + static_cast<std::ptrdiff_t>(offset));
}

/// Some of the sectors.
void writeTorn(std::string &bytes, const Event &event, std::mt19937 &dice)
{
    const auto offset = static_cast<std::size_t>(event.offset);
    for (std::size_t done = 0; done < event.bytes.size();) {
        const std::size_t length = std::min(sector - (offset + done) % sector, event.bytes.size() - done);
        if (dice() % 2 == 0)
            write(bytes, offset + done, std::string_view(event.bytes).substr(done, length));
        done += length;
    }
}

void apply(std::string &bytes, const Event &event)
{
    if (event.change == Change::Truncate)
        bytes.resize(static_cast<std::size_t>(event.offset));
    else
        write(bytes, static_cast<std::size_t>(event.offset), event.bytes);
}

} // namespace

void Platter::startWith(const std::string &folder)
{
    for (const auto &entry : fs::directory_iterator(folder))
        m_files[entry.path().string()] = {bytesOf(entry.path().string()), {}};
}

void Platter::note(const Event &event)
{
    if (event.path.empty() || event.change == Change::GrowSharedMemory)
        return;
    if (event.change == Change::Delete) {
        m_files.erase(event.path);
        return;
    }
    FileState &file = m_files[event.path];
    if (event.change != Change::Sync) {
        file.unsafe.push_back(event);
        return;
    }
    if (m_liar)
        return;
    for (const Event &change : file.unsafe)
        apply(file.safe, change);
    file.unsafe.clear();
}

void Platter::leaveBehind(const std::string &folder, std::mt19937 &dice) const
{
    for (const auto &[path, file] : m_files) {
        std::string bytes = file.safe;
        const auto fateOfAll = dice() % 4;
        for (const Event &change : file.unsafe) {
            const auto fate = static_cast<Fate>(fateOfAll < 3 ? fateOfAll : dice() % 3);
            if (fate == Fate::Done || (fate == Fate::Torn && change.change == Change::Truncate && dice() % 2 == 0))
                apply(bytes, change);
            else if (fate == Fate::Torn && change.change == Change::Write)
                writeTorn(bytes, change, dice);
        }
        writeBytes((fs::path(folder) / fs::path(path).filename()).string(), bytes);
    }
}

} // namespace asleft::faults
