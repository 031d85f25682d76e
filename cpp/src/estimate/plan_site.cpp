#include "plan_parts.hpp"

namespace scupper::estimate::detail {

namespace {

std::uint32_t bits_of(const std::vector<std::string>& words) {
    std::uint32_t bits = 0;
    for (const std::string& word : words) {
        bits |= bit_of(site_word_names, word);
    }
    return bits;
}

} // namespace

void plan_site(Plan& plan) {
    plan.build_up = bit_of(build_up_names, plan.job.build_up);
    for (const auto& [id, words] : plan.job.site) {
        if (id == every_site) {
            plan.site = bits_of(words);
        } else {
            plan.sites[id] = bits_of(words);
        }
    }
    for (const Pace& pace : plan.job.paces) {
        plan.paces.push_back(condition_of(pace.when));
    }
    for (const Surrounding& s : plan.job.surroundings) {
        plan.surroundings.push_back(condition_of(s.when));
    }
}

} // namespace scupper::estimate::detail
