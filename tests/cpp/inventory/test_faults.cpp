// What a record says that cannot be is found by the rules that records are read with.

#include "catch.hpp"
#include "made_up.hpp"

#include <algorithm>
#include <string>

using namespace scupper;
using scupper::inventory::Fault;
using scupper::inventory::faults_of;

namespace {

Structure sound() {
    return made_up::read_one({}).structures.at(0);
}

/// The reason of the fault of a member; empty where there is none.
std::string fault_of(const Structure& s, const void* field) {
    for (const Fault& fault : faults_of(s)) {
        if (fault.field == field) {
            return std::string(fault.reason) + (fault.contradiction ? " (kept)" : "");
        }
    }
    return {};
}

} // namespace

TEST_CASE("A sound record, an empty one and every sample record are within their bounds") {
    CHECK(faults_of(sound()).empty());
    CHECK(faults_of(Structure{}).empty());
    for (const char* name : {"dc_2019_part.txt", "ak_2019_part.txt", "al_2013_part.csv"}) {
        for (const Structure& s : made_up::read(made_up::sample(name)).structures) {
            for (const Fault& fault : faults_of(s)) {
                INFO(structure_key(s) << ": " << fault.reason);
                CHECK(fault.contradiction);
            }
        }
    }
}

TEST_CASE("What cannot be is told with the member it is about") {
    Structure s = sound();
    s.dimensions.length = Length<>(-1.0);
    CHECK(fault_of(s, &s.dimensions.length) == "outside 0.1 to 40000 m");
    s.dimensions.clearance_under = Length<>(1e9);
    CHECK(fault_of(s, &s.dimensions.clearance_under) == "outside 0 to 99.99 m");
    s.dimensions.skew = Angle<>(2.0);
    CHECK(fault_of(s, &s.dimensions.skew) == "outside 0 to 89 degrees");
    s.latitude = 91.0;
    CHECK_FALSE(fault_of(s, &s.latitude).empty());
    s.codes.main_spans = 0;
    CHECK(fault_of(s, &s.codes.main_spans) == "outside 1 to 997 spans");
    s.codes.functional_class = 3;
    CHECK(fault_of(s, &s.codes.functional_class) == "not a code of the guide");
    s.codes.owner = 99;
    CHECK(fault_of(s, &s.codes.owner) == "not a code of the guide (kept)");
    s.codes.inspection_month = 13;
    CHECK(fault_of(s, &s.codes.inspection_month) == "not a month");
    s.codes.deck_condition = 'X';
    CHECK(fault_of(s, &s.codes.deck_condition) == "not a code of the guide");
}

TEST_CASE("Contradictions are told with the member they are about") {
    Structure s = sound();
    s.dimensions.deck_width = Length<>(5.0);
    CHECK(fault_of(s, &s.dimensions.deck_width) == "narrower than the roadway (kept)");
    s.codes.year_built = 2000;
    s.codes.year_reconstructed = 1990;
    CHECK(fault_of(s, &s.codes.year_reconstructed) == "before the structure was built (kept)");
    s.recorded_deck_area = 1.0;
    CHECK(fault_of(s, &s.recorded_deck_area) == "not length times width (kept)");
}
