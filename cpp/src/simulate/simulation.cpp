#include "scupper/simulate/simulation.hpp"

#include "require.hpp"
#include "scupper/error.hpp"
#include "worker.hpp"

#include <algorithm>
#include <iterator>
#include <mutex>
#include <string>
#include <utility>

namespace scupper::simulate {

namespace {

using detail::Worker;

void add_all(std::vector<estimate::FixedTotal>& sums,
             const std::vector<estimate::FixedTotal>& parts) {
    for (std::size_t i = 0; i < sums.size(); ++i) {
        sums[i].add(parts[i]);
    }
}

void move_all(std::vector<estimate::Unpriced>& from, std::vector<estimate::Unpriced>& to) {
    to.insert(to.end(), std::make_move_iterator(from.begin()), std::make_move_iterator(from.end()));
}

/// In the result, of a structure that turned out to have no ranges.
constexpr std::size_t no_index = static_cast<std::size_t>(-1);

/// Workers that are not at work; as many are made as there are threads.
class Workers {
  public:
    Workers(const estimate::Plan& plan, const SimulationSettings& settings)
        : plan_(plan), settings_(settings), shared_(plan, settings) {}

    std::unique_ptr<Worker> take() {
        const std::lock_guard lock(mutex_);
        if (idle_.empty()) {
            return std::make_unique<Worker>(plan_, settings_, shared_);
        }
        std::unique_ptr<Worker> worker = std::move(idle_.back());
        idle_.pop_back();
        return worker;
    }
    void put_back(std::unique_ptr<Worker> worker) {
        const std::lock_guard lock(mutex_);
        idle_.push_back(std::move(worker));
    }
    void add_up(Simulation& result) const {
        for (const std::unique_ptr<Worker>& worker : idle_) {
            add_all(result.estimated, worker->estimated());
            add_all(result.totals, worker->totals());
            move_all(worker->unpriced(), result.unpriced);
            move_all(worker->left_out(), result.left_out);
        }
        std::ranges::sort(result.unpriced, {}, &estimate::Unpriced::index);
        std::ranges::sort(result.left_out, {}, &estimate::Unpriced::index);
    }

  private:
    const estimate::Plan& plan_;
    const SimulationSettings& settings_;
    detail::SharedScores shared_;
    std::mutex mutex_;
    std::vector<std::unique_ptr<Worker>> idle_;
};

void append_shifted(std::vector<estimate::Unpriced>& whole,
                    const std::vector<estimate::Unpriced>& part, std::size_t shift) {
    for (estimate::Unpriced u : part) {
        u.index += shift;
        whole.push_back(std::move(u));
    }
}

} // namespace

Simulation simulate(std::span<const Structure> structures,
                    std::shared_ptr<const estimate::Plan> plan, const SimulationSettings& settings,
                    unsigned threads, const estimate::RunProgress& progress) {
    detail::require_whole_replicates(settings);
    detail::require_sobol(settings, structures.size());
    Simulation result;
    result.settings = settings;
    result.structures = structures.size();
    result.estimated.resize(figure_count);
    result.totals.resize(settings.draws * figure_count);
    Workers workers(*plan, settings);
    result.simulated.resize(structures.size()); // each thread writes its own, no copies
    const auto block = [&](std::size_t first, std::size_t last) {
        std::unique_ptr<Worker> worker = workers.take();
        for (std::size_t i = first; i < last; ++i) {
            if (!worker->simulate(structures[i], i, result.simulated[i])) {
                result.simulated[i].index = no_index;
            }
        }
        workers.put_back(std::move(worker));
    };
    estimate::run_blocks(structures.size(), threads, block, progress, detail::block_structures);
    workers.add_up(result);
    std::erase_if(result.simulated, [](const auto& s) { return s.index == no_index; });
    result.plan = std::move(plan);
    return result;
}

void append(Simulation& whole, const Simulation& part) {
    if (whole.totals.empty()) {
        whole = part;
        return;
    }
    if (!(whole.settings == part.settings)) {
        throw InputError({"simulate.merge", "part", "other draws", "settings of the parts before"});
    }
    for (SimulatedStructure s : part.simulated) {
        s.index += whole.structures;
        whole.simulated.push_back(s);
    }
    append_shifted(whole.unpriced, part.unpriced, whole.structures);
    append_shifted(whole.left_out, part.left_out, whole.structures);
    whole.structures += part.structures;
    add_all(whole.estimated, part.estimated);
    add_all(whole.totals, part.totals);
}

Sampling sampling_of(std::string_view word) {
    const auto* found = std::find(sampling_names.begin(), sampling_names.end(), word);
    if (found == sampling_names.end()) {
        throw UnknownNameError({"simulate.sampling", "sampling", "\"" + std::string(word) + "\"",
                                "plain, latin_hypercube, sobol or sobol_single"});
    }
    return static_cast<Sampling>(found - sampling_names.begin());
}

std::size_t replicates_for(std::size_t draws) {
    std::size_t number = 10;
    while (number > 1 && draws % number != 0) {
        --number;
    }
    return number;
}

} // namespace scupper::simulate
