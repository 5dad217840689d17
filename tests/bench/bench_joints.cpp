// Joints of as many fasteners as there may be: the order they are tightened in, and how they are shown and painted, which takes a window
// and with it a process of its own.
#include "bench_timing.h"

#include <joints/order.h>

#include <QProcess>

#include <algorithm>
#include <cstdio>
#include <random>

namespace asleft::bench {

namespace {

constexpr int fasteners = 200;
/// One takes no longer than a clock is exact to.
constexpr int together = 100;

using Doubles = std::vector<double>;

/// Others each time: a processor soon knows by heart how the same ones are sorted.
std::vector<Doubles> anyDoubles()
{
    std::mt19937 engine(1);
    std::uniform_real_distribution<double> distribution;
    std::vector<Doubles> all(together, Doubles(fasteners));
    for (Doubles &doubles : all) {
        for (double &value : doubles)
            value = distribution(engine);
    }
    return all;
}

void sortAll(const std::vector<Doubles> &all)
{
    for (const Doubles &doubles : all) {
        Doubles sorted = doubles;
        std::sort(sorted.begin(), sorted.end());
        if (sorted.front() > sorted.back())
            broken("200 doubles were not sorted");
    }
}

void orderAll(const Pattern &pattern)
{
    for (int time = 0; time < together; ++time) {
        if (generateOrder(pattern).size() != fasteners)
            broken("an order has not 200 fasteners");
    }
}

void benchOrder(const std::string &name, const Result<Pattern> &pattern, Rounds rounds)
{
    const Pattern places = need(pattern, "200 fasteners were refused").value();
    const std::vector<Doubles> doubles = anyDoubles();
    compare(
        name + ": 100 orders / 100 sorts of 200 doubles", rounds.of(25), [&] { orderAll(places); }, [&] { sortAll(doubles); });
    std::vector<double> seconds;
    for (int round = 0; round < rounds.of(25); ++round)
        seconds.push_back(secondsOf([&] { orderAll(places); }));
    std::printf("%-62s %8.1f us\n", (name + ": one order").c_str(), median(seconds) / together * 1e6);
}

} // namespace

void benchJoints(Rounds rounds)
{
    benchOrder("200 around a circle", circlePattern(fasteners), rounds);
    benchOrder("10 rows of 20", rowsPattern(10, 20), rounds);
    benchOrder("200 along a cover", coverPattern(fasteners), rounds);
    // The window has its say after what was said here.
    std::fflush(stdout);
    const QString window = QStringLiteral(JOINT_WINDOW);
    if (const int code = QProcess::execute(window, {QString::number(rounds.of(51))}); code != 0)
        broken(window.toStdString() + " ended with " + std::to_string(code));
}

} // namespace asleft::bench
