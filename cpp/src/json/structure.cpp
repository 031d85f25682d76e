#include "scupper/json/structure.hpp"

#include "scupper/error.hpp"
#include "scupper/unit.hpp"
#include "structure_document.hpp"

#include <array>
#include <cstdint>
#include <limits>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;

template <class Owner, class T>
struct Member {
    const char* key;
    T Owner::*member;
};

using Text = Member<Structure, std::string>;
constexpr std::array texts{
    Text{"state", &Structure::state},      Text{"id", &Structure::id},
    Text{"number", &Structure::number},    Text{"carries", &Structure::carries},
    Text{"crosses", &Structure::crosses},  Text{"location", &Structure::location},
    Text{"district", &Structure::district}};

using D = RecordedDimensions;
using Distance = Member<D, Length<>>;
constexpr std::array lengths{Distance{"length", &D::length},
                             Distance{"longest_span", &D::longest_span},
                             Distance{"deck_width", &D::deck_width},
                             Distance{"roadway_width", &D::roadway_width},
                             Distance{"approach_width", &D::approach_width},
                             Distance{"left_walk_width", &D::left_walk_width},
                             Distance{"right_walk_width", &D::right_walk_width},
                             Distance{"clearance_over", &D::clearance_over},
                             Distance{"clearance_under", &D::clearance_under},
                             Distance{"navigation_clearance", &D::navigation_clearance},
                             Distance{"detour", &D::detour}};

using C = RecordedCodes;
using Code = Member<C, int>;
constexpr std::array codes{Code{"main_spans", &C::main_spans},
                           Code{"approach_spans", &C::approach_spans},
                           Code{"lanes_on", &C::lanes_on},
                           Code{"lanes_under", &C::lanes_under},
                           Code{"daily_traffic", &C::daily_traffic},
                           Code{"traffic_year", &C::traffic_year},
                           Code{"truck_percent", &C::truck_percent},
                           Code{"year_built", &C::year_built},
                           Code{"year_reconstructed", &C::year_reconstructed},
                           Code{"service_on", &C::service_on},
                           Code{"service_under", &C::service_under},
                           Code{"functional_class", &C::functional_class},
                           Code{"traffic_direction", &C::traffic_direction},
                           Code{"median", &C::median},
                           Code{"flared", &C::flared},
                           Code{"owner", &C::owner},
                           Code{"maintained_by", &C::maintained_by},
                           Code{"county", &C::county},
                           Code{"navigation", &C::navigation},
                           Code{"inspection_year", &C::inspection_year},
                           Code{"inspection_month", &C::inspection_month}};

using Letter = Member<C, char>;
constexpr std::array letters{Letter{"posting", &C::posting},
                             Letter{"posting_evaluation", &C::posting_evaluation},
                             Letter{"deck_type", &C::deck_type},
                             Letter{"surface_type", &C::surface_type},
                             Letter{"deck_condition", &C::deck_condition},
                             Letter{"superstructure_condition", &C::superstructure_condition},
                             Letter{"substructure_condition", &C::substructure_condition},
                             Letter{"culvert_condition", &C::culvert_condition},
                             Letter{"parallel", &C::parallel},
                             Letter{"on_national_system", &C::on_national_system}};

using Made = Member<C, Material>;
constexpr std::array materials{Made{"material", &C::material},
                               Made{"approach_material", &C::approach_material}};
using Built = Member<C, Design>;
constexpr std::array designs{Built{"design", &C::design},
                             Built{"approach_design", &C::approach_design}};

std::string_view below_name(Below below) {
    static constexpr std::array<std::string_view, 4> names{"neither", "highway", "railroad",
                                                           "unknown"};
    return names.at(static_cast<std::size_t>(below));
}

/// Calls `visit` with the key and the member of every field, and the dimension of those that have
/// one. It serves writing and reading, so that no field is written and not read.
template <class Record, class Visit>
void for_each_field(Record& s, Visit visit) {
    for (const auto& m : texts) {
        visit(m.key, s.*m.member);
    }
    visit("line", s.line);
    visit("latitude", s.latitude, dim::none);
    visit("longitude", s.longitude, dim::none);
    visit("recorded_deck_area", s.recorded_deck_area, dim::area);
    for (const auto& m : lengths) {
        visit(m.key, s.dimensions.*m.member, dim::length);
    }
    visit("skew", s.dimensions.skew, dim::angle);
    for (const auto& m : materials) {
        visit(m.key, s.codes.*m.member);
    }
    for (const auto& m : designs) {
        visit(m.key, s.codes.*m.member);
    }
    visit("below", s.codes.below);
    for (const auto& m : codes) {
        visit(m.key, s.codes.*m.member);
    }
    for (const auto& m : letters) {
        visit(m.key, s.codes.*m.member);
    }
}

struct Write {
    Json& out;
    void operator()(const char* key, const std::string& value) const { out[key] = value; }
    void operator()(const char* key, std::uint64_t value) const { out[key] = value; }
    void operator()(const char* key, double value, const Dimension& d) const {
        out[key] = detail::write_number(value, d, {});
    }
    template <class Q>
    void operator()(const char* key, const Q& value, const Dimension& d) const {
        (*this)(key, value.si(), d);
    }
    void operator()(const char* key, int value) const {
        out[key] = value == no_code ? Json(nullptr) : Json(value);
    }
    void operator()(const char* key, char value) const {
        out[key] = value == ' ' ? Json(nullptr) : Json(std::string(1, value));
    }
    void operator()(const char* key, Material value) const { out[key] = material_name(value); }
    void operator()(const char* key, Design value) const { out[key] = design_name(value); }
    void operator()(const char* key, Below value) const { out[key] = below_name(value); }
};

struct Read {
    const Json& in;
    const std::string& path;

    const Json* find(const char* key) const {
        const auto found = in.find(key);
        return found == in.end() || found->is_null() ? nullptr : &*found;
    }
    void require(bool right, const char* key, const std::string& allowed) const {
        if (!right) {
            throw InputError({"json.type", path + "." + key, in[key].dump(), allowed});
        }
    }
    void operator()(const char* key, std::string& value) const {
        value = detail::text_or(in, key, {}, path);
    }
    void operator()(const char* key, std::uint64_t& value) const {
        if (const Json* found = find(key)) {
            require(found->is_number_unsigned(), key, "a line number");
            value = found->get<std::uint64_t>();
        }
    }
    void operator()(const char* key, double& value, const Dimension& d) const {
        if (const Json* found = find(key)) {
            const LayoutField field{key, key, d, 0.0, 0.0};
            value = detail::read_number(*found, field, {}, path + "." + key);
        }
    }
    template <class Q>
    void operator()(const char* key, Q& value, const Dimension& d) const {
        double si = value.si();
        (*this)(key, si, d);
        value = Q(si);
    }
    void operator()(const char* key, int& value) const {
        if (const Json* found = find(key)) {
            const auto whole = found->is_number_integer() ? found->get<std::int64_t>() : -1;
            require(whole >= 0 && whole <= std::numeric_limits<int>::max(), key,
                    "a whole number or null");
            value = static_cast<int>(whole);
        }
    }
    void operator()(const char* key, char& value) const {
        const std::string text = find(key) == nullptr ? " " : detail::text_or(in, key, {}, path);
        require(text.size() == 1, key, "one letter or null");
        value = text.front();
    }
    /// The value whose name stands there.
    template <class Enum, class Name>
    void word(const char* key, Enum& value, Name name_of, std::size_t count) const {
        const std::string text = detail::text_or(in, key, "unknown", path);
        value = Enum::unknown;
        for (std::size_t i = 0; i < count && text != name_of(value); ++i) {
            value = static_cast<Enum>(i);
        }
        require(text == name_of(value), key, "a word of the coding guide, or \"unknown\"");
    }
    void operator()(const char* key, Material& value) const { word(key, value, material_name, 10); }
    void operator()(const char* key, Design& value) const { word(key, value, design_name, 23); }
    void operator()(const char* key, Below& value) const { word(key, value, below_name, 3); }
};

/// What somebody may measure at a structure whatever the job.
Layout measurable() {
    return Layout(Schema::inputs, {{"quantity", slot_layout_rows()}});
}

Json given_document(const std::vector<GivenValue>& given) {
    const Layout layout = measurable();
    Json out = Json::object();
    for (const GivenValue& value : given) {
        const LayoutField& field = layout.fields()[layout.at(value.key, "structure.given")];
        out[value.key] = detail::write_setting({value.key, value.value, nullptr}, field, {});
    }
    return out;
}

std::vector<GivenValue> read_given(const Json& object, const std::string& path) {
    const Layout layout = measurable();
    const detail::ValueContext context{
        .layout = &layout, .currency = {}, .origin = {}, .basis = Basis::measured};
    std::vector<GivenValue> given;
    if (!object.is_object()) {
        throw InputError({"json.type", path, object.dump(), "an object of key and value"});
    }
    for (Setting& s : detail::read_settings(object, context, path)) {
        s.value.origin = nullptr; // it would not live as long as the structure
        given.push_back({std::move(s.key), s.value});
    }
    return given;
}

std::vector<std::string_view> known_keys(Structure& structure) {
    std::vector<std::string_view> keys{"given"};
    for_each_field(structure, [&](const char* key, auto&&...) { keys.emplace_back(key); });
    return keys;
}

} // namespace

Json detail::structure_document(const Structure& structure) {
    Json out = Json::object();
    for_each_field(structure, Write{out});
    out["given"] = given_document(structure.given);
    return out;
}

Structure detail::read_structure_document(const Json& doc, const std::string& path) {
    Structure structure;
    require_known_keys(doc, known_keys(structure), path);
    for_each_field(structure, Read{doc, path});
    if (doc.contains("given")) {
        structure.given = read_given(doc["given"], path + ".given");
    }
    return structure;
}

std::string detail::utf8_dump(const Json& doc, const std::string& path) {
    try {
        return doc.dump(2);
    } catch (const Json::type_error& e) {
        throw InputError({"json.text", path, e.what(), "text in UTF-8"});
    }
}

std::string write_structure(const Structure& structure) {
    return detail::utf8_dump(detail::structure_document(structure), "structure");
}

Structure read_structure(std::string_view text, std::string_view name) {
    return detail::read_structure_document(detail::parse(text, name), std::string(name));
}

} // namespace scupper::json
