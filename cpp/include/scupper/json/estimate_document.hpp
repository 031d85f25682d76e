#pragma once
// An estimate as a document: the record, the whole job, what it rests on, and its figures.

#include "scupper/estimate.hpp"
#include "scupper/job.hpp"
#include "scupper/structure.hpp"

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// An estimate as somebody saved it: enough to price it again and to see what has moved.
struct SavedEstimate {
    Structure structure;                        ///< [-] the record
    Job job;                                    ///< [-] the whole job
    std::map<std::string, std::string> stamp;   ///< [text] what the figures rested on
    std::vector<estimate::NamedFigure> figures; ///< [SI unit of each, n] as they were
};

/// Writes an estimate whole.
///
/// @param estimate [-] an estimate
/// @param job [-] the job it was priced under
/// @param stamp [text] version, date, hashes: what the figures rest on
/// @return [text] a JSON document; figures that are no numbers are null
/// Range: any estimate of a structure that `write_structure` accepts.
/// Errors: as `write_structure`.
/// Source: own convention
/// Verified by: tests/cpp/json/test_estimate_document.cpp
std::string write_estimate(const estimate::Estimate& estimate, const Job& job,
                           const std::map<std::string, std::string>& stamp);

/// Reads an estimate that was saved. Its job stands alone: no rate book changes it.
///
/// @param text [text] a JSON document as `write_estimate` gives it
/// @param name [text] what to call the document in errors
/// @return [-] record, job, stamp and figures
/// Range: UTF-8.
/// Errors: as `read_job` and `read_structure`; InputError `json.missing` for a part left out.
/// Source: own convention
/// Verified by: tests/cpp/json/test_estimate_document.cpp
SavedEstimate read_estimate(std::string_view text, std::string_view name);

} // namespace scupper::json
