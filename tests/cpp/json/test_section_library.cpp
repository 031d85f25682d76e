// The shipped girder sections, and the word by which a structure has one.

#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <string>

using namespace scupper;
using namespace scupper::literals;

namespace test_section_library {

namespace {

const std::string sound = R"({"scupper_sections": 1, "date": "2026-11", "sections": [
  {"name": "a", "kind": "prestressed_i", "outline": [["12 in", "6 in", "3 in"]], "source": "x",
   "area": {"value": "27 in2", "source": "x", "basis": "memory"}}]})";

std::string changed(const std::string& from, const std::string& to) {
    std::string text = sound;
    return text.replace(text.find(from), from.size(), to);
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_section_library(text, "mine.json");
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

double value(const std::vector<Setting>& settings, const std::string& key) {
    for (const Setting& s : settings) {
        if (s.key == key) {
            CHECK(s.value.guess.low == s.value.guess.high);
            return s.value.guess.likely;
        }
    }
    return -1.0;
}

/// What a job says of structure 42 whose overrides are given.
std::vector<Setting> overrides(const std::string& members) {
    return json::read_job(R"({"scupper_job": 1, "overrides": {"42": {)" + members + "}}}",
                          "job.json", json::shipped_rates())
        .overrides.at("42");
}

} // namespace

TEST_CASE("every shipped section says where its outline is drawn") {
    const takeoff::SectionLibrary& library = json::shipped_sections();
    CHECK(library.sections.size() == 24);
    for (const takeoff::GirderSection& section : library.sections) {
        INFO(section.name);
        CHECK_FALSE(section.origin.source.empty());
        CHECK_FALSE(section.origin.date.empty());
        CHECK((!section.printed || !section.printed->origin.source.empty()));
    }
}

TEST_CASE("a section named at a structure is its depth and girth, measured") {
    const std::vector<Setting> said = overrides(R"("girder.section": "aashto_type_iv")");
    CHECK(said.size() == 3);
    CHECK(value(said, "girder.depth") == Approx((54.0_in).si()));
    // Published with the outline: 146.426 in show.
    CHECK(2.0 * value(said, "girder.depth") * value(said, "girder.face_factor") ==
          Approx((146.426_in).si()).epsilon(1e-5));
    CHECK(value(said, "girder.flange_width") == 0.0);
    CHECK(said.front().value.basis == Basis::measured);
    CHECK(said.front().origin->source.find("section aashto_type_iv") != std::string::npos);
}

TEST_CASE("what is measured besides stands before what the section says") {
    const std::vector<Setting> said =
        overrides(R"("girder.depth": "1.4 m", "girder.section": "aashto_type_iv")");
    CHECK(said.size() == 3);
    CHECK(value(said, "girder.depth") == Approx(1.4));
}

TEST_CASE("a section may be named in a change, an override and a survey") {
    const Job& job = json::demo_job();
    const Job everywhere = json::with_input(job, "girder.section", "\"w36x150\"");
    CHECK(value(everywhere.settings, "girder.depth") == Approx((35.9_in).si()));
    const Job at_one = json::with_override(job, "42", "girder.section", "\"box_bii_48\"");
    CHECK(value(at_one.overrides.at("42"), "girder.spacing") == Approx((48.0_in).si()));
    const Job surveyed = json::with_survey(
        job, "sheet.csv:1", {"girder.depth [ft]", "girder.section"},
        {{"42", "sheet.csv:2", {"4.4", "aashto_type_iv"}}, {"43", "sheet.csv:3", {"", ""}}});
    CHECK(value(surveyed.overrides.at("42"), "girder.depth") == Approx((4.4_ft).si()));
    CHECK(value(surveyed.overrides.at("42"), "girder.flange_width") == 0.0);
    CHECK(surveyed.overrides.count("43") == 0);
}

TEST_CASE("an unknown section is refused, naming the nearest") {
    try {
        overrides(R"("girder.section": "pci_bt_73")");
        FAIL("was accepted");
    } catch (const UnknownNameError& e) {
        CHECK(e.id() == "girder.section");
        CHECK(e.path() == "job.json.overrides.42.girder.section");
        CHECK(e.allowed() == "\"pci_bt_72\"?");
    }
    CHECK_THROWS_AS(overrides(R"("girder.section": 4)"), InputError);
}

TEST_CASE("a structure of its own document may name its section") {
    const Structure s = json::read_structure(
        R"({"id": "42", "given": {"girder.section": "aashto_type_ii"}})", "structure.json");
    CHECK(s.given.size() == 3);
    CHECK(s.given.front().value.guess.likely == Approx((36.0_in).si()));
}

TEST_CASE("a sound section is read, a broken one refused with its place") {
    const takeoff::SectionLibrary library = json::read_section_library(sound, "mine.json");
    CHECK(takeoff::section_area(library.sections.front().outline).si() ==
          Approx(library.sections.front().printed->area.si()));
    CHECK(refused<UnknownNameError>(changed("prestressed_i", "prestressed")).id() == "json.word");
    CHECK(refused<UnknownNameError>(changed("\"outline\"", "\"outlines\"")).id() == "json.key");
    CHECK(refused<InputError>(changed(R"([["12 in", "6 in", "3 in"]])", "[]")).id() ==
          "json.missing");
    CHECK(refused<InputError>(changed(R"("3 in")", R"("-3 in")")).id() == "section.bounds");
    CHECK(refused<InputError>(changed(R"("12 in", )", "")).id() == "json.type");
    CHECK(refused<InputError>(changed("\"a\"", "\"\"")).id() == "json.missing");
    CHECK(refused<FileError>("{").id() == "json.text");
}

} // namespace test_section_library
