#include "scupper/json/hose_library.hpp"

#include "embedded.hpp"
#include "library_values.hpp"
#include "scupper/error.hpp"

#include <array>
#include <set>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;
using detail::library_context;
using detail::member;
using detail::read_list;
using detail::read_name;
using detail::ValueContext;

constexpr std::array<std::string_view, 6> hose_library_keys{"scupper_hoses", "name",  "date",
                                                            "note",          "hoses", "fittings"};

const LayoutField nominal_bore{"nominal_bore", "nominal bore", dim::length, 1e-3, 1.0};
const LayoutField bore{"bore", "bore", dim::length, 1e-3, 1.0};
const LayoutField roughness{"roughness", "roughness", dim::length, 0.0, 0.01};
const LayoutField coefficient{"coefficient", "hose coefficient", dim::none, 1e-6, 1e9};
const LayoutField pressure{"working_pressure", "working pressure", dim::pressure, 1e3, 1e9};
const LayoutField loss{"loss_coefficient", "loss coefficient", dim::none, 0.0, 1e4};
const LayoutField flow{"flow", "flow", dim::flow, 1e-9, 1e3};

/// A value within its bounds, with a source.
Setting read_value(const Json& object, const LayoutField& field, const std::string& path,
                   const std::string& date) {
    return detail::read_library_value(object, field, path, date, "hose.bounds");
}

std::optional<Setting> read_if_there(const Json& object, const LayoutField& field,
                                     const std::string& path, const std::string& date) {
    return object.contains(field.key) ? std::optional(read_value(object, field, path, date))
                                      : std::nullopt;
}

template <class Kind>
void require_own_names(const std::vector<Kind>& kinds, const std::string& path) {
    std::set<std::string> taken;
    for (const Kind& kind : kinds) {
        if (!taken.insert(kind.name).second) {
            throw InputError({"hose.twice", path, "\"" + kind.name + "\" a second time",
                              "a name of its own for each"});
        }
    }
}

PublishedCoefficient read_coefficient(const Json& value, const std::string& path,
                                      const std::string& date) {
    detail::require_known_keys(value, published_coefficient_keys, path);
    const ValueContext context = library_context(date);
    PublishedCoefficient p;
    const LayoutField printed{"value", "value", dim::none, 0.0, 0.0};
    p.value = detail::read_number(member(value, printed, path), printed, context, path + ".value");
    if (value.contains("flow")) {
        p.flow = detail::read_number(value["flow"], flow, context, path + ".flow");
    }
    p.basis = detail::known_word(published_basis_names, value, "basis", path);
    p.origin = detail::read_origin(value, path, date);
    return p;
}

HoseKind read_hose(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, hose_kind_keys, path);
    HoseKind hose;
    hose.name = read_name(value, path);
    hose.construction = detail::known_word(construction_names, value, "construction", path);
    hose.nominal_bore = detail::read_number(member(value, nominal_bore, path), nominal_bore,
                                            library_context(date), path + ".nominal_bore");
    hose.bore = read_value(value, bore, path, date);
    hose.roughness = read_value(value, roughness, path, date);
    hose.coefficient = read_if_there(value, coefficient, path, date);
    hose.working_pressure = read_if_there(value, pressure, path, date);
    hose.note = detail::text_or(value, "note", {}, path);
    if (value.contains("published")) {
        hose.published = read_list(value, "published", path, date, read_coefficient);
    }
    return hose;
}

FittingKind read_fitting(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, fitting_kind_keys, path);
    return {read_name(value, path), read_value(value, loss, path, date),
            detail::text_or(value, "note", {}, path)};
}

Json write_published(const PublishedCoefficient& p) {
    Json out{{"value", p.value},
             {"source", p.origin.source},
             {"date", p.origin.date},
             {"basis", p.basis},
             {"note", p.origin.note}};
    if (p.flow) {
        out["flow"] = detail::write_number(*p.flow, dim::flow, {});
    }
    return out;
}

Json write_hose(const HoseKind& hose) {
    Json out{{"name", hose.name}, {"construction", hose.construction}, {"note", hose.note}};
    out["nominal_bore"] = detail::write_number(hose.nominal_bore, dim::length, {});
    out["bore"] = detail::write_setting(hose.bore, bore, {});
    out["roughness"] = detail::write_setting(hose.roughness, roughness, {});
    if (hose.coefficient) {
        out["coefficient"] = detail::write_setting(*hose.coefficient, coefficient, {});
    }
    if (hose.working_pressure) {
        out["working_pressure"] = detail::write_setting(*hose.working_pressure, pressure, {});
    }
    out["published"] = Json::array();
    for (const PublishedCoefficient& p : hose.published) {
        out["published"].push_back(write_published(p));
    }
    return out;
}

} // namespace

HoseLibrary read_hose_library(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, hose_library_keys, path);
    detail::require_version(doc, "scupper_hoses", path);
    HoseLibrary library;
    library.name = detail::text_or(doc, "name", path, path);
    library.date = detail::text_or(doc, "date", {}, path);
    library.note = detail::text_or(doc, "note", {}, path);
    library.hoses = read_list(doc, "hoses", path, library.date, read_hose);
    library.fittings = read_list(doc, "fittings", path, library.date, read_fitting);
    require_own_names(library.hoses, path + ".hoses");
    require_own_names(library.fittings, path + ".fittings");
    return library;
}

std::string write_hose_library(const HoseLibrary& library) {
    Json doc{{"scupper_hoses", 1},
             {"name", library.name},
             {"date", library.date},
             {"note", library.note}};
    doc["hoses"] = Json::array();
    for (const HoseKind& hose : library.hoses) {
        doc["hoses"].push_back(write_hose(hose));
    }
    doc["fittings"] = Json::array();
    for (const FittingKind& f : library.fittings) {
        doc["fittings"].push_back(
            {{"name", f.name},
             {"loss_coefficient", detail::write_setting(f.loss_coefficient, loss, {})},
             {"note", f.note}});
    }
    return doc.dump(2);
}

const HoseLibrary& shipped_hose_library() {
    static const HoseLibrary library = read_hose_library(data::hoses_json, "hoses.json");
    return library;
}

} // namespace scupper::json
