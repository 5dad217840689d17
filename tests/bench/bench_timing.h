#pragma once

#include <chrono>
#include <functional>
#include <string>
#include <vector>

namespace asleft::bench {

/// How often each thing is measured: a few times, or once where it only has to be known to work.
struct Rounds {
    bool isShort = false;
    [[nodiscard]] int of(int full) const { return isShort ? 1 : full; }
};

double secondsOf(const std::function<void()> &work);
double median(std::vector<double> seconds);

/// Runs the two by turns, so that what the machine does meanwhile hits both, and prints "NAME: 1.23 (12.3 ms over 10.0 ms)".
void compare(const std::string &name, int rounds, const std::function<void()> &ours, const std::function<void()> &bare);

/// Ends the whole run: what was to be measured did not work.
[[noreturn]] void broken(const std::string &what);

/// The value, or the end of the run.
template <class T>
T need(T result, const char *what)
{
    if (!result)
        broken(what);
    return result;
}

void benchFirstPaint(const std::string &folder, Rounds rounds);
void benchLog(const std::string &folder, Rounds rounds);
void benchOpenJob(const std::string &folder, Rounds rounds);
void benchGrowth(const std::string &folder, Rounds rounds);
void benchPlans(Rounds rounds);
void benchJoints(Rounds rounds);

} // namespace asleft::bench
