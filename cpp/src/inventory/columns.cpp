#include "columns.hpp"

#include "scupper/error.hpp"
#include "scupper/inventory/read.hpp"
#include "split.hpp"
#include "text.hpp"

#include <algorithm>
#include <cctype>
#include <span>

namespace scupper::inventory::detail {

namespace {

struct Known {
    std::string_view name;
    bool necessary;        // without it no structure can be told or measured
    std::uint8_t decimals; // implied in the fixed form
    std::uint16_t first;   // character of the fixed form, from 1; 0 where it has no such column
    std::uint16_t width;
};

// Source: FHWA-PD-96-001 (1995), record format, for positions and implied decimals.
constexpr std::array<Known, column_count> known_columns{{
    {"STATE_CODE_001", true, 0, 1, 3},
    {"STRUCTURE_NUMBER_008", true, 0, 4, 15},
    {"RECORD_TYPE_005A", true, 0, 19, 1},
    {"ROUTE_PREFIX_005B", false, 0, 20, 1},
    {"SERVICE_LEVEL_005C", false, 0, 21, 1},
    {"ROUTE_NUMBER_005D", false, 0, 22, 5},
    {"DIRECTION_005E", false, 0, 27, 1},
    {"HIGHWAY_DISTRICT_002", false, 0, 28, 2},
    {"COUNTY_CODE_003", false, 0, 30, 3},
    {"FEATURES_DESC_006A", false, 0, 38, 24},
    {"FACILITY_CARRIED_007", false, 0, 63, 18},
    {"LOCATION_009", false, 0, 81, 25},
    {"MIN_VERT_CLR_010", false, 2, 106, 4},
    {"LAT_016", false, 0, 130, 8},
    {"LONG_017", false, 0, 138, 9},
    {"DETOUR_KILOS_019", false, 0, 147, 3},
    {"TOLL_020", false, 0, 150, 1},
    {"MAINTENANCE_021", false, 0, 151, 2},
    {"OWNER_022", false, 0, 153, 2},
    {"FUNCTIONAL_CLASS_026", false, 0, 155, 2},
    {"YEAR_BUILT_027", false, 0, 157, 4},
    {"TRAFFIC_LANES_ON_028A", false, 0, 161, 2},
    {"TRAFFIC_LANES_UND_028B", false, 0, 163, 2},
    {"ADT_029", false, 0, 165, 6},
    {"YEAR_ADT_030", false, 0, 171, 4},
    {"DESIGN_LOAD_031", false, 0, 175, 1},
    {"APPR_WIDTH_MT_032", true, 1, 176, 4},
    {"MEDIAN_CODE_033", false, 0, 180, 1},
    {"DEGREES_SKEW_034", false, 0, 181, 2},
    {"STRUCTURE_FLARED_035", false, 0, 183, 1},
    {"RAILINGS_036A", false, 0, 184, 1},
    {"NAVIGATION_038", false, 0, 189, 1},
    {"NAV_VERT_CLR_MT_039", false, 1, 190, 4},
    {"NAV_HORR_CLR_MT_040", false, 1, 194, 5},
    {"OPEN_CLOSED_POSTED_041", false, 0, 199, 1},
    {"SERVICE_ON_042A", false, 0, 200, 1},
    {"SERVICE_UND_042B", false, 0, 201, 1},
    {"STRUCTURE_KIND_043A", true, 0, 202, 1},
    {"STRUCTURE_TYPE_043B", true, 0, 203, 2},
    {"APPR_KIND_044A", false, 0, 205, 1},
    {"APPR_TYPE_044B", false, 0, 206, 2},
    {"MAIN_UNIT_SPANS_045", true, 0, 208, 3},
    {"APPR_SPANS_046", true, 0, 211, 4},
    {"HORR_CLR_MT_047", false, 1, 215, 3},
    {"MAX_SPAN_LEN_MT_048", true, 1, 218, 5},
    {"STRUCTURE_LEN_MT_049", true, 1, 223, 6},
    {"LEFT_CURB_MT_050A", false, 1, 229, 3},
    {"RIGHT_CURB_MT_050B", false, 1, 232, 3},
    {"ROADWAY_WIDTH_MT_051", true, 1, 235, 4},
    {"DECK_WIDTH_MT_052", true, 1, 239, 4},
    {"VERT_CLR_OVER_MT_053", false, 2, 243, 4},
    {"VERT_CLR_UND_REF_054A", false, 0, 247, 1},
    {"VERT_CLR_UND_054B", false, 2, 248, 4},
    {"LAT_UND_REF_055A", false, 0, 252, 1},
    {"LAT_UND_MT_055B", false, 1, 253, 3},
    {"LEFT_LAT_UND_MT_056", false, 1, 256, 3},
    {"DECK_COND_058", false, 0, 259, 1},
    {"SUPERSTRUCTURE_COND_059", false, 0, 260, 1},
    {"SUBSTRUCTURE_COND_060", false, 0, 261, 1},
    {"CHANNEL_COND_061", false, 0, 262, 1},
    {"CULVERT_COND_062", false, 0, 263, 1},
    {"OPR_RATING_METH_063", false, 0, 264, 1},
    {"OPERATING_RATING_064", false, 1, 265, 3},
    {"INV_RATING_METH_065", false, 0, 268, 1},
    {"INVENTORY_RATING_066", false, 1, 269, 3},
    {"STRUCTURAL_EVAL_067", false, 0, 272, 1},
    {"POSTING_EVAL_070", false, 0, 275, 1},
    {"DATE_OF_INSPECT_090", false, 0, 287, 4},
    {"INSPECT_FREQ_MONTHS_091", false, 0, 291, 2},
    {"OTHER_STATE_CODE_098A", false, 0, 336, 3},
    {"OTHER_STATE_PCNT_098B", false, 0, 339, 2},
    {"OTHR_STATE_STRUC_NO_099", false, 0, 341, 15},
    {"PARALLEL_STRUCTURE_101", false, 0, 357, 1},
    {"TRAFFIC_DIRECTION_102", false, 0, 358, 1},
    {"TEMP_STRUCTURE_103", false, 0, 359, 1},
    {"HIGHWAY_SYSTEM_104", false, 0, 360, 1},
    {"YEAR_RECONSTRUCTED_106", false, 0, 362, 4},
    {"DECK_STRUCTURE_TYPE_107", false, 0, 366, 1},
    {"SURFACE_TYPE_108A", false, 0, 367, 1},
    {"PERCENT_ADT_TRUCK_109", false, 0, 370, 2},
    {"PIER_PROTECTION_111", false, 0, 373, 1},
    {"BRIDGE_LEN_IND_112", false, 0, 374, 1},
    {"SCOUR_CRITICAL_113", false, 0, 375, 1},
    {"FUTURE_ADT_114", false, 0, 376, 6},
    {"YEAR_OF_FUTURE_ADT_115", false, 0, 382, 4},
    {"MIN_NAV_CLR_MT_116", false, 1, 386, 4},
    {"DECK_AREA", false, 0, 0, 0},
}};

bool same_name(std::string_view a, std::string_view b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](char x, char y) {
        return std::toupper(static_cast<unsigned char>(x)) == y;
    });
}

std::uint16_t position_of(std::string_view name, std::span<const std::string_view> fields,
                          std::string_view file) {
    std::size_t position = fields.size();
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (!same_name(trimmed(fields[i]), name)) {
            continue;
        }
        if (position != fields.size()) {
            throw FileError({"inventory.header", std::string(file) + ":1",
                             "column " + std::string(name) + " twice", "each column once"});
        }
        position = i;
    }
    return static_cast<std::uint16_t>(position);
}

void require_header(const Header& header, std::string_view row, std::string_view file) {
    std::string missing;
    bool any = false;
    for (std::size_t i = 0; i < column_count; ++i) {
        const bool here = header.position[i] != header.fields;
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

std::vector<std::string_view> fields_of(std::string_view row) {
    Splitter splitter;
    const std::size_t count = splitter.split(row, 0);
    const Fields fields = splitter.fields(row);
    std::vector<std::string_view> names(count);
    for (std::size_t i = 0; i < count; ++i) {
        names[i] = unquoted(fields.at(i));
    }
    return names;
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
    const std::vector<std::string_view> names = fields_of(row);
    Header header;
    header.fields = names.size();
    for (std::size_t i = 0; i < column_count; ++i) {
        header.position[i] = position_of(known_columns[i].name, names, file);
        if (header.position[i] == header.fields) {
            header.absent_columns.emplace_back(known_columns[i].name);
        }
    }
    require_header(header, row, file);
    return header;
}

const std::array<FixedPlace, column_count>& fixed_places() {
    static const std::array<FixedPlace, column_count> places = [] {
        std::array<FixedPlace, column_count> all{};
        for (std::size_t i = 0; i < column_count; ++i) {
            const Known& known = known_columns[i];
            if (known.first != 0) {
                const std::uint32_t begin = known.first - 1U;
                all[i] = {begin, begin + known.width};
            }
        }
        return all;
    }();
    return places;
}

Header fixed_header() {
    Header header;
    header.fields = column_count;
    for (std::size_t i = 0; i < column_count; ++i) {
        const bool here = known_columns[i].first != 0;
        header.position[i] = static_cast<std::uint16_t>(here ? i : column_count);
        header.decimals[i] = known_columns[i].decimals;
        if (!here) {
            header.absent_columns.emplace_back(known_columns[i].name);
        }
    }
    return header;
}

} // namespace scupper::inventory::detail

namespace scupper::inventory {

std::vector<std::string> known_columns() {
    std::vector<std::string> names;
    for (const auto& known : detail::known_columns) {
        names.emplace_back(known.name);
    }
    return names;
}

} // namespace scupper::inventory
