#include <work/garage.h>

#include "internals.h"

#include <measure/text.h>

namespace asleft {

namespace {

Result<std::unique_ptr<Garage::Internals>> internalsOf(Result<std::unique_ptr<Database>> database, Garage::Surroundings surroundings)
{
    if (!database)
        return tl::unexpected(std::move(database.error()));
    auto internals = std::make_unique<Garage::Internals>();
    internals->database = std::move(*database);
    internals->surroundings = std::move(surroundings);
    return internals;
}

} // namespace

Result<std::unique_ptr<Garage>> Garage::create(const std::string &path, Surroundings surroundings)
{
    auto internals = internalsOf(Database::create(path), std::move(surroundings));
    if (!internals)
        return tl::unexpected(internals.error());
    return std::unique_ptr<Garage>(new Garage(std::move(*internals)));
}

Result<std::unique_ptr<Garage>> Garage::open(const std::string &path, Surroundings surroundings)
{
    auto internals = internalsOf(Database::open(path), std::move(surroundings));
    if (!internals)
        return tl::unexpected(internals.error());
    return std::unique_ptr<Garage>(new Garage(std::move(*internals)));
}

Garage::Garage(std::unique_ptr<Internals> internals) : m_internals(std::move(internals)) {}
Garage::~Garage() = default;

const std::string &Garage::path() const
{
    return m_internals->database->path();
}

const std::string &Garage::station() const
{
    return m_internals->surroundings.station;
}

bool Garage::readOnly() const
{
    return m_internals->database->readOnly();
}

Moment Garage::now() const
{
    return m_internals->surroundings.clock->now();
}

Done shortEnough(std::initializer_list<std::string_view> texts, std::size_t most)
{
    for (const std::string_view text : texts) {
        if (text.size() > most)
            return fail(ErrorKind::TextTooLong, std::to_string(text.size()), std::to_string(most));
    }
    return {};
}

Result<std::string> checkedNote(std::string_view text)
{
    std::string note(trimmed(text));
    if (const Done fits = shortEnough({note}, longestNote); !fits)
        return tl::unexpected(fits.error());
    return note;
}

Result<std::string> checkedReason(std::string_view text)
{
    auto reason = checkedNote(text);
    if (reason && reason->empty())
        return fail(ErrorKind::ReasonMissing);
    return reason;
}

Done writable(const Garage &garage)
{
    return garage.readOnly() ? Done(fail(ErrorKind::GarageReadOnly, garage.path())) : Done{};
}

} // namespace asleft
