#pragma once
// What a record says, field by field: names with unit, as tables show them.

#include "scupper/structure.hpp"

#include <array>
#include <string>
#include <string_view>

namespace scupper::python {

/// A dimension or another number; NaN where it is not recorded.
struct Measure {
    const char* name;
    const char* unit;
    double (*si)(const Structure&);
};

template <auto Member>
double dimension(const Structure& s) {
    return (s.dimensions.*Member).si();
}

template <auto Member>
double number(const Structure& s) {
    return s.*Member;
}

using D = RecordedDimensions;
inline constexpr std::array measures{
    Measure{"length_m", "m", dimension<&D::length>},
    Measure{"longest_span_m", "m", dimension<&D::longest_span>},
    Measure{"deck_width_m", "m", dimension<&D::deck_width>},
    Measure{"roadway_width_m", "m", dimension<&D::roadway_width>},
    Measure{"approach_width_m", "m", dimension<&D::approach_width>},
    Measure{"left_walk_width_m", "m", dimension<&D::left_walk_width>},
    Measure{"right_walk_width_m", "m", dimension<&D::right_walk_width>},
    Measure{"clearance_over_m", "m", dimension<&D::clearance_over>},
    Measure{"clearance_under_m", "m", dimension<&D::clearance_under>},
    Measure{"navigation_clearance_m", "m", dimension<&D::navigation_clearance>},
    Measure{"navigation_width_m", "m", dimension<&D::navigation_width>},
    Measure{"lift_clearance_m", "m", dimension<&D::lift_clearance>},
    Measure{"route_clearance_m", "m", dimension<&D::route_clearance>},
    Measure{"route_width_m", "m", dimension<&D::route_width>},
    Measure{"right_clearance_under_m", "m", dimension<&D::right_clearance_under>},
    Measure{"left_clearance_under_m", "m", dimension<&D::left_clearance_under>},
    Measure{"height_m", "m", dimension<&D::height>},
    Measure{"detour_km", "km", dimension<&D::detour>},
    Measure{"skew_deg", "deg", dimension<&D::skew>},
    Measure{"recorded_deck_area_m2", "m2", number<&Structure::recorded_deck_area>},
    Measure{"irregular_deck_area_m2", "m2", number<&Structure::irregular_deck_area>},
    Measure{"operating_rating", "1", number<&Structure::operating_rating>},
    Measure{"inventory_rating", "1", number<&Structure::inventory_rating>},
    Measure{"latitude", "1", number<&Structure::latitude>},
    Measure{"longitude", "1", number<&Structure::longitude>},
};

/// A whole number or a numeric code; no_code where it is not recorded.
struct CodeField {
    const char* name;
    int RecordedCodes::*member;
};

using C = RecordedCodes;
inline constexpr std::array code_fields{
    CodeField{"main_spans", &C::main_spans},
    CodeField{"approach_spans", &C::approach_spans},
    CodeField{"lanes_on", &C::lanes_on},
    CodeField{"lanes_under", &C::lanes_under},
    CodeField{"daily_traffic", &C::daily_traffic},
    CodeField{"traffic_year", &C::traffic_year},
    CodeField{"truck_percent", &C::truck_percent},
    CodeField{"year_built", &C::year_built},
    CodeField{"year_reconstructed", &C::year_reconstructed},
    CodeField{"service_on", &C::service_on},
    CodeField{"service_under", &C::service_under},
    CodeField{"functional_class", &C::functional_class},
    CodeField{"traffic_direction", &C::traffic_direction},
    CodeField{"median", &C::median},
    CodeField{"flared", &C::flared},
    CodeField{"owner", &C::owner},
    CodeField{"maintained_by", &C::maintained_by},
    CodeField{"county", &C::county},
    CodeField{"navigation", &C::navigation},
    CodeField{"route_prefix", &C::route_prefix},
    CodeField{"service_level", &C::service_level},
    CodeField{"route_direction", &C::route_direction},
    CodeField{"toll", &C::toll},
    CodeField{"pier_protection", &C::pier_protection},
    CodeField{"border_percent", &C::border_percent},
    CodeField{"future_traffic", &C::future_traffic},
    CodeField{"future_traffic_year", &C::future_traffic_year},
    CodeField{"inspection_interval", &C::inspection_interval},
    CodeField{"inspection_year", &C::inspection_year},
    CodeField{"inspection_month", &C::inspection_month},
    CodeField{"beam_lines", &C::beam_lines},
    CodeField{"approach_beam_lines", &C::approach_beam_lines},
    CodeField{"pier_units", &C::pier_units},
    CodeField{"abutment_units", &C::abutment_units},
};

/// Text; empty where it is not recorded.
struct TextField {
    const char* name;
    std::string (*get)(const Structure&);
};

template <auto Member>
std::string word(const Structure& s) {
    return s.*Member;
}

/// A blank code letter is no text.
template <auto Member>
std::string letter(const Structure& s) {
    const char code = s.codes.*Member;
    return code == ' ' ? std::string{} : std::string(1, code);
}

template <auto Member>
std::string material(const Structure& s) {
    return std::string(material_name(s.codes.*Member));
}

template <auto Member>
std::string design(const Structure& s) {
    return std::string(design_name(s.codes.*Member));
}

inline std::string below(const Structure& s) {
    static constexpr std::array words{"neither", "highway", "railroad", ""};
    return words.at(static_cast<std::size_t>(s.codes.below));
}

inline constexpr std::array text_fields{
    TextField{"structure_id", word<&Structure::id>},
    TextField{"state", word<&Structure::state>},
    TextField{"carries", word<&Structure::carries>},
    TextField{"crosses", word<&Structure::crosses>},
    TextField{"location", word<&Structure::location>},
    TextField{"district", word<&Structure::district>},
    TextField{"route", word<&Structure::route>},
    TextField{"border_state", word<&Structure::border_state>},
    TextField{"border_number", word<&Structure::border_number>},
    TextField{"owner_code", word<&Structure::owner_code>},
    TextField{"abutment_type", word<&Structure::abutment_type>},
    TextField{"pier_type", word<&Structure::pier_type>},
    TextField{"material", material<&C::material>},
    TextField{"design", design<&C::design>},
    TextField{"approach_material", material<&C::approach_material>},
    TextField{"approach_design", design<&C::approach_design>},
    TextField{"below", below},
    TextField{"posting", letter<&C::posting>},
    TextField{"posting_evaluation", letter<&C::posting_evaluation>},
    TextField{"deck_type", letter<&C::deck_type>},
    TextField{"surface_type", letter<&C::surface_type>},
    TextField{"deck_condition", letter<&C::deck_condition>},
    TextField{"superstructure_condition", letter<&C::superstructure_condition>},
    TextField{"substructure_condition", letter<&C::substructure_condition>},
    TextField{"channel_condition", letter<&C::channel_condition>},
    TextField{"scour", letter<&C::scour>},
    TextField{"railing", letter<&C::railing>},
    TextField{"lateral_reference", letter<&C::lateral_reference>},
    TextField{"temporary", letter<&C::temporary>},
    TextField{"national_length", letter<&C::national_length>},
    TextField{"culvert_condition", letter<&C::culvert_condition>},
    TextField{"parallel", letter<&C::parallel>},
    TextField{"on_national_system", letter<&C::on_national_system>},
    TextField{"design_load", letter<&C::design_load>},
    TextField{"operating_method", letter<&C::operating_method>},
    TextField{"inventory_method", letter<&C::inventory_method>},
    TextField{"beam_layout", letter<&C::beam_layout>},
    TextField{"approach_beam_layout", letter<&C::approach_beam_layout>},
    TextField{"railing_condition", letter<&C::railing_condition>},
    TextField{"bearing_condition", letter<&C::bearing_condition>},
    TextField{"joint_condition", letter<&C::joint_condition>},
};

} // namespace scupper::python
