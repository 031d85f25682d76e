#include "scupper/json/item_lists.hpp"

#include "embedded.hpp"
#include "lines.hpp"
#include "rows.hpp"

namespace scupper::json {

namespace {

using detail::Json;
using detail::list_of;
using detail::require_object;
using detail::text_or;

constexpr std::array<std::string_view, 2> spread_keys{"when", "covers"};

bid::Cover read_cover(const Json& value, const std::string& path) {
    require_object(value, path);
    detail::require_known_keys(value, cover_keys, path);
    bid::Cover cover{detail::word_or_words(value, "component", path),
                     detail::word_or_words(value, "operation", path),
                     detail::word_or_words(value, "resource", path)};
    if (cover.components.empty() && cover.operations.empty() && cover.resources.empty()) {
        throw InputError(
            {"bid.covers", path, "nothing", "a component, an operation or a resource"});
    }
    return cover;
}

bid::Options read_when(const Json& value, const std::string& path) {
    bid::Options when;
    if (value.contains("when")) {
        require_object(value["when"], path + ".when");
        for (const auto& [name, option] : value["when"].items()) {
            when[name] = text_or(value["when"], name.c_str(), {}, path + ".when");
        }
    }
    return when;
}

std::optional<int> read_decimals(const Json& value, const std::string& path) {
    if (!value.contains("decimals")) {
        return std::nullopt;
    }
    if (!value["decimals"].is_number_integer()) {
        throw InputError(
            {"json.type", path + ".decimals", value["decimals"].dump(), "a whole number"});
    }
    const auto decimals = value["decimals"].get<std::int64_t>();
    return decimals < 0 || decimals > 6 ? -1 : static_cast<int>(decimals); // `check` refuses it
}

bid::ItemRule read_item(const Json& value, const std::string& path) {
    require_object(value, path);
    detail::require_known_keys(value, item_keys, path);
    bid::ItemRule rule;
    rule.item.code = text_or(value, "code", {}, path);
    rule.item.description = text_or(value, "description", {}, path);
    rule.item.unit = text_or(value, "unit", {}, path);
    rule.item.group = text_or(value, "group", {}, path);
    rule.item.kind = detail::read_word<bid::ItemKind>(bid::item_kind_names, value, "kind", path);
    rule.driver = text_or(value, "driver", {}, path);
    rule.decimals = read_decimals(value, path);
    rule.when = read_when(value, path);
    rule.covers = list_of(value, "covers", path, read_cover);
    return rule;
}

bid::SpreadRule read_spread(const Json& value, const std::string& path) {
    require_object(value, path);
    detail::require_known_keys(value, spread_keys, path);
    return {list_of(value, "covers", path, read_cover), read_when(value, path)};
}

std::vector<bid::Choice> read_choices(const Json& doc, const std::string& path) {
    std::vector<bid::Choice> choices;
    if (doc.contains("choices")) {
        require_object(doc["choices"], path + ".choices");
        for (const auto& [name, options] : doc["choices"].items()) {
            choices.push_back(
                {name, detail::words(doc["choices"], name.c_str(), path + ".choices")});
        }
    }
    return choices;
}

bid::ItemScheme read_item_document(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    require_object(doc, path);
    detail::require_known_keys(doc, item_list_keys, path);
    detail::require_version(doc, "scupper_items", path);
    bid::ItemScheme list;
    list.name = text_or(doc, "name", path, path);
    list.note = text_or(doc, "note", {}, path);
    list.choices = read_choices(doc, path);
    list.rules = list_of(doc, "items", path, read_item);
    list.spread = list_of(doc, "spread", path, read_spread);
    list.contract_wide = detail::words(doc, "contract_wide", path);
    list.rounding = text_or(doc, "rounding", {}, path);
    bid::check(list, path);
    return list;
}

} // namespace

bid::ItemScheme read_item_list(std::string_view text, std::string_view name) {
    return detail::read_with_lines(text, name, [&] { return read_item_document(text, name); });
}

std::string_view shipped_item_list() {
    return data::pay_items_json;
}

} // namespace scupper::json
