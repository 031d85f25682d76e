#include "check_site.hpp"

#include "check_words.hpp"
#include "scupper/error.hpp"

#include <algorithm>

namespace scupper::detail {

namespace {

using Path = std::string;

template <class Rows>
void check_names(const Rows& rows, const char* list) {
    for (const auto& row : rows) {
        const auto same = [&](const auto& other) { return other.name == row.name; };
        if (row.name.empty() || std::count_if(rows.begin(), rows.end(), same) > 1) {
            throw InputError({"job.name", Path("job.") + list, "\"" + row.name + "\"",
                              "a name of its own for each"});
        }
    }
}

std::vector<std::string_view> words_of_paces(const Job& job) {
    std::vector<std::string_view> known(component_names.begin(), component_names.end());
    known.insert(known.end(), crew_kind_names.begin(), crew_kind_names.end());
    known.insert(known.end(), operation_names.begin(), operation_names.end());
    for (const Operation& op : job.operations) {
        known.push_back(op.name);
    }
    return known;
}

void check_paces(const std::vector<Pace>& paces, const Job& job, const Path& before) {
    const std::vector<std::string_view> known = words_of_paces(job);
    for (const Pace& pace : paces) {
        const Path path = before + "[" + pace.name + "]";
        check_conditions(pace.when, path);
        for (const std::string& word : pace.work) {
            require_word(known, word, path + ".work");
        }
    }
}

void check_limits(const Alternative& a, const Path& path) {
    for (const SiteLimit& limit : a.limits) {
        const auto word = site_measure_names.at(static_cast<std::size_t>(limit.measure));
        if (!(limit.least <= limit.most)) {
            throw InputError(
                {"job.limit", path + ".limits[" + Path(word) + "]",
                 std::to_string(limit.least) + " to " + std::to_string(limit.most) + " (SI)",
                 "the least not above the most"});
        }
    }
}

void check_removal(const Removal& removes, const Path& path) {
    static constexpr std::array<std::string_view, 3> rows{"", "flusher", "broom"};
    require_word(rows, removes.passes, path + ".removes.passes");
    for (const std::string& kind : removes.dirt) {
        require_word(dirt_names, kind, path + ".removes.dirt");
    }
}

void check_alternative(const Alternative& a, const Job& job) {
    const Path path = "job.alternatives[" + a.name + "]";
    std::vector<std::string_view> conditions(condition_names.begin(), condition_names.end());
    conditions.insert(conditions.end(), site_word_names.begin(), site_word_names.end());
    for (const auto& [component, way] : a.ways) {
        require_word(component_names, component, path + ".ways");
    }
    for (const auto& [component, text] : a.misses) {
        require_word(component_names, component, path + ".misses");
    }
    for (const auto& [word, reason] : a.needs) {
        require_word(conditions, word, path + ".needs");
    }
    for (const auto& [word, reason] : a.forbids) {
        require_word(conditions, word, path + ".forbids");
    }
    if (!a.closure.empty()) {
        require_word(closure_kind_names, a.closure, path + ".closure");
    }
    check_paces(a.paces, job, path + ".paces");
    check_limits(a, path);
    check_removal(a.removes, path);
}

} // namespace

void check_conditions(const std::vector<std::string>& when, const std::string& path) {
    for (const std::string& word : when) {
        if (index_of(closure_kind_names, word) < 0) {
            require_word(condition_names, word, path + ".when");
        }
    }
}

void check_site(const Job& job) {
    for (const auto& [id, words] : job.site) {
        for (const std::string& word : words) {
            require_word(site_word_names, word, "job.site." + id);
        }
    }
    check_names(job.paces, "paces");
    check_names(job.surroundings, "surroundings");
    check_names(job.alternatives, "alternatives");
    check_paces(job.paces, job, "job.paces");
    for (const Surrounding& s : job.surroundings) {
        check_conditions(s.when, "job.surroundings[" + s.name + "]");
    }
    for (const Alternative& a : job.alternatives) {
        check_alternative(a, job);
    }
}

} // namespace scupper::detail
