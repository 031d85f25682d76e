// Structures for bench_numpy.py. bench_numpy write FOLDER DRAWS writes the price of each as a NumPy
// program, its guesses, the drawn inputs and the figures of every draw. bench_numpy time DRAWS prints
// the processor seconds of the engine on one thread: for the same prices over the same draws, and for a
// whole simulation of the structures.
#include "bench.hpp"
#include "numpy_program.hpp"
#include "scupper/inventory.hpp"
#include "scupper/json.hpp"
#include "scupper/simulate.hpp"
#include "tape.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <limits>
#include <string>
#include <vector>

namespace {

using namespace scupper;
using simulate::detail::block_draws;

constexpr std::size_t structures = 20;

/// Structures from all over a file.
std::vector<Structure> sample(const std::shared_ptr<const estimate::Plan>& plan) {
    const std::string path = std::string(SCUPPER_TESTS_DIR) + "/data/inventory/dc_2019_part.txt";
    const auto list = inventory::read_inventory(path).structures;
    const auto priced = estimate::estimate_all(list, plan).priced;
    std::vector<Structure> out;
    for (std::size_t i = 0; i < structures; ++i) {
        const std::size_t place = priced[i * priced.size() / structures];
        out.push_back(list[place]);
    }
    return out;
}

std::vector<std::size_t> figures_of(const estimate::Plan& plan) {
    std::vector<std::size_t> places;
    for (const auto& figure : simulate::simulated_figures) {
        places.push_back(estimate::figure_place_of(plan, figure.key));
    }
    return places;
}

/// The price of a structure as recorded.
struct Recorded {
    Recorded(const estimate::Resolved& resolved, const estimate::Plan& plan)
        : recording(Naming::no_names), workspace(plan) {
        for (const double value : resolved.values) {
            inputs.emplace_back(value, &recording, recording.leaf(value, {}));
        }
        price(resolved.model, estimate::Inputs<Traced>(plan.inputs, inputs.data()), workspace);
        for (const std::size_t place : figures_of(plan)) {
            ends.push_back(workspace.figures.at(place).step_in(recording));
        }
    }

    /// Whether a step leads to one of others, itself among them [-, by step].
    std::vector<char> leads_to(std::vector<Step> others) const {
        std::vector<char> leads(recording.steps().size(), 0);
        for (const Step step : others) {
            leads[step] = 1;
        }
        for (auto step = static_cast<Step>(leads.size()); step-- > 0;) {
            for (const Step argument : recording.arguments(step)) {
                leads[argument] = leads[argument] || leads[step];
            }
        }
        return leads;
    }

    Recording recording;
    std::vector<Traced> inputs;
    estimate::Workspace<Traced> workspace;
    std::vector<Step> ends;
};

/// A structure, and which of its inputs are drawn: those that move a figure.
struct Case {
    Case(const Structure& structure, const std::shared_ptr<const estimate::Plan>& job,
         std::size_t draws)
        : plan(job) {
        resolve(structure, *plan, resolved);
        const Recorded recorded(resolved, *plan);
        const std::vector<char> moves = recorded.leads_to(recorded.ends);
        for (std::size_t i = 0; i < resolved.uncertain.size(); ++i) {
            const Uncertain& input = resolved.uncertain[i];
            if (moves[i] && !std::isnan(input.guess.likely) && !is_certain(input)) {
                drawn.push_back(i);
            }
        }
        const estimate::InputDraws inputs(resolved, {.seed = 1, .draws = draws});
        std::vector<double> values(resolved.values.size());
        columns.resize(drawn.size() * draws);
        for (std::size_t d = 0; d < draws; ++d) {
            inputs.fill(d, values);
            for (std::size_t k = 0; k < drawn.size(); ++k) {
                columns[k * draws + d] = values[drawn[k]];
            }
        }
    }
    std::shared_ptr<const estimate::Plan> plan;
    estimate::Resolved resolved;
    std::vector<std::size_t> drawn;
    std::vector<double> columns; ///< input after input
};

void save(const std::string& path, const std::vector<double>& numbers) {
    std::ofstream file(path, std::ios::binary);
    file.write(reinterpret_cast<const char*>(numbers.data()),
               static_cast<std::streamsize>(numbers.size() * sizeof(double)));
}

/// The figures of every draw, figure after figure.
std::vector<double> priced(const Case& c, std::size_t draws) {
    const std::vector<std::size_t> places = figures_of(*c.plan);
    std::vector<double> figures(places.size() * draws);
    std::vector<double> values = c.resolved.values;
    estimate::Workspace<double> workspace(*c.plan);
    for (std::size_t d = 0; d < draws; ++d) {
        for (std::size_t k = 0; k < c.drawn.size(); ++k) {
            values[c.drawn[k]] = c.columns[k * draws + d];
        }
        price(c.resolved.model, estimate::Inputs<double>(c.plan->inputs, values.data()), workspace);
        for (std::size_t f = 0; f < places.size(); ++f) {
            figures[f * draws + d] = workspace.figures.at(places[f]);
        }
    }
    return figures;
}

void write(const std::string& stem, const Case& c, std::size_t draws) {
    const Recorded recorded(c.resolved, *c.plan);
    const bench::NumpyProgram program(recorded.recording, recorded.ends, c.drawn);
    save(stem + "_inputs.f64", c.columns);
    save(stem + "_figures.f64", priced(c, draws));
    std::ofstream(stem + "_price.py") << program.text();
    std::ofstream guesses(stem + "_guesses.csv");
    guesses.precision(17);
    for (const std::size_t place : c.drawn) {
        const Uncertain& input = c.resolved.uncertain[place];
        guesses << place << ',' << input.guess.low << ',' << input.guess.likely << ','
                << input.guess.high << ',' << input.shared_share << '\n';
    }
    std::printf("%zu drawn inputs, %zu operations on vectors\n", c.drawn.size(),
                program.operations());
}

void write(const std::string& folder, std::size_t draws) {
    const auto plan = estimate::make_plan(json::demo_job());
    const std::vector<Structure> list = sample(plan);
    for (std::size_t i = 0; i < list.size(); ++i) {
        write(folder + "/" + std::to_string(i), Case(list[i], plan, draws), draws);
    }
}

/// The shortest of several rounds [s of processor], which other programs hardly disturb.
template <class Work>
double shortest(Work&& work) {
    std::clock_t least = std::numeric_limits<std::clock_t>::max();
    for (int i = 0; i < 5; ++i) {
        const std::clock_t start = std::clock();
        work();
        least = std::min(least, std::clock() - start);
    }
    return static_cast<double>(least) / CLOCKS_PER_SEC;
}

/// Price alone: the draws are there.
void price_case(const Case& c, std::size_t draws, std::vector<double>& out) {
    const std::vector<std::size_t> places = figures_of(*c.plan);
    simulate::detail::Tape tape(*c.plan);
    std::vector<double> block(c.drawn.size() * block_draws);
    std::vector<const double*> columns;
    for (std::size_t k = 0; k < c.drawn.size(); ++k) {
        columns.push_back(block.data() + k * block_draws);
    }
    tape.record(c.resolved, places);
    tape.draw_over(c.drawn, columns);
    for (std::size_t first = 0; first < draws; first += block_draws) {
        const std::size_t count = std::min(block_draws, draws - first);
        for (std::size_t k = 0; k < c.drawn.size(); ++k) {
            std::copy_n(c.columns.data() + k * draws + first, count,
                        block.data() + k * block_draws);
        }
        tape.run(count);
        for (std::size_t f = 0; f < places.size(); ++f) {
            for (std::size_t i = 0; i < count; ++i) {
                out[f * draws + first + i] = tape.figure(f)[i];
            }
        }
    }
}

void time_engine(std::size_t draws) {
    const auto plan = estimate::make_plan(json::demo_job());
    const std::vector<Structure> list = sample(plan);
    std::vector<Case> cases;
    for (const Structure& s : list) {
        cases.emplace_back(s, plan, draws);
    }
    std::vector<double> out(figures_of(*plan).size() * draws);
    const double price_alone = shortest([&] {
        for (const Case& c : cases) {
            price_case(c, draws, out);
        }
        bench::keep(out);
    });
    const double whole = shortest(
        [&] { bench::keep(simulate::simulate(list, plan, {.draws = draws, .replicates = 1}, 1)); });
    std::printf("%.9f %.9f\n", price_alone, whole);
}

} // namespace

int main(int argc, char** argv) {
    const std::string what = argc > 1 ? argv[1] : "time";
    if (what == "write" && argc > 3) {
        write(argv[2], std::strtoul(argv[3], nullptr, 10));
    } else {
        time_engine(argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 10000);
    }
}
