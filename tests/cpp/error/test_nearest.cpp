#include "catch.hpp"
#include "scupper/error.hpp"

#include <algorithm>
#include <array>
#include <random>
#include <string>
#include <utility>
#include <vector>

using namespace scupper;

namespace {
std::string random_word(std::mt19937& engine) {
    std::string word(engine() % 7, ' ');
    for (char& c : word) {
        c = static_cast<char>('a' + engine() % 3);
    }
    return word;
}
} // namespace

TEST_CASE("edit distances of known pairs") {
    // kitten/sitting: V. Levenshtein's distance 3, a textbook pair (common practice).
    CHECK(edit_distance("kitten", "sitting") == 3);
    CHECK(edit_distance("bore", "bore") == 0);
    CHECK(edit_distance("bore", "BORE") == 0);
    CHECK(edit_distance("bore", "broe") == 1);
    CHECK(edit_distance("bore", "bor") == 1);
    CHECK(edit_distance("bore", "") == 4);
    // Optimal string alignment edits no part twice: 3 here, where free transposition needs 2
    // (L. Boytsov 2011, 1.1; pair from memory).
    CHECK(edit_distance("ca", "abc") == 3);
}

TEST_CASE("edit distance is symmetric, bounded by length, and zero only for equal words") {
    std::mt19937 engine(7);
    for (int i = 0; i < 2000; ++i) {
        const std::string a = random_word(engine);
        const std::string b = random_word(engine);
        const int distance = edit_distance(a, b);
        const auto longest = static_cast<int>(std::max(a.size(), b.size()));
        const auto shortest = static_cast<int>(std::min(a.size(), b.size()));
        REQUIRE(distance == edit_distance(b, a));
        REQUIRE(distance <= longest);
        REQUIRE(distance >= longest - shortest);
        REQUIRE((distance == 0) == (a == b));
    }
}

TEST_CASE("one removed letter is one step") {
    std::mt19937 engine(11);
    for (int i = 0; i < 500; ++i) {
        const std::string word = random_word(engine) + "x";
        std::string shorter = word;
        shorter.erase(engine() % word.size(), 1);
        REQUIRE(edit_distance(word, shorter) == 1);
    }
}

TEST_CASE("an entry is found by its name, and an unknown one is refused with the nearest") {
    const std::vector<std::string> list{"gutter", "girder"};
    const auto itself = [](const std::string& name) { return name; };
    CHECK(&entry_of(list, itself, "girder", "test.name", "here", "list") == &list[1]);
    for (const auto& [wrong, allowed] :
         {std::pair{"guter", "\"gutter\"?"}, std::pair{"parapet", "a name of the list"}}) {
        try {
            entry_of(list, itself, wrong, "test.name", "here", "list");
            FAIL("was accepted");
        } catch (const UnknownNameError& e) {
            CHECK(e.id() == "test.name");
            CHECK(e.path() == "here");
            CHECK(e.allowed() == allowed);
        }
    }
}

TEST_CASE("the nearest name is near, or there is none") {
    constexpr auto known = std::to_array<std::string_view>({"gutter", "girder", "drain", "joint"});
    CHECK(nearest_name("guter", known) == "gutter");
    CHECK(nearest_name("GIRDERS", known) == "girder");
    CHECK(nearest_name("darin", known) == "drain");
    CHECK(nearest_name("parapet", known).empty());
    CHECK(nearest_name("", known).empty());
    CHECK(nearest_name("drain", {}).empty());
}

TEST_CASE("among equally near names the first is taken") {
    constexpr auto known = std::to_array<std::string_view>({"cat", "car"});
    CHECK(nearest_name("cab", known) == "cat");
}
