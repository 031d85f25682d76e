#include "alternatives.hpp"

#include "embedded.hpp"
#include "library_values.hpp"
#include "scupper/structure.hpp"
#include "site.hpp"

#include <algorithm>
#include <cmath>

namespace scupper::json::detail {

namespace {

using Texts = std::map<std::string, std::string>;

constexpr std::array<Dimension, site_measure_names.size()> measure_dimensions{
    dim::length, dim::length, dim::none, dim::length, dim::mass};

Texts read_texts(const Json& value, const char* key, const std::string& path) {
    Texts texts;
    if (!value.contains(key)) {
        return texts;
    }
    if (!value[key].is_object()) {
        throw InputError({"json.type", path + "." + key, value[key].dump(), "an object of texts"});
    }
    for (const auto& [name, text] : value[key].items()) {
        texts[name] = text_or(value[key], name.c_str(), {}, path + "." + key);
    }
    return texts;
}

ValueContext context_of(const std::string& source, const std::string& currency) {
    return {.layout = nullptr,
            .currency = currency,
            .origin = {.source = source, .date = {}, .note = {}},
            .basis = Basis::given};
}

LayoutField measure_field(SiteMeasure measure) {
    const auto at = static_cast<std::size_t>(measure);
    const std::string name(site_measure_names.at(at));
    return {name, name, measure_dimensions.at(at), 0.0, 1e9};
}

SiteLimit read_limit(const Json& value, const std::string& path) {
    require_known_keys(value, job_limit_keys, path);
    SiteLimit limit;
    limit.measure = read_word<SiteMeasure>(site_measure_names, value, "measure", path);
    limit.reason = text_or(value, "reason", {}, path);
    const LayoutField field = measure_field(limit.measure);
    const ValueContext context = context_of({}, {});
    if (value.contains("least")) {
        limit.least = read_number(value["least"], field, context, path + ".least");
    }
    if (value.contains("most")) {
        limit.most = read_number(value["most"], field, context, path + ".most");
    }
    return limit;
}

LayoutField share_field() {
    return {"share", "share removed", dim::none, 0.0, 1.0};
}

Removal read_removal(const Json& value, const std::string& path, const std::string& source) {
    Removal removes;
    removes.share = make_setting("share", certain(not_recorded, Basis::assumed), {});
    if (!value.contains("removes")) {
        return removes;
    }
    const Json& object = value["removes"];
    const std::string where = path + ".removes";
    require_known_keys(object, job_removal_keys, where);
    removes.share =
        read_field(share_field(), member(object, share_field(), where),
                   context_of(text_or(object, "source", source, where), {}), where + ".share");
    check(removes.share.value.guess, where + ".share");
    if (removes.share.value.guess.low < 0.0 || removes.share.value.guess.high > 1.0) {
        throw InputError(
            {"job.bounds", where + ".share", object["share"].dump(), "shares from 0 to 1"});
    }
    removes.passes = text_or(object, "passes", {}, where);
    removes.dirt = words(object, "dirt", where);
    return removes;
}

Resource read_row(const Json& value, const std::string& path) {
    return read_charge(value, path, {});
}

/// Everything but the inputs, which need the rows that the rest gives.
Alternative read_alternative(const Json& value, const std::string& path) {
    require_known_keys(value, job_alternative_keys, path);
    Alternative a;
    a.name = read_name(value, path);
    a.question = read_word<Question>(question_names, value, "question", path);
    a.source = text_or(value, "source", "the job", path);
    a.note = text_or(value, "note", {}, path);
    a.ways = read_texts(value, "ways", path);
    a.closure = text_or(value, "closure", {}, path);
    a.instead = read_texts(value, "instead", path);
    a.without = words(value, "without", path);
    a.labour = list_of(value, "labour", path, read_row);
    a.equipment = list_of(value, "equipment", path, read_row);
    a.charges = list_of(value, "charges", path, read_row);
    a.paces = list_of(value, "paces", path, [&](const Json& pace, const std::string& where) {
        return read_pace(pace, where, a.source);
    });
    a.needs = read_texts(value, "needs", path);
    a.forbids = read_texts(value, "forbids", path);
    a.limits = list_of(value, "limits", path, read_limit);
    a.misses = read_texts(value, "misses", path);
    a.removes = read_removal(value, path, a.source);
    return a;
}

const Json& shipped_list() {
    static const Json list = [] {
        static constexpr std::array<std::string_view, 3> keys{"scupper_alternatives", "date",
                                                              "alternatives"};
        const std::string name = "alternatives.json";
        const Json doc = parse(data::alternatives_json, name);
        require_known_keys(doc, keys, name);
        require_version(doc, "scupper_alternatives", name);
        return doc["alternatives"];
    }();
    return list;
}

/// Rows for everything that an alternative may bring, so that one layout serves all of them.
Layout layout_of_all(Job job, const std::vector<Alternative>& alternatives) {
    const auto add = [](const std::string& name, std::vector<Resource>& rows) {
        const bool there = std::any_of(rows.begin(), rows.end(),
                                       [&](const Resource& r) { return r.name == name; });
        if (!name.empty() && !there) {
            rows.push_back({name, {}, {}});
        }
    };
    for (const Alternative& a : alternatives) {
        for (const auto& [name, other] : a.instead) {
            add(other, job.equipment);
        }
        for (const Resource& r : a.equipment) {
            add(r.name, job.equipment);
        }
        for (const Resource& r : a.labour) {
            add(r.name, job.labour);
        }
        for (const Resource& r : a.charges) {
            add(r.name, job.charges);
        }
    }
    return input_layout(job);
}

/// What the document says of an alternative stands in place of what is there; inputs join.
void overlay(Json& there, const Json& own) {
    for (const auto& [key, value] : own.items()) {
        if (key == "inputs" && there.contains(key) && value.is_object()) {
            there[key].update(value);
        } else {
            there[key] = value;
        }
    }
}

Json merged_list(const Json& doc, const std::string& path) {
    Json list = shipped_list();
    const auto keep = [](const Json& value, const std::string& where) {
        require_known_keys(value, job_alternative_keys, where);
        read_name(value, where);
        return value;
    };
    for (const Json& own : list_of(doc, "alternatives", path, keep)) {
        const auto same = std::find_if(list.begin(), list.end(), [&](const Json& other) {
            return other["name"] == own["name"];
        });
        if (same == list.end()) {
            list.push_back(own);
        } else {
            overlay(*same, own);
        }
    }
    return list;
}

Json write_limit(const SiteLimit& limit) {
    const LayoutField field = measure_field(limit.measure);
    Json object{{"measure", field.key}, {"reason", limit.reason}};
    if (std::isfinite(limit.least)) {
        object["least"] = write_number(limit.least, field.dimension, {});
    }
    if (std::isfinite(limit.most)) {
        object["most"] = write_number(limit.most, field.dimension, {});
    }
    return object;
}

Json write_rows(const std::vector<Resource>& rows) {
    Json list = Json::array();
    for (const Resource& r : rows) {
        list.push_back({{"name", r.name},
                        {"when", r.when},
                        {"note", r.note},
                        {"party", r.party},
                        {"per", charge_per_names.at(static_cast<std::size_t>(r.per))}});
    }
    return list;
}

Json write_inputs(const Alternative& a, const Layout& layout, const std::string& currency) {
    Json object = Json::object();
    for (const Setting& s : a.settings) {
        const LayoutField& field = layout.fields()[layout.at(s.key, "job.alternatives")];
        object[s.key] = write_setting(s, field, currency);
    }
    return object;
}

Json write_alternative(const Alternative& a, const Layout& layout, const std::string& currency) {
    Json object{{"name", a.name},
                {"question", question_names.at(static_cast<std::size_t>(a.question))},
                {"ways", a.ways},
                {"closure", a.closure},
                {"instead", a.instead},
                {"without", a.without},
                {"labour", write_rows(a.labour)},
                {"equipment", write_rows(a.equipment)},
                {"charges", write_rows(a.charges)},
                {"paces", Json::array()},
                {"needs", a.needs},
                {"forbids", a.forbids},
                {"limits", Json::array()},
                {"misses", a.misses},
                {"source", a.source},
                {"note", a.note}};
    for (const Pace& pace : a.paces) {
        object["paces"].push_back(write_pace(pace));
    }
    for (const SiteLimit& limit : a.limits) {
        object["limits"].push_back(write_limit(limit));
    }
    if (!std::isnan(a.removes.share.value.guess.likely)) {
        object["removes"] = {{"share", write_setting(a.removes.share, share_field(), {})},
                             {"passes", a.removes.passes},
                             {"dirt", a.removes.dirt}};
    }
    object["inputs"] = write_inputs(a, layout, currency);
    return object;
}

/// Values of equipment that comes in the place of what the job has not are of no use to it.
void drop_useless(const Job& job, Alternative& a) {
    const std::vector<Resource> there = with_alternative(job, a).equipment;
    for (const auto& [name, other] : a.instead) {
        const std::string before = "equipment[" + other + "].";
        const bool comes = std::any_of(there.begin(), there.end(),
                                       [&, o = other](const Resource& r) { return r.name == o; });
        if (!comes) {
            std::erase_if(a.settings, [&](const Setting& s) { return s.key.starts_with(before); });
        }
    }
}

} // namespace

std::vector<Alternative> read_alternatives(const Json& doc, const Job& job,
                                           const std::string& path) {
    const Json documents = merged_list(doc, path);
    const auto where = [&](const Json& value) {
        return path + ".alternatives[" + text_or(value, "name", {}, path) + "]";
    };
    std::vector<Alternative> list;
    for (const Json& value : documents) {
        list.push_back(read_alternative(value, where(value)));
    }
    const Layout layout = layout_of_all(job, list);
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (documents[i].contains("inputs")) {
            ValueContext context = context_of(list[i].source, job.currency);
            context.layout = &layout;
            list[i].settings =
                read_settings(documents[i]["inputs"], context, where(documents[i]) + ".inputs");
            drop_useless(job, list[i]);
        }
    }
    return list;
}

Json write_alternatives(const Job& job) {
    const Layout layout = layout_of_all(job, job.alternatives);
    Json list = Json::array();
    for (const Alternative& a : job.alternatives) {
        list.push_back(write_alternative(a, layout, job.currency));
    }
    return list;
}

} // namespace scupper::json::detail
