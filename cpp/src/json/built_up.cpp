#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "values.hpp"

#include <algorithm>
#include <array>

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

/// One number, [low, likely, high], or an object of these three.
PartValue read_part(const std::string& name, const Json& value, const LayoutField& field,
                    const ValueContext& context, const std::string& path) {
    if (value.is_object()) {
        static constexpr std::array<std::string_view, 3> points{"low", "likely", "high"};
        require_known_keys(value, points, path);
        Json list = Json::array();
        for (const std::string_view point : points) {
            list.push_back(value.contains(point) ? value[std::string(point)] : Json());
        }
        return read_part(name, list, field, context, path);
    }
    if (!value.is_array()) {
        return {name, read_number(value, field, context, path)};
    }
    if (value.size() != 3) {
        throw InputError({"json.type", path, value.dump(), "three values: low, likely, high"});
    }
    PartValue part{name, read_number(value[1], field, context, path)};
    part.low = read_number(value[0], field, context, path);
    part.high = read_number(value[2], field, context, path);
    if (!(part.low <= part.value && part.value <= part.high)) {
        throw InputError({"json.order", path, value.dump(), "low, likely, high in this order"});
    }
    return part;
}

Json write_part(const PartValue& part, const Dimension& dimension, const std::string& currency) {
    const auto number = [&](double value) { return write_number(value, dimension, currency); };
    return part.low == part.high
               ? number(part.value)
               : Json::array({number(part.low), number(part.value), number(part.high)});
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
        parts.push_back(name == ownership
                            ? PartValue{name, read_ownership(value, where)}
                            : read_part(name, value, field_of(part, field), context, where));
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
                                : write_part(part, row.dimension, currency);
    }
    return object;
}

} // namespace scupper::json::detail
