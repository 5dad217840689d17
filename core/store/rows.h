#pragma once

#include "connection.h"

#include <string>
#include <string_view>
#include <tuple>
#include <type_traits>
#include <unordered_map>
#include <vector>

/// A row is described once: RowOf<T> names its columns beside the members they hold, in the order of the members. From it come the SQL
/// that writes and reads the row, the values bound and taken, and what a checksum says of it.
namespace asleft::store {

template <class T>
struct RowOf;

template <class T>
concept Described = requires
{
    RowOf<T>::parts;
};

/// A member and its column, or columns: as many names, parted by commas, as its Cells are.
template <class Owner, class Member>
struct Column {
    std::string_view names;
    Member Owner::*member;
};
template <class Owner, class Member>
constexpr Column<Owner, Member> column(std::string_view names, Member Owner::*member)
{
    return {names, member};
}

/// A column that older rows did not have. A checksum says it behind a mark of its own, and only where it says more than those did: what
/// was stored before keeps its checksum. What comes behind it begins with a number, so that a mark is never taken for it.
template <class Owner, class Member>
struct LaterColumn : Column<Owner, Member> {
    std::string_view mark;
};
template <class Owner, class Member>
constexpr LaterColumn<Owner, Member> laterColumn(std::string_view mark, std::string_view names, Member Owner::*member)
{
    return {{names, member}, mark};
}

/// The key a row is given when it is inserted: read before the other columns, never written.
template <class Owner, class Id>
struct Key {
    Id Owner::*member;
};
template <class Owner, class Id>
constexpr Key<Owner, Id> key(Id Owner::*member)
{
    return {member};
}

/// A member that is described by itself; its columns stand among those of its owner.
template <class Owner, class Member>
struct Part {
    Member Owner::*member;
};
template <class Owner, class Member>
constexpr Part<Owner, Member> part(Member Owner::*member)
{
    return {member};
}

enum class MayBeEmpty { Yes, No };

/// A list in a table of its own: a row for each item, found by the key of its owner, in the order of `place`. Only At knows where the
/// items are: a member, or a function that gives their address or null.
template <class Owner, class Item, class At>
struct List {
    std::string_view table;
    std::string_view names; ///< of an item that is not described
    At at;
    MayBeEmpty mayBeEmpty = MayBeEmpty::Yes;
    std::string_view within = {}; ///< what the items' own lists call the place of theirs
};
template <class Owner, class Item>
constexpr auto list(std::string_view table, std::string_view names, std::vector<Item> Owner::*at, MayBeEmpty mayBeEmpty = MayBeEmpty::Yes)
{
    return List<Owner, Item, std::vector<Item> Owner::*>{table, names, at, mayBeEmpty};
}
template <Described Item, class Owner>
constexpr auto list(std::string_view table, std::vector<Item> Owner::*at, MayBeEmpty mayBeEmpty = MayBeEmpty::Yes,
                    std::string_view within = {})
{
    return List<Owner, Item, std::vector<Item> Owner::*>{table, {}, at, mayBeEmpty, within};
}

template <class Owner, class Item, class At, class Whose>
auto *itemsOf(const List<Owner, Item, At> &list, Whose &owner)
{
    if constexpr (std::is_member_pointer_v<At>)
        return &(owner.*list.at);
    else
        return list.at(owner);
}

template <class T, class Do>
void eachPart(Do does)
{
    std::apply([&](const auto &...parts) { (does(parts), ...); }, RowOf<T>::parts);
}

// names

inline void addNames(std::string &names, std::string_view more)
{
    if (!names.empty() && !more.empty())
        names += ", ";
    names += more;
}

template <Described T>
std::string namesOf();

template <class Owner, class Member>
void addNamesOf(std::string &names, const Column<Owner, Member> &column)
{
    addNames(names, column.names);
}
template <class Owner, class Id>
void addNamesOf(std::string &, const Key<Owner, Id> &)
{
}
template <class Owner, class Member>
void addNamesOf(std::string &names, const Part<Owner, Member> &)
{
    addNames(names, namesOf<Member>());
}
template <class Owner, class Item, class At>
void addNamesOf(std::string &, const List<Owner, Item, At> &)
{
}

template <Described T>
std::string namesOf()
{
    std::string names;
    eachPart<T>([&](const auto &part) { addNamesOf(names, part); });
    return names;
}

/// "?, ?, ?" for "a, b, c".
std::string placeholdersFor(std::string_view names);
/// "INSERT INTO table (a, b) VALUES (?, ?)".
std::string insertInto(std::string_view table, std::string_view names);

/// "a = ?, b = ?".
std::string assignmentsOf(std::string_view names);

// values

template <Described T>
void putRow(QVariantList &row, const T &value);

template <class Owner, class Member>
void putPart(QVariantList &row, const Owner &owner, const Column<Owner, Member> &column)
{
    Cells<Member>::put(row, owner.*column.member);
}
template <class Owner, class Id>
void putPart(QVariantList &, const Owner &, const Key<Owner, Id> &)
{
}
template <class Owner, class Member>
void putPart(QVariantList &row, const Owner &owner, const Part<Owner, Member> &part)
{
    putRow(row, owner.*part.member);
}
template <class Owner, class Item, class At>
void putPart(QVariantList &, const Owner &, const List<Owner, Item, At> &)
{
}

template <Described T>
void putRow(QVariantList &row, const T &value)
{
    eachPart<T>([&](const auto &part) { putPart(row, value, part); });
}

template <Described T>
QVariantList valuesOf(const T &value)
{
    QVariantList row;
    putRow(row, value);
    return row;
}

template <Described T>
T taken(Row &row);

template <class Owner, class Member>
Member takenPart(Row &row, const Column<Owner, Member> &)
{
    return Cells<Member>::take(row);
}
template <class Owner, class Id>
Id takenPart(Row &row, const Key<Owner, Id> &)
{
    return Cells<Id>::take(row);
}
template <class Owner, class Member>
Member takenPart(Row &row, const Part<Owner, Member> &)
{
    return taken<Member>(row);
}
template <class Owner, class Item, class At>
std::vector<Item> takenPart(Row &, const List<Owner, Item, At> &)
{
    return {};
}

/// Its lists are read afterwards.
template <Described T>
T taken(Row &row)
{
    // Braces evaluate from left to right: the columns are taken in their order.
    return std::apply(
        [&](const auto &...parts) {
            if constexpr (requires { RowOf<T>::made; })
                return RowOf<T>::made(std::tuple{takenPart(row, parts)...});
            else
                return T{takenPart(row, parts)...};
        },
        RowOf<T>::parts);
}

// lists

template <class Owner, class Item, class At>
std::string itemNames(const List<Owner, Item, At> &list)
{
    if constexpr (Described<Item>)
        return namesOf<Item>();
    else
        return std::string(list.names);
}

/// Writes the lists of one owner, whose row is written already.
template <Described T>
Done writeLists(Connection &connection, const std::string &keys, const QVariantList &keyValues, const T &owner)
{
    Done done;
    const auto writeItem = [&]<class Owner, class Item, class At>(const List<Owner, Item, At> &list, std::size_t place, const Item &item) {
        QVariantList row = keyValues + values(place);
        if constexpr (Described<Item>)
            putRow(row, item);
        else
            Cells<Item>::put(row, item);
        Done written = connection.run(insertInto(list.table, keys + ", place, " + itemNames(list)), row);
        if constexpr (Described<Item>)
            if (written)
                return writeLists(connection, keys + ", " + std::string(list.within), keyValues + values(place), item);
        return written;
    };
    const auto writePart = [&](const auto &part) {
        if constexpr (requires { part.table; }) {
            if (const auto *items = itemsOf(part, owner))
                for (std::size_t place = 0; done && place < items->size(); ++place)
                    done = writeItem(part, place, (*items)[place]);
        } else if constexpr (requires { RowOf<std::decay_t<decltype(owner.*part.member)>>::parts; }) {
            if (done)
                done = writeLists(connection, keys, keyValues, owner.*part.member);
        }
    };
    eachPart<T>(writePart);
    return done;
}

/// The rows of several owners, read at once.
class Owners {
public:
    Owners(std::string key, const std::vector<std::int64_t> &ids);

    [[nodiscard]] const std::string &key() const { return m_key; }
    /// Hands over the owners' rows of a table, in the order of `by`, which begins with the key.
    Done read(Connection &connection, std::string_view table, const std::string &columns, const std::string &by,
              const std::function<void(Row &)> &take) const;

    /// Of a row that cannot be: whose it is. The first holds.
    void refuse(std::int64_t owner)
    {
        if (!m_refused)
            m_refused = owner;
    }
    [[nodiscard]] std::optional<std::int64_t> refused() const { return m_refused; }

private:
    std::string m_key;
    QVariantList m_ids; ///< one value: all of them
    std::optional<std::int64_t> m_refused;
};

/// Reads the lists of several owners, one query for each. `reach` takes the columns `keys` of a row and gives the owner they lead to, or
/// null.
template <Described T, class Reach>
Done readLists(Connection &connection, Owners &owners, const std::string &keys, const Reach &reach)
{
    Done done;
    const auto readList = [&]<class Owner, class Item, class At>(const List<Owner, Item, At> &list) {
        Done read = owners.read(connection, list.table, keys + ", " + itemNames(list), keys + ", place", [&](Row &row) {
            const auto [whose, id] = reach(row);
            Item item = [&] {
                if constexpr (Described<Item>)
                    return taken<Item>(row);
                else
                    return Cells<Item>::take(row);
            }();
            auto *items = whose ? itemsOf(list, *whose) : nullptr;
            if (!items || row.unread())
                owners.refuse(id);
            else
                items->push_back(std::move(item));
        });
        if constexpr (Described<Item>) {
            const auto reachItem = [&](Row &row) {
                const auto [whose, id] = reach(row);
                const auto place = static_cast<std::size_t>(row.number());
                auto *items = whose ? itemsOf(list, *whose) : nullptr;
                return std::pair(items && place < items->size() ? &(*items)[place] : nullptr, id);
            };
            if (read)
                return readLists<Item>(connection, owners, keys + ", " + std::string(list.within), reachItem);
        }
        return read;
    };
    const auto readPart = [&](const auto &part) {
        if constexpr (requires { part.table; }) {
            if (done)
                done = readList(part);
        } else {
            using Member = std::decay_t<decltype(std::declval<T &>().*part.member)>;
            if constexpr (Described<Member>)
                if (done)
                    done = readLists<Member>(connection, owners, keys, [&](Row &row) {
                        const auto [whose, id] = reach(row);
                        return std::pair(whose ? &(whose->*part.member) : nullptr, id);
                    });
        }
    };
    eachPart<T>(readPart);
    return done;
}

/// Inserts a row, with columns of its table's own before those described, and gives its key.
template <class Id, Described T>
Result<Id> insertDescribed(Connection &connection, std::string_view table, const T &value, std::string names = {}, QVariantList row = {})
{
    addNames(names, namesOf<T>());
    putRow(row, value);
    return insertRow<Id>(connection, insertInto(table, names) + " RETURNING id", row);
}

/// Reads the lists of rows that were read, each of which `keyOf` gives the key of. Damaged where there is one that cannot be.
template <Described T, class KeyOf>
Done readListsOf(Connection &connection, const std::string &key, Noun what, std::vector<T> &rows, KeyOf keyOf)
{
    std::unordered_map<std::int64_t, T *> byKey;
    std::vector<std::int64_t> ids;
    for (T &row : rows) {
        ids.push_back(keyOf(row));
        byKey.emplace(ids.back(), &row);
    }
    Owners owners(key, ids);
    const Done done = readLists<T>(connection, owners, key, [&](Row &row) {
        const std::int64_t id = row.number();
        const auto found = byKey.find(id);
        return std::pair(found == byKey.end() ? nullptr : found->second, id);
    });
    if (done && owners.refused())
        return fail(ErrorKind::Damaged, what, connection.path(), std::to_string(*owners.refused()));
    return done;
}

/// Whether a row has every list it must have.
template <Described T>
bool hasItsLists(const T &value)
{
    bool has = true;
    eachPart<T>([&](const auto &part) {
        if constexpr (requires { part.mayBeEmpty; })
            has = has && (part.mayBeEmpty == MayBeEmpty::Yes || !itemsOf(part, value)->empty());
    });
    return has;
}

} // namespace asleft::store
