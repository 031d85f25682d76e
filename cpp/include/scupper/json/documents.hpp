#pragma once
// Rate books and jobs as JSON documents. Every dimensional value is text with its unit.

#include "scupper/job.hpp"
#include "scupper/rates.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// Reads a rate book.
///
/// @param text [text] a JSON document with `scupper_rates`, `operations`, `inputs`
/// @param name [text] what to call the document in errors
/// @param beneath [-] the book it will be laid over, whose operations it may give values for
/// @return [-] the rate book itself; its values are checked when a job with it is prepared
/// Range: UTF-8.
/// Errors: FileError `json.text` where it is no JSON; UnknownNameError `json.key` with the nearest
/// key; InputError `json.type`, `json.version`; UnitError of the unit part.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
RateBook read_rate_book(std::string_view text, std::string_view name, const RateBook& beneath = {});

/// Writes a rate book whole in the trade's units, so that reading it back gives the same book.
///
/// @param book [-] a rate book
/// @param beneath [-] the book it lies over, as for `read_rate_book`
/// @param units [text] "us", "metric" or "si"
/// @return [text] a JSON document
/// Range: any rate book.
/// Errors: UnknownNameError `unit.system`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_rate_book.cpp
std::string write_rate_book(const RateBook& book, const RateBook& beneath,
                            const std::string& units);

/// The values of a job as a rate book: people, equipment, prices and rates.
///
/// @param job [-] a job
/// @return [-] its values, with the job's name
/// Range: any job.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/python/test_rates.py
RateBook rate_book_of(const Job& job);

/// Where the values of a rate book stand.
///
/// @param book [-] a rate book
/// @param beneath [-] the book it lies over
/// @return [-] the layout that knows every key of both
/// Range: any.
/// Errors: none.
/// Source: own convention
Layout rate_layout(const RateBook& book, const RateBook& beneath);

/// Reads a job on top of a rate book: the job's own values win.
///
/// @param text [text] a JSON document with the keys of `job_keys`
/// @param name [text] what to call the document in errors
/// @param book [-] operations and values that the job builds on
/// @return [-] the job
/// Range: UTF-8.
/// Errors: as `read_rate_book`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
Job read_job(std::string_view text, std::string_view name, const RateBook& book);

/// Writes a job whole, every value in SI units with all its digits, so that reading it back gives
/// the same job.
///
/// @param job [-] a job
/// @return [text] a JSON document
/// Range: any job.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
std::string write_job(const Job& job);

/// A job with one value replaced, for every structure.
///
/// @param job [-] the job
/// @param key [text] key of the input schema, or a short name such as "drains"
/// @param value [text] a JSON value: text with unit, a number, a list of three, or an object
/// @return [-] the changed job
/// Range: any key the job's layout knows.
/// Errors: as `read_job`; UnknownNameError `schema.key` naming the nearest known key.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
Job with_input(const Job& job, std::string_view key, std::string_view value);

/// A job with one value replaced for one structure.
///
/// @param job [-] the job
/// @param structure [text] structure number, or "state:number"
/// @param key [text] as for `with_input`
/// @param value [text] as for `with_input`
/// @return [-] the changed job
/// Range: any key the job's layout knows.
/// Errors: as `with_input`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
Job with_override(const Job& job, std::string_view structure, std::string_view key,
                  std::string_view value);

/// Reads cautions.
///
/// @param text [text] a JSON document with `scupper_cautions` and `cautions`
/// @param name [text] what to call the document in errors
/// @return [-, n] the cautions, each with its source
/// Range: UTF-8.
/// Errors: as `read_rate_book`; InputError `json.missing` for one without id, text or source.
/// Source: own convention
/// Verified by: tests/cpp/json/test_documents.cpp
std::vector<Caution> read_cautions(std::string_view text, std::string_view name);

/// The cautions that ship with the library [-].
const std::vector<Caution>& shipped_cautions();
/// Reads what jets need and what surfaces bear.
///
/// @param text [text] a JSON document with `scupper_jets`, `needs` and `limits`
/// @param name [text] what to call the document in errors
/// @return [-] needs by method, limits by surface, each with its source
/// Range: UTF-8.
/// Errors: as `read_rate_book`.
/// Source: own convention
/// Verified by: tests/cpp/estimate/test_remedies.cpp
JetRules read_jet_rules(std::string_view text, std::string_view name);

/// The needs and limits of jets that ship with the library [-].
const JetRules& shipped_jet_rules();
/// What makes work take longer, as it ships with the library [-].
const std::vector<Pace>& shipped_paces();
/// What lies around and costs money, as it ships with the library [-].
const std::vector<Surrounding>& shipped_surroundings();
/// The notices that ship with the library [-].
const std::vector<Notice>& shipped_notices();
/// The rate book that ships with the library [-].
const RateBook& shipped_rates();
/// The job of the demo, on the shipped rates; its prices and equipment are invented [-].
const Job& demo_job();

} // namespace scupper::json
