#pragma once
// The form of a job document, for editors and validators.

#include <string>

namespace scupper::json {

/// The JSON Schema of a job document, built from the tables of keys and words that the reader uses.
///
/// @return [text] a JSON Schema, draft 2020-12
/// Range: it checks keys, words and the shape of values; units and bounds are checked where a job
/// is read.
/// Errors: none.
/// Source: JSON Schema, draft 2020-12, json-schema.org/draft/2020-12
/// Verified by: tests/cpp/json/test_job_schema.cpp, tests/python/test_job_schema.py
std::string job_schema();

} // namespace scupper::json
