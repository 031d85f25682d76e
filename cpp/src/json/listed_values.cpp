#include "scupper/error.hpp"
#include "values.hpp"

#include <initializer_list>

namespace scupper::json::detail {

namespace {

std::vector<double> numbers_of(const Json& list, const LayoutField& field,
                               const ValueContext& context, const std::string& path) {
    if (!list.is_array()) {
        throw InputError({"json.type", path, list.dump(), "a list of values"});
    }
    std::vector<double> numbers;
    for (std::size_t i = 0; i < list.size(); ++i) {
        numbers.push_back(
            read_number(list[i], field, context, path + "[" + std::to_string(i) + "]"));
    }
    return numbers;
}

std::vector<double> weights_of(const Json& value, const std::string& path) {
    if (!value.contains("values") || !value.contains("weights") || !value["weights"].is_array()) {
        throw InputError({"json.type", path, value.dump(), "\"values\" and as many \"weights\""});
    }
    std::vector<double> weights;
    for (const Json& weight : value["weights"]) {
        if (!weight.is_number()) {
            throw InputError({"json.type", path + ".weights", weight.dump(), "a number >= 0"});
        }
        weights.push_back(weight.get<double>());
    }
    return weights;
}

/// Such a value says all about its distribution.
void require_nothing_else(const Json& value, std::initializer_list<const char*> others,
                          const std::string& path) {
    for (const char* key : others) {
        if (value.contains(key)) {
            throw InputError({"json.key", path, "\"" + std::string(key) + "\" beside listed values",
                              "\"values\" and \"weights\", or \"sample\", alone"});
        }
    }
}

} // namespace

bool is_listed(const Json& value) {
    return value.contains("values") || value.contains("weights") || value.contains("sample");
}

std::shared_ptr<const Listed> read_listed(const Json& value, const LayoutField& field,
                                          const ValueContext& context, const std::string& path) {
    require_nothing_else(value, {"value", "low", "likely", "high", "family", "meaning"}, path);
    if (value.contains("sample")) {
        require_nothing_else(value, {"values", "weights"}, path);
        return std::make_shared<const Listed>(
            numbers_of(value["sample"], field, context, path + ".sample"), path + ".sample");
    }
    std::vector<double> weights = weights_of(value, path);
    return std::make_shared<const Listed>(
        numbers_of(value["values"], field, context, path + ".values"), std::move(weights), path);
}

} // namespace scupper::json::detail
