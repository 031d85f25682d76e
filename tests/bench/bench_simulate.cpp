// Draws of the full estimate: nanoseconds an estimate, growth with draws, structures and threads.
#include "bench.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"
#include "scupper/simulate.hpp"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <string>
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

double seconds(std::span<const Structure> list, const std::shared_ptr<const estimate::Plan>& plan,
               std::size_t draws, unsigned threads) {
    const auto start = std::chrono::steady_clock::now();
    bench::keep(simulate::simulate(list, plan, {.draws = draws, .replicates = 10}, threads));
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

} // namespace

int main(int argc, char** argv) {
    const std::size_t number = argc > 1 ? std::strtoul(argv[1], nullptr, 10) : 1500;
    const std::size_t draws = argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 10000;
    const auto plan = estimate::make_plan(json::demo_job());
    const std::vector<Structure> list = priced_records(plan, number);
    const auto tell = [&](const char* what, double s, std::size_t structures, std::size_t n) {
        std::printf("%-34s %8.2f s %8.0f ns an estimate\n", what, s,
                    s * 1e9 / static_cast<double>(structures * n));
    };
    const std::span<const Structure> tenth(list.data(), number / 10);
    seconds(tenth, plan, draws / 10, 1); // tables are built once
    const double one = seconds(tenth, plan, draws, 1);
    const double two = seconds(tenth, plan, draws, 2);
    tell("a tenth, one thread", one, tenth.size(), draws);
    tell("a tenth, two threads", two, tenth.size(), draws);
    std::printf("%-34s %8.2f x\n", "second thread", one / two);
    tell("a tenth, a tenth of the draws", seconds(tenth, plan, draws / 10, 2), tenth.size(),
         draws / 10);
    tell("all, two threads", seconds(list, plan, draws, 2), list.size(), draws);
}
