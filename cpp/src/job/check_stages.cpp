#include "check_stages.hpp"

#include "check_words.hpp"
#include "scupper/error.hpp"

#include <algorithm>

namespace scupper::detail {

namespace {

std::vector<std::string_view> words_of_parties(const Job& job) {
    std::vector<std::string_view> known(component_names.begin(), component_names.end());
    known.insert(known.end(), crew_kind_names.begin(), crew_kind_names.end());
    for (const Operation& op : job.operations) {
        known.push_back(op.name);
    }
    return known;
}

void check_names(const std::vector<std::string>& names) {
    for (const std::string& name : names) {
        if (name.empty() || std::count(names.begin(), names.end(), name) > 1) {
            throw InputError({"job.stage", "job.stages", "\"" + name + "\"",
                              "a name of its own for every stage and party"});
        }
    }
}

void check_work(const Job& job) {
    const std::vector<std::string_view> known = words_of_parties(job);
    std::vector<std::string> taken;
    for (const Stage& stage : job.stages) {
        if (stage.parties.empty()) {
            throw InputError({"job.stage", "job.stages[" + stage.name + "].parties", "nothing",
                              "at least one party"});
        }
        for (const Party& party : stage.parties) {
            for (const std::string& word : party.work) {
                const std::string path = "job.stages[" + stage.name + "]." + party.name + ".work";
                require_word(known, word, path);
                if (std::find(taken.begin(), taken.end(), word) != taken.end()) {
                    throw InputError({"job.stage", path, "\"" + word + "\" a second time",
                                      "each kind of work with one party"});
                }
                taken.push_back(word);
            }
        }
    }
}

void check_members(const std::vector<Resource>& resources, const char* list,
                   std::span<const std::string> crews) {
    const std::vector<std::string_view> known(crews.begin(), crews.end());
    for (const Resource& r : resources) {
        if (!r.party.empty()) {
            require_word(known, r.party, std::string("job.") + list + "[" + r.name + "].party");
        }
    }
}

} // namespace

void check_stages(const Job& job) {
    const std::vector<std::string> crews = crew_names(job);
    check_names(crews);
    check_work(job);
    for (const Stage& stage : job.stages) {
        const std::string path = "job.stages[" + stage.name + "].closure";
        if (!stage.closure.empty()) {
            require_word(closure_kind_names, stage.closure, path, "by_record");
        }
    }
    check_members(job.labour, "labour", crews);
    check_members(job.equipment, "equipment", crews);
}

} // namespace scupper::detail
