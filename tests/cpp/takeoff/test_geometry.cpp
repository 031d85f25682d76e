// Published outlines, rules of geometry and element records against the formulas.

#include "records.hpp"

#include <numbers>

using namespace records;
using namespace scupper::literals;
using reference::Row;

namespace {

bool begins(const Row& row, const std::string& with) {
    return row.text("id").rfind(with, 0) == 0;
}

bool ends(const Row& row, const std::string& with) {
    const std::string& id = row.text("id");
    return id.size() >= with.size() && id.compare(id.size() - with.size(), with.size(), with) == 0;
}

double factor_of(std::string_view rule, double Rule::*member) {
    for (const Rule& r : rules()) {
        if (r.name == rule) {
            return r.*member;
        }
    }
    throw std::runtime_error("no rule " + std::string(rule));
}

} // namespace

TEST_CASE("rolled shapes: girth of the outline, webs of no thickness") {
    int checked = 0;
    for (const Row& row : rows("geometry")) {
        if (!begins(row, "W")) {
            continue;
        }
        INFO(row.text("id"));
        const Length<> depth = row["d_in"] * 1.0_in;
        const Length<> flange = row["bf_in"] * 1.0_in;
        const double web = 2.0 * row["tw_in"] / 12.0;
        // The published figure counts all four flange faces and the web's thickness.
        CHECK(girder_girth(depth, 1.0, 4, flange).in(1.0_ft) - web ==
              Approx(row.expected()).epsilon(1e-3));
        CHECK(flange.si() / depth.si() >= factor_of("girder.flange_width.steel", &Rule::low));
        CHECK(flange.si() / depth.si() <= factor_of("girder.flange_width.steel", &Rule::high));
        ++checked;
    }
    CHECK(checked == 10);
}

TEST_CASE("prestressed outlines lie within the girth the rules allow") {
    int checked = 0;
    for (const Row& row : rows("geometry")) {
        if (!ends(row, "perim_exposed")) {
            continue;
        }
        INFO(row.text("id"));
        const std::string json = row.text("inputs_json");
        double depth_in = 0.0; // the third number of every piece
        for (std::size_t at = json.find("[["); at != std::string::npos; at = json.find(",[", at)) {
            double top = 0.0, bottom = 0.0, height = 0.0;
            const char* piece = json.c_str() + json.find_first_of("0123456789", at);
            REQUIRE(std::sscanf(piece, "%lf,%lf,%lf", &top, &bottom, &height) == 3);
            depth_in += height;
            ++at;
        }
        const Length<> depth = depth_in * 1.0_in;
        const auto girth = [&](double Rule::*end, double face) {
            const double ratio = factor_of("girder.flange_width.prestressed", end);
            return girder_girth(depth, face, 3, ratio * depth).in(1.0_ft);
        };
        CHECK(girth(&Rule::low, 1.0) <= row.expected());
        CHECK(girth(&Rule::high, factor_of("girder.face_factor.flat", &Rule::high)) >=
              row.expected());
        ++checked;
    }
    CHECK(checked == 6);
}

TEST_CASE("traffic faces of safety shapes lie within the rule") {
    int checked = 0;
    for (const Row& row : rows("geometry")) {
        if (begins(row, "barrier_") || row.text("id") == "nbe_IA168_rail_coat") {
            INFO(row.text("id"));
            CHECK(row.expected() * factor::foot >= factor_of("parapet.face_height", &Rule::low));
            CHECK(row.expected() * factor::foot <= factor_of("parapet.face_height", &Rule::high));
            ++checked;
        }
    }
    CHECK(checked == 5);
}

TEST_CASE("bearings and joints of simple and continuous spans") {
    int checked = 0;
    for (const Row& row : rows("geometry")) {
        if (!begins(row, "count_") || begins(row, "count_piers")) {
            continue;
        }
        INFO(row.text("id"));
        const int spans = static_cast<int>(row["spans"]);
        const bool through = row.text("inputs_json").find("true") != std::string::npos;
        const Inferred i = infer(record({20.0 * spans, 11.0, 9.75, 20.0, spans},
                                        through ? Material::steel_continuous : Material::steel,
                                        Design::multi_beam, 1960));
        const bool joints = begins(row, "count_joints");
        const std::size_t index = joints ? dimension("joint.count") : dimension("bearing.per_line");
        CHECK(i.dimensions[index].guess.likely == row.expected());
        ++checked;
    }
    CHECK(checked == 12);
}

TEST_CASE("piers, skew, caps and columns") {
    for (const Row& row : rows("geometry")) {
        INFO(row.text("id"));
        if (begins(row, "count_piers")) {
            const int spans = static_cast<int>(row["spans"]);
            const Structure s = record({20.0 * spans, 11.0, 9.75, 20.0, spans}, Material::steel,
                                       Design::multi_beam, 1960);
            CHECK(likely_quantities(s)[slot("cap_count")] == row.expected());
        } else if (row.text("id") == "skew_length" || row.text("id") == "cap_len_from_nbi") {
            const std::string width = row.has("width_m") ? "width_m" : "W_m";
            const Length<> length = skew_length(Length<>(row[width]), row["skew_deg"] * 1.0_deg);
            CHECK(length.in(row.text("unit") == "m" ? 1.0_m : 1.0_ft) ==
                  Approx(row.expected()).epsilon(1e-3));
        } else if (row.text("id") == "cap_area") {
            const Length<> length = row["L_ft"] * 1.0_ft;
            const Length<> width = row["w_ft"] * 1.0_ft;
            const Area<> sides = upright_surface(length, width, row["d_ft"] * 1.0_ft);
            CHECK((sides + length * width).in(1.0_ft2) == Approx(row.expected()));
        } else if (row.text("id") == "column_area") {
            CHECK(column_surface(row["dia_ft"] * 1.0_ft, row["h_ft"] * 1.0_ft).in(1.0_ft2) ==
                  Approx(row.expected()).epsilon(1e-5));
        } else if (row.text("id") == "column_h_from_nbi") {
            const Inferred i = infer(yardstick());
            CHECK(i.dimensions[dimension("column.height")].guess.likely ==
                  Approx(row.expected() * factor::foot).epsilon(1e-3));
        }
    }
}

TEST_CASE("a ledge is the footing less what stands on it") {
    const double footing = (12.0 + 2.0 * 0.5) * (1.0 + 2.0 * 0.5);
    CHECK(ledge_surface(Length<>(12.0), Length<>(1.0), Length<>(0.5)).si() ==
          Approx(footing - 12.0 * 1.0));
    CHECK(ledge_surface(Length<>(12.0), Length<>(1.0), Length<>(0.0)).si() == 0.0);
}

TEST_CASE("ends at joints: one at an abutment, two at a pier") {
    const auto ends_of = [](double joints) { return number(ends_at_joints(Count<>(joints))); };
    CHECK(ends_of(0.0) == 0.0);
    CHECK(ends_of(1.0) == 1.0);
    CHECK(ends_of(2.0) == 2.0);
    CHECK(ends_of(4.0) == 6.0);
    CHECK(ends_of(3.5) == 5.0);
}

TEST_CASE("depth ratios start at the published least depth") {
    // From memory, as the rows say; the table's depth includes the deck where the rule's does not.
    struct Pair {
        const char* row;
        const char* rule;
    };
    for (const Pair p : {Pair{"depth_ratio_steel_I_portion_simple", "girder.depth.steel_simple"},
                         Pair{"depth_ratio_steel_I_portion_cont", "girder.depth.steel_continuous"},
                         Pair{"depth_ratio_truss", "girder.depth.truss"},
                         Pair{"depth_ratio_ps_adjacent_box_cont", "girder.depth.adjacent_box"}}) {
        for (const Row& row : rows("geometry")) {
            if (row.text("id") == p.row) {
                CHECK(factor_of(p.rule, &Rule::low) == Approx(row.expected()));
            }
        }
    }
}

TEST_CASE("every published least depth lies within the rule for its kind of girder") {
    // From memory, as the rows say. Slabs have no depth among the dimensions: it is not washed.
    const std::map<std::string, std::string> rule_of{
        {"ps_I_simple", "girder.depth.prestressed_simple"},
        {"ps_I_cont", "girder.depth.prestressed_continuous"},
        {"steel_comp_overall_simple", "girder.depth.steel_simple"},
        {"steel_comp_overall_cont", "girder.depth.steel_continuous"},
        {"steel_I_portion_simple", "girder.depth.steel_simple"},
        {"steel_I_portion_cont", "girder.depth.steel_continuous"},
        {"rc_T_simple", "girder.depth.tee_simple"},
        {"rc_T_cont", "girder.depth.tee_continuous"},
        {"rc_box_simple", "girder.depth.box_girder"},
        {"rc_box_cont", "girder.depth.box_girder"},
        {"ps_cip_box_simple", "girder.depth.box_girder"},
        {"ps_cip_box_cont", "girder.depth.box_girder"},
        {"ps_adjacent_box_simple", "girder.depth.adjacent_box"},
        {"ps_adjacent_box_cont", "girder.depth.adjacent_box"},
        {"truss", "girder.depth.truss"}};
    int checked = 0, slabs = 0;
    for (const Row& row : rows("geometry")) {
        const std::string start = "depth_ratio_";
        if (!begins(row, start)) {
            continue;
        }
        INFO(row.text("id"));
        const auto rule = rule_of.find(row.text("id").substr(start.size()));
        if (rule == rule_of.end()) {
            CHECK(row.text("id").find("slab") != std::string::npos);
            ++slabs;
            continue;
        }
        CHECK(row.expected() >= factor_of(rule->second, &Rule::low));
        CHECK(row.expected() <= factor_of(rule->second, &Rule::high));
        ++checked;
    }
    CHECK(checked == 15);
    CHECK(slabs == 2);
}

TEST_CASE("element records of one Arizona slab bridge") {
    const Structure s = pinal_creek();
    const Inferred i = infer(s);
    const Quantities<double> q = take_off(i.shape, likely(i));
    const double line = skew_length(Length<>(21.7), Angle<>(41.0 * factor::degree)).in(1.0_ft);
    const auto value = [](const char* id) {
        for (const Row& row : rows("geometry")) {
            if (row.text("id") == id) {
                return row.expected();
            }
        }
        throw std::runtime_error(id);
    };
    const double ft2 = factor::foot * factor::foot;
    CHECK(q[slot("deck_total_area")] / ft2 == Approx(value("nbe_AZ00036_38")).epsilon(0.003));
    CHECK(q[slot("cap_count")] * line == Approx(value("nbe_AZ00036_210")).epsilon(0.003));
    CHECK(2.0 * line == Approx(value("nbe_AZ00036_215")).epsilon(0.01));
    // All its piers are walls; the record makes that probable.
    CHECK(i.dimensions[dimension("pier.wall_share")].guess.likely > 0.5);
    CHECK(i.dimensions[dimension("pier.wall_share")].guess.high == 1.0);
    CHECK(q[slot("support_line_length")] / factor::foot ==
          Approx(2.0 * value("nbe_AZ00036_210") + value("nbe_AZ00036_215")).epsilon(0.005));
    // Metal rail and concrete rail are each reported along both edges.
    const double edges = 2.0 * 32.3 / factor::foot;
    for (const auto& [id, key] : {std::pair{"nbe_AZ00036_330", dimension("rail.share")},
                                  std::pair{"nbe_AZ00036_331", dimension("parapet.share")}}) {
        const double share = value(id) / edges;
        CHECK(i.dimensions[key].guess.low <= share);
        CHECK(i.dimensions[key].guess.high * 1.001 >= share);
    }
}

TEST_CASE("tributary widths of two Iowa bridges lie within the spacing rules") {
    for (const Row& row : rows("geometry")) {
        if (row.text("id") == "nbe_IA1270_deck_per_girder_ft") {
            CHECK(row.expected() * factor::foot >= factor_of("girder.spacing.steel", &Rule::low));
            CHECK(row.expected() * factor::foot <= factor_of("girder.spacing.steel", &Rule::high));
        } else if (row.text("id") == "nbe_IA168_deck_per_girder_ft") {
            CHECK(row.expected() * factor::foot >=
                  factor_of("girder.spacing.prestressed", &Rule::low));
            CHECK(row.expected() * factor::foot <=
                  factor_of("girder.spacing.prestressed", &Rule::high));
        }
    }
}
