#include "catch.hpp"
#include "scupper/structure.hpp"

#include <set>
#include <string_view>

using namespace scupper;

// Source: FHWA-PD-96-001 (1995), items 43A and 43B.
TEST_CASE("Materials and designs carry the code and the word of the guide") {
    CHECK(static_cast<int>(Material::steel_continuous) == 4);
    CHECK(static_cast<int>(Material::prestressed) == 5);
    CHECK(static_cast<int>(Design::truss_through) == 10);
    CHECK(static_cast<int>(Design::culvert) == 19);
    CHECK(material_name(Material::timber) == "wood or timber");
    CHECK(material_name(Material::unknown) == "unknown");
    CHECK(design_name(Design::culvert) == "culvert");
    CHECK(design_name(Design::channel_beam) == "channel beam");
    CHECK(design_name(Design::unknown) == "unknown");
}

TEST_CASE("Every design and material has a name of its own") {
    std::set<std::string_view> designs;
    for (int code = 0; code <= 22; ++code) {
        designs.insert(design_name(static_cast<Design>(code)));
    }
    CHECK(designs.size() == 23);
    std::set<std::string_view> materials;
    for (int code = 0; code <= 9; ++code) {
        materials.insert(material_name(static_cast<Material>(code)));
    }
    CHECK(materials.size() == 10);
}

// Source: FHWA-PD-96-001 (1995), item 43A: 2, 4 and 6 are the continuous kinds; 3 and 4 are steel.
TEST_CASE("Continuity and steel follow the code") {
    for (int code = 0; code <= 9; ++code) {
        const auto material = static_cast<Material>(code);
        CHECK(is_continuous(material) == (code == 2 || code == 4 || code == 6));
        CHECK(is_steel(material) == (code == 3 || code == 4));
    }
    CHECK_FALSE(is_continuous(Material::unknown));
}

TEST_CASE("A structure's key tells states apart") {
    Structure one;
    one.state = "02";
    one.id = "0176";
    Structure other = one;
    other.state = "11";
    CHECK(structure_key(one) == "02:0176");
    CHECK(structure_key(one) != structure_key(other));
}
