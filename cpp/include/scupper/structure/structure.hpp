#pragma once
// One structure as its record tells it. Plain data: what a reader found, nothing inferred.
//
// Items are those of FHWA-PD-96-001 (1995); B.xx.nn is an item of the national specification of 2022,
// which alone tells it.

#include "scupper/quantity.hpp"
#include "scupper/structure/codes.hpp"
#include "scupper/uncertain.hpp"

#include <cstdint>
#include <limits>
#include <string>
#include <vector>

namespace scupper {

/// The mark of a value the record does not give.
inline constexpr double not_recorded = std::numeric_limits<double>::quiet_NaN();
/// The mark of a whole-number item the record does not give.
inline constexpr int no_code = -1;

/// Recorded dimensions; a value the record does not give is NaN, never zero.
struct RecordedDimensions {
    Length<> length{not_recorded};           ///< [m] item 49, structure length
    Length<> longest_span{not_recorded};     ///< [m] item 48
    Length<> deck_width{not_recorded};       ///< [m] item 52, out to out; 0 is kept (under fill)
    Length<> roadway_width{not_recorded};    ///< [m] item 51, curb to curb; 0 is kept
    Length<> approach_width{not_recorded};   ///< [m] item 32, approach roadway with shoulders
    Length<> left_walk_width{not_recorded};  ///< [m] item 50A, left curb or sidewalk
    Length<> right_walk_width{not_recorded}; ///< [m] item 50B, right curb or sidewalk
    Angle<> skew{not_recorded};              ///< [rad] item 34; NaN where it varies (99)
    Length<> clearance_over{not_recorded};   ///< [m] item 53; NaN where none (99.99)
    Length<> clearance_under{not_recorded};  ///< [m] item 54B; NaN where none (0, 99.99)
    Length<> navigation_clearance{not_recorded}; ///< [m] item 39; NaN without navigation control
    Length<> navigation_width{not_recorded};     ///< [m] item 40; NaN without navigation control
    Length<> lift_clearance{not_recorded};  ///< [m] item 116, lift span down; NaN where none (0)
    Length<> detour{not_recorded};          ///< [m] item 19, detour length
    Length<> route_clearance{not_recorded}; ///< [m] item 10, on the route; NaN where none (99.99)
    Length<> route_width{not_recorded}; ///< [m] item 47, total horizontal; NaN where none (99.9)
    Length<> right_clearance_under{not_recorded}; ///< [m] item 55B; NaN where none (99.8, 99.9)
    Length<> left_clearance_under{not_recorded};  ///< [m] item 56; NaN where none (0, 99.8, 99.9)
    Length<> height{not_recorded}; ///< [m] B.G.13, the greatest, deck to ground or water (memory)
};

/// Recorded whole numbers and codes; no_code where the record does not give them.
struct RecordedCodes {
    Material material = Material::unknown;          ///< item 43A
    Design design = Design::unknown;                ///< item 43B
    Material approach_material = Material::unknown; ///< item 44A
    Design approach_design = Design::unknown;       ///< item 44B
    Below below = Below::unknown;                   ///< item 54A
    int main_spans = no_code;                       ///< [-] item 45
    int approach_spans = no_code;                   ///< [-] item 46
    int lanes_on = no_code;                         ///< [-] item 28A
    int lanes_under = no_code;                      ///< [-] item 28B
    int daily_traffic = no_code;                    ///< [vehicle/day] item 29
    int traffic_year = no_code;                     ///< [year] item 30
    int truck_percent = no_code;                    ///< [%] item 109
    int year_built = no_code;                       ///< [year] item 27
    int year_reconstructed = no_code;               ///< [year] item 106; no_code where never
    int service_on = no_code;                       ///< code of item 42A
    int service_under = no_code;                    ///< code of item 42B
    int functional_class = no_code;                 ///< code of item 26
    int traffic_direction = no_code;                ///< code of item 102
    int median = no_code;                           ///< code of item 33
    int flared = no_code;                           ///< code of item 35
    int owner = no_code;                            ///< code of item 22
    int maintained_by = no_code;                    ///< code of item 21
    int county = no_code;                           ///< FIPS county, item 3
    int navigation = no_code;                       ///< code of item 38 (1 = navigable)
    int route_prefix = no_code;                     ///< code of item 5B
    int service_level = no_code;                    ///< code of item 5C (7 = ramp)
    int route_direction = no_code;                  ///< code of item 5E
    int toll = no_code;                             ///< code of item 20
    int pier_protection = no_code;                  ///< code of item 111
    int border_percent = no_code;                   ///< [%] item 98B, of the neighbouring state
    int future_traffic = no_code;                   ///< [vehicle/day] item 114
    int future_traffic_year = no_code;              ///< [year] item 115
    int inspection_interval = no_code;              ///< [month] item 91
    int inspection_year = no_code;                  ///< [year] item 90, last routine inspection
    int inspection_month = no_code;                 ///< [-] month 1-12 of item 90
    int beam_lines = no_code;                       ///< [-] B.SP.03, main spans with widenings
    int approach_beam_lines = no_code;              ///< [-] B.SP.03, approach spans
    int pier_units = no_code;                       ///< [-] B.SB.02 of the piers
    int abutment_units = no_code;                   ///< [-] B.SB.02 of the abutments
    char posting = ' ';                             ///< code letter of item 41; blank if absent
    char posting_evaluation = ' ';                  ///< code of item 70; blank if absent
    char deck_type = ' ';                           ///< code of item 107; blank if absent
    char surface_type = ' ';                        ///< code of item 108A; blank if absent
    char deck_condition = ' ';                      ///< item 58, 0-9 or N
    char superstructure_condition = ' ';            ///< item 59, 0-9 or N
    char substructure_condition = ' ';              ///< item 60, 0-9 or N
    char channel_condition = ' ';                   ///< item 61, 0-9 or N
    char culvert_condition = ' ';                   ///< item 62, 0-9 or N
    char scour = ' ';                               ///< code of item 113
    char railing = ' ';                             ///< item 36A: 0, 1 or N
    char lateral_reference = ' ';                   ///< item 55A: H, R or N
    char temporary = ' ';                           ///< item 103: T; blank where it is none
    char national_length = ' ';                     ///< item 112: Y where above 6.1 m
    char parallel = ' ';                            ///< item 101: R, L or N
    char on_national_system = ' ';                  ///< item 104: 1 on the national highway system
    char design_load = ' ';                         ///< code of item 31
    char operating_method = ' ';                    ///< code of item 63: 6 to 8 give a factor
    char inventory_method = ' ';                    ///< code of item 65: 6 to 8 give a factor
    char beam_layout = ' ';                         ///< B.SP.06: A side by side, S apart, 1 single
    char approach_beam_layout = ' ';                ///< B.SP.06 of the approach spans
    char railing_condition = ' ';                   ///< B.C.05, 0-9 or N: no railings
    char bearing_condition = ' ';                   ///< B.C.07, 0-9 or N: no bearings
    char joint_condition = ' ';                     ///< B.C.08, 0-9 or N: no joints
};

/// A value somebody measured or an element record gives; it beats inference.
struct GivenValue {
    std::string key; ///< key of the input schema, for example "drain.count"
    Uncertain value; ///< in the SI unit of that field
};

/// One structure: who it is, what its record says, what somebody measured.
struct Structure {
    std::string state;         ///< two-digit FIPS state code
    std::string id;            ///< structure number without padding; unique only within its state
    std::string number;        ///< structure number as recorded, padding kept
    std::string carries;       ///< item 7, facility carried
    std::string crosses;       ///< item 6A, features intersected
    std::string location;      ///< item 9
    std::string district;      ///< item 2, highway agency district
    std::string route;         ///< item 5D, number of the route carried; empty where 00000
    std::string border_state;  ///< item 98A, two-digit FIPS code of the neighbouring state
    std::string border_number; ///< item 99, the number it has there
    std::string owner_code;    ///< B.CL.01, the owner as the specification of 2022 codes it
    std::string abutment_type; ///< B.SB.04 of the first abutments, code
    std::string pier_type;     ///< B.SB.04 of the first piers, code
    std::uint64_t line = 0;    ///< [-] line or record of the file it was read from, from 1
    double latitude = not_recorded;            ///< [deg] north positive
    double longitude = not_recorded;           ///< [deg] east positive
    double recorded_deck_area = not_recorded;  ///< [m2] the file's own DECK_AREA, for checks
    double irregular_deck_area = not_recorded; ///< [m2] B.G.15; NaN where the deck is regular
    double operating_rating = not_recorded;    ///< [-] item 64: t, or a factor by its method
    double inventory_rating = not_recorded;    ///< [-] item 66: t, or a factor by its method
    RecordedDimensions dimensions;             ///< [SI unit of each] as the record has them
    RecordedCodes codes;                       ///< [-] as the record has them
    std::vector<GivenValue> given;             ///< [SI unit of each, n] what somebody measured
};

/// The stable key of a structure for draws, joins and errors; a number alone is not unique.
///
/// Formula: state code, colon, structure number
/// @param structure [-] the record
/// @return [text] "state:id"
/// Range: any structure.
/// Errors: none.
/// Source: own convention
/// Verified by: tests/cpp/structure/test_codes.cpp
std::string structure_key(const Structure& structure);

} // namespace scupper
