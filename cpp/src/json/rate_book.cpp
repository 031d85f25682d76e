#include "lines.hpp"
#include "read_rows.hpp"
#include "scupper/error.hpp"
#include "scupper/json/documents.hpp"
#include "scupper/json/rate_books.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace scupper::json {

namespace {

using detail::Json;
using detail::list_of;
using detail::ValueContext;

constexpr std::array<std::string_view, 11> rate_book_keys{
    "scupper_rates", "name",       "version", "date",      "currency", "source",
    "note",          "operations", "labour",  "equipment", "inputs"};

void add_row(std::vector<Resource>& rows, const std::string& name) {
    const bool known =
        std::any_of(rows.begin(), rows.end(), [&](const Resource& r) { return r.name == name; });
    if (!known) {
        rows.push_back({.name = name, .when = {}, .note = {}, .party = {}});
    }
}

/// A book names people, equipment and charges by giving them a rate: "labour[foreman].wage".
void add_named_rows(const Json& inputs, Job& rows) {
    for (const auto& [key, value] : inputs.items()) {
        const std::size_t open = key.find('[');
        const std::size_t close = key.find(']');
        if (open == key.npos || close == key.npos || close < open) {
            continue;
        }
        const std::string group = key.substr(0, open);
        const std::string name = key.substr(open + 1, close - open - 1);
        if (group == "labour") {
            add_row(rows.labour, name);
        } else if (group == "equipment") {
            add_row(rows.equipment, name);
        } else if (group == "charge") {
            add_row(rows.charges, name);
        }
    }
}

/// The rows that a book may give values for: its own, and those of the book beneath.
Layout layout_of(const RateBook& book, const RateBook& beneath, const Json& inputs) {
    RateBook own = book;
    own.settings.clear();
    RateBook all = beneath;
    all.currency = own.currency;
    all = merge(all, own);
    Job rows;
    rows.operations = all.operations;
    rows.labour = all.labour;
    rows.equipment = all.equipment;
    add_named_rows(inputs, rows);
    return input_layout(rows);
}

} // namespace

ValueContext detail::context_of(const Json& doc, const std::string& name,
                                const std::string& currency, const Layout& layout,
                                const std::string& otherwise) {
    return {.layout = &layout,
            .currency = currency,
            .origin = {.source = detail::text_or(doc, "source", otherwise, name),
                       .date = detail::text_or(doc, "date", {}, name),
                       .note = {}}};
}

void detail::read_inputs(const Json& object, const ValueContext& context, const std::string& path,
                         std::vector<Setting>& settings) {
    if (!object.is_object()) {
        throw InputError({"json.type", path, object.dump(), "an object of key and value"});
    }
    for (Setting& setting : detail::read_settings(object, context, path)) {
        put_setting(settings, std::move(setting));
    }
}

RateBook detail::read_rate_book_document(const Json& doc, const std::string& path,
                                         const RateBook& beneath) {
    detail::require_known_keys(doc, rate_book_keys, path);
    detail::require_version(doc, "scupper_rates", path);
    RateBook book;
    book.name = detail::text_or(doc, "name", path, path);
    book.version = detail::text_or(doc, "version", {}, path);
    book.date = detail::text_or(doc, "date", {}, path);
    book.currency = detail::text_or(doc, "currency", "USD", path);
    book.source = detail::text_or(doc, "source", {}, path);
    book.note = detail::text_or(doc, "note", {}, path);
    book.operations = list_of(doc, "operations", path, detail::read_operation);
    book.labour = list_of(doc, "labour", path, detail::read_resource);
    book.equipment = list_of(doc, "equipment", path, detail::read_resource);
    if (doc.contains("inputs")) {
        const Layout layout = layout_of(book, beneath, doc["inputs"]);
        detail::read_inputs(doc["inputs"], context_of(doc, path, book.currency, layout, book.name),
                            path + ".inputs", book.settings);
    }
    return book;
}

RateBook read_rate_book(std::string_view text, std::string_view name, const RateBook& beneath) {
    return detail::read_with_lines(text, name, [&] {
        return detail::read_rate_book_document(detail::parse(text, name), std::string(name),
                                               beneath);
    });
}

RateBook rate_book_of(const Job& job) {
    RateBook book;
    book.name = job.name;
    book.currency = job.currency;
    book.operations = job.operations;
    book.labour = job.labour;
    book.equipment = job.equipment;
    book.settings = job.settings;
    const Layout layout = rate_layout(book, {});
    std::erase_if(book.settings, [&](const Setting& s) { return !layout.find(s.key); });
    return book;
}

Job with_rates(const Job& job, const RateBook& book) {
    if (job.currency != book.currency) {
        throw InputError({"rates.currency", book.name, "amounts in " + book.currency,
                          "amounts in " + job.currency + ", the currency of the job"});
    }
    Job changed = job;
    const Layout layout = input_layout(job);
    for (const Setting& s : book.settings) {
        if (layout.find(s.key)) {
            put_setting(changed.settings, s);
        }
    }
    changed.rate_books.push_back(title_of(book));
    return changed;
}

Layout rate_layout(const RateBook& book, const RateBook& beneath) {
    Json keys = Json::object();
    for (const Setting& s : book.settings) {
        keys[s.key] = nullptr;
    }
    return layout_of(book, beneath, keys);
}

} // namespace scupper::json
