#pragma once
// Timing for the benchmarks: the median over several rounds, printed beside a baseline. Nothing is
// asserted on a time.

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdio>

namespace bench {

/// Keeps a result alive, so that the compiler cannot drop the work that made it.
template <class T>
inline void keep(const T& value) {
    asm volatile("" : : "r,m"(value) : "memory");
}

/// Nanoseconds of one call: the median over rounds of `calls` calls each.
template <class Work>
double nanoseconds(int calls, Work&& work) {
    using clock = std::chrono::steady_clock;
    std::array<double, 11> rounds{};
    for (double& round : rounds) {
        const auto start = clock::now();
        for (int i = 0; i < calls; ++i) {
            work();
        }
        const std::chrono::duration<double, std::nano> spent = clock::now() - start;
        round = spent.count() / calls;
    }
    std::sort(rounds.begin(), rounds.end());
    return rounds[rounds.size() / 2];
}

/// One line of the report; `baseline` is what the ratio compares with (0: none).
inline void report(const char* name, double ns, double baseline = 0.0) {
    if (baseline > 0.0) {
        std::printf("%-44s %14.1f ns %8.2f x\n", name, ns, ns / baseline);
    } else {
        std::printf("%-44s %14.1f ns\n", name, ns);
    }
}

} // namespace bench
