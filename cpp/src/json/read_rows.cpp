#include "read_rows.hpp"

namespace scupper::json::detail {

namespace {

Timing read_timing(const std::string& word, const std::string& path) {
    const int index = index_of(timing_names, word);
    if (index < 0 || word == "lost") {
        throw UnknownNameError({"json.word", path + ".timing", "\"" + word + "\"",
                                "rate, clock_rate, closure, refill or dump"});
    }
    return static_cast<Timing>(index);
}

Slot read_driver(const std::string& word, const std::string& path) {
    const Slot found = find_slot(word);
    if (found == slot_table.size()) {
        std::vector<std::string_view> known;
        for (const SlotInfo& s : slot_table) {
            known.push_back(s.key);
        }
        throw UnknownNameError({"json.word", path + ".driver", "\"" + word + "\"",
                                "\"" + nearest_name(word, known) + "\"?"});
    }
    return found;
}

Party read_party(const Json& value, const std::string& path) {
    require_known_keys(value, job_party_keys, path);
    return {text_or(value, "name", {}, path), words(value, "work", path)};
}

} // namespace

Operation read_operation(const Json& value, const std::string& path) {
    require_known_keys(value, job_operation_keys, path);
    Operation op;
    op.name = text_or(value, "name", {}, path);
    if (op.name.empty()) {
        throw InputError({"json.missing", path + ".name", "nothing", "a name for the operation"});
    }
    op.component = text_or(value, "component", {}, path);
    op.levels = words(value, "levels", path);
    op.driver = read_driver(text_or(value, "driver", {}, path), path);
    op.timing = read_timing(text_or(value, "timing", "rate", path), path);
    op.method = text_or(value, "method", {}, path);
    op.ways = word_or_words(value, "way", path);
    op.when = words(value, "when", path);
    op.crew = text_or(value, "crew", {}, path);
    op.equipment = words(value, "equipment", path);
    op.note = text_or(value, "note", {}, path);
    if (value.contains("factor")) {
        if (!value["factor"].is_number()) {
            throw InputError(
                {"json.type", path + ".factor", value["factor"].dump(), "a number above 0"});
        }
        op.factor = value["factor"].get<double>();
    }
    return op;
}

Resource read_resource(const Json& value, const std::string& path) {
    require_known_keys(value, job_resource_keys, path);
    return {text_or(value, "name", {}, path), words(value, "when", path),
            text_or(value, "note", {}, path), text_or(value, "party", {}, path),
            text_or(value, "plan", {}, path)};
}

WashMethod read_method(const Json& value, const std::string& path) {
    require_known_keys(value, job_method_keys, path);
    return {text_or(value, "name", {}, path), words(value, "hose", path),
            text_or(value, "note", {}, path),
            read_word<TruckPlace>(truck_place_names, value, "truck", path)};
}

Haul read_haul(const Json& value, const std::string& path) {
    require_known_keys(value, job_haul_keys, path);
    return {text_or(value, "name", {}, path), words(value, "components", path),
            read_word<DumpWhen>(dump_names, value, "dump", path), text_or(value, "note", {}, path)};
}

Stage read_stage(const Json& value, const std::string& path) {
    require_known_keys(value, job_stage_keys, path);
    return {text_or(value, "name", {}, path), text_or(value, "closure", {}, path),
            list_of(value, "parties", path, read_party)};
}

} // namespace scupper::json::detail
