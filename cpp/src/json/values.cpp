#include "values.hpp"

#include "scupper/cost.hpp"
#include "scupper/error.hpp"
#include "scupper/estimate/plan.hpp"
#include "scupper/unit.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace scupper::json::detail {

namespace {

[[noreturn]] void wrong_type(const std::string& path, const Json& value,
                             const std::string& allowed) {
    throw InputError({"json.type", path, value.dump(), allowed});
}

} // namespace

bool takes_plain_number(const Dimension& d) {
    return d == dim::none || d == dim::count;
}

namespace {

/// A production rate stands for its time per unit: 300 ft/h is 12 s/ft.
bool is_inverse(const LayoutField& field, const Dimension& d) {
    return field.key.ends_with(".time_per_unit") && d == dim::none / field.dimension;
}

double read_text(const std::string& text, const LayoutField& field, const ValueContext& context,
                 const std::string& path) {
    if (field.dimension == dim::temperature) {
        return parse_temperature(text, path).kelvin();
    }
    const ParsedQuantity q = parse_quantity(text, path);
    if (!q.currency.empty() && q.currency != context.currency) {
        throw UnitError({"json.currency", path, "\"" + text + "\"",
                         "amounts in " + context.currency + ", the currency of the document"});
    }
    if (is_inverse(field, q.dimension)) {
        return 1.0 / q.si;
    }
    if (q.dimension == dim::none && field.dimension == dim::count) {
        return q.si;
    }
    std::string currency = context.currency;
    return parse_as(text, field.dimension, path, currency);
}

} // namespace

double read_number(const Json& value, const LayoutField& field, const ValueContext& context,
                   const std::string& path) {
    if (value.is_string()) {
        return read_text(value.get<std::string>(), field, context, path);
    }
    if (value.is_number() && takes_plain_number(field.dimension)) {
        return value.get<double>();
    }
    if (value.is_number()) {
        return parse_as(value.dump(), field.dimension, path); // refuses, with a valid example
    }
    wrong_type(path, value, "text with a unit");
}

namespace {

/// Low, likely and high; a rate read as its time per unit comes out in reverse.
ThreePoint in_order(double low, double likely, double high) {
    if (low > high) {
        std::swap(low, high);
    }
    const Family family = low == high ? Family::fixed : Family::pert;
    return {.low = low, .likely = likely, .high = high, .family = family};
}

ThreePoint read_points(const Json& value, const LayoutField& field, const ValueContext& context,
                       const std::string& path) {
    if (!value.is_array()) {
        const double v = read_number(value, field, context, path);
        return in_order(v, v, v);
    }
    if (value.size() != 3) {
        wrong_type(path, value, "three values: low, likely, high");
    }
    std::array<double, 3> points{};
    for (std::size_t i = 0; i < 3; ++i) {
        points[i] = read_number(value[i], field, context, path);
    }
    const bool rate =
        value[0].is_string() &&
        is_inverse(field, parse_quantity(value[0].get<std::string>(), path).dimension);
    if (!rate && (points[0] > points[1] || points[1] > points[2])) {
        throw InputError({"json.order", path, value.dump(), "low, likely, high in this order"});
    }
    return in_order(points[0], points[1], points[2]);
}

template <std::size_t N>
std::size_t word_index(const std::array<std::string_view, N>& words, const std::string& word,
                       const std::string& path) {
    const int index = index_of(words, word);
    if (index < 0) {
        throw UnknownNameError(
            {"json.word", path, "\"" + word + "\"", "\"" + nearest_name(word, words) + "\"?"});
    }
    return static_cast<std::size_t>(index);
}

Json points_of(const Json& value, const std::string& path) {
    if (value.contains("value")) {
        return value["value"];
    }
    if (value.contains("low") && value.contains("likely") && value.contains("high")) {
        return Json::array({value["low"], value["likely"], value["high"]});
    }
    wrong_type(path, value,
               "\"value\", or \"low\", \"likely\" and \"high\", or \"built_up\", or \"values\" and "
               "\"weights\", or \"sample\"");
}

Basis read_basis(const std::string& word, const std::string& path) {
    for (const Basis basis : {Basis::measured, Basis::element, Basis::recorded, Basis::given,
                              Basis::inferred, Basis::assumed}) {
        if (word == basis_name(basis)) {
            return basis;
        }
    }
    throw InputError({"json.word", path, "\"" + word + "\"",
                      "measured, element, recorded, given, inferred or assumed"});
}

double read_share(const Json& value, const std::string& path) {
    const double share = value.is_number() ? value.get<double>() : -1.0;
    if (!(share >= 0.0 && share <= 1.0)) {
        wrong_type(path + ".shared_share", value, "a number from 0 to 1");
    }
    return share;
}

void read_details(const Json& value, const ValueContext& context, const std::string& path,
                  Uncertain& result, Provenance& origin) {
    origin.source = text_or(value, "source", context.origin.source, path);
    origin.date = text_or(value, "date", context.origin.date, path);
    origin.note = text_or(value, "note", {}, path);
    if (value.contains("shared_share")) {
        result.shared_share = read_share(value["shared_share"], path);
    }
    if (value.contains("basis")) {
        result.basis = read_basis(text_or(value, "basis", {}, path), path);
    }
    if (value.contains("family") && result.guess.low != result.guess.high) {
        result.guess.family = static_cast<Family>(
            word_index(family_names, text_or(value, "family", {}, path), path + ".family"));
    }
    if (value.contains("meaning")) {
        result.guess.meaning = static_cast<Meaning>(
            word_index(meaning_names, text_or(value, "meaning", {}, path), path + ".meaning"));
    }
}

} // namespace

std::string digits(double value) {
    return Json(value).dump(); // shortest text that reads back to the same double
}

Json write_number(double value, const Dimension& dimension, const std::string& currency) {
    if (!std::isfinite(value)) {
        return nullptr;
    }
    if (takes_plain_number(dimension)) {
        return value;
    }
    if (dimension == dim::temperature) {
        return digits(value) + " K";
    }
    return digits(value) + " " + display_unit(dimension, UnitSystem::si, currency).name;
}

Setting read_setting(const std::string& key, const Json& value, const ValueContext& context,
                     const std::string& path) {
    const std::string full = estimate::full_key(key);
    const std::string where = path + "." + key;
    return read_field(context.layout->fields()[context.layout->at(full, where)], value, context,
                      where);
}

Setting read_field(const LayoutField& field, const Json& value, const ValueContext& context,
                   const std::string& where) {
    Uncertain result;
    result.basis = context.basis;
    result.shared_share = usual_shared_share(field.key);
    Provenance origin = context.origin;
    if (value.is_object()) {
        require_known_keys(value, value_keys, where);
        if (value.contains("built_up")) {
            origin.parts = read_parts(value["built_up"], field, context, where + ".built_up");
            result.guess = cost::built_up_range(cost::built_up_of(field.key), origin.parts);
        } else if (is_listed(value)) {
            origin.listed = read_listed(value, field, context, where);
            result.guess = origin.listed->guess();
        } else {
            result.guess = read_points(points_of(value, where), field, context, where);
        }
        read_details(value, context, where, result, origin);
    } else {
        result.guess = read_points(value, field, context, where);
    }
    return make_setting(field.key, result, origin);
}

Json write_setting(const Setting& setting, const LayoutField& field, const std::string& currency) {
    const Uncertain& v = setting.value;
    Json out;
    if (setting.origin && !setting.origin->parts.empty()) {
        out["built_up"] = write_parts(setting.origin->parts, field, currency);
    } else if (v.guess.listed != nullptr) {
        write_listed(*v.guess.listed, out,
                     [&](double si) { return write_number(si, field.dimension, currency); });
    } else if (is_certain(v)) {
        out["value"] = write_number(v.guess.likely, field.dimension, currency);
    } else {
        out["low"] = write_number(v.guess.low, field.dimension, currency);
        out["likely"] = write_number(v.guess.likely, field.dimension, currency);
        out["high"] = write_number(v.guess.high, field.dimension, currency);
        out["family"] = family_names.at(static_cast<std::size_t>(v.guess.family));
        out["meaning"] = meaning_names.at(static_cast<std::size_t>(v.guess.meaning));
    }
    out["basis"] = basis_name(v.basis);
    out["shared_share"] = v.shared_share;
    if (setting.origin) {
        out["source"] = setting.origin->source;
        out["date"] = setting.origin->date;
        out["note"] = setting.origin->note;
    }
    return out;
}

Json parse(std::string_view text, std::string_view name) {
    try {
        return Json::parse(text);
    } catch (const Json::exception& e) { // a number too great for any computer is no parse_error
        throw FileError({"json.text", std::string(name), e.what(), "a JSON document"});
    }
}

void require_version(const Json& doc, const char* key, const std::string& name) {
    constexpr int document_version = 1;
    const bool right = doc.contains(key) && doc[key].is_number_integer() &&
                       doc[key].get<int>() == document_version;
    if (!right) {
        throw InputError({"json.version", name + "." + key,
                          doc.contains(key) ? doc[key].dump() : "nothing",
                          std::to_string(document_version)});
    }
}

void require_object(const Json& value, const std::string& path) {
    if (!value.is_object()) {
        wrong_type(path, value, "an object");
    }
}

void require_known_keys(const Json& object, std::span<const std::string_view> known,
                        const std::string& path) {
    require_object(object, path);
    for (const auto& [key, value] : object.items()) {
        if (std::find(known.begin(), known.end(), key) == known.end()) {
            const std::string near = nearest_name(key, known);
            throw UnknownNameError({"json.key", path, "unknown key \"" + key + "\"",
                                    near.empty() ? "a key of this document" : "\"" + near + "\"?"});
        }
    }
}

std::string text_or(const Json& object, const char* key, const std::string& otherwise,
                    const std::string& path) {
    if (!object.contains(key)) {
        return otherwise;
    }
    if (!object[key].is_string()) {
        wrong_type(path + "." + key, object[key], "text");
    }
    return object[key].get<std::string>();
}

} // namespace scupper::json::detail
