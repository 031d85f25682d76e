// The rule table: complete, in order, and the numbers in it are the ones used.

#include "records.hpp"

#include <algorithm>
#include <cmath>
#include <set>

using namespace records;

TEST_CASE("rules have unique names, a formula, a source and an order of factors") {
    std::set<std::string_view> names;
    for (const Rule& r : rules()) {
        INFO(r.name);
        CHECK(names.insert(r.name).second);
        CHECK_FALSE(r.formula.empty());
        CHECK_FALSE(r.source.empty());
        CHECK_FALSE(r.when.empty());
        CHECK(std::isnan(r.low) == std::isnan(r.likely));
        CHECK(std::isnan(r.low) == std::isnan(r.high));
        CHECK((std::isnan(r.low) || (r.low <= r.likely && r.likely <= r.high)));
    }
}

TEST_CASE("a rule for a number states low, likely and high: as factors, or in words") {
    int in_words = 0;
    for (const Rule& r : rules()) {
        const bool dimension =
            find_field(input_table, input_groups, r.field).group < input_groups.size();
        const bool verdict = r.field == "posting.limit"; // none, or not priced at all
        if (!std::isnan(r.low) || !dimension || verdict || r.basis == Basis::recorded) {
            continue;
        }
        INFO(r.name);
        CHECK(std::count(r.formula.begin(), r.formula.end(), ',') >= 2);
        ++in_words;
    }
    CHECK(in_words == 5);
}

TEST_CASE("every dimension and every quantity of a structure has a rule") {
    std::set<std::string> fields;
    for (const Rule& r : rules()) {
        fields.emplace(r.field);
    }
    for (std::size_t i = 0; i < dimension_count; ++i) {
        const std::string key =
            std::string(input_table[i].group) + "." + std::string(input_table[i].field);
        INFO(key);
        CHECK(fields.count(key) == 1);
    }
    for (Slot k = 0; k < slot("flush_pass_count"); ++k) {
        INFO(slot_table[k].key);
        CHECK(fields.count(std::string(slot_table[k].key)) == 1);
    }
}

TEST_CASE("every inferred dimension names the rule it follows from, for its own field") {
    std::set<std::string> names;
    for (const Rule& r : rules()) {
        names.emplace(std::string(r.name) + "|" + std::string(r.field));
    }
    for (const Structure& s : {yardstick(), creek(), river(), pinal_creek()}) {
        const Inferred inferred = infer(s);
        for (std::size_t i = 0; i < dimension_count; ++i) {
            const Uncertain& u = inferred.dimensions[i];
            REQUIRE(u.origin != nullptr);
            const std::string rule = u.origin->source.substr(0, u.origin->source.find(':'));
            const std::string key =
                std::string(input_table[i].group) + "." + std::string(input_table[i].field);
            INFO(key << " from " << rule);
            CHECK((rule == "shape.absent" || names.count(rule + "|" + key) == 1));
        }
    }
}

TEST_CASE("verdicts and outlines have words") {
    CHECK(verdict_reason(Verdict::no_dimensions).find("item 49") != std::string_view::npos);
    CHECK(outline_name(Outline::steel_beam) == "steel beams");
    CHECK(outline_name(Outline::arch_soffit) == "vault or frame");
}
