#pragma once
// One value of a document: text with unit, number, list of three, or object with origin.

#include "scupper/job.hpp"
#include "scupper/rates.hpp"
#include "scupper/schema.hpp"

#include <array>
#include <memory>
#include <nlohmann/json.hpp>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json::detail {

using Json = nlohmann::json;

/// Keys of a value written as an object.
inline constexpr std::array<std::string_view, 15> value_keys{
    "value",        "low",    "likely",  "high",     "source", "date",    "note",  "basis",
    "shared_share", "family", "meaning", "built_up", "values", "weights", "sample"};

/// The words of `Family` that a document may use, in its order.
inline constexpr std::array<std::string_view, 6> family_names{"fixed", "uniform", "triangular",
                                                              "pert",  "normal",  "lognormal"};
/// The words of `Meaning`, in its order.
inline constexpr std::array<std::string_view, 2> meaning_names{"limits", "p10_p90"};
/// Keys of a job document that stand for every value without an origin of its own.
inline constexpr std::array<std::string_view, 2> origin_keys{"source", "date"};

/// What a value is read against.
struct ValueContext {
    const Layout* layout; ///< fields and their dimensions
    std::string currency; ///< three-letter code every amount must have
    Provenance origin;    ///< where values come from that do not say so themselves
    Basis basis = Basis::given;
};

/// Reads the value of a schema key, or of one of its short names.
Setting read_setting(const std::string& key, const Json& value, const ValueContext& context,
                     const std::string& path);
/// Reads every value of an object of key and value. A girder section stands for the dimensions that
/// follow from it; what the object says of one of them itself wins.
std::vector<Setting> read_settings(const Json& object, const ValueContext& context,
                                   const std::string& path);
/// Reads the value of one field; `where` names it in errors.
Setting read_field(const LayoutField& field, const Json& value, const ValueContext& context,
                   const std::string& where);
/// Whether an object states values with weights, or a sample.
bool is_listed(const Json& value);
/// Values with weights, or a sample, as an object states them.
std::shared_ptr<const Listed> read_listed(const Json& value, const LayoutField& field,
                                          const ValueContext& context, const std::string& path);
/// The same as an object has them; `number` writes one value.
template <class Document, class Number>
void write_listed(const Listed& listed, Document& out, const Number& number) {
    Document values = Document::array();
    for (const double value : listed.values()) {
        values.push_back(number(value));
    }
    const bool is_sample = listed.family() == Family::empirical;
    out[is_sample ? "sample" : "values"] = values;
    if (!is_sample) {
        out["weights"] = listed.weights();
    }
}
/// Writes a value in SI units with all its digits.
Json write_setting(const Setting& setting, const LayoutField& field, const std::string& currency);

/// The parts of a rate that is built up, from the object that stands for it.
std::vector<PartValue> read_parts(const Json& object, const LayoutField& field,
                                  const ValueContext& context, const std::string& path);
/// The parts of a built-up rate in SI units with all their digits.
Json write_parts(const std::vector<PartValue>& parts, const LayoutField& field,
                 const std::string& currency);

/// Whether a bare JSON number may stand for a value of this dimension.
bool takes_plain_number(const Dimension& dimension);
/// One number in SI: text with its unit, or a bare number where the dimension has none.
double read_number(const Json& value, const LayoutField& field, const ValueContext& context,
                   const std::string& path);
/// A number in SI units with all its digits; null where it is not finite.
Json write_number(double value, const Dimension& dimension, const std::string& currency);
/// The shortest text that reads back to the same finite number.
std::string digits(double value);

/// The key of a job document for a rate book of its own, laid over the one beneath.
inline constexpr std::string_view rates_key = "rates";
/// What the values of a document are read against: its own source and date where they say none.
ValueContext context_of(const Json& doc, const std::string& name, const std::string& currency,
                        const Layout& layout, const std::string& otherwise);
/// Reads every value of an object of key and value; one takes the place of an earlier one.
void read_inputs(const Json& object, const ValueContext& context, const std::string& path,
                 std::vector<Setting>& settings);
/// A rate book from its document; it may give values for what the book beneath it has.
RateBook read_rate_book_document(const Json& doc, const std::string& path, const RateBook& beneath);

/// The JSON of a text; throws where it is none.
Json parse(std::string_view text, std::string_view name);
/// Throws where a document is not of the version that this library reads.
void require_version(const Json& doc, const char* key, const std::string& name);
/// A job from its document, on top of a rate book.
Job read_job_document(const Json& doc, const std::string& path, const RateBook& beneath);
/// An operation as a document has it.
Json write_operation(const Operation& op);
/// People, equipment or charges as a document has them.
Json write_resources(const std::vector<Resource>& resources);
/// The document of a job.
Json job_document(const Job& job);

/// Throws where a value is no object.
void require_object(const Json& value, const std::string& path);
/// Throws where an object has a key that is not one of the known ones.
void require_known_keys(const Json& object, std::span<const std::string_view> known,
                        const std::string& path);
/// A text member of an object, or a default where it is absent.
std::string text_or(const Json& object, const char* key, const std::string& otherwise,
                    const std::string& path);

} // namespace scupper::json::detail
