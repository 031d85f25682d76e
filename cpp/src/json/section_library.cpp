#include "scupper/json/section_library.hpp"

#include "embedded.hpp"
#include "library_values.hpp"

#include <set>

namespace scupper::json {

namespace {

using detail::Json;
using detail::read_list;
using takeoff::GirderSection;
using takeoff::PrintedArea;
using takeoff::SectionLibrary;
using takeoff::SectionPiece;

constexpr std::array<std::string_view, 5> section_library_keys{"scupper_sections", "name", "date",
                                                               "note", "sections"};

/// Nothing that is built is larger [m, m2].
constexpr double greatest_length = 10.0;
const LayoutField piece_length{"piece", "length", dim::length, 0.0, greatest_length};
const LayoutField printed_area{"value", "area", dim::area, 0.0, greatest_length* greatest_length};

double read_positive(const Json& value, const LayoutField& field, const std::string& path) {
    const double si = detail::read_number(value, field, detail::library_context({}), path);
    if (!(si > field.least && si <= field.greatest)) {
        throw InputError({"section.bounds", path, detail::digits(si) + " (SI)",
                          "above 0, at most " + detail::digits(field.greatest) + " (SI)"});
    }
    return si;
}

SectionPiece read_piece(const Json& value, const std::string& path, const std::string&) {
    if (!value.is_array() || value.size() != 3) {
        throw InputError({"json.type", path, value.dump(), "width above, width below and height"});
    }
    const auto length = [&](std::size_t i) {
        return Length<>(read_positive(value[i], piece_length, path));
    };
    return {length(0), length(1), length(2)};
}

PrintedArea read_area(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, published_figure_keys, path);
    return {Area<>(read_positive(detail::member(value, printed_area, path), printed_area,
                                 path + ".value")),
            detail::known_word(published_basis_names, value, "basis", path),
            detail::read_origin(value, path, date)};
}

GirderSection read_section(const Json& value, const std::string& path, const std::string& date) {
    detail::require_known_keys(value, section_keys, path);
    GirderSection section;
    section.name = detail::read_name(value, path);
    const std::string kind = detail::known_word(section_kind_names, value, "kind", path);
    section.kind = static_cast<takeoff::SectionKind>(index_of(section_kind_names, kind));
    section.outline = read_list(value, "outline", path, date, read_piece);
    if (section.outline.empty()) {
        throw InputError({"json.missing", path + ".outline", "no piece", "one piece or more"});
    }
    section.origin = {
        detail::text_or(value, "source", {}, path), detail::text_or(value, "date", date, path), {}};
    section.note = detail::text_or(value, "note", {}, path);
    if (value.contains("area")) {
        section.printed = read_area(value["area"], path + ".area", date);
    }
    return section;
}

} // namespace

SectionLibrary read_section_library(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, section_library_keys, path);
    detail::require_version(doc, "scupper_sections", path);
    SectionLibrary library;
    library.name = detail::text_or(doc, "name", path, path);
    library.date = detail::text_or(doc, "date", {}, path);
    library.note = detail::text_or(doc, "note", {}, path);
    library.sections = read_list(doc, "sections", path, library.date, read_section);
    std::set<std::string> taken;
    for (const GirderSection& section : library.sections) {
        if (!taken.insert(section.name).second) {
            throw InputError({"section.twice", path + ".sections",
                              "\"" + section.name + "\" a second time",
                              "a name of its own for each"});
        }
    }
    return library;
}

const SectionLibrary& shipped_sections() {
    static const SectionLibrary library =
        read_section_library(data::sections_json, "sections.json");
    return library;
}

std::vector<Setting> detail::read_settings(const Json& object, const ValueContext& context,
                                           const std::string& path) {
    std::vector<Setting> settings;
    const std::string key(girder_section_key);
    if (object.contains(key)) {
        const std::string where = path + "." + key;
        settings =
            section_settings(text_or(object, key.c_str(), {}, path), context.origin.source, where);
    }
    for (const auto& [name, value] : object.items()) {
        if (name != key) {
            put_setting(settings, read_setting(name, value, context, path));
        }
    }
    return settings;
}

std::vector<Setting> section_settings(std::string_view name, const std::string& source,
                                      const std::string& path) {
    const GirderSection& section = takeoff::section_of(shipped_sections(), name, path);
    const Provenance origin{.source = source + ": section " + section.name,
                            .date = section.origin.date,
                            .note = section.origin.source};
    std::vector<Setting> settings;
    for (const auto& [key, si] : takeoff::dimensions_of(section)) {
        settings.push_back(make_setting(std::string(key), certain(si, Basis::measured), origin));
    }
    return settings;
}

} // namespace scupper::json
