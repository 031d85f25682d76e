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
    district,
    county,
    crosses,
    carries,
    location,
    latitude,
    longitude,
    detour,
    maintained_by,
    owner,
    functional_class,
    year_built,
    lanes_on,
    lanes_under,
    daily_traffic,
    traffic_year,
    approach_width,
    median,
    skew,
    flared,
    navigation,
    navigation_clearance,
    posting,
    service_on,
    service_under,
    material,
    design,
    approach_material,
    approach_design,
    main_spans,
    approach_spans,
    longest_span,
    length,
    left_walk,
    right_walk,
    roadway_width,
    deck_width,
    clearance_over,
    below,
    clearance_under,
    deck_condition,
    superstructure_condition,
    substructure_condition,
    culvert_condition,
    structural_evaluation,
    posting_evaluation,
    inspected,
    parallel,
    traffic_direction,
    national_system,
    year_reconstructed,
    deck_type,
    surface_type,
    truck_percent,
    deck_area,
};
inline constexpr std::size_t column_count = static_cast<std::size_t>(Column::deck_area) + 1;

/// The name of a column as the published header rows spell it [text].
std::string_view column_name(Column column);

/// Where each known column stands in the rows of a file.
struct Header {
    static constexpr std::uint16_t absent = UINT16_MAX;
    std::array<std::uint16_t, column_count> position{}; ///< [-] field of the row, or absent
    std::size_t fields = 0;                             ///< [-] fields of every row
    std::vector<std::string> absent_columns;            ///< known columns the header lacks

    std::uint16_t at(Column column) const { return position[static_cast<std::size_t>(column)]; }
};

/// Finds the columns in a header row; throws FileError where it cannot serve.
Header read_header(std::string_view row, std::string_view file);

} // namespace scupper::inventory::detail
