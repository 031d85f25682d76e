#include "alternatives.hpp"
#include "calendar.hpp"
#include "scupper/json/documents.hpp"
#include "site.hpp"
#include "terms.hpp"
#include "traffic.hpp"

namespace scupper::json {

namespace {

using detail::Json;

} // namespace

Json detail::write_operation(const Operation& op) {
    return {{"name", op.name},
            {"component", op.component},
            {"levels", op.levels},
            {"driver", slot_table[op.driver].key},
            {"factor", op.factor},
            {"timing", timing_names.at(static_cast<std::size_t>(op.timing))},
            {"method", op.method},
            {"way", op.ways},
            {"when", op.when},
            {"crew", op.crew},
            {"equipment", op.equipment},
            {"note", op.note}};
}

Json detail::write_resources(const std::vector<Resource>& resources) {
    Json list = Json::array();
    for (const Resource& r : resources) {
        list.push_back({{"name", r.name},
                        {"when", r.when},
                        {"note", r.note},
                        {"party", r.party},
                        {"plan", r.plan}});
    }
    return list;
}

namespace {

using detail::write_operation;
using detail::write_resources;

Json write_stages(const std::vector<Stage>& stages) {
    Json list = Json::array();
    for (const Stage& stage : stages) {
        Json parties = Json::array();
        for (const Party& party : stage.parties) {
            parties.push_back({{"name", party.name}, {"work", party.work}});
        }
        list.push_back({{"name", stage.name}, {"closure", stage.closure}, {"parties", parties}});
    }
    return list;
}

Json write_hauls(const std::vector<Haul>& hauls) {
    Json list = Json::array();
    for (const Haul& h : hauls) {
        list.push_back({{"name", h.name},
                        {"components", h.components},
                        {"dump", dump_names.at(static_cast<std::size_t>(h.dump))},
                        {"note", h.note}});
    }
    return list;
}

Json write_settings(const std::vector<Setting>& settings, const Layout& layout,
                    const std::string& currency) {
    Json object = Json::object();
    for (const Setting& s : settings) {
        const LayoutField& field = layout.fields()[layout.at(s.key, "job.inputs")];
        object[s.key] = detail::write_setting(s, field, currency);
    }
    return object;
}

} // namespace

Json detail::job_document(const Job& job) {
    const Layout layout = input_layout(job);
    Json doc;
    doc["scupper_job"] = 1;
    doc["name"] = job.name;
    doc["note"] = job.note;
    doc["rate_books"] = job.rate_books;
    doc["currency"] = job.currency;
    doc["units"] = job.units;
    doc["price_at"] = job.price_at == PriceAt::mean ? "mean" : "likely";
    doc["service"] = job.service;
    doc["ways"] = job.ways;
    doc["closure"] = job.closure;
    doc["sharing"] = sharing_names.at(static_cast<std::size_t>(job.sharing));
    doc["work_time"] = work_time_names.at(static_cast<std::size_t>(job.work_time));
    doc["traffic"] = detail::write_traffic(job.traffic);
    doc["posting"] = posting_names.at(static_cast<std::size_t>(job.posting));
    doc["stages"] = write_stages(job.stages);
    doc["operations"] = Json::array();
    for (const Operation& op : job.operations) {
        doc["operations"].push_back(write_operation(op));
    }
    doc["labour"] = write_resources(job.labour);
    doc["equipment"] = write_resources(job.equipment);
    detail::write_site(job, doc);
    doc["methods"] = Json::array();
    for (const WashMethod& m : job.methods) {
        doc["methods"].push_back(
            {{"name", m.name},
             {"hose", m.hose},
             {"truck", truck_place_names.at(static_cast<std::size_t>(m.truck))},
             {"note", m.note}});
    }
    doc["hoses"] = job.hoses;
    doc["hauls"] = write_hauls(job.hauls);
    doc["build_up"] = job.build_up;
    doc["wash_water"] = wash_water_names.at(static_cast<std::size_t>(job.wash_water));
    doc["notices"] = detail::write_notices(job.notices);
    doc["calendar"] = detail::write_calendar(job.calendar);
    doc["frequency"] = job.frequency;
    doc["terms"] = detail::write_terms(job.terms);
    doc["correlations"] = detail::write_correlations(job.correlations);
    doc["alternatives"] = detail::write_alternatives(job);
    doc["inputs"] = write_settings(job.settings, layout, job.currency);
    doc["overrides"] = Json::object();
    for (const auto& [id, settings] : job.overrides) {
        doc["overrides"][id] = write_settings(settings, layout, job.currency);
    }
    return doc;
}

std::string write_job(const Job& job) {
    return detail::job_document(job).dump(2);
}

} // namespace scupper::json
