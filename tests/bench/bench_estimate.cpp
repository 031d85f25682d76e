// Nanoseconds a structure for every stage of the chain, on records made from the sample files.
#include "bench.hpp"
#include "scupper/estimate.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"

#include <cstdio>
#include <string>
#include <vector>

namespace {

using namespace scupper;

std::vector<Structure> records() {
    std::vector<Structure> list;
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt"}) {
        const std::string path = std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name;
        for (const Structure& s : inventory::read_inventory(path).structures) {
            list.push_back(s);
        }
    }
    return list;
}

/// One stage over all records, a structure.
template <class Work>
void stage(const char* name, const std::vector<Structure>& list, int rounds, Work work) {
    const double ns = bench::nanoseconds(rounds, [&] {
        for (std::size_t i = 0; i < list.size(); ++i) {
            work(i);
        }
    });
    bench::report(name, ns / static_cast<double>(list.size()));
}

} // namespace

int main() {
    const std::vector<Structure> list = records();
    const auto plan = estimate::make_plan(json::demo_job());
    std::vector<estimate::Resolved> resolved(list.size());
    for (std::size_t i = 0; i < list.size(); ++i) {
        estimate::resolve(list[i], *plan, resolved[i]);
    }
    estimate::Resolved scratch;
    estimate::Workspace<double> workspace(*plan);
    const estimate::Plan bare = estimate::take_off_plan();
    stage("infer dimensions", list, 20,
          [&](std::size_t i) { bench::keep(takeoff::infer(list[i])); });
    stage("resolve", list, 20, [&](std::size_t i) { estimate::resolve(list[i], *plan, scratch); });
    stage("price", list, 20, [&](std::size_t i) {
        estimate::price(resolved[i].model, {plan->inputs, resolved[i].values.data()}, workspace);
    });
    stage("64 draws", list, 1, [&](std::size_t i) {
        bench::keep(estimate::draw_group({&resolved[i], 1}, {.seed = 1, .draws = 64},
                                         std::vector<std::size_t>{0}));
    });
    const estimate::Estimate one = estimate::estimate(list.front(), plan);
    bench::report("explain the total of one structure", bench::nanoseconds(5, [&] {
                      bench::keep(estimate::explain(one, "cost.total"));
                  }));
    const double all =
        bench::nanoseconds(2, [&] { bench::keep(estimate::take_off_table(list, 1)); });
    bench::report("take-off table with ranges, a structure",
                  all / static_cast<double>(list.size()));
    const double priced =
        bench::nanoseconds(5, [&] { bench::keep(estimate::estimate_all(list, plan, 1)); });
    bench::report("bulk estimate, a structure, one thread",
                  priced / static_cast<double>(list.size()));
}
