#pragma once
// Forms to fill in: a whole job in the trade's units, and a sheet of what no record tells.

#include "scupper/job.hpp"
#include "scupper/unit.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace scupper::json {

/// Writes a job as a form to fill in: every value as low, likely and high in the units of the job
/// as the trade writes them, with source and note, in the order of the schema.
///
/// @param job [-] a job
/// @return [text] a JSON document that `read_job` reads as it is; the shortest text of each value
/// that reads back to a few units in the last place (1e-15), SI units where there is none
/// Range: any job.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_forms.cpp
std::string job_form(const Job& job);

/// A column of a survey sheet.
struct SurveyColumn {
    std::string key;    ///< [text] key of the input schema
    std::string header; ///< [text] what stands above it: "column.height [ft]"
    std::string label;  ///< [text] what people call it
};

/// The columns of a survey sheet: what is counted or measured because no record tells it.
///
/// @param job [-] the job whose units stand in the headers
/// @return [text, n] counts first
/// Range: any job.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/json/test_forms.cpp
std::vector<SurveyColumn> survey_columns(const Job& job);

/// The column of a survey sheet for one input.
///
/// @param job [-] the job whose units stand in the header
/// @param key [text] key of the input schema, or the short name of a quantity
/// @return [text] key, header and label
/// Range: any input of the job.
/// Errors: UnknownNameError `schema.key` naming the nearest key.
/// Source: own convention
/// Verified by: tests/cpp/json/test_forms.cpp
SurveyColumn survey_column(const Job& job, const std::string& key);

/// What stands in a cell that nobody need fill in; it changes nothing, as an empty one.
inline constexpr std::string_view not_asked = "not asked";

/// One row of a survey sheet.
struct SurveyRow {
    std::string structure;          ///< [text] structure number, or "state:number"
    std::string place;              ///< [text] file and line: the source of its values
    std::vector<std::string> cells; ///< [text, n] by column; an empty one says nothing
};

/// A job with what a survey measured or counted, structure by structure.
///
/// @param job [-] the job
/// @param place [text] file and line of the headers, for errors
/// @param headers [text, n] keys or short names, each with its unit: "column.height [ft]"
/// @param rows [-, m] a number in the unit of its header, or text with a unit of its own
/// @return [-] the changed job; basis measured, source file and line
/// Range: any keys of the job's inputs; empty cells and those not asked change nothing.
/// Errors: UnknownNameError `schema.key` for a header, with the nearest key; UnitError of the unit
/// part; InputError `survey.twice` for a key, a structure or a line of columns given twice,
/// `survey.cells`, `survey.bounds`, `survey.count` for a count that is no whole number,
/// `survey.drains` for drains by condition that do not add up. The path names file, line, column.
/// Source: own convention
/// Verified by: tests/cpp/json/test_forms.cpp
Job with_survey(const Job& job, const std::string& place, const std::vector<std::string>& headers,
                const std::vector<SurveyRow>& rows);

} // namespace scupper::json
