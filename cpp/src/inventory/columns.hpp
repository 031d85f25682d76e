#pragma once
// The columns the model reads, by their name in the file.

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace scupper::inventory::detail {

/// The columns this reader knows, in the order of their items.
enum class Column : std::uint8_t {
    state,
    number,
    record_type,
    route_prefix,
    service_level,
    route,
    route_direction,
    district,
    county,
    crosses,
    carries,
    location,
    route_clearance,
    latitude,
    longitude,
    detour,
    toll,
    maintained_by,
    owner,
    functional_class,
    year_built,
    lanes_on,
    lanes_under,
    daily_traffic,
    traffic_year,
    design_load,
    approach_width,
    median,
    skew,
    flared,
    railing,
    navigation,
    navigation_clearance,
    navigation_width,
    posting,
    service_on,
    service_under,
    material,
    design,
    approach_material,
    approach_design,
    main_spans,
    approach_spans,
    route_width,
    longest_span,
    length,
    left_walk,
    right_walk,
    roadway_width,
    deck_width,
    clearance_over,
    below,
    clearance_under,
    lateral_reference,
    right_clearance_under,
    left_clearance_under,
    deck_condition,
    superstructure_condition,
    substructure_condition,
    channel_condition,
    culvert_condition,
    operating_method,
    operating_rating,
    inventory_method,
    inventory_rating,
    structural_evaluation,
    posting_evaluation,
    inspected,
    inspection_interval,
    border_state,
    border_percent,
    border_number,
    parallel,
    traffic_direction,
    temporary,
    national_system,
    year_reconstructed,
    deck_type,
    surface_type,
    truck_percent,
    pier_protection,
    national_length,
    scour,
    future_traffic,
    future_traffic_year,
    lift_clearance,
    deck_area,
};
inline constexpr std::size_t column_count = static_cast<std::size_t>(Column::deck_area) + 1;

/// The name of a column as the published header rows spell it [text].
std::string_view column_name(Column column);

/// Where each known column stands in the rows of a file.
struct Header {
    std::array<std::uint16_t, column_count> position{}; ///< [-] field of the row; `fields`: absent
    std::array<std::uint8_t, column_count> decimals{};  ///< [-] implied where no point is written
    std::size_t fields = 0;                             ///< [-] fields of every row
    std::vector<std::string> absent_columns;            ///< known columns the file lacks

    bool has(Column column) const { return at(column) < fields; }
    std::uint16_t at(Column column) const { return position[static_cast<std::size_t>(column)]; }
    std::uint8_t implied(Column column) const { return decimals[static_cast<std::size_t>(column)]; }
};

/// Finds the columns in a header row; throws FileError where it cannot serve.
Header read_header(std::string_view row, std::string_view file);

/// Where a column stands in the fixed form: its first character from 0, and the one after its last.
struct FixedPlace {
    std::uint32_t begin = 0;
    std::uint32_t end = 0; ///< [-] 0 where the fixed form has no such column
};
/// The places of the known columns, in their order [character].
const std::array<FixedPlace, column_count>& fixed_places();
/// The header that the fixed form goes without: every column has the field of its own number.
Header fixed_header();

} // namespace scupper::inventory::detail
