#include <work/garage.h>

#include "internals.h"

#include <measure/text.h>

namespace asleft {

namespace {

Result<std::unique_ptr<Garage::Internals>> within(Result<std::unique_ptr<Database>> database, Garage::Surroundings surroundings)
{
    if (!database)
        return tl::unexpected(std::move(database.error()));
    auto inside = std::make_unique<Garage::Internals>();
    inside->database = std::move(*database);
    inside->surroundings = std::move(surroundings);
    return inside;
}

} // namespace

Result<std::unique_ptr<Garage>> Garage::create(const std::string &path, Surroundings surroundings)
{
    auto inside = within(Database::create(path), std::move(surroundings));
    if (!inside)
        return tl::unexpected(inside.error());
    return std::unique_ptr<Garage>(new Garage(std::move(*inside)));
}

Result<std::unique_ptr<Garage>> Garage::open(const std::string &path, Surroundings surroundings)
{
    auto inside = within(Database::open(path), std::move(surroundings));
    if (!inside)
        return tl::unexpected(inside.error());
    return std::unique_ptr<Garage>(new Garage(std::move(*inside)));
}

Garage::Garage(std::unique_ptr<Internals> inside) : m_internals(std::move(inside)) {}
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

Result<std::string> checkedName(std::string_view text, const char *field)
{
    std::string name = inOneLine(text);
    if (name.empty())
        return fail(ErrorKind::NameMissing, field);
    if (const Done fits = shortEnough({name}); !fits)
        return tl::unexpected(fits.error());
    return name;
}

Done writable(const Garage &garage)
{
    return garage.readOnly() ? Done(fail(ErrorKind::GarageReadOnly, garage.path())) : Done{};
}

} // namespace asleft
