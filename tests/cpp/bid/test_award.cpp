// Alternates, time, competition and how near an estimate was.
#include "bid/made_bids.hpp"
#include "scupper/bid/award.hpp"
#include "scupper/bid/daily_cost.hpp"
#include "scupper/error.hpp"
#include "scupper/quantity.hpp"

#include <cmath>

using namespace made;

namespace {

PriceTable with_alternates() {
    ItemList form = form_of({item("B", "LS", "1"), item("A1", "LS", "1"), item("O1", "LS", "1"),
                             item("A2", "EA", "2")});
    form.items[1].kind = form.items[3].kind = ItemKind::alternate;
    form.items[2].kind = ItemKind::optional;
    const BidSet set{
        form,
        {honest(form, "x", {"100", "30", "1", "-5"}), honest(form, "y", {"110", "15", "2", "10"})}};
    return price_table(form, check_bids(set, Governs::unit_price), nullptr);
}

} // namespace

TEST_CASE("who is low turns with the alternates taken") {
    PriceTable table = with_alternates();
    const std::vector<AwardStage> stages = award_stages(table);
    REQUIRE(stages.size() == 4);
    CHECK(stages[0].totals == Amounts{number("100"), number("110")});
    CHECK(stages[1].name == "base + A1");
    CHECK(stages[1].totals == Amounts{number("130"), number("125")});
    CHECK(stages[1].ranks == std::vector<std::size_t>{2, 1});
    CHECK(stages[2].totals == Amounts{number("120"), number("145")});
    CHECK(stages[3].name == "base + O1");
    CHECK(stages[3].ranks == std::vector<std::size_t>{1, 2});
    table.prices[1].reset();
    CHECK(award_stages(table)[1].ranks == std::vector<std::size_t>{0, 1});
    CHECK(award_stages(table)[0].ranks == std::vector<std::size_t>{1, 2});
}

TEST_CASE("days that are bid count at the cost of a day") {
    const Amounts totals{number("100000"), number("104000"), number("99000")};
    const Amounts days{number("30"), number("20"), std::nullopt};
    const Amounts sums = with_time(form_of({}), totals, days, number("500.005"));
    CHECK(sums == Amounts{number("115000.15"), number("114000.10"), std::nullopt});
    CHECK_THROWS_AS(with_time(form_of({}), totals, Amounts{number("-1")}, number("1")), InputError);
    CHECK_THROWS_AS(with_time(form_of({}), totals, days, number("-1")), InputError);
}

TEST_CASE("a day of closures costs what all closures cost over their number") {
    estimate::RoadUsers one;
    one.kind = closure::Kind::freeway_lane;
    one.closures = Count<>(2.0);
    one.closed = Time<>(4.0 * factor::hour);
    one.total = Amount<>(1000.0);
    one.start = 9;
    one.sources = {"value of a car's time: 20 USD/h"};
    one.cautions = {"usual hours"};
    estimate::RoadUsers other = one;
    other.closures = Count<>(1.0);
    other.closed = Time<>(7.0 * factor::hour);
    other.total = Amount<>(250.0);
    other.start = 7;
    other.stages = {other};
    const Currency usd = parse_currency("USD", "test");
    const std::vector all{one, other, estimate::RoadUsers{}};
    const DailyCost cost = daily_cost(all, usd);
    CHECK(to_text(cost.amount) == "416.67"); // 1,250 / 3
    CHECK(cost.days == 3.0);
    CHECK(to_text(daily_cost(all, usd, 2.5).amount) == "500.00"); // two closures in one day
    CHECK_THROWS_AS(daily_cost(all, usd, 0.0), InputError);
    CHECK(cost.structures == 2);
    CHECK(cost.closed.si() == Approx(5.0 * factor::hour)); // (2 x 4 + 1 x 7) / 3
    CHECK(cost.earliest == 7);
    CHECK(cost.latest == 9);
    CHECK(cost.sources == one.sources);
    CHECK(cost.cautions == one.cautions);

    other.total = Amount<>(std::nan(""));
    other.not_figured = {"No value of time is given."};
    try {
        daily_cost(std::vector{one, other}, usd);
        FAIL("a cost that is not known was counted");
    } catch (const InputError& e) {
        CHECK(e.found() == "No value of time is given.");
    }
    CHECK_THROWS_AS(daily_cost({}, usd), InputError);
}

TEST_CASE("competition: six bids within a fifth of the low one") {
    Amounts totals{number("100"), number("105"), number("110"), number("119"),
                   number("120"), std::nullopt,  number("121")};
    CHECK(competition(totals).within == std::array<std::size_t, 3>{2, 3, 5});
    CHECK_FALSE(competition(totals).excellent);
    totals[5] = number("120.00");
    CHECK(competition(totals).excellent);
}

TEST_CASE("an estimate is near within a tenth of the low bid, on half the projects") {
    using Projects = std::vector<std::pair<Decimal, Decimal>>;
    const Projects half{{number("110"), number("100")}, {number("110.01"), number("100")}};
    CHECK(estimate_accuracy(half).near == 1);
    CHECK(estimate_accuracy(half).met);
    const Projects third{half[0], half[1], {number("89"), number("100")}};
    CHECK_FALSE(estimate_accuracy(third).met);
    CHECK_FALSE(estimate_accuracy({}).met);
}
