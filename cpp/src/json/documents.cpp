#include "scupper/json/documents.hpp"

#include "alternatives.hpp"
#include "calendar.hpp"
#include "embedded.hpp"
#include "lines.hpp"
#include "read_rows.hpp"
#include "scupper/error.hpp"
#include "scupper/json/dirt_table.hpp"
#include "scupper/json/hose_library.hpp"
#include "site.hpp"
#include "terms.hpp"
#include "traffic.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace scupper::json {

namespace {

using detail::context_of;
using detail::Json;
using detail::list_of;
using detail::read_inputs;
using detail::ValueContext;

PriceAt read_price_at(const std::string& word, const std::string& path) {
    if (word == "mean") {
        return PriceAt::mean;
    }
    if (word == "likely") {
        return PriceAt::likely;
    }
    throw UnknownNameError({"json.word", path, "\"" + word + "\"", "mean or likely"});
}

Sharing read_sharing(const std::string& word, const std::string& path) {
    const int index = index_of(sharing_names, word);
    if (index < 0) {
        throw UnknownNameError(
            {"json.word", path, "\"" + word + "\"",
             "\"" + nearest_name(word, sharing_names) +
                 "\"? own_shifts, pro_rata, count_a_shift, one_closure or by_the_hour"});
    }
    return static_cast<Sharing>(index);
}

AtPosted read_posting(const std::string& word, const std::string& path) {
    const int index = index_of(posting_names, word);
    if (index < 0) {
        throw UnknownNameError(
            {"json.word", path, "\"" + word + "\"",
             "\"" + nearest_name(word, posting_names) + "\"? approach, half_fill or refuse"});
    }
    return static_cast<AtPosted>(index);
}

/// An object of component name and word.
std::map<std::string, std::string> read_words(const Json& doc, const char* key,
                                              const std::string& name) {
    std::map<std::string, std::string> chosen;
    if (!doc.contains(key)) {
        return chosen;
    }
    const std::string path = name + "." + key;
    detail::require_known_keys(doc[key], component_names, path);
    for (const auto& [component, word] : doc[key].items()) {
        chosen[component] = detail::text_or(doc[key], component.c_str(), {}, path);
    }
    return chosen;
}

/// An object of hose segment and hose of the library.
std::map<std::string, std::string> read_hoses(const Json& doc, const std::string& name) {
    std::map<std::string, std::string> hoses;
    const std::string path = name + ".hoses";
    if (doc.contains("hoses") && !doc["hoses"].is_object()) {
        throw InputError({"json.type", path, doc["hoses"].dump(),
                          "an object of hose segment and hose of the library"});
    }
    if (doc.contains("hoses")) {
        for (const auto& [segment, hose] : doc["hoses"].items()) {
            hoses[segment] = detail::text_or(doc["hoses"], segment.c_str(), {}, path);
        }
    }
    return hoses;
}

void read_rows(const Json& doc, const std::string& name, Job& job) {
    const bool on_its_own = job.operations.empty(); // a whole job: the order is its own
    for (Operation& op : list_of(doc, "operations", name, detail::read_operation)) {
        if (on_its_own) {
            job.operations.push_back(std::move(op));
        } else {
            put_operation(job.operations, std::move(op));
        }
    }
    if (doc.contains("labour")) {
        job.labour = list_of(doc, "labour", name, detail::read_resource);
    }
    if (doc.contains("equipment")) {
        job.equipment = list_of(doc, "equipment", name, detail::read_resource);
    }
    job.stages = list_of(doc, "stages", name, detail::read_stage);
    job.paces = detail::read_paces(doc, name);
    job.surroundings = detail::read_surroundings(doc, name, job.currency);
    job.charges = list_of(doc, "charges", name, [&](const Json& value, const std::string& path) {
        return detail::read_charge(value, path, job.surroundings);
    });
    detail::add_priced_surroundings(doc, job);
    job.site = detail::read_site(doc, name);
    job.methods = list_of(doc, "methods", name, detail::read_method);
    job.hoses = read_hoses(doc, name);
    job.hauls = list_of(doc, "hauls", name, detail::read_haul);
}

/// The layout of a document's values: besides the job's own trucks a row for all of them, which is
/// what a key without row means.
Layout document_layout(const Job& job) {
    Job with_all = job;
    if (!job.hauls.empty() && job.hauls.front().name != any_haul_name) {
        with_all.hauls.push_back({std::string(any_haul_name), {}, {}, {}});
    }
    return input_layout(with_all);
}

/// The book on which a job document stands: what its own `rates` say, over the one beneath.
RateBook book_of(const Json& doc, const std::string& path, const RateBook& book) {
    const std::string key(detail::rates_key);
    return doc.contains(key)
               ? merge(book, detail::read_rate_book_document(doc[key], path + "." + key, book))
               : book;
}

/// What a job says it rests on, or else the titles of its rate books.
std::vector<std::string> books_of(const Json& doc, const std::string& path, const RateBook& book) {
    std::vector<std::string> titles = detail::words(doc, "rate_books", path);
    if (titles.empty() && !book.name.empty()) {
        titles = book.beneath;
        titles.push_back(title_of(book));
    } else if (doc.contains(std::string(detail::rates_key))) {
        titles.push_back(title_of(book));
    }
    return titles;
}

/// A book may hold rates of people and equipment that this job does not have.
void drop_absent(std::vector<Setting>& settings, const Layout& layout) {
    std::erase_if(settings, [&](const Setting& s) {
        const std::string_view group = split_key(s.key)[0];
        const bool of_resource = group == "labour" || group == "equipment" || group == "charge";
        return of_resource && !layout.find(s.key);
    });
}

} // namespace

Job detail::read_job_document(const Json& doc, const std::string& path, const RateBook& beneath) {
    std::vector<std::string_view> known(job_keys.begin(), job_keys.end());
    known.push_back(detail::rates_key);
    known.insert(known.end(), detail::origin_keys.begin(), detail::origin_keys.end());
    detail::require_known_keys(doc, known, path);
    detail::require_version(doc, "scupper_job", path);
    const RateBook book = book_of(doc, path, beneath);
    Job job;
    job.rate_books = books_of(doc, path, book);
    job.operations = book.operations;
    job.labour = book.labour;
    job.equipment = book.equipment;
    job.settings = book.settings;
    job.cautions = shipped_cautions();
    job.name = detail::text_or(doc, "name", path, path);
    job.note = detail::text_or(doc, "note", {}, path);
    job.currency = detail::text_or(doc, "currency", book.currency, path);
    job.units = detail::text_or(doc, "units", "us", path);
    job.price_at =
        read_price_at(detail::text_or(doc, "price_at", "mean", path), path + ".price_at");
    job.closure = detail::text_or(doc, "closure", "by_record", path);
    job.sharing =
        read_sharing(detail::text_or(doc, "sharing", "pro_rata", path), path + ".sharing");
    job.posting =
        read_posting(detail::text_or(doc, "posting", "approach", path), path + ".posting");
    job.work_time = detail::read_word<WorkTime>(work_time_names, doc, "work_time", path);
    job.traffic = detail::read_traffic(doc, path);
    job.service = read_words(doc, "service", path);
    job.ways = read_words(doc, "ways", path);
    job.build_up = detail::text_or(doc, "build_up", std::string(build_up_names.front()), path);
    job.wash_water = detail::read_word<WashWater>(wash_water_names, doc, "wash_water", path);
    read_rows(doc, path, job);
    job.jets = shipped_jet_rules();
    job.notices = detail::read_notices(doc, path);
    job.calendar = detail::read_calendar(doc, path);
    job.frequency = detail::read_frequency(doc, path);
    job.terms = detail::read_terms(doc, path);
    job.correlations = detail::read_correlations(doc, path);
    const Layout layout = document_layout(job);
    drop_absent(job.settings, layout);
    const ValueContext context = context_of(doc, path, job.currency, layout, job.name);
    if (doc.contains("inputs")) {
        read_inputs(doc["inputs"], context, path + ".inputs", job.settings);
    }
    if (doc.contains("overrides")) {
        if (!doc["overrides"].is_object()) {
            throw InputError({"json.type", path + ".overrides", doc["overrides"].dump(),
                              "an object of structure number and values"});
        }
        ValueContext measured = context;
        measured.basis = Basis::measured;
        for (const auto& [id, values] : doc["overrides"].items()) {
            read_inputs(values, measured, path + ".overrides." + id, job.overrides[id]);
        }
    }
    fill_hose_values(job, shipped_hose_library());
    fill_build_up_values(job, shipped_dirt_table());
    spread_haul_values(job);
    job.alternatives = detail::read_alternatives(doc, job, path);
    return job;
}

Job read_job(std::string_view text, std::string_view name, const RateBook& book) {
    return detail::read_with_lines(text, name, [&] {
        return detail::read_job_document(detail::parse(text, name), std::string(name), book);
    });
}

namespace {

ValueContext context_for_change(const Job& job, const Layout& layout, Basis basis) {
    return {.layout = &layout,
            .currency = job.currency,
            .origin = {.source = job.name.empty() ? "the job" : job.name, .date = {}, .note = {}},
            .basis = basis};
}

} // namespace

Job with_input(const Job& job, std::string_view key, std::string_view value) {
    Job changed = job;
    const Layout layout = input_layout(job);
    Json one = Json::object();
    one[std::string(key)] = detail::parse(value, key);
    read_inputs(one, context_for_change(job, layout, Basis::given), "inputs", changed.settings);
    return changed;
}

Job with_override(const Job& job, std::string_view structure, std::string_view key,
                  std::string_view value) {
    Job changed = job;
    const Layout layout = input_layout(job);
    const std::string id(structure);
    Json one = Json::object();
    one[std::string(key)] = detail::parse(value, key);
    read_inputs(one, context_for_change(job, layout, Basis::measured), "overrides." + id,
                changed.overrides[id]);
    return changed;
}

const RateBook& shipped_rates() {
    static const RateBook book = read_rate_book(data::rates_json, "rates.json");
    return book;
}

const Job& demo_job() {
    static const Job job = read_job(data::demo_job_json, "demo_job.json", shipped_rates());
    return job;
}

} // namespace scupper::json
