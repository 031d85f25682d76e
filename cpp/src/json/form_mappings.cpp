#include "scupper/json/form_mappings.hpp"

#include "lines.hpp"
#include "rows.hpp"

namespace scupper::json {

namespace {

using detail::Json;
using detail::text_or;

constexpr std::array<std::string_view, 3> bidder_keys{"bidder", "unit_price", "extension"};

bid::BidderColumns read_bidder(const Json& value, const std::string& path) {
    detail::require_known_keys(value, bidder_keys, path);
    return {text_or(value, "bidder", {}, path), text_or(value, "unit_price", {}, path),
            text_or(value, "extension", {}, path)};
}

void read_columns(const Json& doc, const std::string& path, bid::FormMapping& mapping) {
    if (!doc.contains("columns")) {
        return;
    }
    const Json& columns = doc["columns"];
    const std::string where = path + ".columns";
    if (!columns.is_object()) {
        throw InputError({"json.type", where, columns.dump(), "an object of role and heading"});
    }
    detail::require_known_keys(columns, std::span(bid::role_names).subspan(1), where);
    for (std::size_t i = 1; i < bid::role_names.size(); ++i) {
        const std::string role(bid::role_names[i]);
        if (const std::string name = text_or(columns, role.c_str(), {}, where); !name.empty()) {
            mapping.columns.emplace_back(static_cast<bid::Role>(i), name);
        }
    }
}

int read_header_row(const Json& doc, const std::string& path) {
    if (!doc.contains("header_row")) {
        return 0;
    }
    const Json& row = doc["header_row"];
    if (!row.is_number_integer() || row.get<std::int64_t>() < 1 ||
        row.get<std::int64_t>() > 10'000'000) {
        throw InputError({"json.type", path + ".header_row", row.dump(), "a line from 1"});
    }
    return static_cast<int>(row.get<std::int64_t>());
}

bid::FormMapping read_document(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    if (!doc.is_object()) {
        throw InputError({"json.type", path, "no object", "an object"});
    }
    detail::require_known_keys(doc, form_mapping_keys, path);
    detail::require_version(doc, "scupper_form", path);
    bid::FormMapping mapping;
    mapping.header_row = read_header_row(doc, path);
    read_columns(doc, path, mapping);
    mapping.bidders = detail::list_of(doc, "bidders", path, read_bidder);
    mapping.bidder = text_or(doc, "bidder", {}, path);
    mapping.engineer = text_or(doc, "engineer", {}, path);
    mapping.total_words = detail::words(doc, "total_words", path);
    mapping.currency = text_or(doc, "currency", mapping.currency, path);
    return mapping;
}

} // namespace

bid::FormMapping read_form_mapping(std::string_view text, std::string_view name) {
    return detail::read_with_lines(text, name, [&] { return read_document(text, name); });
}

} // namespace scupper::json
