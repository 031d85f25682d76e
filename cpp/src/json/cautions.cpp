#include "embedded.hpp"
#include "rows.hpp"
#include "scupper/json/documents.hpp"

namespace scupper::json {

namespace {

using detail::Json;

Caution read_caution(const Json& value, const std::string& path) {
    static constexpr std::array<std::string_view, 4> keys{"id", "text", "source", "when"};
    detail::require_known_keys(value, keys, path);
    Caution caution{detail::text_or(value, "id", {}, path),
                    detail::text_or(value, "text", {}, path),
                    detail::text_or(value, "source", {}, path), detail::words(value, "when", path)};
    if (caution.id.empty() || caution.text.empty() || caution.source.empty()) {
        throw InputError(
            {"json.missing", path, value.dump(), "a caution with id, text and source"});
    }
    return caution;
}

} // namespace

std::vector<Caution> read_cautions(std::string_view text, std::string_view name) {
    static constexpr std::array<std::string_view, 3> document_keys{"scupper_cautions", "date",
                                                                   "cautions"};
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, document_keys, path);
    detail::require_version(doc, "scupper_cautions", path);
    return detail::list_of(doc, "cautions", path, read_caution);
}

const std::vector<Caution>& shipped_cautions() {
    static const std::vector<Caution> list = read_cautions(data::cautions_json, "cautions.json");
    return list;
}

} // namespace scupper::json
