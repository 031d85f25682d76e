#include "national_items.hpp"

#include "text.hpp"

#include <utility>

namespace scupper::inventory::detail {

namespace {

constexpr std::string_view reason_text = "not a text";

/// The text that a value is; nothing for what is no text and no number.
std::optional<std::string> as_text(const nlohmann::json& value) {
    if (value.is_string()) {
        return std::string(trimmed(value.get_ref<const std::string&>()));
    }
    return value.is_number() ? std::optional(value.dump()) : std::nullopt;
}

template <class T, class Read>
std::optional<T> within(const Items& items, const char* tag, const Bounds<T>& bounds,
                        const nlohmann::json* value, Read read) {
    const std::optional<std::string> text = value == nullptr ? std::string{} : as_text(*value);
    if (text && text->empty()) {
        if (!bounds.may_be_blank) {
            items.doubt(tag, reason_blank);
        }
        return std::nullopt;
    }
    const std::optional<T> number = text ? read(*text) : std::nullopt;
    if (number && *number >= bounds.low && *number <= bounds.high) {
        return number;
    }
    items.doubt(tag, number ? bounds.outside : reason_number);
    return std::nullopt;
}

} // namespace

std::string shown(const nlohmann::json& value) {
    if (value.is_structured()) {
        return value.is_array() ? "a list" : "an object";
    }
    return value.is_string() ? excerpt(value.get_ref<const std::string&>()) : value.dump();
}

const nlohmann::json* Items::find(const char* tag) const {
    const auto found = object_.find(tag);
    return found == object_.end() || found->is_null() ? nullptr : &*found;
}

std::string Items::text(const char* tag) const {
    const Json* value = find(tag);
    const std::optional<std::string> text = value == nullptr ? std::string{} : as_text(*value);
    if (!text) {
        doubt(tag, reason_text);
    }
    return text.value_or(std::string{});
}

std::optional<double> Items::number(const char* tag, const NumberBounds& bounds) const {
    return within(*this, tag, bounds, find(tag),
                  [](std::string_view text) { return read_number(text); });
}

std::optional<int> Items::integer(const char* tag, const IntegerBounds& bounds) const {
    return within(*this, tag, bounds, find(tag), read_integer);
}

char Items::code(const char* tag, const CodeSet& codes) const {
    const std::string found = text(tag);
    if (found.empty()) {
        return ' ';
    }
    if (found.size() == 1 && codes.has(found.front())) {
        return found.front();
    }
    doubt(tag, reason_code);
    return ' ';
}

std::vector<Items> Items::sets(const char* tag) const {
    std::vector<Items> all;
    const Json* list = find(tag);
    if (list != nullptr && !list->is_array()) {
        doubt(tag, "not a list of sets");
        return all;
    }
    for (std::size_t i = 0; list != nullptr && i < list->size(); ++i) {
        const std::string place = place_ + tag + "[" + std::to_string(i) + "]";
        if ((*list)[i].is_object()) {
            all.emplace_back((*list)[i], place + ".", structure_, doubts_);
        } else {
            doubts_.push_back({0, structure_.line, structure_.state, structure_.id, place,
                               shown((*list)[i]), "not a set of items", false});
        }
    }
    return all;
}

void Items::doubt(const char* tag, std::string_view reason, bool kept) const {
    const Json* value = find(tag);
    doubts_.push_back({0, structure_.line, structure_.state, structure_.id, place_ + tag,
                       value == nullptr ? std::string{} : shown(*value), std::string(reason),
                       kept});
}

} // namespace scupper::inventory::detail
