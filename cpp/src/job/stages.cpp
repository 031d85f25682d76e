#include "scupper/job/job.hpp"

#include <algorithm>

namespace scupper {

namespace {

bool names(const Party& party, const std::string& word) {
    return std::find(party.work.begin(), party.work.end(), word) != party.work.end();
}

} // namespace

std::vector<std::string> crew_names(const Job& job) {
    std::vector<std::string> all;
    for (const Stage& stage : job.stages) {
        all.push_back(stage.name);
    }
    for (const Stage& stage : job.stages) {
        for (const Party& party : stage.parties) {
            all.push_back(party.name);
        }
    }
    return all;
}

std::size_t party_of(const Job& job, const Operation& op) {
    for (const std::string& word : {op.name, op.component, op.crew}) {
        std::size_t index = 0;
        for (const Stage& stage : job.stages) {
            for (const Party& party : stage.parties) {
                if (names(party, word)) {
                    return index;
                }
                ++index;
            }
        }
    }
    return 0;
}

} // namespace scupper
