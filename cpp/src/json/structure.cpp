#include "scupper/json/structure.hpp"

#include "scupper/error.hpp"
#include "scupper/estimate.hpp"
#include "scupper/unit.hpp"
#include "structure_document.hpp"
#include "structure_fields.hpp"

#include <cstdint>
#include <limits>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;
using detail::fields::below_name;
using detail::fields::for_each_field;

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
        value = find(key) == nullptr ? std::string{} : detail::text_or(in, key, {}, path);
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
        const std::string text =
            find(key) == nullptr ? "unknown" : detail::text_or(in, key, {}, path);
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

std::vector<std::string_view> known_keys(Structure& structure) {
    std::vector<std::string_view> keys{"given"};
    for_each_field(structure, [&](const char* key, auto&&...) { keys.emplace_back(key); });
    return keys;
}

} // namespace

Layout detail::measurable() {
    return Layout(Schema::inputs, {{"quantity", slot_layout_rows()}});
}

Json detail::given_document(const std::vector<GivenValue>& given) {
    const Layout layout = detail::measurable();
    Json out = Json::object();
    for (const GivenValue& value : given) {
        const std::string key = estimate::full_key(value.key);
        const LayoutField& field = layout.fields()[layout.at(key, "structure.given")];
        out[key] = detail::write_setting({key, value.value, nullptr}, field, {});
    }
    return out;
}

std::vector<GivenValue> detail::read_given(const Json& object, const std::string& path) {
    const Layout layout = detail::measurable();
    const detail::ValueContext context{
        .layout = &layout, .currency = {}, .origin = {}, .basis = Basis::measured};
    std::vector<GivenValue> given;
    if (!object.is_object()) {
        throw InputError({"json.type", path, object.dump(), "an object of key and value"});
    }
    Json filled = object; // what is not filled in is null
    for (const auto& [key, value] : object.items()) {
        if (value.is_null()) {
            filled.erase(key);
        }
    }
    for (Setting& s : detail::read_settings(filled, context, path)) {
        s.value.origin = nullptr; // it would not live as long as the structure
        given.push_back({std::move(s.key), s.value});
    }
    return given;
}

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
