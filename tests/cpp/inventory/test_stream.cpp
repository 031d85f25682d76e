// An inventory read in pieces says what it says when read at once.

#include "catch.hpp"
#include "made_up.hpp"
#include "scupper/error.hpp"
#include "scupper/json.hpp"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <string>
#include <vector>

using namespace scupper;
using scupper::inventory::BlockReader;
using scupper::inventory::FileReader;
using scupper::inventory::Inventory;

namespace {

std::vector<std::string> told(const Inventory& inventory) {
    std::vector<std::string> all;
    for (const Structure& s : inventory.structures) {
        all.push_back(json::write_structure(s));
    }
    for (const auto& r : inventory.rejected) {
        all.push_back(where(inventory, r) + r.state + r.structure + r.reason + r.found);
    }
    for (const auto& d : inventory.doubts) {
        all.push_back(where(inventory, d) + d.structure + d.reason + d.found);
    }
    std::sort(all.begin(), all.end());
    return all;
}

std::vector<Inventory> pieces(const std::string& text, std::size_t most, std::size_t block) {
    BlockReader reader("made_up.txt", most);
    std::vector<Inventory> all;
    for (std::size_t at = 0; at < text.size();) {
        at += reader.feed(std::string_view(text).substr(at, block));
        if (reader.full()) {
            all.push_back(reader.take());
        }
    }
    reader.finish();
    all.push_back(reader.take());
    return all;
}

std::vector<std::string> told(const std::vector<Inventory>& pieces) {
    std::vector<std::string> all;
    for (const Inventory& piece : pieces) {
        CHECK(made_up::adds_up(piece));
        for (std::string& text : told(piece)) {
            all.push_back(std::move(text));
        }
    }
    std::sort(all.begin(), all.end());
    return all;
}

std::string path_of(const char* name) {
    return std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name;
}

} // namespace

TEST_CASE("Blocks of any length and pieces of any size read alike") {
    for (const char* name : {"dc_2019_part.txt", "dc_2019_part_fixed.txt", "al_2013_part.csv"}) {
        const std::string text = made_up::sample(name);
        const auto whole = told(made_up::read(text));
        for (const std::size_t block : {1U, 7U, 63U, 64U, 65U, 1000U, 100000U}) {
            for (const std::size_t most : {1U, 7U, 1000U}) {
                INFO(name << " blocks of " << block << ", pieces of " << most);
                CHECK(told(pieces(text, most, block)) == whole);
            }
        }
    }
}

TEST_CASE("No piece holds more records than it may") {
    const auto all = pieces(made_up::sample("dc_2019_part.txt"), 7, 4096);
    CHECK(all.size() == 6); // 40 records
    for (const Inventory& piece : all) {
        CHECK(piece.rows <= 7);
        CHECK(piece.files == std::vector<std::string>{"made_up.txt"});
    }
}

TEST_CASE("A second record is told although the first was handed over long ago") {
    const std::string first = made_up::row();
    const std::string text =
        made_up::file({first, made_up::row({{"STRUCTURE_NUMBER_008", "43"}}), first,
                       made_up::row({{"ADT_029", "7"}}), made_up::row({{"STATE_CODE_001", "02"}})});
    const auto all = pieces(text, 1, 50);
    REQUIRE(all.size() >= 5);
    CHECK(all[2].rejected.at(0).reason == "the same record again");
    CHECK(all[2].rejected.at(0).found == "first on line 2");
    CHECK(all[3].rejected.at(0).reason == "second record of the same structure");
    CHECK(all[4].structures.size() == 1); // of another state
    CHECK(told(all) == told(made_up::read(text)));
}

TEST_CASE("A file is read piece by piece to its end") {
    const auto path = path_of("ak_2019_part.txt");
    FileReader reader(path, 15);
    std::vector<std::size_t> sizes;
    std::vector<Inventory> all;
    while (std::optional<Inventory> piece = reader.next()) {
        sizes.push_back(piece->structures.size());
        all.push_back(std::move(*piece));
    }
    CHECK(sizes == std::vector<std::size_t>{15, 15, 10});
    CHECK_FALSE(reader.next());
    CHECK(told(all) == told(inventory::read_inventory(path)));
    FileReader even(path, 20); // the last piece is full
    CHECK(even.next()->structures.size() == 20);
    CHECK(even.next()->structures.size() == 20);
    CHECK_FALSE(even.next());
}

TEST_CASE("Reading in pieces stops when asked, and an empty or absent file is refused") {
    FileReader reader(path_of("dc_2019_part.txt"), 5);
    CHECK_THROWS_AS(reader.next([](auto, auto) { return false; }), Interrupted);
    CHECK_THROWS_AS(FileReader("no/such/file.txt"), FileError);
    BlockReader empty("nothing");
    CHECK_THROWS_AS(empty.finish(), FileError);
}

TEST_CASE("A line without end does not grow the memory") {
    BlockReader reader("long");
    const std::string header = made_up::header() + "\n";
    reader.feed(header);
    const std::string block(100000, 'x');
    for (int i = 0; i < 100; ++i) {
        reader.feed(block);
    }
    reader.feed("\n" + made_up::row() + "\n");
    reader.finish();
    const Inventory inventory = reader.take();
    REQUIRE(inventory.rejected.size() == 1);
    CHECK(inventory.rejected[0].found == "10000000 bytes");
    CHECK(inventory.structures.size() == 1);
}
