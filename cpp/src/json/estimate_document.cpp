#include "scupper/json/estimate_document.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"
#include "structure_document.hpp"

#include <array>
#include <limits>

namespace scupper::json {

namespace {

using detail::Json;
using detail::require_object;
using estimate::NamedFigure;

constexpr std::array<std::string_view, 5> document_keys{"scupper_estimate", "stamp", "structure",
                                                        "job", "figures"};

void require_parts(const Json& doc, const std::string& path) {
    detail::require_known_keys(doc, document_keys, path);
    detail::require_version(doc, "scupper_estimate", path);
    for (const std::string_view key : document_keys) {
        const std::string part(key);
        if (!doc.contains(part)) {
            throw InputError({"json.missing", path + "." + part, "nothing",
                              "the part \"" + part + "\" of a saved estimate"});
        }
    }
}

/// A figure that this version may not know: its dimension is that of its unit.
NamedFigure read_figure(const std::string& key, const Json& value, const std::string& path) {
    const std::string where = path + "." + key;
    if (value.is_null()) {
        return {key, key, dim::none, std::numeric_limits<double>::quiet_NaN()};
    }
    if (value.is_number()) {
        return {key, key, dim::none, value.get<double>()};
    }
    if (!value.is_string()) {
        throw InputError({"json.type", where, value.dump(), "text with a unit, a number or null"});
    }
    const ParsedQuantity q = parse_quantity(value.get<std::string>(), where);
    return {key, key, q.dimension, q.si};
}

std::map<std::string, std::string> read_stamp(const Json& object, const std::string& path) {
    require_object(object, path);
    std::map<std::string, std::string> stamp;
    for (const auto& [key, value] : object.items()) {
        stamp[key] = detail::text_or(object, key.c_str(), {}, path);
    }
    return stamp;
}

} // namespace

std::string write_estimate(const estimate::Estimate& e, const Job& job,
                           const std::map<std::string, std::string>& stamp) {
    Json doc;
    doc["scupper_estimate"] = 1;
    doc["stamp"] = stamp;
    doc["structure"] = detail::structure_document(e.structure);
    doc["job"] = detail::job_document(job);
    doc["figures"] = Json::object();
    for (const NamedFigure& f : estimate::named_figures(e)) {
        doc["figures"][f.key] = detail::write_number(f.value, f.dimension, job.currency);
    }
    return detail::utf8_dump(doc, "estimate");
}

SavedEstimate read_estimate(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    require_parts(doc, path);
    SavedEstimate saved{detail::read_structure_document(doc["structure"], path + ".structure"),
                        detail::read_job_document(doc["job"], path + ".job", RateBook{}),
                        read_stamp(doc["stamp"], path + ".stamp"),
                        {}};
    require_object(doc["figures"], path + ".figures");
    for (const auto& [key, value] : doc["figures"].items()) {
        saved.figures.push_back(read_figure(key, value, path + ".figures"));
    }
    return saved;
}

} // namespace scupper::json
