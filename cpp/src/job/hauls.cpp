#include "scupper/job/job.hpp"

#include <algorithm>

namespace scupper {

namespace {

bool names(const Haul& haul, std::string_view component) {
    return std::find(haul.components.begin(), haul.components.end(), component) !=
           haul.components.end();
}

bool has(const std::vector<Setting>& settings, const std::string& key) {
    return std::any_of(settings.begin(), settings.end(),
                       [&](const Setting& s) { return s.key == key; });
}

void spread(std::vector<Setting>& settings, const std::vector<Haul>& hauls) {
    const std::string row_of_all = "haul[" + std::string(any_haul_name) + "]";
    std::vector<Setting> own;
    for (const Setting& s : settings) {
        if (!s.key.starts_with(row_of_all)) {
            own.push_back(s);
            continue;
        }
        for (const Haul& haul : hauls) {
            Setting copy = s;
            copy.key = "haul[" + haul.name + "]" + s.key.substr(row_of_all.size());
            if (!has(settings, copy.key)) {
                own.push_back(std::move(copy));
            }
        }
    }
    settings = std::move(own);
}

} // namespace

bool carries(const std::vector<Haul>& hauls, std::size_t row, std::string_view component) {
    if (!hauls[row].components.empty()) {
        return names(hauls[row], component);
    }
    return std::none_of(hauls.begin(), hauls.end(),
                        [&](const Haul& haul) { return names(haul, component); });
}

std::size_t collecting_truck(const std::vector<Haul>& hauls) {
    for (std::size_t row = 0; row < hauls.size(); ++row) {
        if (carries(hauls, row, "drain")) {
            return row;
        }
    }
    return 0;
}

std::vector<Haul> haul_trucks(const Job& job) {
    return job.hauls.empty() ? std::vector<Haul>{{std::string(any_haul_name), {}, {}, {}}}
                             : job.hauls;
}

void spread_haul_values(Job& job) {
    if (job.hauls.empty() || job.hauls.front().name == any_haul_name) {
        return;
    }
    spread(job.settings, job.hauls);
    for (auto& [id, settings] : job.overrides) {
        spread(settings, job.hauls);
    }
}

} // namespace scupper
