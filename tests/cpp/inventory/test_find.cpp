#include "catch.hpp"
#include "made_up.hpp"
#include "scupper/error.hpp"

#include <string>
#include <vector>

using namespace scupper;
using scupper::inventory::Inventory;

namespace {

Inventory three_states() {
    const auto record = [](const std::string& state, const std::string& number) {
        return made_up::row({{"STATE_CODE_001", state}, {"STRUCTURE_NUMBER_008", number}});
    };
    return made_up::read(
        made_up::file({record("01", "0042"), record("02", "0042"), record("01", "17-B    "),
                       record("04", "   0099-A"), record("04", "01:7")}));
}

using Keys = std::vector<std::string>;

} // namespace

TEST_CASE("A structure is found by number, padding ignored, or by state and number") {
    const Inventory inventory = three_states();
    CHECK(inventory.find("17-B") == &inventory.structures[2]);
    CHECK(inventory.find("  0099-A ") == &inventory.structures[3]);
    CHECK(inventory.find("02:0042") == &inventory.structures[1]);
    CHECK(inventory.find("01: 17-B") == &inventory.structures[2]);
    CHECK(inventory.find("01:7") == &inventory.structures[4]); // the number itself has a colon
    CHECK(inventory.find("04:01:7") == &inventory.structures[4]);
    CHECK(inventory.find("0043") == nullptr);
    CHECK(inventory.find("03:0042") == nullptr);
    CHECK(inventory.find("") == nullptr);
    CHECK(Inventory().find("0042") == nullptr);
}

TEST_CASE("A number several states use is refused with the candidates") {
    try {
        three_states().find("0042");
        FAIL("no error");
    } catch (const InputError& error) {
        CHECK(error.id() == "inventory.ambiguous");
        CHECK(error.allowed() == "01:0042 or 02:0042");
    }
}

TEST_CASE("Near misses name what was probably meant, the nearest first") {
    const Inventory inventory = three_states();
    CHECK(inventory.near_misses("17B") == Keys{"01:17-B"});
    CHECK(inventory.near_misses("42") == Keys{"01:0042", "02:0042"}); // zeros dropped
    CHECK(inventory.near_misses("02:42").front() == "02:0042");
    CHECK(inventory.near_misses("0024", 1) == Keys{"01:0042"}); // digits swapped
    CHECK(inventory.near_misses("nothing like it").empty());
    CHECK(inventory.near_misses("").empty());
}

TEST_CASE("Structures added later are found after indexing again") {
    Inventory inventory = three_states();
    Structure added;
    added.state = "05";
    added.id = "NEW";
    inventory.structures.push_back(added);
    inventory.reindex();
    CHECK(inventory.find("NEW") == &inventory.structures.back());
    inventory.structures.clear();
    CHECK(inventory.find("NEW") == nullptr); // a stale index answers nothing wrong
}
