#include "scupper/error.hpp"
#include "terms.hpp"

namespace scupper::json::detail {

namespace {

Correlation read_correlation(const Json& value, const std::string& path) {
    require_known_keys(value, job_correlation_keys, path);
    if (!value.contains("rank") || !value["rank"].is_number()) {
        throw InputError({"json.type", path + ".rank",
                          value.contains("rank") ? value["rank"].dump() : "nothing",
                          "a rank correlation, as 0.6"});
    }
    return {words(value, "inputs", path), value["rank"].get<double>()};
}

} // namespace

std::vector<Correlation> read_correlations(const Json& doc, const std::string& name) {
    std::vector<Correlation> correlations;
    if (!doc.contains("correlations")) {
        return correlations;
    }
    const std::string path = name + ".correlations";
    const Json& list = doc["correlations"];
    if (!list.is_array()) {
        throw InputError({"json.type", path, list.dump(), "a list of inputs and their rank"});
    }
    for (std::size_t i = 0; i < list.size(); ++i) {
        correlations.push_back(read_correlation(list[i], path + "[" + std::to_string(i) + "]"));
    }
    return correlations;
}

Json write_correlations(const std::vector<Correlation>& correlations) {
    Json list = Json::array();
    for (const Correlation& c : correlations) {
        list.push_back({{"inputs", c.inputs}, {"rank", c.rank}});
    }
    return list;
}

} // namespace scupper::json::detail
