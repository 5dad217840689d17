#pragma once

#include "shim.h"

#include <cstdint>
#include <map>
#include <random>
#include <string>
#include <vector>

namespace asleft::faults {

/// What a disk would hold after a power cut: everything synced, and of what was written since the last sync of a file any part, in
/// sectors of 512 bytes. Deleting is taken to be lasting at once.
class Platter {
public:
    /// `liar`: a disk that says it has synced and has not.
    explicit Platter(bool liar = false) : m_liar(liar) {}

    /// Everything in the folder is safe already.
    void startWith(const std::string &folder);
    /// Takes note of what is about to be done.
    void note(const Event &event);
    /// Writes what is left of the files into another folder.
    void leaveBehind(const std::string &folder, std::mt19937 &dice) const;

private:
    struct FileState {
        std::string safe;
        std::vector<Event> unsafe;
    };

    bool m_liar;
    std::map<std::string, FileState> m_files; ///< by path
};

} // namespace asleft::faults
