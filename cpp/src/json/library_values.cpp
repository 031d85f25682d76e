#include "library_values.hpp"

namespace scupper::json::detail {

ValueContext library_context(const std::string& date) {
    return {.layout = nullptr,
            .currency = {},
            .origin = {.source = {}, .date = date, .note = {}},
            .basis = Basis::given};
}

const Json& member(const Json& object, const LayoutField& field, const std::string& path) {
    if (!object.contains(field.key)) {
        throw InputError({"json.missing", path + "." + field.key, "nothing",
                          field.label + ": low, likely, high, source"});
    }
    return object[field.key];
}

Setting read_library_value(const Json& object, const LayoutField& field, const std::string& path,
                           const std::string& date, const char* id) {
    const std::string where = path + "." + field.key;
    Setting s = read_field(field, member(object, field, path), library_context(date), where);
    check(s.value.guess, where);
    if (s.value.guess.low < field.least || s.value.guess.high > field.greatest) {
        throw InputError({id, where, digits(s.value.guess.low) + " (SI)",
                          digits(field.least) + " to " + digits(field.greatest) + " (SI)"});
    }
    if (s.origin->source.empty()) {
        throw InputError({"json.missing", where + ".source", "nothing",
                          "a document, \"common practice\" or \"from memory\""});
    }
    return s;
}

std::string read_name(const Json& object, const std::string& path) {
    const std::string name = text_or(object, "name", {}, path);
    if (name.empty()) {
        throw InputError({"json.missing", path + ".name", "nothing", "a name"});
    }
    return name;
}

Provenance read_origin(const Json& object, const std::string& path, const std::string& date) {
    return {text_or(object, "source", {}, path), text_or(object, "date", date, path),
            text_or(object, "note", {}, path)};
}

} // namespace scupper::json::detail
