#pragma once
// The bridges whose whole price was computed by hand, as records and jobs.

#include "catch.hpp"
#include "scupper/estimate.hpp"
#include "scupper/json.hpp"

#include <fstream>
#include <sstream>
#include <string>

namespace worked {

using namespace scupper;

inline std::string text_of(const std::string& name) {
    std::ifstream file(SCUPPER_TESTS_DIR "/reference/worked/" + name);
    REQUIRE(file);
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

inline Structure structure_of(const std::string& name) {
    return json::read_structure(text_of(name + "_structure.json"), name);
}

inline Job job_of(const std::string& name) {
    return json::read_job(text_of(name + "_job.json"), name, json::shipped_rates());
}

inline estimate::Estimate priced(const std::string& name, const Job& job) {
    return estimate::estimate(structure_of(name), estimate::make_plan(job));
}

} // namespace worked
