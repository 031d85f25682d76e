#pragma once
// The items of one set of a record of the national specification of 2022.

#include "record.hpp"
#include "rule_tables.hpp"

#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// Items by their tag; what cannot be used is a doubt that names set and tag.
class Items {
  public:
    using Json = nlohmann::json;

    Items(const Json& object, std::string place, Structure& structure, std::vector<Doubt>& doubts)
        : object_(object), place_(std::move(place)), structure_(structure), doubts_(doubts) {}

    /// What a tag says as text, trimmed; empty where it says nothing.
    std::string text(const char* tag) const;
    /// The number of a tag, plain or as text; a doubt where it is none or out of bounds.
    std::optional<double> number(const char* tag, const NumberBounds& bounds) const;
    /// The whole number of a tag.
    std::optional<int> integer(const char* tag, const IntegerBounds& bounds) const;
    /// A code of one sign, or a blank.
    char code(const char* tag, const CodeSet& codes) const;
    /// The sets within, each with the place it has in its list; a doubt where they are none.
    std::vector<Items> sets(const char* tag) const;
    /// A doubt about a tag.
    void doubt(const char* tag, std::string_view reason, bool kept = false) const;

    Structure& structure() const { return structure_; }

  private:
    const Json* find(const char* tag) const;

    const Json& object_;
    std::string place_; ///< "SpanSets[2]." before the tag
    Structure& structure_;
    std::vector<Doubt>& doubts_;
};

/// What stands at a tag, for a message: nested values are not written out.
std::string shown(const nlohmann::json& value);

} // namespace scupper::inventory::detail
