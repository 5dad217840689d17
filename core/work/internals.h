#pragma once

#include <shop/entry.h>
#include <store/database.h>
#include <work/garage.h>

#include <initializer_list>

namespace asleft {

/// What work/ sees of a garage and nobody else does.
struct Garage::Internals {
    std::unique_ptr<Database> database;
    Surroundings surroundings;
};

/// Runs `write` in a transaction of its own and commits it; a failure of either rolls back and is returned. Whoever calls
/// announces what changed after this has returned, never before.
template <class Write>
auto inTransaction(Garage &garage, Write write) -> decltype(write(std::declval<Transaction &>()))
{
    auto transaction = Transaction::begin(*garage.internals().database);
    if (!transaction)
        return tl::unexpected(transaction.error());
    auto written = write(*transaction);
    if (!written)
        return written;
    if (const Done committed = transaction->commit(); !committed)
        return tl::unexpected(committed.error());
    return written;
}

/// Refuses with GarageReadOnly where nothing may be written. Asked first by every function that writes, also where there may be nothing
/// to write.
Done writable(const Garage &garage);

/// The longest note, reason or finding: a few sentences.
constexpr std::size_t longestNote = 1000;

/// Refuses with TextTooLong where one of these is longer.
Done shortEnough(std::initializer_list<std::string_view> texts, std::size_t most = longestName);
/// A text that may be empty, without the blanks around it; refuses one that is longer than a note may be.
Result<std::string> checkedNote(std::string_view text);
/// The same of a reason, which may not be empty (ReasonMissing).
Result<std::string> checkedReason(std::string_view text);

} // namespace asleft
