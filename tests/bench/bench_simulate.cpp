// Draws of the full estimate: bench_simulate [STRUCTURES [DRAWS]]. Seconds, nanoseconds an estimate
// (by the clock, and of processor time, which other programs disturb less), growth with draws,
// structures and threads, peak memory, the nation by extrapolation.
#include "bench.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"
#include "scupper/simulate.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>
#include <sys/resource.h>
#include <vector>

namespace {

using namespace scupper;

/// So many records that have a price, the sample files' over and over.
std::vector<Structure> priced_records(const std::shared_ptr<const estimate::Plan>& plan,
                                      std::size_t number) {
    std::vector<Structure> sample;
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt"}) {
        const std::string path = std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name;
        for (const Structure& s : inventory::read_inventory(path).structures) {
            sample.push_back(s);
        }
    }
    const estimate::Programme programme = estimate::estimate_all(sample, plan);
    std::vector<Structure> list;
    for (std::size_t i = 0; i < number; ++i) {
        Structure s = sample[programme.priced[i % programme.priced.size()]];
        s.id = s.number = std::to_string(i);
        list.push_back(std::move(s));
    }
    return list;
}

struct Spent {
    double seconds;   ///< by the clock
    double processor; ///< [s] of all threads
};

Spent run(std::span<const Structure> list, const std::shared_ptr<const estimate::Plan>& plan,
          std::size_t draws, unsigned threads) {
    const std::clock_t processor = std::clock();
    const auto start = std::chrono::steady_clock::now();
    bench::keep(simulate::simulate(list, plan, {.draws = draws, .replicates = 10}, threads));
    const std::chrono::duration<double> spent = std::chrono::steady_clock::now() - start;
    return {spent.count(), static_cast<double>(std::clock() - processor) / CLOCKS_PER_SEC};
}

void tell(const char* what, const Spent& spent, std::size_t structures, std::size_t draws) {
    const double each = 1e9 / static_cast<double>(structures * draws);
    std::printf("%-34s %8.2f s %8.0f ns an estimate, %6.0f ns of processor\n", what, spent.seconds,
                spent.seconds * each, spent.processor * each);
}

/// As the kernel counts it, the records included [MB].
double peak_memory() {
    rusage usage{};
    getrusage(RUSAGE_SELF, &usage);
    return static_cast<double>(usage.ru_maxrss) / 1024.0;
}

} // namespace

int main(int argc, char** argv) {
    const std::size_t number = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 1500;
    const std::size_t draws = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 10000;
    const auto plan = estimate::make_plan(json::demo_job());
    const std::vector<Structure> list = priced_records(plan, number);
    const std::span<const Structure> tenth(list.data(), number / 10);
    run(tenth, plan, draws / 10, 1); // tables are built once
    const Spent one = run(tenth, plan, draws, 1);
    const Spent two = run(tenth, plan, draws, 2);
    tell("a tenth, one thread", one, tenth.size(), draws);
    tell("a tenth, two threads", two, tenth.size(), draws);
    std::printf("%-34s %8.2f x\n", "second thread", one.seconds / two.seconds);
    tell("a tenth, a tenth of the draws", run(tenth, plan, draws / 10, 2), tenth.size(),
         draws / 10);
    const Spent all = run(list, plan, draws, 2);
    tell("all, two threads", all, list.size(), draws);
    std::printf("%-34s %8.0f MB\n", "peak memory", peak_memory());
    std::printf("%-34s %8.0f s for 620,000 x 1,000, two threads\n", "by extrapolation",
                all.seconds * 620e6 / static_cast<double>(list.size() * draws));
}
