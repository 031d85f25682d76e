#include "catch.hpp"
#include "estimate/structures.hpp"
#include "scupper/bid.hpp"
#include "scupper/error.hpp"

#include <string>
#include <vector>

using namespace scupper;
using namespace made_up;

namespace {

std::vector<Structure> three() {
    std::vector<Structure> list{overpass(), creek_bridge(), counted_overpass()};
    list[2].id = list[2].number = "T3";
    return list;
}

/// The demo job with margins, so that something is spread.
std::shared_ptr<const estimate::Plan> priced_plan() {
    static const auto plan = [] {
        Job job = json::demo_job();
        for (const auto& [key, share] :
             {std::pair("margin.overhead", 0.12), std::pair("margin.profit", 0.08)}) {
            job.settings.push_back(make_setting(key, certain(share, Basis::given), {}));
        }
        return estimate::make_plan(job);
    }();
    return plan;
}

bid::ItemScheme shipped() {
    return json::read_item_list(json::shipped_item_list(), "pay_items.json");
}

bid::PayItems items_of(const bid::ItemScheme& list, const bid::ItemSettings& settings = {}) {
    const auto records = three();
    const auto programme = estimate::estimate_all(records, priced_plan());
    return bid::pay_items(programme, records, list, settings);
}

Decimal price_of_programme() {
    const auto programme = estimate::estimate_all(three(), priced_plan());
    for (std::size_t i = 0; i < programme.keys.size(); ++i) {
        if (programme.keys[i] == "cost.total") {
            return rounded_from_double(programme.totals[i], 2, "total");
        }
    }
    return {};
}

std::string refusal(const bid::ItemScheme& list, const bid::ItemSettings& settings = {}) {
    try {
        items_of(list, settings);
    } catch (const InputError& e) {
        return e.id() + ": " + e.found();
    }
    return "accepted";
}

bid::ItemRule& rule(bid::ItemScheme& list, const std::string& code) {
    for (bid::ItemRule& r : list.rules) {
        if (r.item.code == code) {
            return r;
        }
    }
    throw std::logic_error(code);
}

} // namespace

TEST_CASE("items add up to the estimate to the cent, whatever the way to pay") {
    const Decimal estimated = price_of_programme();
    for (const auto contract : {bid::Contract::by_quantity, bid::Contract::by_structure}) {
        for (const char* mobilization : {"item", "spread"}) {
            for (const char* traffic : {"lump_sum", "day"}) {
                bid::ItemSettings settings;
                settings.contract = contract;
                settings.options = {{"mobilization", mobilization}, {"traffic", traffic}};
                settings.draws.draws = 16;
                const auto items = items_of(shipped(), settings);
                Decimal amounts;
                Decimal extensions;
                for (const auto& item : items.items) {
                    amounts = amounts + item.amount;
                    extensions = extensions + item.extension;
                    CHECK(item.extension ==
                          extension(Money(item.unit_price, items.currency), item.item.quantity)
                              .amount());
                    CHECK(item.item.low <= item.item.quantity);
                    CHECK(item.item.quantity <= item.item.high);
                    CHECK(item.unit_price > Decimal());
                }
                CHECK(amounts == estimated);
                CHECK(items.estimated == estimated);
                CHECK(items.total == extensions);
                CHECK(items.residue == extensions - estimated);
            }
        }
    }
}

TEST_CASE("what rounding leaves goes into the lump sum that is named for it") {
    const auto items = items_of(shipped());
    CHECK(items.rounding == "MOB");
    CHECK(items.residue == Decimal());
    bid::ItemScheme list = shipped();
    list.rounding.clear();
    const auto shown = items_of(list);
    CHECK(shown.rounding.empty());
    Decimal differences;
    for (const auto& item : shown.items) {
        differences = differences + item.difference;
    }
    CHECK(shown.residue == differences);
}

TEST_CASE("every cost line is in one item or spread") {
    const auto items = items_of(shipped());
    double sum = 0.0;
    for (const auto& item : items.items) {
        double lines = 0.0;
        for (const auto& line : item.lines) {
            lines += line.amount;
        }
        CHECK(lines == Approx(item.direct));
        sum += lines;
    }
    for (const auto& line : items.spread) {
        sum += line.amount;
    }
    CHECK(sum == Approx(to_double(items.estimated)).margin(0.01));
    CHECK_FALSE(items.spread.empty());
}

TEST_CASE("a lump price for each structure stands beside what is contract-wide") {
    bid::ItemSettings settings;
    settings.contract = bid::Contract::by_structure;
    const auto items = items_of(shipped(), settings);
    REQUIRE(items.items.size() == 4);
    CHECK(items.items[0].item.code == "MOB");
    CHECK(items.items[1].item.code == "Y1");
    CHECK(items.items[2].item.code == "C1");
    CHECK(items.items[3].item.code == "T3");
    CHECK(items.items[2].amount < items.items[1].amount);
}

TEST_CASE("without an item beside them, lump prices are the estimates of their structures") {
    bid::ItemSettings settings;
    settings.contract = bid::Contract::by_structure;
    settings.options = {{"mobilization", "spread"}};
    const auto items = items_of(shipped(), settings);
    const auto records = three();
    REQUIRE(items.items.size() == records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        const auto alone = estimate::estimate(records[i], priced_plan());
        CHECK(to_double(items.items[i].extension) ==
              Approx(alone.figure("cost.total")).margin(0.01));
    }
}

TEST_CASE("what is left over and what is claimed twice is refused by name") {
    bid::ItemScheme list = shipped();
    rule(list, "DRAIN-OPEN").covers = {{{"joint"}, {}, {}}};
    CHECK(refusal(list).find("bid.left_over: left over: drain/") == 0);
    list = shipped();
    rule(list, "JOINT-CLEAN").covers.push_back({{"drain"}, {}, {}});
    CHECK(refusal(list).find("bid.twice: counted twice: drain/") == 0);
    CHECK(refusal(list).find("by DRAIN-OPEN and JOINT-CLEAN") != std::string::npos);
    // A closer name is no second claim.
    rule(list, "JOINT-CLEAN").covers.back() = {{"drain"}, {"drain_clogged"}, {}};
    rule(list, "JOINT-CLEAN").driver = "joint_length";
    CHECK(refusal(list) == "accepted");
}

TEST_CASE("an item list that cannot be used says why") {
    bid::ItemScheme list = shipped();
    rule(list, "DRAIN-OPEN").item.unit = "SF";
    CHECK(refusal(list) == "bid.dimension: \"drain_count\"");
    bid::ItemSettings settings;
    settings.options = {{"mobilization", "twice"}};
    CHECK(refusal(shipped(), settings) == "bid.option: \"twice\"");
    settings.options = {{"colour", "red"}};
    CHECK(refusal(shipped(), settings) == "bid.option: \"colour\"");

    const auto fault = [](const std::string& items) {
        try {
            json::read_item_list("{\"scupper_items\": 1,\n \"items\": [\n" + items + "]}", "own");
        } catch (const InputError& e) {
            return e.id() + " at " + e.path();
        }
        return std::string("accepted");
    };
    const std::string covers = R"("covers": [{"component": "drain"}])";
    CHECK(fault(R"({"code": "D", "description": "d", "unit": "LS", )" + covers + "}") ==
          "accepted");
    CHECK(fault(R"({"code": "D", "description": "d", "unit": "ACRE", )" + covers + "}")
              .find("bid.unit at own:3") == 0);
    CHECK(fault(R"({"code": "D", "description": "d", "unit": "EA", )" + covers + "}")
              .find("bid.driver") == 0);
    CHECK(fault(R"({"code": "D", "description": "d", "unit": "LS", "covers": []})")
              .find("bid.covers") == 0);
}
