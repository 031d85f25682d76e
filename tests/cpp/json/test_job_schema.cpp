#include "catch.hpp"
#include "scupper/json.hpp"
#include "scupper/schema.hpp"

#include <string>

using namespace scupper;

TEST_CASE("the schema of a job knows every key and every word of the tables") {
    const std::string schema = json::job_schema();
    const auto has = [&](std::string_view text) { return schema.find(text) != std::string::npos; };
    CHECK(has("https://json-schema.org/draft/2020-12/schema"));
    for (const std::string_view key : job_keys) {
        INFO(key);
        CHECK(has("\"" + std::string(key) + "\":"));
    }
    for (const InputField& f : input_table) {
        INFO(f.group << "." << f.field);
        CHECK(has("\\\\." + std::string(f.field) + "$\""));
        CHECK(has("\"^" + std::string(f.group)));
    }
    for (const std::string_view word : component_names) {
        CHECK(has("\"" + std::string(word) + "\""));
    }
    CHECK_FALSE(has("\"lost\"")); // a timing that jobs cannot use
}
