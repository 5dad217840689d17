#pragma once

#include <QLockFile>
#include <QString>

#include <memory>
#include <string>

namespace asleft {

/// Which of the copies of this program that run at once on one installation this one is. Each writes under a computer of its own, so that
/// two windows on one garage hear of each other, and undo takes back what was done in its own window.
class StationNumber {
public:
    /// Takes the first free place and holds it while this object lives; a copy that died holds none. In a `folder` that cannot be written
    /// to there is only the first place.
    explicit StationNumber(const QString &folder);

    /// From 1.
    [[nodiscard]] int number() const { return m_number; }

    /// The computer at this place of the installation named `installation`: the first one's is the name itself, the same from start to
    /// start.
    [[nodiscard]] std::string station(const QString &installation) const;

private:
    std::unique_ptr<QLockFile> m_lock;
    int m_number = 1;
};

} // namespace asleft
