#pragma once

#include <work/garage.h>

#include <QString>
#include <QTemporaryDir>

#include <memory>

namespace asleft {

/// A garage opened from a copy of its file, to be drawn from: whatever is logged on the way, the file is as it was.
class GarageCopy {
public:
    static Result<GarageCopy> of(const QString &path);

    [[nodiscard]] Garage &garage() const { return *m_garage; }

private:
    GarageCopy(std::unique_ptr<QTemporaryDir> folder, std::unique_ptr<Garage> garage);

    std::unique_ptr<QTemporaryDir> m_folder; ///< outlives the garage in it
    std::unique_ptr<Garage> m_garage;
};

} // namespace asleft
