#include "columns.hpp"

#include "scupper/error.hpp"
#include "split.hpp"
#include "text.hpp"

#include <algorithm>
#include <cctype>
#include <span>

namespace scupper::inventory::detail {

namespace {

struct Known {
    std::string_view name;
    bool necessary; // without it no structure can be told or measured
};

constexpr std::array<Known, column_count> known_columns{{
    {"STATE_CODE_001", true},
    {"STRUCTURE_NUMBER_008", true},
    {"RECORD_TYPE_005A", true},
    {"HIGHWAY_DISTRICT_002", false},
    {"COUNTY_CODE_003", false},
    {"FEATURES_DESC_006A", false},
    {"FACILITY_CARRIED_007", false},
    {"LOCATION_009", false},
    {"LAT_016", false},
    {"LONG_017", false},
    {"DETOUR_KILOS_019", false},
    {"MAINTENANCE_021", false},
    {"OWNER_022", false},
    {"FUNCTIONAL_CLASS_026", false},
    {"YEAR_BUILT_027", false},
    {"TRAFFIC_LANES_ON_028A", false},
    {"TRAFFIC_LANES_UND_028B", false},
    {"ADT_029", false},
    {"YEAR_ADT_030", false},
    {"APPR_WIDTH_MT_032", true},
    {"MEDIAN_CODE_033", false},
    {"DEGREES_SKEW_034", false},
    {"STRUCTURE_FLARED_035", false},
    {"NAVIGATION_038", false},
    {"NAV_VERT_CLR_MT_039", false},
    {"OPEN_CLOSED_POSTED_041", false},
    {"SERVICE_ON_042A", false},
    {"SERVICE_UND_042B", false},
    {"STRUCTURE_KIND_043A", true},
    {"STRUCTURE_TYPE_043B", true},
    {"APPR_KIND_044A", false},
    {"APPR_TYPE_044B", false},
    {"MAIN_UNIT_SPANS_045", true},
    {"APPR_SPANS_046", true},
    {"MAX_SPAN_LEN_MT_048", true},
    {"STRUCTURE_LEN_MT_049", true},
    {"LEFT_CURB_MT_050A", false},
    {"RIGHT_CURB_MT_050B", false},
    {"ROADWAY_WIDTH_MT_051", true},
    {"DECK_WIDTH_MT_052", true},
    {"VERT_CLR_OVER_MT_053", false},
    {"VERT_CLR_UND_REF_054A", false},
    {"VERT_CLR_UND_054B", false},
    {"DECK_COND_058", false},
    {"SUPERSTRUCTURE_COND_059", false},
    {"SUBSTRUCTURE_COND_060", false},
    {"CULVERT_COND_062", false},
    {"STRUCTURAL_EVAL_067", false},
    {"POSTING_EVAL_070", false},
    {"DATE_OF_INSPECT_090", false},
    {"PARALLEL_STRUCTURE_101", false},
    {"TRAFFIC_DIRECTION_102", false},
    {"HIGHWAY_SYSTEM_104", false},
    {"YEAR_RECONSTRUCTED_106", false},
    {"DECK_STRUCTURE_TYPE_107", false},
    {"SURFACE_TYPE_108A", false},
    {"PERCENT_ADT_TRUCK_109", false},
    {"DECK_AREA", false},
}};

bool same_name(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::toupper(static_cast<unsigned char>(x)) == y;
    });
}

std::uint16_t position_of(std::string_view name, std::span<const std::string_view> fields,
                          std::string_view file) {
    std::uint16_t position = Header::absent;
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (!same_name(trimmed(fields[i]), name)) {
            continue;
        }
        if (position != Header::absent) {
            throw FileError({"inventory.header", std::string(file) + ":1",
                             "column " + std::string(name) + " twice", "each column once"});
        }
        position = static_cast<std::uint16_t>(i);
    }
    return position;
}

void require_header(const Header& header, std::string_view row, std::string_view file) {
    std::string missing;
    bool any = false;
    for (std::size_t i = 0; i < column_count; ++i) {
        const bool here = header.position[i] != Header::absent;
        any = any || here;
        if (known_columns[i].necessary && !here) {
            missing.append(missing.empty() ? "" : ", ").append(known_columns[i].name);
        }
    }
    if (!any) {
        throw FileError({"inventory.header", std::string(file) + ":1",
                         "no column name known in '" + excerpt(row) + "'",
                         "a header row of comma-separated names such as STRUCTURE_NUMBER_008"});
    }
    if (!missing.empty()) {
        throw FileError({"inventory.columns", std::string(file) + ":1", "no column " + missing,
                         "a header row that names them"});
    }
}

} // namespace

std::string_view column_name(Column column) {
    return known_columns[static_cast<std::size_t>(column)].name;
}

Header read_header(std::string_view row, std::string_view file) {
    if (row.size() > longest_row) {
        throw FileError({"inventory.header", std::string(file) + ":1",
                         "a line of " + std::to_string(row.size()) + " bytes",
                         "a header row of at most " + std::to_string(longest_row)});
    }
    std::vector<std::string_view> fields(row.size() + 1); // commas and the field after the last
    Header header;
    header.fields = Splitter().split(row, fields);
    const auto names = std::span<const std::string_view>(fields).first(header.fields);
    for (std::size_t i = 0; i < column_count; ++i) {
        header.position[i] = position_of(known_columns[i].name, names, file);
        if (header.position[i] == Header::absent) {
            header.absent_columns.emplace_back(known_columns[i].name);
        }
    }
    require_header(header, row, file);
    return header;
}

} // namespace scupper::inventory::detail
