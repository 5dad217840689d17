#include <parts/station_number.h>

#include <QDir>

namespace asleft {

namespace {

/// More copies than this at once share the first place, as copies did where no lock can be had.
constexpr int mostPlaces = 32;

} // namespace

StationNumber::StationNumber(const QString &folder)
{
    const QDir where(folder);
    for (int number = 1; number <= mostPlaces; ++number) {
        auto lock = std::make_unique<QLockFile>(where.filePath(QStringLiteral("seat-%1.lock").arg(number)));
        // A window may stay open for weeks: only the end of the program frees its place, not age.
        lock->setStaleLockTime(0);
        if (lock->tryLock()) {
            m_lock = std::move(lock);
            m_number = number;
            return;
        }
        if (lock->error() != QLockFile::LockFailedError)
            return;
    }
}

std::string StationNumber::station(const QString &installation) const
{
    return (m_number == 1 ? installation : QStringLiteral("%1/%2").arg(installation).arg(m_number)).toStdString();
}

} // namespace asleft
