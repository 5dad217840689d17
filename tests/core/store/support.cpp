#include "support.h"

#include "core_application.h"

#include <sqlite3.h>

#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <iterator>

namespace asleft {
namespace {

namespace fs = std::filesystem;

/// In memory where that is possible: thousands of syncs would otherwise be waited for.
fs::path whereFoldersGo()
{
    const fs::path memory = "/dev/shm";
    return fs::is_directory(memory) ? memory : fs::temp_directory_path();
}

} // namespace

FolderTest::FolderTest()
{
    haveApplication();
    qInstallMessageHandler(failOnWarning);
    std::string pattern = (whereFoldersGo() / "asleft-store-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr)
        throw std::runtime_error("no folder");
    m_folder = fs::canonical(pattern);
}

FolderTest::~FolderTest()
{
    qInstallMessageHandler(nullptr);
    std::error_code ignored;
    fs::remove_all(m_folder, ignored);
}

std::vector<std::string> FolderTest::filesInFolder() const
{
    std::vector<std::string> names;
    for (const auto &entry : fs::directory_iterator(m_folder))
        names.push_back(entry.path().filename().string());
    std::ranges::sort(names);
    return names;
}

void GarageTest::SetUp()
{
    auto made = Database::create(path);
    ASSERT_TRUE(made) << made.error().arguments.back();
    garage = *std::move(made);
}

void GarageTest::reopen()
{
    garage.reset();
    auto opened = Database::open(path);
    ASSERT_TRUE(opened) << opened.error().arguments.back();
    garage = *std::move(opened);
}

Raw::Raw(const std::string &path)
{
    if (sqlite3_open(path.c_str(), &m_handle) != SQLITE_OK)
        throw std::runtime_error("not opened");
    sqlite3_extended_result_codes(m_handle, 1);
}

Raw::~Raw()
{
    sqlite3_close(m_handle);
}

int Raw::run(const std::string &sql)
{
    return sqlite3_exec(m_handle, sql.c_str(), nullptr, nullptr, nullptr);
}

std::string Raw::text(const std::string &sql)
{
    std::string text;
    const auto take = [](void *into, int, char **columns, char **) {
        *static_cast<std::string *>(into) = columns[0] != nullptr ? columns[0] : "";
        return 1;
    };
    sqlite3_exec(m_handle, sql.c_str(), take, &text, nullptr);
    return text;
}

std::string bytesOf(const std::string &path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

void writeBytes(const std::string &path, const std::string &bytes)
{
    std::ofstream(path, std::ios::binary) << bytes;
}

std::string keptGarage(int version)
{
    std::string bytes = bytesOf(KEPT_GARAGES "/garage-" + std::to_string(version) + ".asleft");
    if (bytes.empty())
        throw std::runtime_error("the kept garage is missing");
    return bytes;
}

bool Nobody::isNeeded()
{
    return ::getuid() == 0;
}

Nobody::Nobody()
{
    if (isNeeded() && ::seteuid(id) != 0)
        throw std::runtime_error("root stays root");
}

Nobody::~Nobody()
{
    if (isNeeded() && ::seteuid(0) != 0)
        std::abort();
}

} // namespace asleft
