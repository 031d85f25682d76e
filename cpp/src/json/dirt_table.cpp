#include "scupper/json/dirt_table.hpp"

#include "embedded.hpp"
#include "library_values.hpp"

#include <numbers>
#include <set>

namespace scupper::json {

namespace {

using detail::Json;
using detail::member;
using detail::read_list;

constexpr std::array<std::string_view, 7> table_keys{
    "scupper_dirt", "name", "date", "note", "kinds", "build_up", "street_loads"};

const LayoutField density{"density", "bulk density", dim::density, 50.0, 4e3};
const LayoutField repose{"repose", "angle of repose", dim::angle, 1e-3, 0.5 * std::numbers::pi};
const LayoutField printed_density{"value", "bulk density", dim::density, 50.0, 4e3};
const LayoutField line_mass{"value", "dirt by length", dim::mass / dim::length, 0.0, 1e4};

double read_printed(const Json& value, const LayoutField& field, const std::string& path) {
    const std::string where = path + "." + field.key;
    const double si =
        detail::read_number(member(value, field, path), field, detail::library_context({}), where);
    if (!(si >= field.least && si <= field.greatest)) {
        throw InputError(
            {"dirt.bounds", where, detail::digits(si) + " (SI)",
             detail::digits(field.least) + " to " + detail::digits(field.greatest) + " (SI)"});
    }
    return si;
}

PublishedFigure read_figure(const Json& value, const LayoutField& field, const std::string& path,
                            const std::string& date) {
    return {read_printed(value, field, path),
            detail::known_word(published_basis_names, value, "basis", path),
            detail::read_origin(value, path, date)};
}

PublishedFigure read_published(const Json& value, const std::string& path,
                               const std::string& date) {
    detail::require_known_keys(value, published_figure_keys, path);
    return read_figure(value, printed_density, path, date);
}

DirtKind read_kind(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, dirt_kind_keys, path);
    DirtKind kind;
    kind.material = detail::text_or(value, "material", {}, path);
    kind.moisture = detail::known_word(moisture_names, value, "moisture", path);
    kind.density = detail::read_library_value(value, density, path, date, "dirt.bounds");
    if (value.contains(repose.key)) {
        kind.repose = detail::read_library_value(value, repose, path, date, "dirt.bounds");
    }
    kind.note = detail::text_or(value, "note", {}, path);
    if (value.contains("published")) {
        kind.published = read_list(value, "published", path, date, read_published);
    }
    return kind;
}

/// Any job has these rows: dirt by component, drains by condition.
const Layout& dirt_layout() {
    static const Job no_job;
    static const Layout layout = input_layout(no_job);
    return layout;
}

BuildUp read_build_up(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, build_up_keys, path);
    BuildUp build_up;
    build_up.since = detail::known_word(build_up_names, value, "since", path);
    build_up.note = detail::text_or(value, "note", {}, path);
    const std::string where = path + ".inputs";
    if (!value.contains("inputs") || !value["inputs"].is_object()) {
        throw InputError({"json.type", where, value.contains("inputs") ? "no object" : "nothing",
                          "an object of key and value"});
    }
    for (const auto& [key, input] : value["inputs"].items()) {
        const LayoutField& field = dirt_layout().fields()[dirt_layout().at(key, where)];
        LayoutField named = field;
        named.key = key;
        Setting s = detail::read_library_value(value["inputs"], named, where, date, "dirt.bounds");
        s.key = field.key;
        build_up.values.push_back(std::move(s));
    }
    return build_up;
}

StreetLoad read_street_load(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, street_load_keys, path);
    return {detail::text_or(value, "street", {}, path), read_figure(value, line_mass, path, date)};
}

template <class Entry, class NameOf>
void require_own_names(const std::vector<Entry>& entries, NameOf name_of, const std::string& path) {
    std::set<std::string> taken;
    for (const Entry& entry : entries) {
        if (!taken.insert(name_of(entry)).second) {
            throw InputError({"dirt.twice", path, "\"" + name_of(entry) + "\" a second time",
                              "one entry for each"});
        }
    }
}

} // namespace

DirtTable read_dirt_table(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, table_keys, path);
    detail::require_version(doc, "scupper_dirt", path);
    DirtTable table;
    table.name = detail::text_or(doc, "name", path, path);
    table.date = detail::text_or(doc, "date", {}, path);
    table.note = detail::text_or(doc, "note", {}, path);
    table.kinds = read_list(doc, "kinds", path, table.date, read_kind);
    table.build_ups = read_list(doc, "build_up", path, table.date, read_build_up);
    table.street_loads = read_list(doc, "street_loads", path, table.date, read_street_load);
    require_own_names(
        table.kinds, [](const DirtKind& k) { return k.material + ", " + k.moisture; },
        path + ".kinds");
    require_own_names(
        table.build_ups, [](const BuildUp& b) { return b.since; }, path + ".build_up");
    return table;
}

const DirtTable& shipped_dirt_table() {
    static const DirtTable table = read_dirt_table(data::dirt_json, "dirt.json");
    return table;
}

} // namespace scupper::json
