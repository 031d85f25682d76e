// Quotes, entities and bytes within texts.

#include "catch.hpp"
#include "made_up.hpp"

#include <string>

using made_up::doubt_about;
using made_up::read_one;
using scupper::inventory::Inventory;

namespace {

std::string crossing(const std::string& field) {
    const Inventory inventory = read_one({{"FEATURES_DESC_006A", field}});
    return inventory.structures.empty() ? "rejected: " + inventory.rejected.at(0).reason
                                        : inventory.structures[0].crosses;
}

} // namespace

TEST_CASE("Texts lose their quotes and padding, and nothing else") {
    CHECK(crossing("'MILL CREEK           '") == "MILL CREEK");
    CHECK(crossing("MILL CREEK") == "MILL CREEK");
    CHECK(crossing("''").empty());
    CHECK(crossing("").empty());
    CHECK(crossing("'MILL, FALL & ICE CREEK'") == "MILL, FALL & ICE CREEK");
    CHECK(crossing("\"MILL, FALL\"") == "MILL, FALL");
    CHECK(crossing("\"'MILL, FALL'\"") == "MILL, FALL"); // saved again by a spreadsheet
}

TEST_CASE("An apostrophe within a text is read as one") {
    CHECK(crossing("'MILLER'S CREEK'") == "MILLER'S CREEK");
    CHECK(crossing("'MILLERS' CREEK'") == "MILLERS' CREEK");
    CHECK(crossing("'MILLER''S CREEK'") == "MILLER'S CREEK");
    CHECK(crossing("MILLER'S CREEK") == "MILLER'S CREEK");
    CHECK(crossing("'CREEK OF THE MILLERS''") == "CREEK OF THE MILLERS'");
}

TEST_CASE("An apostrophe that looks like the end of a text is told from it, with a doubt") {
    const Inventory inventory = read_one({{"FEATURES_DESC_006A", "'MILLERS', FALL CREEK'"}});
    REQUIRE(inventory.structures.size() == 1);
    CHECK(inventory.structures[0].crosses == "MILLERS', FALL CREEK");
    CHECK(crossing("'MILLERS', FALL, ICE CREEK'") == "MILLERS', FALL, ICE CREEK");
    CHECK(inventory.structures[0].carries == "ROUTE 7");
    CHECK(inventory.structures[0].dimensions.length.si() == 58.5);
    CHECK(doubt_about(inventory, "FEATURES_DESC_006A").find("quotes") == 0);
}

TEST_CASE("A text without its closing quote is read to the next comma, with a doubt") {
    const Inventory inventory = read_one({{"FEATURES_DESC_006A", "'MILL CREEK"}});
    REQUIRE(inventory.structures.size() == 1);
    CHECK(inventory.structures[0].crosses == "MILL CREEK");
    CHECK(inventory.structures[0].location == "2 KM N OF X");
    CHECK_FALSE(doubt_about(inventory, "FEATURES_DESC_006A").empty());
}

TEST_CASE("A surplus no stray quote explains is not guessed at") {
    CHECK(crossing("'A','B'") == "rejected: more fields than the header");
    CHECK(crossing("A, B") == "rejected: more fields than the header");
}

TEST_CASE("A surplus beside a text with quotes is not mended by merging other texts") {
    std::string row = made_up::row({{"FEATURES_DESC_006A", "'MILLERS', FALL CREEK'"}});
    const Inventory surplus = made_up::read(made_up::header() + "\n" + row + ",7\n");
    CHECK(surplus.structures.empty());
    CHECK(surplus.rejected.at(0).reason == "more fields than the header");
    row = made_up::row({{"FEATURES_DESC_006A", "'MILL CREEK"}});
    const Inventory open = made_up::read(made_up::header() + "\n" + row + ",7\n");
    CHECK(open.structures.empty());
}

TEST_CASE("A row of nothing but quotes comes to an end") {
    std::string quotes;
    for (int i = 0; i < 4000; ++i) {
        quotes += "','";
    }
    CHECK(crossing(quotes).substr(0, 8) == "rejected");
}

TEST_CASE("HTML entities are decoded once, a bare ampersand is kept") {
    CHECK(crossing("'C&amp;O CANAL'") == "C&O CANAL");
    CHECK(crossing("'C&O CANAL'") == "C&O CANAL");
    CHECK(crossing("'A & B; C'") == "A & B; C");
    CHECK(crossing("'MILLER&#39;S'") == "MILLER'S");
    CHECK(crossing("'&lt;A&gt; &quot;B&quot; &apos;'") == "<A> \"B\" '");
    CHECK(crossing("'CA&#xD1;ON'") == "CA\xC3\x91ON");
    CHECK(crossing("'&unknown; &#0; &#xD800; &#99999999999; &;'") ==
          "&unknown; &#0; &#xD800; &#99999999999; &;");
    CHECK(crossing("'END &'") == "END &");
    CHECK(crossing("'&amp;amp;'") == "&amp;");
}

TEST_CASE("Texts are valid UTF-8: other bytes are taken as Latin-1") {
    CHECK(crossing("'CA\xD1ON'") == "CA\xC3\x91ON");     // Latin-1
    CHECK(crossing("'CA\xC3\x91ON'") == "CA\xC3\x91ON"); // UTF-8 already
    CHECK(crossing("'\xE2\x82\xAC'") == "\xE2\x82\xAC");
    CHECK(crossing("'\xF0\x9F\x8C\x89'") == "\xF0\x9F\x8C\x89");
    CHECK(crossing("'\xC0\xAF'") == "\xC3\x80\xC2\xAF");                         // overlong
    CHECK(crossing("'\xED\xA0\x80'") == "\xC3\xAD\xC2\xA0\xC2\x80");             // surrogate
    CHECK(crossing("'X\xE2\x82'") == "X\xC3\xA2\xC2\x82");                       // cut off
    CHECK(crossing("'\xF5\x80\x80\x80'") == "\xC3\xB5\xC2\x80\xC2\x80\xC2\x80"); // too great
    const Inventory inventory = read_one({{"STRUCTURE_NUMBER_008", " 4\xD1 "}});
    CHECK(inventory.structures.at(0).id == "4\xC3\x91");
}
