#pragma once
// The rows of a rate book or a job: operations, resources, methods, hauls, stages.

#include "rows.hpp"

namespace scupper::json::detail {

Operation read_operation(const Json& value, const std::string& path);
Resource read_resource(const Json& value, const std::string& path);
WashMethod read_method(const Json& value, const std::string& path);
Haul read_haul(const Json& value, const std::string& path);
Stage read_stage(const Json& value, const std::string& path);

} // namespace scupper::json::detail
