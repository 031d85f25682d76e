#pragma once
// Every field of a record with its key, for whatever writes or reads records.

#include "scupper/quantity.hpp"
#include "scupper/structure.hpp"

#include <array>
#include <string>
#include <string_view>

namespace scupper::json::detail::fields {

template <class Owner, class T>
struct Member {
    const char* key;
    T Owner::*member;
};

using Text = Member<Structure, std::string>;
inline constexpr std::array texts{Text{"state", &Structure::state},
                                  Text{"id", &Structure::id},
                                  Text{"number", &Structure::number},
                                  Text{"carries", &Structure::carries},
                                  Text{"crosses", &Structure::crosses},
                                  Text{"location", &Structure::location},
                                  Text{"district", &Structure::district},
                                  Text{"route", &Structure::route},
                                  Text{"border_state", &Structure::border_state},
                                  Text{"border_number", &Structure::border_number},
                                  Text{"owner_code", &Structure::owner_code},
                                  Text{"abutment_type", &Structure::abutment_type},
                                  Text{"pier_type", &Structure::pier_type}};

using D = RecordedDimensions;
using Distance = Member<D, Length<>>;
inline constexpr std::array lengths{Distance{"length", &D::length},
                                    Distance{"longest_span", &D::longest_span},
                                    Distance{"deck_width", &D::deck_width},
                                    Distance{"roadway_width", &D::roadway_width},
                                    Distance{"approach_width", &D::approach_width},
                                    Distance{"left_walk_width", &D::left_walk_width},
                                    Distance{"right_walk_width", &D::right_walk_width},
                                    Distance{"clearance_over", &D::clearance_over},
                                    Distance{"clearance_under", &D::clearance_under},
                                    Distance{"navigation_clearance", &D::navigation_clearance},
                                    Distance{"navigation_width", &D::navigation_width},
                                    Distance{"lift_clearance", &D::lift_clearance},
                                    Distance{"detour", &D::detour},
                                    Distance{"route_clearance", &D::route_clearance},
                                    Distance{"route_width", &D::route_width},
                                    Distance{"right_clearance_under", &D::right_clearance_under},
                                    Distance{"left_clearance_under", &D::left_clearance_under},
                                    Distance{"height", &D::height}};

using C = RecordedCodes;
using Code = Member<C, int>;
inline constexpr std::array codes{Code{"main_spans", &C::main_spans},
                                  Code{"approach_spans", &C::approach_spans},
                                  Code{"lanes_on", &C::lanes_on},
                                  Code{"lanes_under", &C::lanes_under},
                                  Code{"daily_traffic", &C::daily_traffic},
                                  Code{"traffic_year", &C::traffic_year},
                                  Code{"truck_percent", &C::truck_percent},
                                  Code{"year_built", &C::year_built},
                                  Code{"year_reconstructed", &C::year_reconstructed},
                                  Code{"service_on", &C::service_on},
                                  Code{"service_under", &C::service_under},
                                  Code{"functional_class", &C::functional_class},
                                  Code{"traffic_direction", &C::traffic_direction},
                                  Code{"median", &C::median},
                                  Code{"flared", &C::flared},
                                  Code{"owner", &C::owner},
                                  Code{"maintained_by", &C::maintained_by},
                                  Code{"county", &C::county},
                                  Code{"navigation", &C::navigation},
                                  Code{"route_prefix", &C::route_prefix},
                                  Code{"service_level", &C::service_level},
                                  Code{"route_direction", &C::route_direction},
                                  Code{"toll", &C::toll},
                                  Code{"pier_protection", &C::pier_protection},
                                  Code{"border_percent", &C::border_percent},
                                  Code{"future_traffic", &C::future_traffic},
                                  Code{"future_traffic_year", &C::future_traffic_year},
                                  Code{"inspection_interval", &C::inspection_interval},
                                  Code{"inspection_year", &C::inspection_year},
                                  Code{"inspection_month", &C::inspection_month},
                                  Code{"beam_lines", &C::beam_lines},
                                  Code{"approach_beam_lines", &C::approach_beam_lines},
                                  Code{"pier_units", &C::pier_units},
                                  Code{"abutment_units", &C::abutment_units}};

using Letter = Member<C, char>;
inline constexpr std::array letters{
    Letter{"posting", &C::posting},
    Letter{"posting_evaluation", &C::posting_evaluation},
    Letter{"deck_type", &C::deck_type},
    Letter{"surface_type", &C::surface_type},
    Letter{"deck_condition", &C::deck_condition},
    Letter{"superstructure_condition", &C::superstructure_condition},
    Letter{"substructure_condition", &C::substructure_condition},
    Letter{"channel_condition", &C::channel_condition},
    Letter{"culvert_condition", &C::culvert_condition},
    Letter{"scour", &C::scour},
    Letter{"railing", &C::railing},
    Letter{"lateral_reference", &C::lateral_reference},
    Letter{"temporary", &C::temporary},
    Letter{"national_length", &C::national_length},
    Letter{"parallel", &C::parallel},
    Letter{"on_national_system", &C::on_national_system},
    Letter{"design_load", &C::design_load},
    Letter{"operating_method", &C::operating_method},
    Letter{"inventory_method", &C::inventory_method},
    Letter{"beam_layout", &C::beam_layout},
    Letter{"approach_beam_layout", &C::approach_beam_layout},
    Letter{"railing_condition", &C::railing_condition},
    Letter{"bearing_condition", &C::bearing_condition},
    Letter{"joint_condition", &C::joint_condition}};

using Made = Member<C, Material>;
inline constexpr std::array materials{Made{"material", &C::material},
                                      Made{"approach_material", &C::approach_material}};
using Built = Member<C, Design>;
inline constexpr std::array designs{Built{"design", &C::design},
                                    Built{"approach_design", &C::approach_design}};

inline std::string_view below_name(Below below) {
    static constexpr std::array<std::string_view, 4> names{"neither", "highway", "railroad",
                                                           "unknown"};
    return names.at(static_cast<std::size_t>(below));
}

/// Calls `visit` with the key and the member of every field, and the dimension of those that have
/// one. It serves writing and reading, so that no field is written and not read.
template <class Record, class Visit>
void for_each_field(Record& s, Visit visit) {
    for (const auto& m : texts) {
        visit(m.key, s.*m.member);
    }
    visit("line", s.line);
    visit("latitude", s.latitude, dim::none);
    visit("longitude", s.longitude, dim::none);
    visit("recorded_deck_area", s.recorded_deck_area, dim::area);
    visit("irregular_deck_area", s.irregular_deck_area, dim::area);
    visit("operating_rating", s.operating_rating, dim::none);
    visit("inventory_rating", s.inventory_rating, dim::none);
    for (const auto& m : lengths) {
        visit(m.key, s.dimensions.*m.member, dim::length);
    }
    visit("skew", s.dimensions.skew, dim::angle);
    for (const auto& m : materials) {
        visit(m.key, s.codes.*m.member);
    }
    for (const auto& m : designs) {
        visit(m.key, s.codes.*m.member);
    }
    visit("below", s.codes.below);
    for (const auto& m : codes) {
        visit(m.key, s.codes.*m.member);
    }
    for (const auto& m : letters) {
        visit(m.key, s.codes.*m.member);
    }
}

} // namespace scupper::json::detail::fields
