#include "hose_lay_values.hpp"

#include "scupper/hydraulics/friction.hpp"
#include "scupper/unit.hpp"

namespace scupper::json::detail {

double si_of(const Json& value, const Dimension& dimension, const std::string& path) {
    if (value.is_string()) {
        const std::string text = value.get<std::string>();
        return dimension == dim::temperature ? parse_temperature(text, path).kelvin()
                                             : parse_as(text, dimension, path);
    }
    if (value.is_number()) {
        return takes_plain_number(dimension) ? value.get<double>()
                                             : parse_as(value.dump(), dimension, path); // refuses
    }
    throw InputError({"json.type", path, value.dump(), dimension_phrase(dimension)});
}

Length<> head_of(const Json& value, const hydraulics::Fluid<>& fluid, const std::string& path) {
    if (value.is_string() &&
        parse_quantity(value.get<std::string>(), path).dimension == dim::pressure) {
        return hydraulics::head(Pressure<>(si_of(value, dim::pressure, path)), fluid.density);
    }
    return Length<>(si_of(value, dim::length, path));
}

hydraulics::Fluid<> water_or_error(const Temperature<>& temperature, const std::string& path) {
    try {
        return hydraulics::water(temperature);
    } catch (const InputError& e) {
        throw InputError({e.id(), path, e.found() + " K", e.allowed()});
    }
}

void Values::require(const char* key) const {
    if (!has(key)) {
        throw InputError({"json.missing", path_ + "." + key, "nothing", "a value"});
    }
}

void Values::one_of(std::initializer_list<const char*> keys) const {
    std::string found;
    std::string allowed;
    int count = 0;
    for (const char* key : keys) {
        allowed += (allowed.empty() ? "" : ", ") + std::string(key);
        if (has(key)) {
            found += (found.empty() ? "" : ", ") + std::string(key);
            ++count;
        }
    }
    if (count != 1) {
        throw InputError(
            {"json.one_of", path_, count ? found : "none of them", "one of " + allowed});
    }
}

void Values::only_for(bool counts, const char* key, const char* where) const {
    if (has(key) && !counts) {
        throw InputError({"json.unused", path_ + "." + key, object_[key].dump(),
                          "nothing: it counts only for " + std::string(where)});
    }
}

double Values::positive(const char* key, const Dimension& dimension, double otherwise) const {
    const double value = has(key) ? si_of(object_[key], dimension, path_ + "." + key) : otherwise;
    if (!(value > 0.0)) {
        throw InputError(
            {std::string("hydraulics.") + key, path_ + "." + key, std::to_string(value), "> 0"});
    }
    return value;
}

void Values::unknown_word(const char* key, const std::string& found,
                          std::span<const std::string_view> words) const {
    std::string allowed;
    for (const std::string_view word : words) {
        allowed += (allowed.empty() ? "" : ", ") + std::string(word);
    }
    const std::string near = nearest_name(found, words);
    throw UnknownNameError({"json.word", path_ + "." + key, "\"" + found + "\"",
                            near.empty() ? allowed : "\"" + near + "\"?"});
}

} // namespace scupper::json::detail
