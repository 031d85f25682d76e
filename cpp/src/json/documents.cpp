#include "scupper/json/documents.hpp"

#include "data/cautions_json.hpp"
#include "data/demo_job_json.hpp"
#include "data/rates_json.hpp"
#include "scupper/error.hpp"
#include "scupper/json/hose_library.hpp"
#include "values.hpp"

#include <algorithm>
#include <array>
#include <map>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;
using detail::ValueContext;

constexpr std::array<std::string_view, 10> rate_book_keys{
    "scupper_rates", "name",       "date",   "currency",  "source",
    "note",          "operations", "labour", "equipment", "inputs"};

std::vector<std::string> words(const Json& object, const char* key, const std::string& path) {
    std::vector<std::string> list;
    if (!object.contains(key)) {
        return list;
    }
    const Json& value = object[key];
    if (!value.is_array()) {
        throw InputError({"json.type", path + "." + key, value.dump(), "a list of words"});
    }
    for (const Json& word : value) {
        if (!word.is_string()) {
            throw InputError({"json.type", path + "." + key, word.dump(), "a word"});
        }
        list.push_back(word.get<std::string>());
    }
    return list;
}

/// One word, or a list of them.
std::vector<std::string> word_or_words(const Json& object, const char* key,
                                       const std::string& path) {
    if (object.contains(key) && object[key].is_string()) {
        const std::string word = object[key].get<std::string>();
        return word.empty() ? std::vector<std::string>{} : std::vector<std::string>{word};
    }
    return words(object, key, path);
}

/// The place of a word in its vocabulary.
template <class Enum, std::size_t N>
Enum read_word(const std::array<std::string_view, N>& known, const Json& object, const char* key,
               const std::string& path) {
    const std::string word = detail::text_or(object, key, std::string(known.front()), path);
    const int index = index_of(known, word);
    if (index < 0) {
        std::string allowed;
        for (const std::string_view w : known) {
            allowed += (w == known.front() ? "" : ", ") + std::string(w);
        }
        const std::string near = nearest_name(word, known);
        throw UnknownNameError({"json.word", path + "." + key, "\"" + word + "\"",
                                (near.empty() ? "" : "\"" + near + "\"? one of ") + allowed});
    }
    return static_cast<Enum>(index);
}

Timing read_timing(const std::string& word, const std::string& path) {
    const int index = index_of(timing_names, word);
    if (index < 0 || word == "lost") {
        throw UnknownNameError({"json.word", path + ".timing", "\"" + word + "\"",
                                "rate, clock_rate, closure, refill or dump"});
    }
    return static_cast<Timing>(index);
}

Slot read_driver(const std::string& word, const std::string& path) {
    const Slot found = find_slot(word);
    if (found == slot_table.size()) {
        std::vector<std::string_view> known;
        for (const SlotInfo& s : slot_table) {
            known.push_back(s.key);
        }
        throw UnknownNameError({"json.word", path + ".driver", "\"" + word + "\"",
                                "\"" + nearest_name(word, known) + "\"?"});
    }
    return found;
}

Operation read_operation(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_operation_keys, path);
    Operation op;
    op.name = detail::text_or(value, "name", {}, path);
    if (op.name.empty()) {
        throw InputError({"json.missing", path + ".name", "nothing", "a name for the operation"});
    }
    op.component = detail::text_or(value, "component", {}, path);
    op.levels = words(value, "levels", path);
    op.driver = read_driver(detail::text_or(value, "driver", {}, path), path);
    op.timing = read_timing(detail::text_or(value, "timing", "rate", path), path);
    op.method = detail::text_or(value, "method", {}, path);
    op.ways = word_or_words(value, "way", path);
    op.when = words(value, "when", path);
    op.note = detail::text_or(value, "note", {}, path);
    if (value.contains("factor")) {
        if (!value["factor"].is_number()) {
            throw InputError(
                {"json.type", path + ".factor", value["factor"].dump(), "a number above 0"});
        }
        op.factor = value["factor"].get<double>();
    }
    return op;
}

Resource read_resource(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_resource_keys, path);
    return {detail::text_or(value, "name", {}, path), words(value, "when", path),
            detail::text_or(value, "note", {}, path), detail::text_or(value, "party", {}, path)};
}

Party read_party(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_party_keys, path);
    return {detail::text_or(value, "name", {}, path), words(value, "work", path)};
}

WashMethod read_method(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_method_keys, path);
    return {detail::text_or(value, "name", {}, path), words(value, "hose", path),
            detail::text_or(value, "note", {}, path)};
}

Haul read_haul(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_haul_keys, path);
    return {detail::text_or(value, "name", {}, path), words(value, "components", path),
            read_word<DumpWhen>(dump_names, value, "dump", path),
            detail::text_or(value, "note", {}, path)};
}

Caution read_caution(const Json& value, const std::string& path) {
    static constexpr std::array<std::string_view, 4> keys{"id", "text", "source", "when"};
    detail::require_known_keys(value, keys, path);
    Caution caution{detail::text_or(value, "id", {}, path),
                    detail::text_or(value, "text", {}, path),
                    detail::text_or(value, "source", {}, path), words(value, "when", path)};
    if (caution.id.empty() || caution.text.empty() || caution.source.empty()) {
        throw InputError(
            {"json.missing", path, value.dump(), "a caution with id, text and source"});
    }
    return caution;
}

template <class Read>
auto list_of(const Json& doc, const char* key, const std::string& name, Read read) {
    std::vector<decltype(read(doc, name))> list;
    if (doc.contains(key) && !doc[key].is_array()) {
        throw InputError({"json.type", name + "." + key, doc[key].dump(), "a list"});
    }
    if (doc.contains(key)) {
        for (std::size_t i = 0; i < doc[key].size(); ++i) {
            list.push_back(read(doc[key][i], name + "." + key + "[" + std::to_string(i) + "]"));
        }
    }
    return list;
}

Stage read_stage(const Json& value, const std::string& path) {
    detail::require_known_keys(value, job_stage_keys, path);
    return {detail::text_or(value, "name", {}, path), detail::text_or(value, "closure", {}, path),
            list_of(value, "parties", path, read_party)};
}

/// An operation of the same name takes the place of the book's.
void put_operation(std::vector<Operation>& operations, Operation op) {
    const auto same = std::find_if(operations.begin(), operations.end(),
                                   [&](const Operation& o) { return o.name == op.name; });
    if (same == operations.end()) {
        operations.push_back(std::move(op));
    } else {
        *same = std::move(op);
    }
}

void read_inputs(const Json& object, const ValueContext& context, const std::string& path,
                 std::vector<Setting>& settings) {
    if (!object.is_object()) {
        throw InputError({"json.type", path, object.dump(), "an object of key and value"});
    }
    for (const auto& [key, value] : object.items()) {
        put_setting(settings, detail::read_setting(key, value, context, path));
    }
}

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
    for (Operation& op : list_of(doc, "operations", name, read_operation)) {
        put_operation(job.operations, std::move(op));
    }
    if (doc.contains("labour")) {
        job.labour = list_of(doc, "labour", name, read_resource);
    }
    if (doc.contains("equipment")) {
        job.equipment = list_of(doc, "equipment", name, read_resource);
    }
    job.stages = list_of(doc, "stages", name, read_stage);
    job.charges = list_of(doc, "charges", name, read_resource);
    job.methods = list_of(doc, "methods", name, read_method);
    job.hoses = read_hoses(doc, name);
    job.hauls = list_of(doc, "hauls", name, read_haul);
}

ValueContext context_of(const Json& doc, const std::string& name, const std::string& currency,
                        const Layout& layout, const std::string& otherwise) {
    return {.layout = &layout,
            .currency = currency,
            .origin = {.source = detail::text_or(doc, "source", otherwise, name),
                       .date = detail::text_or(doc, "date", {}, name),
                       .note = {}}};
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

} // namespace

RateBook read_rate_book(std::string_view text, std::string_view name) {
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, rate_book_keys, path);
    detail::require_version(doc, "scupper_rates", path);
    RateBook book;
    book.name = detail::text_or(doc, "name", path, path);
    book.date = detail::text_or(doc, "date", {}, path);
    book.currency = detail::text_or(doc, "currency", "USD", path);
    book.operations = list_of(doc, "operations", path, read_operation);
    book.labour = list_of(doc, "labour", path, read_resource);
    book.equipment = list_of(doc, "equipment", path, read_resource);
    Job rows;
    rows.operations = book.operations;
    rows.labour = book.labour;
    rows.equipment = book.equipment;
    const Layout layout = input_layout(rows);
    if (doc.contains("inputs")) {
        read_inputs(doc["inputs"], context_of(doc, path, book.currency, layout, book.name),
                    path + ".inputs", book.settings);
    }
    return book;
}

Job detail::read_job_document(const Json& doc, const std::string& path, const RateBook& book) {
    std::vector<std::string_view> known(job_keys.begin(), job_keys.end());
    known.insert(known.end(), detail::origin_keys.begin(), detail::origin_keys.end());
    detail::require_known_keys(doc, known, path);
    detail::require_version(doc, "scupper_job", path);
    Job job;
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
    job.service = read_words(doc, "service", path);
    job.ways = read_words(doc, "ways", path);
    job.wash_water = read_word<WashWater>(wash_water_names, doc, "wash_water", path);
    read_rows(doc, path, job);
    const Layout layout = document_layout(job);
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
    spread_haul_values(job);
    return job;
}

Job read_job(std::string_view text, std::string_view name, const RateBook& book) {
    return detail::read_job_document(detail::parse(text, name), std::string(name), book);
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
    put_setting(changed.settings,
                detail::read_setting(std::string(key), detail::parse(value, key),
                                     context_for_change(job, layout, Basis::given), "inputs"));
    return changed;
}

Job with_override(const Job& job, std::string_view structure, std::string_view key,
                  std::string_view value) {
    Job changed = job;
    const Layout layout = input_layout(job);
    const std::string id(structure);
    put_setting(changed.overrides[id],
                detail::read_setting(std::string(key), detail::parse(value, key),
                                     context_for_change(job, layout, Basis::measured),
                                     "overrides." + id));
    return changed;
}

std::vector<Caution> read_cautions(std::string_view text, std::string_view name) {
    static constexpr std::array<std::string_view, 3> document_keys{"scupper_cautions", "date",
                                                                   "cautions"};
    const std::string path(name);
    const Json doc = detail::parse(text, name);
    detail::require_known_keys(doc, document_keys, path);
    detail::require_version(doc, "scupper_cautions", path);
    return list_of(doc, "cautions", path, read_caution);
}

const std::vector<Caution>& shipped_cautions() {
    static const std::vector<Caution> list = read_cautions(data::cautions_json, "cautions.json");
    return list;
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
