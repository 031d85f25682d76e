// Alternates, time, competition and how near an estimate was.
#include "bid/made_bids.hpp"
#include "scupper/bid/award.hpp"
#include "scupper/error.hpp"

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
