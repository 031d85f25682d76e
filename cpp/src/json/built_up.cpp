#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "values.hpp"

#include <algorithm>

namespace scupper::json::detail {

namespace {

using cost::ownership_names;
using cost::RatePart;

constexpr std::string_view ownership = "ownership"; // a word where the others are numbers

/// A part as a field, so that it is read and written like one.
LayoutField field_of(const RatePart& part, const LayoutField& whole) {
    return {.key = whole.key + "." + std::string(part.name),
            .label = std::string(part.label),
            .dimension = part.dimension,
            .least = part.least,
            .greatest = part.greatest};
}

double read_ownership(const Json& value, const std::string& path) {
    const std::string word = value.is_string() ? value.get<std::string>() : value.dump();
    const int index = index_of(ownership_names, word);
    if (index < 0) {
        throw UnknownNameError(
            {"json.word", path, "\"" + word + "\"", "capital_recovery or average_investment"});
    }
    return index;
}

} // namespace

std::vector<PartValue> read_parts(const Json& object, const LayoutField& field,
                                  const ValueContext& context, const std::string& path) {
    const cost::BuiltUp kind = cost::built_up_of(field.key);
    if (kind == cost::BuiltUp::none) {
        throw InputError({"json.built_up", path, "parts of " + field.label,
                          "a number: only wages and rates of equipment are built up"});
    }
    if (!object.is_object()) {
        throw InputError({"json.type", path, object.dump(), "an object of part and value"});
    }
    std::vector<PartValue> parts;
    for (const auto& [name, value] : object.items()) {
        const RatePart& part = cost::rate_part(kind, name, path);
        const std::string where = path + "." + name;
        parts.push_back({name, name == ownership
                                   ? read_ownership(value, where)
                                   : read_number(value, field_of(part, field), context, where)});
    }
    cost::check_parts(kind, parts, path);
    return parts;
}

Json write_parts(const std::vector<PartValue>& parts, const LayoutField& field,
                 const std::string& currency) {
    Json object = Json::object();
    for (const PartValue& part : parts) {
        const RatePart& row = cost::rate_part(cost::built_up_of(field.key), part.name, field.key);
        object[part.name] = part.name == ownership
                                ? Json(ownership_names.at(static_cast<std::size_t>(part.value)))
                                : write_number(part.value, row.dimension, currency);
    }
    return object;
}

} // namespace scupper::json::detail
