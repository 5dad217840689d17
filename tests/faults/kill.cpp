#include "work_load.h"

#include <fcntl.h>
#include <sys/wait.h>
#include <unistd.h>

#include <QCoreApplication>

#include <chrono>
#include <random>
#include <sstream>
#include <thread>

namespace asleft::faults {
namespace {

/// The other process: appends acts without end and prints the uid of each once it is acknowledged.
int append(const std::string &path, std::int64_t job, std::int64_t person, std::int64_t point, const std::string &round)
{
    const auto opened = Database::open(path);
    if (!opened)
        return 1;
    for (int count = 0;; ++count) {
        const Uid uid = round + "." + std::to_string(count);
        const NewAct act{uid, JobId(job), PersonId(person), "seat", Moment{count}, {}, NutOpenFact{PointId(point)}};
        if (appendAll(**opened, {act}).size() != 1)
            return 1;
        const std::string line = uid + "\n";
        if (::write(STDOUT_FILENO, line.data(), line.size()) < 0)
            return 1;
    }
}

class Kill : public GarageTest {
protected:
    /// Lets another process write for a while, kills it and gives what it had acknowledged.
    std::vector<Uid> acknowledgedBy(const Sample &sample, int round, std::chrono::milliseconds lifetime) const
    {
        int ends[2] = {};
        if (::pipe(ends) != 0)
            throw std::runtime_error("no pipe");
        const pid_t child = ::fork();
        if (child == 0) {
            ::dup2(ends[1], STDOUT_FILENO);
            const std::string job = std::to_string(sample.job.key());
            const std::string person = std::to_string(sample.person.key());
            const std::string point = std::to_string(sample.points[0].key());
            const std::string name = std::to_string(round);
            ::execl("/proc/self/exe", "writer", "append", path.c_str(), job.c_str(), person.c_str(), point.c_str(), name.c_str(), nullptr);
            ::_exit(1);
        }
        ::close(ends[1]);
        const std::string said = readFor(ends[0], lifetime);
        ::kill(child, SIGKILL);
        const std::string rest = said + readToEnd(ends[0]);
        ::close(ends[0]);
        int status = 0;
        ::waitpid(child, &status, 0);
        EXPECT_TRUE(WIFSIGNALED(status)) << "it ended by itself";
        return wholeLines(rest);
    }

private:
    /// Waits for the first act, so that starting up does not count, then lets it go on.
    static std::string readFor(int end, std::chrono::milliseconds lifetime)
    {
        char bytes[256];
        const ssize_t size = ::read(end, bytes, sizeof bytes);
        std::this_thread::sleep_for(lifetime);
        return {bytes, static_cast<std::size_t>(std::max<ssize_t>(size, 0))};
    }

    static std::string readToEnd(int end)
    {
        std::string all;
        char bytes[4096];
        for (ssize_t size = 0; (size = ::read(end, bytes, sizeof bytes)) > 0;)
            all.append(bytes, static_cast<std::size_t>(size));
        return all;
    }

    static std::vector<Uid> wholeLines(const std::string &text)
    {
        std::vector<Uid> lines;
        std::istringstream stream(text.substr(0, text.rfind('\n') + 1));
        for (std::string line; std::getline(stream, line);)
            lines.push_back(line);
        return lines;
    }
};

TEST_F(Kill, LosesNoAcknowledgedAct)
{
    const Sample sample = storeSample(*garage);
    garage.reset();
    std::mt19937 dice{7};
    std::size_t stored = 0;
    for (int round = 0; round < (isLong() ? 200 : 15); ++round) {
        SCOPED_TRACE("round " + std::to_string(round));
        const auto acknowledged = acknowledgedBy(sample, round, std::chrono::milliseconds(dice() % 60));
        EXPECT_FALSE(acknowledged.empty());
        const auto opened = Database::open(path);
        ASSERT_TRUE(opened);
        ASSERT_TRUE((*opened)->check());
        for (const Uid &uid : acknowledged)
            EXPECT_TRUE(seqOf(**opened, uid).value()) << uid;
        const auto acts = jobActs(**opened, sample.job, sample.engine);
        ASSERT_TRUE(acts);
        EXPECT_GE(acts->size(), stored + acknowledged.size());
        EXPECT_LE(acts->size(), stored + acknowledged.size() + 1) << "one may have been stored and not yet said";
        stored = acts->size();
    }
}

} // namespace
} // namespace asleft::faults

int main(int count, char **arguments)
{
    const QCoreApplication application(count, arguments);
    if (count == 7 && std::string_view(arguments[1]) == "append")
        return asleft::faults::append(arguments[2], std::stoll(arguments[3]), std::stoll(arguments[4]), std::stoll(arguments[5]),
                                      arguments[6]);
    ::testing::InitGoogleTest(&count, arguments);
    return RUN_ALL_TESTS();
}
