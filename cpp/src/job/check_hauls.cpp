#include "check_hauls.hpp"

#include "check_words.hpp"
#include "scupper/error.hpp"

#include <algorithm>

namespace scupper::detail {

namespace {

void check_name(const Haul& haul, const Job& job, const std::string& path) {
    const auto same = std::count_if(job.hauls.begin(), job.hauls.end(),
                                    [&](const Haul& other) { return other.name == haul.name; });
    const bool stands_for_all = haul.name == any_haul_name && job.hauls.size() > 1;
    if (haul.name.empty() || same > 1 || stands_for_all) {
        throw InputError({"job.haul", path + ".name", "\"" + haul.name + "\"",
                          "a name of its own for every truck; \"truck\" stands for all of them"});
    }
}

/// No dirt may be left behind unpriced.
void check_carried(const Job& job, const std::string& dirt) {
    const std::vector<Haul> trucks = haul_trucks(job);
    bool carried = service_level(job, dirt) == "none";
    for (std::size_t row = 0; row < trucks.size(); ++row) {
        carried = carried || carries(trucks, row, dirt);
    }
    if (!carried) {
        throw InputError({"job.haul", "job.hauls", "no truck carries the dirt of " + dirt,
                          "\"" + dirt +
                              "\" among the components of a truck, or a truck without "
                              "components, which carries the rest"});
    }
}

} // namespace

void check_hauls(const Job& job) {
    for (std::size_t row = 0; row < job.hauls.size(); ++row) {
        const std::string path = "job.hauls[" + std::to_string(row) + "]";
        check_name(job.hauls[row], job, path);
        for (const std::string& component : job.hauls[row].components) {
            require_word(component_names, component, path + ".components");
        }
    }
    for (const std::string_view dirt : dirt_names) {
        check_carried(job, std::string(dirt));
    }
}

} // namespace scupper::detail
