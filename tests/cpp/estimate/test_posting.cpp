// The weight posting of a bridge against the loaded water truck, and what it costs.

#include "catch.hpp"
#include "estimate/structures.hpp"
#include "inventory/made_up.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <bit>
#include <cmath>
#include <cstdint>

using namespace scupper;
using namespace made_up;

namespace {

constexpr double ton = factor::short_ton;

Job job_with(AtPosted way, Sharing sharing = Sharing::pro_rata) {
    Job job = json::demo_job();
    job.posting = way;
    job.sharing = sharing;
    return job;
}

Structure posted(double tons, Structure s = creek_bridge()) {
    s.codes.posting = 'P';
    s.given = {{"posting.limit", certain(tons * ton, Basis::measured)}};
    return s;
}

Structure recorded(char posting, char evaluation) {
    Structure s = creek_bridge();
    s.codes.posting = posting;
    s.codes.posting_evaluation = evaluation;
    return s;
}

estimate::Estimate priced(const Structure& s, const Job& job = json::demo_job()) {
    return estimate::estimate(s, estimate::make_plan(job));
}

std::string reason(const Structure& s, const Job& job) {
    try {
        priced(s, job);
    } catch (const InputError& e) {
        CHECK(e.id() == "estimate.unpriced");
        return e.found();
    }
    return "priced";
}

bool holds_text(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos;
}

} // namespace

TEST_CASE("a full truck of 46,035 lb may not stand on a bridge posted for 15 short ton") {
    // Worked example by hand: 21,000 lb + 3,000 gal x 8.345 lb/gal; common practice.
    const auto plain = priced(creek_bridge());
    CHECK(plain.figure("truck.loaded_mass") / factor::pound == Approx(46035.0).epsilon(1e-3));
    const auto e = priced(posted(15.0));
    CHECK(e.resolved.model.posting == estimate::Posting::approach);
    // 18.3 m of deck: half of it and the set-back from the deck's end.
    const double hose = 18.3 / 2.0 + e.resolved.values[e.plan->inputs.at("posting.set_back", "")];
    CHECK(e.figure("approach_hose_length") == Approx(hose));
    CHECK(e.figure("nozzle[hand_line].flow") < plain.figure("nozzle[hand_line].flow"));
    CHECK(e.figure("deck_hand_line") > plain.figure("deck_hand_line"));
    CHECK(e.figure("operation[deck_hand_line].water") ==
          Approx(plain.figure("operation[deck_hand_line].water"))); // the same, for longer
    CHECK(e.figure("hose_lay") > 0.0);
    CHECK(e.figure("cost.total") > plain.figure("cost.total"));
    const auto warnings = estimate::posting_warnings(e);
    REQUIRE(warnings.size() == 2);
    INFO(warnings.front() << "; " << warnings.back());
    CHECK(holds_text(warnings.front(), "posted 15 short ton; loaded water truck 23.01 short ton"));
    CHECK(holds_text(warnings.front(), "ft more hose"));
    CHECK(holds_text(warnings.back(), "loaded haul truck 31 short ton: it stays on the approach"));
}

TEST_CASE("dirt is carried to a haul truck that a bridge does not bear, all of it and no other") {
    const auto strong = priced(posted(31.1));
    const auto weak = priced(posted(30.9));
    CHECK(strong.figure("carried_dirt_volume") == 0.0);
    CHECK(strong.figure("carry_dirt") == 0.0);
    CHECK(weak.figure("carried_dirt_volume") == Approx(weak.figure("debris.volume")));
    CHECK(weak.figure("carry_dirt") > 0.0);
    CHECK(weak.figure("cost.total") > strong.figure("cost.total"));
    CHECK(weak.figure("debris.mass") == strong.figure("debris.mass"));
    CHECK(holds_text(reason(posted(30.9), job_with(AtPosted::refuse)), "loaded haul truck"));
}

TEST_CASE("a bridge that carries the truck is priced to the bit as one that is not posted") {
    const auto plain = priced(creek_bridge());
    const auto strong = priced(posted(31.1));
    CHECK(strong.resolved.model.posting == estimate::Posting::carried);
    CHECK(std::bit_cast<std::uint64_t>(strong.figure("cost.total")) ==
          std::bit_cast<std::uint64_t>(plain.figure("cost.total")));
    CHECK(holds_text(estimate::posting_warnings(strong).front(), "it is within the limit"));
    CHECK(estimate::posting_warnings(plain).empty());
    const double just = plain.figure("truck.loaded_mass") / ton;
    CHECK(priced(posted(just)).resolved.model.posting == estimate::Posting::carried);
}

TEST_CASE("half a tank is what the limit leaves, and a lower limit is never cheaper") {
    const auto e = priced(posted(15.0), job_with(AtPosted::half_fill));
    CHECK(e.figure("truck.loaded_mass") == Approx(15.0 * ton));
    const double gallons = (30000.0 - 21000.0) / 8.345; // as in the worked example
    CHECK(e.figure("truck.fill") / factor::us_gallon == Approx(gallons).epsilon(1e-3));
    CHECK(
        holds_text(estimate::posting_warnings(e).front(), "its tank is filled to 1,079 gal only"));
    for (const Sharing sharing : {Sharing::pro_rata, Sharing::own_shifts, Sharing::one_closure}) {
        const Job job = job_with(AtPosted::half_fill, sharing);
        const Structure plain = overpass();
        double before = priced(plain, job).figure("cost.total");
        for (double tons = 31.5; tons > 11.8; tons -= 0.3) {
            const double now = priced(posted(tons, plain), job).figure("cost.total");
            INFO(tons);
            CHECK(now >= before * (1.0 - 1e-12));
            before = now;
        }
        CHECK(before > priced(plain, job).figure("cost.total"));
    }
}

TEST_CASE("from the approach is never cheaper than from the deck, and dearer the longer the deck") {
    double before = 0.0;
    for (const double length : {10.0, 30.0, 60.0, 120.0, 400.0}) {
        Structure s = overpass();
        s.dimensions.length = Length<>(length);
        const double more =
            priced(posted(15.0, s)).figure("cost.total") - priced(s).figure("cost.total");
        CHECK(more > before);
        before = more;
    }
}

TEST_CASE("what a posting forbids is not priced, and the reason names the weights") {
    const std::string refused = reason(posted(15.0), job_with(AtPosted::refuse));
    CHECK(holds_text(refused, "posted 15 short ton"));
    CHECK(holds_text(refused, "loaded water truck 23.01 short ton"));
    CHECK(holds_text(reason(posted(8.0), job_with(AtPosted::half_fill)), "too heavy"));
    Job flusher = json::demo_job();
    flusher.ways["deck_top"] = "flusher";
    CHECK(holds_text(reason(posted(15.0), flusher), "without hose"));
    CHECK(reason(posted(31.1), job_with(AtPosted::refuse)) == "priced");
    CHECK(holds_text(reason(recorded('K', '0'), json::demo_job()), "closed to all traffic"));
    Structure opened = posted(15.0);
    opened.codes.posting = 'K'; // the owner admits a truck, and says how heavy
    CHECK(reason(opened, json::demo_job()) == "priced");
    const std::vector<Structure> list{creek_bridge(), posted(15.0)};
    const auto plan = estimate::make_plan(job_with(AtPosted::refuse));
    const auto programme = estimate::estimate_all(list, plan);
    REQUIRE(programme.unpriced.size() == 1);
    CHECK(programme.unpriced.front().reason == refused);
}

TEST_CASE("from the record alone the limit is assumed, with its range and source") {
    const auto e = priced(recorded('P', '5'));
    const Uncertain& limit = e.resolved.uncertain[e.plan->inputs.at("posting.limit", "")];
    CHECK(limit.basis == Basis::assumed);
    CHECK(limit.guess.low == Approx(3.0 * ton));
    CHECK(limit.guess.likely == Approx(15.0 * ton));
    CHECK(limit.guess.high == Approx(20.0 * ton));
    REQUIRE(limit.origin != nullptr);
    CHECK(holds_text(limit.origin->source, "common practice"));
    CHECK(e.resolved.model.posting == estimate::Posting::approach);
    const std::string warning = estimate::posting_warnings(e).front();
    CHECK(holds_text(warning, "limit assumed: 13.83 short ton (3 short ton to 20 short ton)"));
    CHECK(priced(recorded('P', '4')).resolved.model.posting == estimate::Posting::carried);
    CHECK(priced(recorded('B', '0')).resolved.model.posting == estimate::Posting::approach);
    for (const char unlimited : {'A', 'D', 'E', 'G', 'R', ' '}) {
        CHECK(priced(recorded(unlimited, '5')).resolved.model.posting == estimate::Posting::none);
    }
    CHECK(estimate::posting_warnings(priced(recorded('R', '5'))).size() == 1);
    CHECK(estimate::posting_warnings(priced(recorded('B', '0'))).size() == 3);
}

TEST_CASE("the choice is held in every draw, and every figure explains itself under it") {
    for (const AtPosted way : {AtPosted::approach, AtPosted::half_fill}) {
        const auto e = priced(recorded('P', '5'), job_with(way)); // 3 to 20, truck 10.5 to 23
        for (const auto& range : estimate::ranges(e, {.draws = 200})) {
            INFO(range.key);
            CHECK(std::isfinite(range.low));
            CHECK(std::isfinite(range.high));
        }
        for (std::size_t i = 0; i < e.figures.size(); ++i) {
            const std::string& key = e.plan->figures.fields()[i].key;
            INFO(key);
            CHECK(std::bit_cast<std::uint64_t>(estimate::explain(e, key).steps.front().value) ==
                  std::bit_cast<std::uint64_t>(e.figures[i]));
        }
    }
}

TEST_CASE("half a tank explains itself down to the posted limit") {
    const auto e = priced(posted(15.0), job_with(AtPosted::half_fill));
    bool found = false;
    for (const DerivedStep& s : estimate::explain(e, "cost.total").steps) {
        found |= s.key == "posting.limit" && s.basis == "measured";
    }
    CHECK(found);
}

TEST_CASE("the word for posted bridges goes through the document both ways") {
    for (const std::string_view word : posting_names) {
        const std::string text = R"({"scupper_job": 1, "posting": ")" + std::string(word) +
                                 R"(", "service": {"deck_top": "rinse"}})";
        const Job job = json::read_job(text, "job", json::shipped_rates());
        CHECK(posting_names[static_cast<std::size_t>(job.posting)] == word);
        CHECK(holds_text(json::write_job(job), "\"posting\": \"" + std::string(word) + "\""));
    }
    try {
        json::read_job(R"({"scupper_job": 1, "posting": "half_full"})", "job",
                       json::shipped_rates());
        FAIL("should have been refused");
    } catch (const UnknownNameError& e) {
        CHECK(e.path() == "job.posting");
        CHECK(holds_text(e.allowed(), "\"half_fill\"?"));
    }
    const Job job =
        json::with_override(json::demo_job(), "C1", "posting.limit", "\"15 short_ton\"");
    CHECK(priced(creek_bridge(), job).resolved.model.posting == estimate::Posting::approach);
    CHECK(priced(overpass(), job).resolved.model.posting == estimate::Posting::none);
    const Job back = json::read_job(json::write_job(job), "job", json::shipped_rates());
    CHECK(priced(creek_bridge(), back).figures == priced(creek_bridge(), job).figures);
}

TEST_CASE("posted bridges of real files are priced or refused, none is lost") {
    std::size_t approach = 0;
    std::size_t closed = 0;
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        const auto inventory = read(sample(name));
        const auto programme = estimate::estimate_all(inventory.structures, demo_plan());
        CHECK(programme.priced.size() + programme.unpriced.size() == inventory.structures.size());
        for (const auto& u : programme.unpriced) {
            closed += holds_text(u.reason, "closed to all traffic") ? 1 : 0;
        }
        for (const std::size_t i : programme.priced) {
            const char code = inventory.structures[i].codes.posting;
            CHECK(code != 'K');
            const auto e = priced(inventory.structures[i]);
            const bool weak = e.resolved.model.posting == estimate::Posting::approach;
            CHECK(weak == (code == 'P' || code == 'B'));
            CHECK(estimate::posting_warnings(e).empty() == (code == 'A'));
            approach += weak ? 1 : 0;
        }
    }
    CHECK(closed == 3);    // item 41 = K, counted with Python's csv module
    CHECK(approach == 14); // P or B: 1 and 6 and 7, likewise
}
