#include <parts/garage_copy.h>

#include <QFile>

namespace asleft {

GarageCopy::GarageCopy(std::unique_ptr<QTemporaryDir> folder, std::unique_ptr<Garage> garage)
    : m_folder(std::move(folder)), m_garage(std::move(garage))
{
}

Result<GarageCopy> GarageCopy::of(const QString &path)
{
    auto folder = std::make_unique<QTemporaryDir>();
    const QString copy = folder->filePath(QStringLiteral("copy.asleft"));
    QFile::copy(path, copy);
    // What was committed and is not in the main file yet stands in the log beside it.
    QFile::copy(path + QStringLiteral("-wal"), copy + QStringLiteral("-wal"));
    auto garage = Garage::open(copy.toStdString(), {std::make_shared<SystemClock>(), std::make_shared<RandomUids>(), "picture"});
    if (!garage)
        return tl::unexpected(garage.error());
    return GarageCopy(std::move(folder), *std::move(garage));
}

} // namespace asleft
