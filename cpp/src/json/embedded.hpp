#pragma once
// The shipped documents of cpp/data as text, compiled into the library.

#include <string_view>

namespace scupper::data {

extern const std::string_view alternatives_json, cautions_json, demo_job_json, dirt_json,
    hoses_json, jets_json, notices_json, paces_json, pay_items_json, rates_json, sections_json,
    surroundings_json;

} // namespace scupper::data
