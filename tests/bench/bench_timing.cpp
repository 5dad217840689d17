#include "bench_timing.h"

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace asleft::bench {

double secondsOf(const std::function<void()> &work)
{
    const auto start = std::chrono::steady_clock::now();
    work();
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

double median(std::vector<double> seconds)
{
    const auto middle = seconds.begin() + static_cast<std::ptrdiff_t>(seconds.size() / 2);
    std::nth_element(seconds.begin(), middle, seconds.end());
    return *middle;
}

void compare(const std::string &name, int rounds, const std::function<void()> &ours, const std::function<void()> &bare)
{
    std::vector<double> mine;
    std::vector<double> theirs;
    for (int round = 0; round < rounds; ++round) {
        theirs.push_back(secondsOf(bare));
        mine.push_back(secondsOf(ours));
    }
    const double over = median(mine);
    const double under = median(theirs);
    std::printf("%-62s %5.2f  (%.3f ms over %.3f ms, median of %d)\n", name.c_str(), over / under, over * 1e3, under * 1e3, rounds);
}

void broken(const std::string &what)
{
    std::fprintf(stderr, "asleft_bench: %s\n", what.c_str());
    std::exit(1);
}

} // namespace asleft::bench
