#include "site.hpp"

#include "embedded.hpp"
#include "library_values.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/unit.hpp"

#include <algorithm>

namespace scupper::json {

namespace detail {

namespace {

/// A row in place of one of the same name, or at the end.
template <class Row>
void put_row(std::vector<Row>& rows, Row row) {
    const auto same = std::find_if(rows.begin(), rows.end(),
                                   [&](const Row& other) { return other.name == row.name; });
    if (same == rows.end()) {
        rows.push_back(std::move(row));
    } else {
        *same = std::move(row);
    }
}

/// The currency of an amount however it is written; the document's where it has none.
std::string currency_of(const Json& value, const std::string& otherwise, const std::string& path) {
    if (value.is_string()) {
        const std::string found = parse_quantity(value.get<std::string>(), path).currency;
        return found.empty() ? otherwise : found;
    }
    for (const Json& part : value) {
        if (part.is_string() || part.is_array()) {
            return currency_of(part, otherwise, path);
        }
    }
    return otherwise;
}

Setting read_sourced(const Json& value, const LayoutField& field, const std::string& source,
                     const std::string& currency, const std::string& path) {
    const ValueContext context{.layout = nullptr,
                               .currency = currency,
                               .origin = {.source = source, .date = {}, .note = {}},
                               .basis = Basis::given};
    Setting s = read_field(field, value, context, path);
    check(s.value.guess, path);
    return s;
}

const Json& required(const Json& value, const char* key, const std::string& path) {
    if (!value.contains(key)) {
        throw InputError({"json.missing", path + "." + key, "nothing", "low, likely and high"});
    }
    return value[key];
}

Surrounding read_surrounding(const Json& value, const std::string& path,
                             const std::string& currency) {
    static const LayoutField amount{"usual", "amount", dim::money, 0.0, 1e9};
    require_known_keys(value, job_surrounding_keys, path);
    Surrounding s;
    s.name = read_name(value, path);
    s.when = words(value, "when", path);
    s.per = read_word<ChargePer>(charge_per_names, value, "per", path);
    s.caution = text_or(value, "caution", {}, path);
    s.source = text_or(value, "source", "the job", path);
    s.note = text_or(value, "note", {}, path);
    const std::string where = path + ".usual";
    const Json& usual = required(value, "usual", path);
    s.currency = currency_of(usual.is_object() && usual.contains("low") ? usual["low"] : usual,
                             currency, where);
    s.usual = read_sourced(usual, amount, s.source, s.currency, where);
    return s;
}

Json write_surrounding(const Surrounding& s) {
    static const LayoutField amount{"usual", "amount", dim::money, 0.0, 1e9};
    return {{"name", s.name},
            {"when", s.when},
            {"per", charge_per_names.at(static_cast<std::size_t>(s.per))},
            {"usual", write_setting(s.usual, amount, s.currency)},
            {"caution", s.caution},
            {"source", s.source},
            {"note", s.note}};
}

} // namespace

Pace read_pace(const Json& value, const std::string& path, const std::string& source) {
    require_known_keys(value, job_pace_keys, path);
    Pace pace;
    pace.name = read_name(value, path);
    pace.work = words(value, "work", path);
    pace.when = words(value, "when", path);
    pace.source = text_or(value, "source", source, path);
    pace.note = text_or(value, "note", {}, path);
    const LayoutField factor{"pace[" + pace.name + "].factor", "factor", dim::none, 0.05, 20.0};
    pace.factor =
        read_sourced(required(value, "factor", path), factor, pace.source, {}, path + ".factor");
    return pace;
}

Json write_pace(const Pace& pace) {
    const LayoutField factor{pace.factor.key, "factor", dim::none, 0.05, 20.0};
    return {{"name", pace.name},     {"work", pace.work},
            {"when", pace.when},     {"factor", write_setting(pace.factor, factor, {})},
            {"source", pace.source}, {"note", pace.note}};
}

std::vector<Pace> read_paces(const Json& doc, const std::string& path) {
    std::vector<Pace> paces = shipped_paces();
    const auto own = [](const Json& value, const std::string& where) {
        return read_pace(value, where, "the job");
    };
    for (Pace& pace : list_of(doc, "paces", path, own)) {
        put_row(paces, std::move(pace));
    }
    return paces;
}

std::vector<Surrounding> read_surroundings(const Json& doc, const std::string& path,
                                           const std::string& currency) {
    std::vector<Surrounding> list = shipped_surroundings();
    const auto own = [&](const Json& value, const std::string& where) {
        return read_surrounding(value, where, currency);
    };
    for (Surrounding& s : list_of(doc, "surroundings", path, own)) {
        put_row(list, std::move(s));
    }
    return list;
}

Resource read_charge(const Json& value, const std::string& path,
                     const std::vector<Surrounding>& surroundings) {
    require_known_keys(value, job_charge_keys, path);
    Resource charge{text_or(value, "name", {}, path), words(value, "when", path),
                    text_or(value, "note", {}, path), text_or(value, "party", {}, path)};
    charge.per = read_word<ChargePer>(charge_per_names, value, "per", path);
    const auto same = std::find_if(surroundings.begin(), surroundings.end(),
                                   [&](const Surrounding& s) { return s.name == charge.name; });
    if (same != surroundings.end() && !value.contains("when")) {
        charge.when = same->when;
    }
    if (same != surroundings.end() && !value.contains("per")) {
        charge.per = same->per;
    }
    return charge;
}

void add_priced_surroundings(const Json& doc, Job& job) {
    if (!doc.contains("inputs") || !doc["inputs"].is_object()) {
        return;
    }
    for (const Surrounding& s : job.surroundings) {
        const bool listed = std::any_of(job.charges.begin(), job.charges.end(),
                                        [&](const Resource& r) { return r.name == s.name; });
        if (!listed && doc["inputs"].contains("charge[" + s.name + "].amount")) {
            job.charges.push_back({s.name, s.when, {}});
            job.charges.back().per = s.per;
        }
    }
}

std::map<std::string, std::vector<std::string>> read_site(const Json& doc,
                                                          const std::string& path) {
    std::map<std::string, std::vector<std::string>> site;
    if (!doc.contains("site")) {
        return site;
    }
    const std::string where = path + ".site";
    if (!doc["site"].is_object()) {
        throw InputError({"json.type", where, doc["site"].dump(),
                          "an object of structure number, or \"every\", and a list of words"});
    }
    for (const auto& [id, list] : doc["site"].items()) {
        site[id] = words(doc["site"], id.c_str(), where);
    }
    return site;
}

void write_site(const Job& job, Json& doc) {
    doc["site"] = job.site;
    doc["paces"] = Json::array();
    for (const Pace& pace : job.paces) {
        doc["paces"].push_back(write_pace(pace));
    }
    doc["surroundings"] = Json::array();
    for (const Surrounding& s : job.surroundings) {
        doc["surroundings"].push_back(write_surrounding(s));
    }
    doc["charges"] = Json::array();
    for (const Resource& r : job.charges) {
        doc["charges"].push_back({{"name", r.name},
                                  {"when", r.when},
                                  {"note", r.note},
                                  {"party", r.party},
                                  {"per", charge_per_names.at(static_cast<std::size_t>(r.per))}});
    }
}

} // namespace detail

namespace {

/// The list of a shipped document, each entry read.
template <class Read>
auto shipped(std::string_view text, const char* version, const char* list, Read read) {
    const std::array<std::string_view, 3> keys{version, "date", list};
    const std::string name = std::string(list) + ".json";
    const detail::Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, keys, name);
    detail::require_version(doc, version, name);
    return detail::list_of(doc, list, name, read);
}

} // namespace

const std::vector<Pace>& shipped_paces() {
    static const std::vector<Pace> list =
        shipped(data::paces_json, "scupper_paces", "paces",
                [](const detail::Json& value, const std::string& path) {
                    return detail::read_pace(value, path, {});
                });
    return list;
}

const std::vector<Surrounding>& shipped_surroundings() {
    static const std::vector<Surrounding> list =
        shipped(data::surroundings_json, "scupper_surroundings", "surroundings",
                [](const detail::Json& value, const std::string& path) {
                    return detail::read_surrounding(value, path, "USD");
                });
    return list;
}

} // namespace scupper::json
