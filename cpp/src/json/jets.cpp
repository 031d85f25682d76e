#include "embedded.hpp"
#include "rows.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/unit.hpp"

namespace scupper::json {

namespace {

using detail::Json;

double read_si(const Json& value, const char* key, Dimension dimension, const std::string& path) {
    const std::string text = detail::text_or(value, key, {}, path);
    return parse_as(text, dimension, path + "." + key);
}

JetNeed read_need(const Json& value, const std::string& path) {
    static constexpr std::array<std::string_view, 4> keys{"method", "flow", "pressure", "source"};
    detail::require_known_keys(value, keys, path);
    return {detail::text_or(value, "method", {}, path),
            Flow<>(read_si(value, "flow", dim::flow, path)),
            Pressure<>(read_si(value, "pressure", dim::pressure, path)),
            detail::text_or(value, "source", {}, path)};
}

JetLimit read_limit(const Json& value, const std::string& path) {
    static constexpr std::array<std::string_view, 6> keys{"surface", "components", "when",
                                                          "from",    "to",         "source"};
    detail::require_known_keys(value, keys, path);
    return {detail::text_or(value, "surface", {}, path),
            detail::words(value, "components", path),
            detail::words(value, "when", path),
            Pressure<>(read_si(value, "from", dim::pressure, path)),
            Pressure<>(read_si(value, "to", dim::pressure, path)),
            detail::text_or(value, "source", {}, path)};
}

} // namespace

JetRules read_jet_rules(std::string_view text, std::string_view name) {
    static constexpr std::array<std::string_view, 4> keys{"scupper_jets", "date", "needs",
                                                          "limits"};
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, keys, path);
    detail::require_version(doc, "scupper_jets", path);
    return {detail::list_of(doc, "needs", path, read_need),
            detail::list_of(doc, "limits", path, read_limit)};
}

const JetRules& shipped_jet_rules() {
    static const JetRules rules = read_jet_rules(data::jets_json, "jets.json");
    return rules;
}

} // namespace scupper::json
