// Element records as published, and everything a file can get wrong.
#include "catch.hpp"
#include "scupper/error.hpp"
#include "scupper/inventory.hpp"

#include <string>

using namespace scupper;
using namespace scupper::inventory;

namespace test_elements {

namespace {

ElementRecords sample(const std::string& name) {
    return read_elements(std::string(SCUPPER_TESTS_DIR) + "/data/inventory/" + name);
}

std::string record(const std::string& fields) {
    return "<FHWAELEMENT>\n <FHWAED>" + fields + "</FHWAED>\n</FHWAELEMENT>\n";
}

const char* const sound =
    "<STATE>04</STATE><STRUCNUM>00036</STRUCNUM><EN>300</EN>"
    "<TOTALQTY>100</TOTALQTY><CS1>60</CS1><CS2>40</CS2><CS3>0</CS3><CS4>0</CS4>";

} // namespace

TEST_CASE("the records of the published samples are read, each with its place") {
    const ElementRecords arizona = sample("nbe_2023_AZ_one.xml");
    REQUIRE(arizona.records.size() == 7);
    CHECK(arizona.rejected.empty());
    CHECK(arizona.doubts.empty());
    CHECK(arizona.records[0].state == "04");
    CHECK(arizona.records[0].structure == "00036");
    CHECK(arizona.records[0].element == 38);
    CHECK(arizona.records[0].total == 7558.0);
    CHECK(arizona.records[0].states[1] == 1200.0);
    CHECK(arizona.records[0].line == 3);
    CHECK(arizona.records[6].element == 515);
    CHECK(arizona.records[6].parent == 330);
    CHECK(sample("nbe_2023_AL.xml").records.size() == 10);
    CHECK(sample("nbe_2023_IA.xml").records.size() == 23);
}

TEST_CASE("the unit follows from the element's number (2014 specification, from memory)") {
    CHECK(element_unit(12) == ElementUnit::square_feet);
    CHECK(element_unit(107) == ElementUnit::feet);
    CHECK(element_unit(205) == ElementUnit::each);
    CHECK(element_unit(300) == ElementUnit::feet);
    CHECK(element_unit(515) == ElementUnit::square_feet);
    CHECK(element_unit(999) == ElementUnit::unknown);
    CHECK(element_name(331) == "reinforced concrete railing");
    CHECK(element_name(999).empty());
}

TEST_CASE("comments, blanks, attributes and a mark before the text change nothing") {
    const std::string odd = "\xEF\xBB\xBF<?xml version='1.0'?>\r\n<!-- <FHWAED> -->\n<FHWAELEMENT "
                            "xmlns='x'>\n<FHWAED a='b'>" +
                            std::string(sound) + "</FHWAED ></FHWAELEMENT>";
    const ElementRecords read = read_elements_text(odd, "odd.xml");
    REQUIRE(read.records.size() == 1);
    CHECK(read.records[0].line == 4);
    CHECK(read.records[0].total == 100.0);
}

TEST_CASE("what cannot be used is rejected with line and reason, and nothing else is lost") {
    const auto reason = [](const std::string& fields) {
        const ElementRecords read = read_elements_text(record(fields), "test.xml");
        REQUIRE(read.records.empty());
        REQUIRE(read.rejected.size() == 1);
        CHECK(read.rejected[0].line == 2);
        return read.rejected[0].reason;
    };
    CHECK(reason("<STRUCNUM>1</STRUCNUM><EN>300</EN><TOTALQTY>1</TOTALQTY>") ==
          "no state or no structure number");
    CHECK(reason("<STATE>04</STATE><STRUCNUM>1</STRUCNUM><EN>joint</EN><TOTALQTY>1</TOTALQTY>") ==
          "EN is no element number");
    CHECK(reason("<STATE>04</STATE><STRUCNUM>1</STRUCNUM><EN>300</EN><TOTALQTY>-5</TOTALQTY>") ==
          "TOTALQTY is no quantity");
    CHECK(reason("<STATE>04</STATE><STRUCNUM>1</STRUCNUM><EN>300</EN>") ==
          "TOTALQTY is no quantity");
    const std::string cut =
        "<FHWAELEMENT><FHWAED>" + std::string(sound) + "</FHWAED><FHWAED><STATE>04";
    const ElementRecords read = read_elements_text(cut, "cut.xml");
    CHECK(read.records.size() == 1);
    REQUIRE(read.rejected.size() == 1);
    CHECK(read.rejected[0].reason == "the last record is cut off");
    CHECK_THROWS_AS(read_elements_text("<html></html>", "page.html"), FileError);
    CHECK_THROWS_AS(read_elements_text("", "empty.xml"), FileError);
    CHECK_THROWS_AS(read_elements("no such file.xml"), FileError);
}

TEST_CASE("condition states that do not add up are kept and doubted") {
    const ElementRecords read = read_elements_text(
        record("<STATE>4</STATE><STRUCNUM>1</STRUCNUM><EN>300</EN><TOTALQTY>90</TOTALQTY>"
               "<CS1>60</CS1><CS2>40</CS2>"),
        "test.xml");
    REQUIRE(read.records.size() == 1);
    CHECK(read.records[0].state == "04"); // a leading zero was dropped
    REQUIRE(read.doubts.size() == 1);
    CHECK(read.doubts[0].kept);
}

} // namespace test_elements
