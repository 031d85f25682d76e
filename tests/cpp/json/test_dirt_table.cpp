// The shipped dirt table: what it holds, and what is published of it.

#include "reference.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <set>
#include <string>

using namespace scupper;
using namespace scupper::literals;
using reference::Row;

namespace {

const std::string sound = R"({"scupper_dirt": 1, "date": "2026-11",
  "kinds": [{"material": "sand", "moisture": "wet",
             "density": {"value": "119 lb/ft3", "source": "x"},
             "published": [{"value": "119 lb/ft3", "source": "x", "basis": "seen"}]}],
  "build_up": [{"since": "neglected",
                "inputs": {"dirt[gutter].depth": {"value": "1 in", "source": "x"}}}],
  "street_loads": [{"street": "a", "value": "522 lb/mi", "source": "x", "basis": "seen"}]})";

std::string changed(const std::string& from, const std::string& to) {
    std::string text = sound;
    return text.replace(text.find(from), from.size(), to);
}

template <class E>
E refused(const std::string& text) {
    try {
        json::read_dirt_table(text, "mine.json");
    } catch (const E& e) {
        return e;
    }
    throw InputError({"test.accepted", text, "was accepted", "an error"});
}

/// A printed density in SI.
double density_of(const Row& row) {
    const double value = row.expected();
    if (row.text("unit") == "kg/L") {
        return value / factor::litre;
    }
    const Volume<> unit = row.text("unit") == "lb/yd3" ? 1.0_yd3 : 1.0_ft3;
    return value * factor::pound / unit.si();
}

bool is_printed(const Row& row) {
    return row.starts("bulk density") || row.starts("mixed waste") || row.starts("sand wet");
}

bool says_where_from(const Provenance& origin) {
    return !origin.source.empty() && !origin.date.empty();
}

double likely(const char* since, const char* key) {
    for (const Setting& s : build_up_of(json::shipped_dirt_table(), since, "test").values) {
        if (s.key == key) {
            return s.value.guess.likely;
        }
    }
    throw std::runtime_error(key);
}

} // namespace

TEST_CASE("every density spans what was published of it, with source and date") {
    for (const DirtKind& kind : json::shipped_dirt_table().kinds) {
        INFO(kind.material << ", " << kind.moisture);
        const ThreePoint& density = kind.density.value.guess;
        CHECK(says_where_from(*kind.density.origin));
        CHECK((!kind.repose || says_where_from(*kind.repose->origin)));
        for (const PublishedFigure& printed : kind.published) {
            CHECK(says_where_from(printed.origin));
            CHECK(printed.value >= density.low * (1.0 - 1e-9));
            CHECK(printed.value <= density.high * (1.0 + 1e-9));
        }
    }
}

TEST_CASE("every published bulk density stands in the table") {
    int found = 0;
    for (const Row& row : reference::rows("debris/debris")) {
        if (!is_printed(row)) {
            continue;
        }
        INFO(row.text("id"));
        int matches = 0;
        for (const DirtKind& kind : json::shipped_dirt_table().kinds) {
            matches += static_cast<int>(std::count_if(
                kind.published.begin(), kind.published.end(), [&](const PublishedFigure& printed) {
                    return reference::near(printed.value, density_of(row), 1e-9);
                }));
        }
        CHECK(matches >= 1);
        ++found;
    }
    CHECK(found == 21);
}

TEST_CASE("published street loads and slopes stand in the table") {
    const DirtTable& table = json::shipped_dirt_table();
    int loads = 0;
    for (const Row& row : reference::rows("debris/debris")) {
        if (row.starts("street dirt") || row.starts("Long Beach")) {
            INFO(row.text("id"));
            const double si = row.expected() * factor::pound / factor::mile;
            CHECK(std::any_of(table.street_loads.begin(), table.street_loads.end(),
                              [&](const StreetLoad& load) {
                                  return reference::near(load.figure.value, si, 1e-6);
                              }));
            ++loads;
        } else if (row.starts("angle of repose")) {
            const DirtKind& kind = dirt_of(
                table, row.text("quantity").find("sand") != std::string::npos ? "sand" : "mud",
                "wet", "test");
            CHECK(row.expected() * factor::degree >= kind.repose->value.guess.low * (1.0 - 1e-9));
            CHECK(row.expected() * factor::degree <= kind.repose->value.guess.high * (1.0 + 1e-9));
        }
    }
    CHECK(loads == 4);
}

TEST_CASE("the longer ago the last cleaning, the more dirt; every word gives the same keys") {
    const DirtTable& table = json::shipped_dirt_table();
    REQUIRE(table.build_ups.size() == build_up_names.size());
    std::set<std::string> first;
    for (const Setting& s : table.build_ups.front().values) {
        first.insert(s.key);
    }
    for (std::size_t i = 0; i < build_up_names.size(); ++i) {
        CHECK(table.build_ups[i].since == build_up_names[i]);
        std::set<std::string> keys;
        for (const Setting& s : table.build_ups[i].values) {
            INFO(s.key);
            keys.insert(s.key);
            CHECK(says_where_from(*s.origin));
            if (i > 0) {
                CHECK(s.value.guess.likely >=
                      likely(std::string(build_up_names[i - 1]).c_str(), s.key.c_str()));
            }
        }
        CHECK(keys == first);
    }
    CHECK(likely("washed_last_year", "dirt[gutter].depth") == Approx((0.15_in).si()));
    CHECK(likely("neglected", "dirt[gutter].depth") == Approx((0.5_in).si()));
}

TEST_CASE("a job's word says how much dirt lies there, its own values stand before") {
    const auto depth = [](const std::string& members) {
        const Job job = json::read_job(R"({"scupper_job": 1)" + members + "}", "job.json",
                                       json::shipped_rates());
        for (const Setting& s : job.settings) {
            if (s.key == "dirt[gutter].depth") {
                return s.value.guess.likely / (1.0_in).si();
            }
        }
        return 0.0;
    };
    CHECK(depth("") == Approx(0.15));
    CHECK(depth(R"(, "build_up": "neglected")") == Approx(0.5));
    CHECK(depth(R"(, "build_up": "neglected", "inputs": {"dirt[gutter].depth": "1 in"})") ==
          Approx(1.0));
    CHECK_THROWS_AS(depth(R"(, "build_up": "long_ago")"), UnknownNameError);
}

TEST_CASE("a sound table is read, a broken one refused with its place") {
    CHECK(json::read_dirt_table(sound, "mine.json").kinds.size() == 1);
    CHECK(
        refused<UnknownNameError>(changed("\"wet\"", "\"wett\"")).allowed().rfind("\"wet\"?", 0) ==
        0);
    CHECK(refused<UnknownNameError>(changed("gutter", "guter")).id() == "schema.key");
    CHECK(refused<UnknownNameError>(changed("\"neglected\"", "\"new\"")).id() == "json.word");
    CHECK(refused<UnknownNameError>(changed("\"street\"", "\"strete\"")).id() == "json.key");
    CHECK(refused<InputError>(
              changed("119 lb/ft3\", \"source\": \"x\"}", "1 lb/ft3\", \"source\": \"x\"}"))
              .id() == "dirt.bounds");
    CHECK(refused<InputError>(changed("\"1 in\", \"source\": \"x\"", "\"1 in\"")).id() ==
          "json.missing");
    CHECK(refused<InputError>(changed("\"522 lb/mi\"", "\"-1 lb/mi\"")).id() == "dirt.bounds");
    CHECK(refused<InputError>(changed("\"scupper_dirt\": 1", "\"scupper_dirt\": 2")).id() ==
          "json.version");
    CHECK(refused<FileError>("{").id() == "json.text");
    CHECK_THROWS_AS(json::read_dirt_table(changed("\"119 lb/ft3\"", "\"119 psi\""), "mine.json"),
                    UnitError);
}
