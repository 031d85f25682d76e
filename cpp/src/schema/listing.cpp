#include "scupper/schema/listing.hpp"

#include "scupper/schema/fixed_text.hpp"
#include "scupper/schema/form_keys.hpp"
#include "scupper/schema/slots.hpp"
#include "scupper/schema/vocabulary.hpp"

#include <array>
#include <string_view>

namespace scupper {

namespace {

std::string exponent(std::string_view base, int n) {
    return n == 0 ? std::string{} : " " + std::string(base) + std::to_string(n);
}

std::string dimension_text(const Dimension& d) {
    const std::string text = exponent("length", d.length) + exponent("mass", d.mass) +
                             exponent("time", d.time) + exponent("temperature", d.temperature) +
                             exponent("money", d.money) + exponent("count", d.count) +
                             exponent("angle", d.angle);
    return text.empty() ? "plain" : text.substr(1);
}

template <class Words>
std::string words(std::string_view section, const Words& list) {
    std::string text;
    for (const std::string_view word : list) {
        text += std::string(section) + "\t" + std::string(word) + "\n";
    }
    return text;
}

template <class Table>
std::string fields(std::string_view section, const Table& table) {
    std::string text;
    for (const auto& f : table) {
        text += std::string(section) + "\t" + std::string(f.group) + "." + std::string(f.field) +
                "\t" + dimension_text(f.dimension) +
                (f.per_driver == PerDriver::yes ? "\tby driver\n" : "\n");
    }
    return text;
}

std::string slots() {
    std::string text;
    for (const SlotInfo& s : slot_table) {
        text += std::string(s.column ? "column\t" : "slot\t") + std::string(s.key) + "\t" +
                dimension_text(s.dimension) + "\n";
    }
    return text;
}

} // namespace

std::string key_listing() {
    return words("component", component_names) + words("service_level", service_level_names) +
           words("road_class", road_class_names) + words("closure_kind", closure_kind_names) +
           words("operation", operation_names) + words("method", method_names) +
           words("truck_place", truck_place_names) + words("timing", timing_names) +
           words("condition", condition_names) + words("site_word", site_word_names) +
           words("charge_per", charge_per_names) + words("question", question_names) +
           words("site_measure", site_measure_names) + words("criterion", criterion_names) +
           words("crew_kind", crew_kind_names) + words("sharing", sharing_names) +
           words("dump", dump_names) + words("build_up", build_up_names) +
           words("moisture", moisture_names) + words("section_kind", section_kind_names) +
           words("posting", posting_names) + words("wash_water", wash_water_names) +
           words("construction", construction_names) +
           words("published_basis", published_basis_names) + slots() +
           fields("input", input_table) + fields("figure", figure_table) + words("job", job_keys) +
           words("job_operation", job_operation_keys) + words("job_method", job_method_keys) +
           words("job_haul", job_haul_keys) + words("job_correlation", job_correlation_keys) +
           words("job_notice", job_notice_keys) + words("job_calendar", job_calendar_keys) +
           words("job_terms", job_terms_keys) + words("job_season", job_season_keys) +
           words("weekday", weekday_names) + words("job_resource", job_resource_keys) +
           words("job_traffic", job_traffic_keys) + words("closure_count", closure_count_names) +
           words("work_time", work_time_names) + words("hour_pattern", hour_pattern_names) +
           words("capacity_method", capacity_method_names) + words("job_charge", job_charge_keys) +
           words("job_pace", job_pace_keys) + words("job_surrounding", job_surrounding_keys) +
           words("job_alternative", job_alternative_keys) + words("job_limit", job_limit_keys) +
           words("job_removal", job_removal_keys) + words("job_stage", job_stage_keys) +
           words("job_party", job_party_keys) + words("hose_kind", hose_kind_keys) +
           words("fitting_kind", fitting_kind_keys) + words("dirt_kind", dirt_kind_keys) +
           words("published_figure", published_figure_keys) +
           words("dirt_build_up", build_up_keys) + words("street_load", street_load_keys) +
           words("section", section_keys) + words("survey", survey_names) +
           words("hose_lay", hose_lay_keys) + words("hose_lay_pump", hose_lay_pump_keys) +
           words("hose_lay_segment", hose_lay_segment_keys) +
           words("hose_lay_fitting", hose_lay_fitting_keys) +
           words("hose_lay_nozzle", hose_lay_nozzle_keys) +
           words("hose_lay_pump_kind", hose_lay_pump_kinds) +
           words("hose_lay_nozzle_state", hose_lay_nozzle_states) +
           words("hose_lay_limit", hose_lay_limit_names);
}

} // namespace scupper
