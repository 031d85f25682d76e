#pragma once
// One value of a document: text with unit, number, list of three, or object with origin.

#include "scupper/rates.hpp"
#include "scupper/schema.hpp"

#include <nlohmann/json.hpp>
#include <string>

namespace scupper::json::detail {

using Json = nlohmann::json;

/// What a value is read against.
struct ValueContext {
    const Layout* layout; ///< fields and their dimensions
    std::string currency; ///< three-letter code every amount must have
    Provenance origin;    ///< where values come from that do not say so themselves
    Basis basis = Basis::given;
};

/// Reads the value of a schema key.
Setting read_setting(const std::string& key, const Json& value, const ValueContext& context,
                     const std::string& path);
/// Writes a value in SI units with all its digits.
Json write_setting(const Setting& setting, const LayoutField& field, const std::string& currency);

/// Throws where an object has a key that is not one of the known ones.
void require_known_keys(const Json& object, std::span<const std::string_view> known,
                        const std::string& path);
/// A text member of an object, or a default where it is absent.
std::string text_or(const Json& object, const char* key, const std::string& otherwise,
                    const std::string& path);

} // namespace scupper::json::detail
